// Dynamic viscosity of air.
//
// Source: Sutherland's law with the constants of the US Standard Atmosphere 1976:
// mu = 1.458e-6 T^1.5 / (T + 110.4). Unchanged.
// Symbols: mu viscosity in Pa s, T temperature in K.
// Range: -100 to 200 C. Pressure has no effect between sea level and 11000 m.
// Accuracy: 0.5 % for dry air (memory). Vapour lowers it by about 1 % in saturated air at 40 C (memory),
// which is left out: friction changes by a fifth of that.
#pragma once

#include "psychro/out_of_range.hpp"

namespace psychro {

inline constexpr Range viscosity_limits_c{-100.0, 200.0};

double dynamic_viscosity_pa_s(double t_c);

}  // namespace psychro
