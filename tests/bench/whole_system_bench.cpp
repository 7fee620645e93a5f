// The whole system of a house of twelve rooms, as `trunk` solves it for each of its trials: takeoffs at the
// real split, leaks, a return, a falling blower. Counter: Newton steps.
#include <benchmark/benchmark.h>

#include "network/a_whole_house.hpp"

namespace {

house::House twelve_rooms() {
    house::House house = network::with_rooms(12);
    house.register_drop = units::Pressure(7);
    house.grille_drop = units::Pressure(5);
    const int trunk = a_duct_house::add_root(house, a_duct_house::trunk_shape, 40, {"trunk start, square"});
    for (int room = 0; room < 12; ++room)
        a_duct_house::add_outlet(
            house,
            a_duct_house::add_branch(
                house, trunk, 3 * (room + 1), a_duct_house::six_inch, 15,
                {"side takeoff, straight", "round elbow 90, adjustable", "floor boot, end entry"}),
            room);
    a_duct_house::add_outlet(
        house, a_duct_house::add_return(house, a_duct_house::trunk_shape, 20, {"return grille into a box"}),
        0);
    return house;
}

void whole_system(benchmark::State& state) {
    const house::House house = twelve_rooms();
    network::Machine machine = network::planned_for(house, network::holding(0.6));
    machine.output = units::Power(18'000);
    machine.leaks.supply.per_area = machine.leaks.return_side.per_area = 1e-4;
    machine.blower = network::falling_curve(machine.design_flow, units::Pressure(120), 1e-3);
    const ducts::DuctSystem system = ducts::duct_system(house, machine.design, std::nullopt);
    int steps = 0;
    for (auto _ : state) {
        const network::OperatingPoint point = network::operating_point(house, system, machine);
        steps = point.steps;
        benchmark::DoNotOptimize(point.residual);
    }
    state.counters["steps"] = steps;
}
BENCHMARK(whole_system)->Unit(benchmark::kMicrosecond);

}  // namespace
