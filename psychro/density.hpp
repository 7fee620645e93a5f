// Specific volume and density of moist air.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, perfect-gas specific volume (eq. 26 in the 2017
// numbering): v = R_da T (1 + 1.607858 W) / p, and density (1 + W) / v. Changed: 1.607858 is written
// 1 / 0.621945, the number it was rounded from, so that the partial pressures add up exactly.
// Symbols: v volume of the mixture per kilogram of dry air, R_da gas constant of dry air 287.042 J/(kg K),
// T temperature in K, W humidity ratio, p total pressure.
// Range: that of psychro/state.hpp.
// Accuracy: 0.15 % against the real-gas Handbook table, -40 to 90 C.
#pragma once

#include "psychro/state.hpp"

namespace psychro {

double specific_volume_m3_per_kg_dry_air(const State& air);

// Kilograms of moist air, vapour included, per cubic metre.
double density_kg_per_m3(const State& air);

}  // namespace psychro
