#include "questions/trunk_in_summer.hpp"

#include <algorithm>

#include "questions/cooled_system.hpp"
#include "questions/house_gains.hpp"

namespace questions {
namespace {

units::Airflow air_of(const house::House& house, const CooledSystem& cooled, house::RoomId room) {
    units::Airflow sum;
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].room == room && house.is_supply(house.outlets[i]))
            sum += cooled.of(static_cast<int>(i));
    return sum;
}

}  // namespace

std::optional<TrunkInSummer> trunk_in_summer(const BothHouses& both, const house::Shape& size) {
    const house::House& house = both.planned.house;
    if (!house.summer) return std::nullopt;
    const CooledSystem after = cooled_system(both.planned, size);
    std::optional<CooledSystem> before;
    if (both.found_is_supplied) before = cooled_system(both.found, std::nullopt);
    TrunkInSummer summer;
    summer.own_speed = house.summer->airflow.si() > 0;
    summer.blower = after.point.blower / after.point.return_air.density;
    summer.external_static = after.point.external_static;
    if (before) summer.external_static_before = before->point.external_static;
    const HouseGains gains = house_gains(house, both.planned.loss.infiltration);
    for (const house::Room& room : house.rooms) {
        const bool supplied = std::any_of(
            house.outlets.begin(), house.outlets.end(),
            [&](const auto& outlet) { return outlet.room == room.id && house.is_supply(outlet); });
        if (!supplied) continue;
        CooledRoom cooled_room{room.id, {}, air_of(house, after, room.id), {}};
        if (before) cooled_room.before = air_of(both.found.house, *before, room.id);
        cooled_room.needs = gains.air[static_cast<std::size_t>(room.id.index)].airflow;
        summer.rooms.push_back(cooled_room);
    }
    return summer;
}

}  // namespace questions
