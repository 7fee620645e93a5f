// Specific heat of moist air at constant pressure.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1: the slope with temperature of the enthalpy equation,
// 1.006 + 1.86 W kJ/(kg K) per kilogram of dry air. Unchanged.
// Symbols: W humidity ratio.
// Range: that of psychro/state.hpp.
// Accuracy: the two constants are means for ordinary temperatures; 0.4 % from -60 to 90 C (memory).
#pragma once

#include "psychro/state.hpp"

namespace psychro {

// Goes with humidity ratio and enthalpy.
double specific_heat_j_per_kg_dry_air_k(double humidity_ratio);

// Per kilogram of moist air. Goes with density: density x specific heat x volume flow is the heat carried
// per kelvin.
double specific_heat_j_per_kg_k(const State& air);

}  // namespace psychro
