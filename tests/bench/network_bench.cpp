// The solved network, from the design flows to 1e-10: a trunk with two branches at each of its pieces, by
// number of sections; fixed losses, or friction at the real flow. Counters: steps, and nanoseconds for each
// section and step.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstddef>
#include <random>
#include <vector>

#include "network/solve.hpp"
#include "units/unit.hpp"

namespace {

using network::house_air;
namespace unit = units::unit;

const loads::Air air{units::Density(1.2040973), units::SpecificHeat(1006), units::Viscosity(1.81340588e-5)};

struct Case {
    network::Network net;
    std::vector<units::MassFlow> design;  // every branch alike
};

// A section that loses so many Pa at its design flow, nearly all of it by the square. With friction: sized to
// about 5 m/s, a third of the loss in its fittings.
network::Law section(double design, double drop, bool friction) {
    if (!friction) return network::FixedLoss{0.02 * drop / design, 0.98 * drop / (design * design)};
    const double diameter = std::sqrt(design / air.density.si() / 5 * 4 / 3.14159265);
    return network::DuctLoss{ducts::section_of(house::Round{units::Length(diameter)}), units::Length(4), air,
                             1, drop / 3 / (design * design)};
}

// Nodes leaves first: the far end of the trunk is node 0, the plenum the last.
Case trunk(int sections, bool friction) {
    const int pieces = std::max(1, sections / 3);
    constexpr double branch = 0.05;
    Case made;
    made.net.nodes = pieces + 1;
    const auto add = [&](int from, int to, network::Law law, double design) {
        made.net.links.push_back({from, to, std::move(law)});
        made.design.emplace_back(design);
    };
    std::mt19937 random(7);
    const auto about_one = [&random] { return 0.7 + 0.6 * static_cast<double>(random() >> 8) / (1 << 24); };
    for (int i = 0; i < pieces; ++i) {
        const double through = 2 * branch * (i + 1);
        add(i + 1, i, section(through, 20.0 / pieces * about_one(), friction), through);
        for (int side = 0; side < 2; ++side)
            add(i, house_air, section(branch, 25 * about_one(), friction), branch);
    }
    const double all = 2 * branch * pieces;
    const network::FanPoint points[] = {{units::MassFlow(0.5 * all), units::Pressure(90)},
                                        {units::MassFlow(all), units::Pressure(50)},
                                        {units::MassFlow(1.4 * all), units::Pressure(5)}};
    add(house_air, pieces, network::FanCurve(points), all);
    return made;
}

void solve(benchmark::State& state, bool friction) {
    const Case one = trunk(static_cast<int>(state.range(0)), friction);
    network::Solver solver(one.net);
    double steps = 0;
    for (auto _ : state) {
        const network::Solution solution = solver.solve(one.net, one.design);
        if (!solution.converged) state.SkipWithError("no solution");
        steps += solution.steps;
    }
    state.counters["steps"] = steps / static_cast<double>(state.iterations());
    state.counters["per_section_and_step"] =
        benchmark::Counter(steps * static_cast<double>(one.net.links.size()),
                           benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}
void with_fixed_losses(benchmark::State& state) { solve(state, false); }
void with_friction(benchmark::State& state) { solve(state, true); }
BENCHMARK(with_fixed_losses)->Arg(10)->Arg(50)->Arg(500)->Arg(5000)->Arg(50000);
BENCHMARK(with_friction)->Arg(10)->Arg(50)->Arg(500)->Arg(5000)->Arg(50000);

// What looking at a house's shape costs, once.
void first_look(benchmark::State& state) {
    const Case one = trunk(static_cast<int>(state.range(0)), false);
    for (auto _ : state) benchmark::DoNotOptimize(network::Solver(one.net));
}
BENCHMARK(first_look)->Arg(50)->Arg(50000);

// 10,000 houses of 40 sections, each a little off the last, begun from the first one's flows.
void ten_thousand_houses(benchmark::State& state) {
    Case one = trunk(40, true);
    network::Solver solver(one.net);
    const std::vector<units::MassFlow> start = solver.solve(one.net, one.design).flows;
    std::mt19937 random(7);
    for (auto _ : state) {
        for (int house = 0; house < 10'000; ++house) {
            for (network::Link& link : one.net.links)
                if (auto* duct = std::get_if<network::DuctLoss>(&link.law))
                    duct->factor = 0.8 + 0.4 * static_cast<double>(random() >> 8) / (1 << 24);
            benchmark::DoNotOptimize(solver.solve(one.net, start));
        }
    }
}
BENCHMARK(ten_thousand_houses)->Unit(benchmark::kMillisecond);

}  // namespace
