// One duct: what the network solver and the sizing search call many thousand times.
#include <benchmark/benchmark.h>

#include "ducts/fittings.hpp"
#include "ducts/friction.hpp"
#include "ducts/friction_rate.hpp"
#include "ducts/judge_duct.hpp"
#include "ducts/run_heat_loss.hpp"
#include "ducts/section.hpp"
#include "units/unit.hpp"

namespace {

namespace unit = units::unit;

const loads::Air air{units::Density(1.2040973), units::SpecificHeat(1006), units::Viscosity(1.81340588e-5)};
const ducts::Section trunk = ducts::section_of(house::Rectangular{16 * unit::inch, 8 * unit::inch});
const ducts::Section six_inch = ducts::section_of(house::Round{6 * unit::inch});

// The argument is a Reynolds number in the transition or in turbulent flow.
void friction_factor(benchmark::State& state) {
    double Re = static_cast<double>(state.range(0));
    for (auto _ : state) {
        benchmark::DoNotOptimize(Re);
        benchmark::DoNotOptimize(ducts::friction_factor(Re, 6e-4));
    }
}
BENCHMARK(friction_factor)->Arg(3000)->Arg(26000)->Arg(1000000);

void friction_of_a_section(benchmark::State& state) {
    units::Airflow flow = 100 * unit::cfm;
    for (auto _ : state) {
        benchmark::DoNotOptimize(flow);
        benchmark::DoNotOptimize(ducts::friction(six_inch, flow, air));
    }
}
BENCHMARK(friction_of_a_section);

// The argument is the friction rate in hundred-thousandths of an in.wc/100 ft: transition, turbulent.
void airflow_at_a_friction_rate(benchmark::State& state) {
    units::FrictionRate rate = 1e-5 * static_cast<double>(state.range(0)) * unit::inch_wc_per_100_ft;
    for (auto _ : state) {
        benchmark::DoNotOptimize(rate);
        benchmark::DoNotOptimize(ducts::airflow_at(six_inch, rate, air));
    }
}
BENCHMARK(airflow_at_a_friction_rate)->Arg(130)->Arg(8000);

// 20 ft of pipe with a takeoff, two elbows and a boot, and the heat it loses.
void a_run(benchmark::State& state) {
    const auto fitting = [](const char* name) {
        return std::get<ducts::Fitting>(ducts::look_up_fitting({name, {}}));
    };
    const ducts::Fitting fittings[] = {fitting("top takeoff"), fitting("round elbow 90, adjustable"),
                                       fitting("round elbow 90, adjustable"),
                                       fitting("floor boot, end entry")};
    const ducts::Run run{20 * unit::foot, six_inch.perimeter, 0.85 * unit::r_value_us, unit::fahrenheit(50)};
    units::Airflow flow = 100 * unit::cfm;
    for (auto _ : state) {
        benchmark::DoNotOptimize(flow);
        units::Pressure loss = ducts::friction(six_inch, flow, air) * run.length;
        const ducts::FittingPlace place{six_inch, flow, trunk, 700 * unit::cfm};
        for (const auto& each : fittings) loss += ducts::fitting_loss(each, place, air);
        benchmark::DoNotOptimize(loss);
        benchmark::DoNotOptimize(
            ducts::leaving_temperature(run, flow * air.density, air.specific_heat, unit::fahrenheit(120)));
    }
}
BENCHMARK(a_run);

// A trunk with 30 branches, each in two pieces and with an outlet: 61 ducts.
house::House sixty_ducts() {
    constexpr int branches = 30;
    house::House house;
    const auto add = [&](std::optional<house::DuctId> from, units::Length at, const house::Shape& shape) {
        house::Duct duct;
        duct.id = {static_cast<int>(house.ducts.size())};
        duct.from = from;
        duct.at = at;
        duct.shape = shape;
        duct.length = 12 * unit::foot;
        duct.fittings = {{from ? "side takeoff, straight" : "trunk start, square", {}}};
        house.ducts.push_back(duct);
        return duct.id;
    };
    const house::DuctId main = add(std::nullopt, {}, house::Rectangular{16 * unit::inch, 8 * unit::inch});
    house.ducts[0].length = 60 * unit::foot;
    for (int i = 0; i < branches; ++i) {
        const house::DuctId first = add(main, 2.0 * i * unit::foot, house::Round{6 * unit::inch});
        house::Outlet outlet;
        outlet.id = {i};
        outlet.duct = add(first, 12 * unit::foot, house::Round{5 * unit::inch});
        house.outlets.push_back(outlet);
    }
    return house;
}

// Tree, flows, friction rate, and every duct judged.
void a_tree_of_60_ducts(benchmark::State& state) {
    const house::House house = sixty_ducts();
    ducts::DesignFlows flows;
    flows.outlets.assign(house.outlets.size(), units::MassFlow(0.02));
    ducts::DesignBlower blower;
    blower.airflow = 1000 * unit::cfm;
    blower.external_static = 0.5 * unit::inch_wc;
    for (auto _ : state) {
        const ducts::DuctSystem system = ducts::duct_system(house, flows, std::nullopt);
        const auto budget = ducts::friction_rate(house, system, blower, air, air);
        benchmark::DoNotOptimize(ducts::judge_ducts(house, system.supply, budget.rate, air));
    }
}
BENCHMARK(a_tree_of_60_ducts);

}  // namespace
