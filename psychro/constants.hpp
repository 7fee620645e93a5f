// Physical constants shared by the moist-air equations.
//
// Source: ASHRAE Handbook-Fundamentals 2021, SI, ch. 1.
// One gas constant of dry air serves the whole folder. The 1976 standard atmosphere rounds it to 287.055,
// which makes density 4.5e-5 smaller; mixing the two would break the perfect-gas relation between density
// and specific volume. For the same reason the gas constant of vapour is never a second number: it is
// dry_air_gas_constant_j_per_kg_k / vapour_mass_ratio.
#pragma once

namespace psychro {

inline constexpr double dry_air_gas_constant_j_per_kg_k = 287.042;

// Molar mass of water over molar mass of dry air.
inline constexpr double vapour_mass_ratio = 0.621945;

inline constexpr double dry_air_specific_heat_j_per_kg_k = 1006.0;
inline constexpr double vapour_specific_heat_j_per_kg_k = 1860.0;

// Heat of vaporization at 0 C, the zero of the vapour enthalpy.
inline constexpr double vaporization_heat_j_per_kg = 2.501e6;

inline constexpr double freezing_point_k = 273.15;
inline constexpr double triple_point_c = 0.01;

}  // namespace psychro
