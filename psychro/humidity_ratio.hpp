// Humidity ratio, the mass of vapour per mass of dry air, from vapour pressure and back.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, perfect-gas humidity ratio (eq. 20 in the 2017
// numbering): W = 0.621945 p_w / (p - p_w). Unchanged.
// Symbols: W humidity ratio in kg/kg dry air, p_w vapour pressure, p total pressure.
// Range: W 0 to 1.5, just past saturated air at 90 C and sea level; p 20 to 120 kPa, which covers the
// standard atmosphere from -500 to 11000 m. Near boiling W grows without limit; the range keeps clear of it.
// Accuracy: exact for perfect gases. At saturation and sea level 0.6 % low to 40 C and 1.4 % low at 90 C
// against the real-gas Handbook table.
#pragma once

#include "psychro/out_of_range.hpp"

namespace psychro {

inline constexpr Range humidity_ratio_limits{0.0, 1.5};
inline constexpr Range pressure_limits_pa{20e3, 120e3};

double humidity_ratio(double vapour_pressure_pa, double pressure_pa);
double vapour_pressure_pa(double humidity_ratio, double pressure_pa);

// Throws OutOfRange where saturated air would exceed the range of W, that is close to boiling.
double saturation_humidity_ratio(double t_c, double pressure_pa);

}  // namespace psychro
