#include "questions/both_houses.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"

namespace questions {
namespace {

void refuse_zones(const house::House& house) {
    if (house.zone_devices.empty()) return;
    const house::ZoneDevice& zone = house.zone_devices.front();
    throw house::CannotAnswer(zone.place, "the " + zone.name +
                                              " splits the system in zones, and these are not covered: "
                                              "their dampers and bypass move while the blower runs");
}

bool is_supplied(const house::House& house) {
    return house.other_rooms ||
           std::any_of(house.outlets.begin(), house.outlets.end(),
                       [&](const house::Outlet& outlet) { return house.is_supply(outlet); });
}

std::vector<house::Assumption> of_both(std::vector<house::Assumption> all,
                                       const std::vector<house::Assumption>& more) {
    for (const house::Assumption& assumption : more) {
        const bool known = std::any_of(all.begin(), all.end(),
                                       [&](const house::Assumption& one) { return one.id == assumption.id; });
        if (!known) all.push_back(assumption);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const house::Assumption& a, const house::Assumption& b) { return a.id < b.id; });
    return all;
}

}  // namespace

BothHouses both_houses(const house::Survey& survey, const house::Defaults& defaults,
                       const house::Shape& size) {
    using house::Extent;
    house::Built found = house::build(survey, defaults, house::Stage::found, Extent::whole_system);
    house::Built planned = house::build(survey, defaults, house::Stage::planned, Extent::whole_system);
    refuse_zones(planned.house);
    BothHouses both;
    both.assumptions = of_both(std::move(planned.assumptions), found.assumptions);
    both.planned.house = std::move(planned.house);
    both.planned.loss = loads::house_heat_loss(both.planned.house);
    both.found_is_supplied = found.mistakes.empty() && is_supplied(found.house);
    if (!both.found_is_supplied) {
        const network::Calibrated machine = network::calibrate(both.planned.house, both.planned.loss, size);
        both.planned.machine = machine.machine;
        both.known_by = machine.known_by;
        return both;
    }
    both.found.house = std::move(found.house);
    both.found.loss = loads::house_heat_loss(both.found.house);
    const network::Calibrated machine = network::calibrate(both.found.house, both.found.loss);
    both.found.machine = machine.machine;
    both.known_by = machine.known_by;
    both.planned.machine =
        network::machine_for(both.planned.house, both.planned.loss, both.found.house, both.found.machine);
    return both;
}

AtWork at_work(const HouseAtWork& at, const std::optional<house::Shape>& size, network::Fans fans) {
    AtWork work;
    work.point = network::operating_point(at.house, network::planned_ducts(at.house, at.machine, size),
                                          at.machine, fans);
    work.night = network::design_night(at.house, at.loss, at.machine, work.point);
    return work;
}

}  // namespace questions
