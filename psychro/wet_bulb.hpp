// Thermodynamic wet bulb: where adiabatic saturation from the bulb's own water or ice would end.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, humidity ratio from wet bulb above and below
// freezing (eqs. 33 and 35 in the 2017 numbering):
//   water  W (2501 + 1.86 t - 4.186 t*) = (2501 - 2.326 t*) Ws* - 1.006 (t - t*)
//   ice    W (2830 + 1.86 t - 2.1 t*)   = (2830 - 0.24 t*) Ws* - 1.006 (t - t*)
// Changed: solved for t* by a safeguarded Newton on the equation multiplied by p - p_ws*, which takes away
// its pole where water would boil below the dry bulb.
// Symbols: t dry bulb and t* wet bulb in C, W humidity ratio, Ws* and p_ws* saturation at t*.
// Range: that of psychro/state.hpp; water for t* of 0 C and above, ice below.
// Ice takes more heat to leave than water, so just below freezing both equations can have a root. The water
// root is then the one given: a wick stays liquid until it reaches 0 C. A falling humidity hence carries the
// wet bulb from 0 C straight to the ice root, a step of up to 0.7 K at sea level and 0.8 K at 3000 m, and
// an ice-bulb reading inside the step converts to a state whose wet bulb is the water one.
// Accuracy: 1e-9 K of the equations; leaving out the enhancement factor costs about 0.1 K (estimate).
#pragma once

#include "psychro/state.hpp"

namespace psychro {

// A wet bulb colder than bone-dry air could make it is an OutOfRange error on the humidity ratio. Air
// saturated at the wet bulb must itself be inside the humidity-ratio range.
State state_from_wet_bulb(double dry_bulb_c, double wet_bulb_c, double pressure_pa);
double wet_bulb_c(const State& air);

}  // namespace psychro
