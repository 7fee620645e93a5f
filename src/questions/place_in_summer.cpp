#include <algorithm>

#include "questions/house_gains.hpp"
#include "questions/place.hpp"

namespace questions {
namespace {

constexpr double air_accuracy = 0.1;  // of what an outlet gets

// What rules a place out for both seasons; its warm air is winter's matter.
bool can_be_used(const Place& place) {
    return place.figures && place.figures->cooled && place.ruled_out != RuledOut::stopped &&
           place.ruled_out != RuledOut::cold_wall && place.ruled_out != RuledOut::loud;
}

// What becomes of the cooled air, then the shorter run, then the place: never the sheet's order.
bool cools_better(const Place& a, const Place& b) {
    const auto key = [](const Place& place) {
        return std::tuple(-static_cast<int>(place.figures->cooled->air.becomes), place.figures->run,
                          place.location.middle.north, place.location.middle.east);
    };
    return key(a) < key(b);
}

}  // namespace

std::optional<PlaceInSummer> place_in_summer(const RunToRoom& run, const std::vector<Place>& places) {
    const house::House& house = run.planned.house;
    if (!house.summer) return std::nullopt;
    const house::RoomId room = house.outlets[static_cast<std::size_t>(run.outlet)].room;
    const auto outlets = std::count_if(
        house.outlets.begin(), house.outlets.end(),
        [&](const house::Outlet& outlet) { return outlet.room == room && house.is_supply(outlet); });
    const HouseGains gains = house_gains(house, run.planned.loss.infiltration);
    PlaceInSummer summer;
    summer.needs = gains.air[static_cast<std::size_t>(room.index)].airflow / static_cast<double>(outlets);
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (!can_be_used(places[i]) || places[i].figures->cooled->gives < (1 - air_accuracy) * summer.needs)
            continue;
        if (!summer.chosen || cools_better(places[i], places[*summer.chosen])) summer.chosen = i;
    }
    return summer;
}

}  // namespace questions
