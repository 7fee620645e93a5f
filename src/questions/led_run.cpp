#include <algorithm>

#include "questions/place.hpp"
#include "routes/plain_way.hpp"
#include "units/unit.hpp"

namespace questions {
namespace {

constexpr units::Length shortest_run{1 * units::unit::foot};

// From the floor up to the register.
units::Length height_of(house::Mount mount, units::Length ceiling) {
    switch (mount) {
        case house::Mount::low_wall:
            return units::Length(1 * units::unit::foot);
        case house::Mount::high_wall:
            return ceiling - 1 * units::unit::foot;
        case house::Mount::ceiling:
            return ceiling;
        case house::Mount::floor:
        case house::Mount::toe_kick:
            break;
    }
    return {};
}

bool is_end_piece(const std::string& name) {
    const auto has = [&](const char* word) { return name.find(word) != std::string::npos; };
    return has("boot") || has("stackhead") || has("ceiling box");
}

std::vector<const char*> end_pieces_of(house::Mount mount) {
    switch (mount) {
        case house::Mount::low_wall:
        case house::Mount::high_wall:
            return {"round-to-stack boot, 90", "stackhead"};
        case house::Mount::ceiling:
            return {"ceiling box, side entry"};
        case house::Mount::toe_kick:
        case house::Mount::floor:
            break;
    }
    return {"floor boot, end entry"};
}

void turn(house::Duct& duct, int more) {
    constexpr const char* elbow = "round elbow 90, adjustable";
    auto& fittings = duct.fittings;
    for (; more > 0; --more) {
        const auto before_end = std::find_if(fittings.begin(), fittings.end(),
                                             [](const auto& fitting) { return is_end_piece(fitting.text); });
        fittings.insert(before_end, {elbow, duct.place});
    }
    for (; more < 0; ++more) {
        const auto last = std::find_if(fittings.rbegin(), fittings.rend(), [](const auto& fitting) {
            return fitting.text.find("elbow") != std::string::npos || fitting.text == "square turn" ||
                   fitting.text == "rounded turn";
        });
        if (last == fittings.rend()) return;
        fittings.erase(std::next(last).base());
    }
}

// Only where the sheet names its end pieces: counted turns have them in.
void end_at(house::Duct& duct, house::Mount mount) {
    auto& fittings = duct.fittings;
    const auto named = [](const house::CatalogueName& fitting) { return is_end_piece(fitting.text); };
    if (std::none_of(fittings.begin(), fittings.end(), named)) return;
    std::erase_if(fittings, named);
    for (const char* piece : end_pieces_of(mount)) fittings.push_back({piece, duct.place});
}

}  // namespace

house::House led_to(const RunToRoom& run, const registers::Location& location) {
    house::House house = run.planned.house;
    house::Outlet& outlet = house.outlets[static_cast<std::size_t>(run.outlet)];
    const auto duct = std::find_if(house.ducts.begin(), house.ducts.end(),
                                   [&](const house::Duct& one) { return one.id == outlet.duct; });
    const units::Length ceiling = house.room(outlet.room).ceiling;
    const house::Mount mount_now = outlet.mount.value_or(house::Mount::floor);
    const routes::PlainWay now = routes::plain_way(run.from, run.base, height_of(mount_now, ceiling));
    const routes::PlainWay there =
        routes::plain_way(run.from, location.middle, height_of(location.mount, ceiling));
    duct->length = std::max(shortest_run, duct->length + there.length - now.length);
    turn(*duct, there.turns - now.turns);
    if (mount_now != location.mount) end_at(*duct, location.mount);
    outlet.mount = location.mount;
    outlet.spot = house::AtPoint{location.middle.east, location.middle.north};
    return house;
}

}  // namespace questions
