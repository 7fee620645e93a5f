// Saturation pressure of water vapour, over ice and over liquid water.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, saturation pressure over ice and over liquid water
// (eqs. 5 and 6 in the 2017 numbering).
//   ice    ln p = C1/T + C2 + C3 T + C4 T^2 + C5 T^3 + C6 T^4 + C7 ln T
//   water  ln p = C8/T + C9 + C10 T + C11 T^2 + C12 T^3 + C13 ln T
// Changed: the branches meet at the triple point, 0.01 C, not at 0 C. There they agree to 6e-9; at 0 C they
// are 1e-4 apart, and a jump would make the curve impossible to invert.
// Symbols: p pressure in Pa, T temperature in K.
// Range: over ice -100 to 0.01 C, over water 0 to 200 C.
// Accuracy: within 0.032 % of IAPWS R14-08 over ice and within 0.026 % of IAPWS-IF97 over water. Air
// pressure raises the true value by about 0.5 % (the enhancement factor), which perfect-gas equations leave
// out.
#pragma once

#include "psychro/out_of_range.hpp"

namespace psychro {

inline constexpr Range ice_limits_c{-100.0, 0.01};
inline constexpr Range water_limits_c{0.0, 200.0};

double saturation_pressure_over_ice_pa(double t_c);
double saturation_pressure_over_water_pa(double t_c);

// Over ice up to the triple point, over water above it: -100 to 200 C.
double saturation_pressure_pa(double t_c);

// Derivative of saturation_pressure_pa with temperature.
double saturation_pressure_slope_pa_per_k(double t_c);

// Inverse of saturation_pressure_pa, for 0.0014051 Pa to 1.55507 MPa. Solved, not fitted: the explicit
// dew-point fit of the same chapter is 0.6 K off at -40 C. Error below 1e-9 K.
double saturation_temperature_c(double vapour_pressure_pa);

}  // namespace psychro
