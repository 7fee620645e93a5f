// Dew point, below 0.01 C the frost point: the temperature at which the vapour is saturated.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, definition of the dew point. Changed: the saturation
// equation is inverted (psychro/saturation.hpp) in place of the explicit fit, which is 0.03 K off from 0 to
// 93 C and 0.6 K off at -40 C.
// Range: dew point -100 C and above. Dry air has none: a state with less vapour than ice at -100 C gives
// off (0.0014 Pa) is an OutOfRange error on its vapour pressure.
// Accuracy: 1e-9 K of the equation; 0.005 K of the truth for the saturation pressure alone, and a further
// 0.1 K (estimate) for the enhancement factor when the humidity ratio was measured.
#pragma once

#include "psychro/state.hpp"

namespace psychro {

State state_from_dew_point(double dry_bulb_c, double dew_point_c, double pressure_pa);
double dew_point_c(const State& air);

}  // namespace psychro
