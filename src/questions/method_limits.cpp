#include "questions/method_limits.hpp"

#include <algorithm>
#include <string_view>

#include "loads/infiltration.hpp"
#include "loads/materials.hpp"

namespace questions {
namespace {

units::Area glass_on(const house::SurveyRoom& room, house::WallSide side) {
    units::Area glass;
    for (const house::SurveyWindow& window : room.windows)
        if (window.wall && window.size && window.wall->value == side)
            glass += window.size->value.first * window.size->value.second;
    return glass;
}

void add_glass(std::vector<BeyondLimit>& all, const house::SurveyRoom& written, const house::Room& room) {
    const units::Area floor = room.floor_area();
    if (floor.si() <= 0) return;
    units::Area glass;
    std::vector<BeyondLimit> sides;
    for (const auto& side : house::words<house::WallSide>()) {
        const units::Area here = glass_on(written, side.value);
        glass += here;
        if (here > most_glass_on_a_side * floor)
            sides.push_back({Limit::glass_on_a_side, room.id, side.value, here / floor});
    }
    for (const house::SurveyWindow& window : written.windows)
        if (window.surface && window.size) glass += window.size->value.first * window.size->value.second;
    // Too much in all says more than too much on a side.
    if (glass > most_glass_in_all * floor) sides = {{Limit::glass_in_all, room.id, {}, glass / floor}};
    all.insert(all.end(), sides.begin(), sides.end());
}

bool is_masonry(std::string_view layer) {
    static constexpr std::string_view names[] = {"brick",    "hard brick",     "soft brick",      "stone",
                                                 "concrete", "concrete block", "hollow clay tile"};
    const std::string_view name = layer.substr(0, layer.find(','));
    return std::find(std::begin(names), std::end(names), name) != std::end(names);
}

// Masonry that carries, above the ground: without studs behind it. A veneer before a framed wall is within
// the method.
bool is_masonry_wall(const house::Surface& surface) {
    const auto* layers = std::get_if<house::Layers>(&surface.assembly);
    if (!layers || surface.kind != house::SurfaceKind::wall || surface.buried) return false;
    bool masonry = false, framed = layers->framing > 0;
    for (const house::CatalogueName& name : layers->names) {
        masonry = masonry || is_masonry(name.text);
        const auto layer = loads::look_up_layer(name);
        if (const auto* found = std::get_if<loads::Layer>(&layer)) framed = framed || found->between_studs;
    }
    return masonry && !framed;
}

bool touches_the_ground(const house::Surface& surface) { return surface.buried || surface.slab; }

}  // namespace

bool is_of_a_room(Limit limit) { return limit != Limit::elevation && limit != Limit::storeys; }

std::string_view word_of(Limit limit) {
    static constexpr std::string_view words[] = {"glass on a side",    "glass in all", "masonry",
                                                 "no outside surface", "elevation",    "storeys"};
    return words[static_cast<std::size_t>(limit)];
}

std::vector<BeyondLimit> beyond_limits(const house::Survey& survey, const house::House& house) {
    std::vector<BeyondLimit> all;
    for (std::size_t i = 0; i < house.rooms.size(); ++i) {
        const house::Room& room = house.rooms[i];
        add_glass(all, survey.rooms[i], room);
        if (std::any_of(room.surfaces.begin(), room.surfaces.end(), is_masonry_wall))
            all.push_back({Limit::masonry, room.id, {}, 0});
        if (loads::exposed_surface(room).si() <= 0 &&
            std::none_of(room.surfaces.begin(), room.surfaces.end(), touches_the_ground))
            all.push_back({Limit::no_outside_surface, room.id, {}, 0});
    }
    if (house.site.elevation > highest_site) all.push_back({Limit::elevation, {}, {}, 0});
    if (house.storeys > most_storeys) all.push_back({Limit::storeys, {}, {}, 0});
    return all;
}

}  // namespace questions
