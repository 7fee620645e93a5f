// What lies in the ground or on it: walls and floors below grade, slabs, and how cold the ground is.
#include <algorithm>
#include <cmath>

#include "house/builders.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

constexpr units::Length deepest = 20 * units::unit::foot;  // a cellar under a cellar

units::Conductivity soil(Work& work, const std::string& whose) {
    return units::Conductivity(work.ledger.take(DefaultId::soil, whose));
}

bool depth_is_sane(Work& work, const Given<units::Length>& depth, const std::string& whose) {
    if (depth.value <= deepest) return true;
    work.ledger.blame(depth.place, "the " + whose + " lies deeper than any cellar",
                      "give its depth below the ground outside, up to 20 ft");
    return false;
}

// Heat goes the shortest way out, by the narrow side of the house, or of the room where that is all one
// knows.
units::Length shortest_width(const Work& work, const Room& room) {
    if (const auto& house = work.survey.house_size) return std::min(house->value.first, house->value.second);
    const bool has_size = room.width > units::Length() && room.depth > units::Length();
    return has_size ? std::min(room.width, room.depth) : units::Length(std::sqrt(room.floor_area().si()));
}

bool meets_the_air(const Maybe<std::string>& faces) {
    const auto space = faces ? space_named(faces->value) : std::nullopt;
    return space == Space::outdoors || space == Space::garage || space == Space::porch;
}

// Of the walls that stand on the slab and have no warm room on their other side.
units::Length length_of_cold_walls(const SurveyRoom& written, const Room& room) {
    units::Length sum;
    for (const SurveyWall& wall : written.walls)
        if (meets_the_air(wall.faces))
            sum += wall.area ? wall.area->value / room.ceiling : wall_length(room, wall.side);
    for (const SurveySurface& surface : written.surfaces)
        if (kind_of(surface) == SurfaceKind::wall && meets_the_air(surface.faces))
            sum += surface.length ? surface.length->value : listed_area(room, surface) / room.ceiling;
    return sum;
}

Slab slab_of(Work& work, const SurveyRoom& written, const Room& room, const SurveyGround& ground,
             const std::string& whose) {
    Slab slab;
    slab.edge = ground.exposed_edge ? ground.exposed_edge->value : length_of_cold_walls(written, room);
    if (is_known(ground.edge))
        slab.edge_loss = CatalogueName{ground.edge->value, ground.edge->place};
    else
        slab.edge_loss = units::Conductivity(work.ledger.take(DefaultId::slab_edge, whose));
    if (is_known(ground.covering))
        slab.covering = CatalogueName{ground.covering->value, ground.covering->place};
    else if (work.house.summer)
        slab.covering = units::Resistance(work.ledger.take(DefaultId::slab_covering, whose));
    return slab;
}

void blame_slab_words(Work& work, const SurveyGround& ground, const std::string& whose) {
    for (const Maybe<std::string>& word : {ground.edge, ground.covering})
        if (word)
            work.ledger.blame(word->place, "the " + whose + " is no slab on the ground",
                              "leave this out, or leave out the depth");
    if (ground.exposed_edge)
        work.ledger.blame(Mistake{"the " + whose + " lies in the ground and has no exposed edge",
                                  {},
                                  "give its depth, or the exposed edge of a slab, not both",
                                  ground.exposed_edge->place,
                                  ground.depth ? std::optional<Place>(ground.depth->place) : std::nullopt});
}

Buried buried_wall(Work& work, const SurveyGround& written, Place place, const std::string& whose) {
    Buried buried;
    const std::string what = "how deep the " + whose + " reaches below the ground outside";
    buried.bottom = work.ledger.required(written.depth, place, what, "depth = \"5 ft\"");
    if (written.depth_from) buried.top = written.depth_from->value;
    if (written.depth && depth_is_sane(work, *written.depth, whose) && buried.top >= buried.bottom)
        work.ledger.blame(
            Mistake{"the " + whose + " has no height below the ground",
                    {},
                    "depth is that of its bottom, depth_from that of its top",
                    written.depth->place,
                    written.depth_from ? std::optional<Place>(written.depth_from->place) : std::nullopt});
    blame_slab_words(work, written, whose);
    buried.soil = soil(work, whose);
    return buried;
}

Buried buried_floor(Work& work, const Room& room, const SurveyGround& written, const std::string& whose) {
    blame_slab_words(work, written, whose);
    depth_is_sane(work, *written.depth, whose);
    return {written.depth->value, written.depth->value, shortest_width(work, room), soil(work, whose)};
}

bool lies_on_the_ground(const Face& face, const SurveyGround& ground) {
    return face.kind == SurfaceKind::floor && (!ground.depth || ground.depth->value <= units::Length());
}

}  // namespace

// Nowhere is the ground colder than the coldest air above it.
units::Temperature ground_temperature(Work& work, const std::string& used_for) {
    const SurveySite& site = work.survey.site;
    if (site.ground) return site.ground->value;
    const units::Temperature usual(work.ledger.take(DefaultId::ground_temperature, used_for));
    return std::max(usual, work.house.site.winter_outdoor);
}

void add_in_the_ground(Work& work, const SurveyRoom& written, Room& room, const Face& face,
                       const Make& make) {
    const std::string whose = face.name + " of the " + room.name;
    if (face.kind == SurfaceKind::ceiling || face.kind == SurfaceKind::slope)
        return work.ledger.blame(face.place, "no ceiling lies against the ground");
    if (face.kind == SurfaceKind::floor && make.ground.depth_from)
        work.ledger.blame(make.ground.depth_from->place, "a floor has one depth", "give depth alone");
    Surface surface{face.kind, face.name, face.area, face.beyond, units::Transmittance()};
    if (lies_on_the_ground(face, make.ground)) {
        if (is_known(make.construction))
            work.ledger.blame(
                make.construction->place,
                "the " + whose + " is a slab on the ground and loses by its edge, however it is made",
                "say how its edge is insulated, edge = \"bare\", and what lies on it, covering = "
                "\"carpet\"");
        surface.beyond = Space::outdoors;
        surface.slab = slab_of(work, written, room, make.ground, whose);
    } else {
        surface.assembly = assembly_or(work, make.construction, DefaultId::buried_make, whose);
        surface.buried = face.kind == SurfaceKind::floor ? buried_floor(work, room, make.ground, whose)
                                                         : buried_wall(work, make.ground, face.place, whose);
        ask_for_space(work, Space::ground, whose);
    }
    room.surfaces.push_back(std::move(surface));
}

void blame_words_of_the_ground(Work& work, const SurveyGround& written, const std::string& what,
                               const Room& room) {
    const auto blame = [&](const auto& word) {
        if (word)
            work.ledger.blame(word->place,
                              "the " + what + " of the " + room.name + " does not lie in the ground",
                              "leave this out, or let it face the ground");
    };
    blame(written.depth);
    blame(written.depth_from);
    blame(written.exposed_edge);
    blame(written.edge);
    blame(written.covering);
}

}  // namespace house
