// Relative humidity, a fraction from 0 to 1.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1: vapour pressure over the saturation pressure at the
// dry bulb, taken over ice up to 0.01 C and over water above. Unchanged. Weather services often refer it to
// water below freezing too; such a figure must be converted first.
// Range: that of psychro/state.hpp.
// Accuracy: that of the saturation pressure, 0.03 %.
#pragma once

#include "psychro/state.hpp"

namespace psychro {

State state_from_relative_humidity(double dry_bulb_c, double relative_humidity, double pressure_pa);
double relative_humidity(const State& air);

}  // namespace psychro
