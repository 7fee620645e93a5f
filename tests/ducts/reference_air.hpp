// The air that every published duct table here is for, and ducts written as the trade writes them.
#pragma once

#include <cmath>

#include "ducts/friction.hpp"
#include "ducts/section.hpp"
#include "house/shape.hpp"
#include "loads/air.hpp"
#include "units/unit.hpp"

namespace ducts {

// Dry, 20 C, 101325 Pa: density p / (287.055 T), viscosity 1.458e-6 T^1.5 / (T + 110.4).
inline loads::Air reference_air() {
    constexpr double T = 293.15;
    return {units::Density(101325 / (287.055 * T)), units::SpecificHeat(1006),
            units::Viscosity(1.458e-6 * std::pow(T, 1.5) / (T + 110.4))};
}

inline house::Round round_of(double inches) { return {inches * units::unit::inch}; }
inline house::Rectangular rectangle_of(double width, double height) {
    return {width * units::unit::inch, height * units::unit::inch};
}

// The friction of so many cfm, in in.wc/100 ft.
inline double friction_of(const house::Shape& shape, double cfm) {
    return friction(section_of(shape), cfm * units::unit::cfm, reference_air()) /
           units::unit::inch_wc_per_100_ft;
}

// The diameter in inches at which so many cfm lose the rate.
inline double exact_inches(double cfm, double rate) {
    double low = 0.1, high = 200;
    for (int i = 0; i < 60; ++i) {
        const double middle = std::sqrt(low * high);
        (friction_of(round_of(middle), cfm) > rate ? low : high) = middle;
    }
    return high;
}

}  // namespace ducts
