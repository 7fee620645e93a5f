// Networks for tests in few words.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <span>

#include "network/solve.hpp"
#include "units/unit.hpp"

namespace network {

// Dry, 20 C, 101325 Pa: density p / (287.055 T), viscosity 1.458e-6 T^1.5 / (T + 110.4).
inline loads::Air reference_air() {
    constexpr double T = 293.15;
    return {units::Density(101325 / (287.055 * T)), units::SpecificHeat(1006),
            units::Viscosity(1.458e-6 * std::pow(T, 1.5) / (T + 110.4))};
}

inline ducts::Section round_section(double inches) {
    return ducts::section_of(house::Round{inches * units::unit::inch});
}

inline FixedLoss quadratic(double per_flow_squared) { return {0, per_flow_squared}; }

// From the house air to node 0: a gain that does not change.
inline Link fan(double gain) {
    const FanPoint one{units::MassFlow(0), units::Pressure(gain)};
    return {house_air, 0, FanCurve(std::span(&one, 1))};
}

inline Solution solved(const Network& network, std::span<const units::MassFlow> start = {}) {
    Solution solution = Solver(network).solve(network, start);
    EXPECT_TRUE(solution.converged) << "after " << solution.steps << " steps, residual " << solution.residual;
    return solution;
}

inline double flow(const Solution& solution, std::size_t link) { return solution.flows[link].si(); }

}  // namespace network
