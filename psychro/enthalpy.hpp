// Enthalpy of moist air, per kilogram of dry air, zero for dry air and for liquid water at 0 C.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, enthalpy of moist air (eq. 30 in the 2017
// numbering): h = 1.006 t + W (2501 + 1.86 t). Changed: J/kg.
// Symbols: h enthalpy, t dry bulb in C, W humidity ratio.
// Range: that of psychro/state.hpp.
// Accuracy: 0.3 kJ/kg to 30 C and 1 % above, against the real-gas Handbook table at saturation.
#pragma once

#include "psychro/state.hpp"

namespace psychro {

double enthalpy_j_per_kg_dry_air(const State& air);

// Adiabatic mixing adds enthalpy and water, not temperature: the mixed state is found from its enthalpy.
State state_from_enthalpy(double enthalpy_j_per_kg_dry_air, double humidity_ratio, double pressure_pa);

}  // namespace psychro
