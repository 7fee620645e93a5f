// Houses with their rooms, ducts, doors and leaks, for the tests of the whole system.
#pragma once

#include <cstdint>

#include "ducts/a_duct_house.hpp"
#include "loads/a_house.hpp"
#include "network/design_night.hpp"
#include "network/operating_point.hpp"

namespace network {

// A machine that holds its airflow and heats nothing, so that all air is alike; tight ducts.
inline Machine holding(double flow) {
    Machine machine;
    machine.blower = HeldAirflow{units::MassFlow(flow), {}};
    machine.returns = units::unit::celsius(20);
    machine.pressure = units::Pressure(101325);
    machine.design_flow = units::MassFlow(flow);
    machine.design.each_other_outlet = units::MassFlow(0.02);
    return machine;
}

// Rooms that each lose 5 W/K to the outdoors, with their doors open; registers and grilles lose nothing.
inline house::House with_rooms(int count) {
    house::House house = a_house::bare();
    house.whole_system = house::WholeSystem{};
    house.whole_system->leakage = house::LeakageShares{};
    for (int i = 0; i < count; ++i) {
        a_house::add_room(house, "room " + std::to_string(i));
        house.rooms.back().surfaces = {a_house::surface(10, a_house::u(0.5))};
        house.whole_system->ways_out.emplace_back();
    }
    return house;
}

inline house::Duct& duct(house::House& in, int position) {
    return in.ducts[static_cast<std::size_t>(position)];
}
inline house::Outlet& outlet(house::House& in, int position) {
    return in.outlets[static_cast<std::size_t>(position)];
}

// Each outlet of the plan gets the same share.
inline Machine planned_for(const house::House& house, Machine machine) {
    const double count = std::max<double>(1, static_cast<double>(house.outlets.size()));
    machine.design.outlets.assign(house.outlets.size(), (1 / count) * machine.design_flow);
    return machine;
}

inline OperatingPoint running(const house::House& house, const Machine& machine, Fans fans = Fans::off) {
    const Machine planned = planned_for(house, machine);
    return operating_point(house, ducts::duct_system(house, planned.design, std::nullopt), planned, fans);
}

// By how much a section's flow misses what leaves its far end, as a share of the blower's: 0 where nothing
// leaks.
double worst_imbalance(const OperatingPoint& point);

// What may be drawn in a random house.
struct Drawn {
    bool only_fixed_fittings = false;  // C of their own, whatever the air in the trunk does
    bool usual = false;                // no tiny or huge ducts, no dead ends, nothing shut
    bool leaks = true, doors = true, held = false;
};

struct RandomHouse {
    house::House house;
    Machine machine;
};
RandomHouse random_whole_house(std::uint64_t seed, const Drawn& drawn = {});

}  // namespace network
