// Pressure of the standard atmosphere.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, standard pressure with altitude (eq. 3 in the 2017
// numbering): p = 101.325 (1 - 2.25577e-5 Z)^5.2559 kPa. Changed: pressure in Pa.
// Symbols: p pressure, Z altitude above sea level in m.
// Range: altitude -500 to 11000 m, the troposphere.
// Accuracy: 1 Pa against the Handbook table to 3000 m. The altitude is strictly a geopotential one; read as
// height above sea level the pressure is 2e-4 low at 3000 m. Weather moves the real pressure by some 2 %
// (memory).
#pragma once

#include "psychro/out_of_range.hpp"

namespace psychro {

inline constexpr Range altitude_limits_m{-500.0, 11000.0};
inline constexpr double sea_level_pressure_pa = 101325.0;

double standard_pressure_pa(double altitude_m);

}  // namespace psychro
