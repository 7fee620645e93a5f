// The units people write and read, as quantities: 120 * unit::cfm makes one, flow / unit::cfm counts them.
//
// Exact by definition (international yard and pound agreement) unless marked:
//   inch_wc       249.08891 Pa, the conventional inch of water: 1000 kg/m3 under standard gravity, 9.80665
//   m/s2 btu_per_hour  0.29307107 W, from the international table Btu of 1055.05585262 J
#pragma once

#include "units/quantity.hpp"

namespace units::unit {

inline constexpr Length metre{1.0};
inline constexpr Length millimetre{0.001};
inline constexpr Length centimetre{0.01};
inline constexpr Length inch{0.0254};
inline constexpr Length foot{0.3048};
inline constexpr Area square_metre{1.0};
inline constexpr Area square_foot{0.3048 * 0.3048};
inline constexpr Area square_inch{0.0254 * 0.0254};
inline constexpr Area square_centimetre{1e-4};
inline constexpr Volume cubic_metre{1.0};
inline constexpr Volume cubic_foot{0.3048 * 0.3048 * 0.3048};
inline constexpr Volume litre{0.001};
inline constexpr Volume gallon{231 * 0.0254 * 0.0254 * 0.0254};  // of the United States
inline constexpr Duration second{1.0};
inline constexpr Duration minute{60.0};
inline constexpr Duration hour{3600.0};
inline constexpr AirChange per_hour{1.0 / 3600.0};
inline constexpr Velocity metre_per_second{1.0};
inline constexpr Velocity foot_per_minute{0.3048 / 60.0};
inline constexpr Airflow cubic_metre_per_second{1.0};
inline constexpr Airflow litre_per_second{0.001};
inline constexpr Airflow cubic_metre_per_hour{1.0 / 3600.0};
inline constexpr Airflow cfm{0.3048 * 0.3048 * 0.3048 / 60.0};
inline constexpr MassFlow kilogram_per_second{1.0};
inline constexpr Density kilogram_per_cubic_metre{1.0};
inline constexpr Pressure pascal{1.0};
inline constexpr Pressure inch_wc{249.08891};
inline constexpr FrictionRate pascal_per_metre{1.0};
inline constexpr FrictionRate inch_wc_per_100_ft{249.08891 / 30.48};
inline constexpr Power watt{1.0};
inline constexpr Power kilowatt{1000.0};
inline constexpr Power btu_per_hour{1055.05585262 / 3600.0};
inline constexpr HeatFlux watt_per_square_metre{1.0};
inline constexpr HeatFlux btu_per_hour_square_foot{1055.05585262 / 3600.0 / (0.3048 * 0.3048)};
inline constexpr TemperatureDifference kelvin{1.0};
inline constexpr TemperatureDifference fahrenheit_degree{5.0 / 9.0};
inline constexpr HeatLossPerKelvin watt_per_kelvin{1.0};
inline constexpr HeatLossPerKelvin btu_per_hour_fahrenheit{1055.05585262 / 3600.0 * 1.8};
inline constexpr Transmittance watt_per_square_metre_kelvin{1.0};
inline constexpr Transmittance btu_per_hour_square_foot_fahrenheit{1055.05585262 / 3600.0 * 1.8 /
                                                                   (0.3048 * 0.3048)};
inline constexpr Conductivity btu_per_hour_foot_fahrenheit{1055.05585262 / 3600.0 * 1.8 / 0.3048};
inline constexpr Resistance square_metre_kelvin_per_watt{1.0};
inline constexpr Resistance r_value_us{0.3048 * 0.3048 / (1055.05585262 / 3600.0 * 1.8)};

inline constexpr Temperature celsius(double degrees) { return Temperature(degrees + 273.15); }
inline constexpr Temperature fahrenheit(double degrees) { return Temperature((degrees + 459.67) / 1.8); }
inline constexpr double in_celsius(Temperature t) { return t.si() - 273.15; }
inline constexpr double in_fahrenheit(Temperature t) { return t.si() * 1.8 - 459.67; }

}  // namespace units::unit
