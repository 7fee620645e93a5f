// One duct: what the network solver and the sizing search call many thousand times.
#include <benchmark/benchmark.h>

#include "ducts/fittings.hpp"
#include "ducts/friction.hpp"
#include "ducts/run_heat_loss.hpp"
#include "ducts/section.hpp"
#include "units/unit.hpp"

namespace {

namespace unit = units::unit;

const loads::Air air{units::Density(1.2040973), units::SpecificHeat(1006), units::Viscosity(1.81340588e-5)};
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
        return std::get<const ducts::Fitting*>(ducts::look_up_fitting({name, {}}));
    };
    const ducts::Fitting* fittings[] = {fitting("top takeoff"), fitting("round elbow 90, adjustable"),
                                        fitting("round elbow 90, adjustable"),
                                        fitting("floor boot, end entry")};
    const ducts::Run run{20 * unit::foot, six_inch.perimeter, 0.85 * unit::r_value_us, unit::fahrenheit(50)};
    units::Airflow flow = 100 * unit::cfm;
    for (auto _ : state) {
        benchmark::DoNotOptimize(flow);
        units::Pressure loss = ducts::friction(six_inch, flow, air) * run.length;
        for (const auto* each : fittings)
            loss += ducts::fitting_loss(*each, flow / six_inch.area, units::Velocity(4), air);
        benchmark::DoNotOptimize(loss);
        benchmark::DoNotOptimize(
            ducts::leaving_temperature(run, flow * air.density, air.specific_heat, unit::fahrenheit(120)));
    }
}
BENCHMARK(a_run);

}  // namespace
