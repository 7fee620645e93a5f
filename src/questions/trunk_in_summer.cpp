#include "questions/trunk_in_summer.hpp"

#include <algorithm>

#include "questions/house_gains.hpp"

namespace questions {
namespace {

struct Cooled {
    network::OperatingPoint point;
    units::Density supply_density;
};

Cooled cooled(const HouseAtWork& at, const std::optional<house::Shape>& size) {
    const house::Summer& summer = *at.house.summer;
    network::Machine machine = at.machine;
    machine.returns = summer.indoor;
    const loads::Air return_air = loads::air_at(machine.returns, machine.pressure);
    if (summer.airflow.si() > 0) {
        const units::MassFlow flow = summer.airflow * return_air.density;
        machine.blower = network::HeldAirflow{flow, {}};
        machine.design_flow = flow;
    }
    machine.output = machine.design_flow * return_air.specific_heat * (summer.supply - summer.indoor);
    return {network::operating_point(at.house, network::planned_ducts(at.house, at.machine, size), machine),
            loads::air_at(summer.supply, machine.pressure).density};
}

units::Airflow air_of(const house::House& house, const Cooled& cooled, house::RoomId room) {
    units::MassFlow sum;
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].room == room && house.is_supply(house.outlets[i]))
            sum += cooled.point.outlets[i];
    return sum / cooled.supply_density;
}

}  // namespace

std::optional<TrunkInSummer> trunk_in_summer(const BothHouses& both, const house::Shape& size) {
    const house::House& house = both.planned.house;
    if (!house.summer) return std::nullopt;
    const Cooled after = cooled(both.planned, size);
    std::optional<Cooled> before;
    if (both.found_is_supplied) before = cooled(both.found, std::nullopt);
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
