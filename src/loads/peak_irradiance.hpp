// Peak irradiance of a surface by a clear sky on the longest hot days, from its azimuth and the latitude.
//
//     total   = 423.5 + 1240 f - 5143 f^3 + 3191 f^4 + 35.25 f L + 0.1427 f L^2 - 12.89 L - 0.6172 L^2
//               + 0.7802 L^2 / (f + 1)
//     diffuse = 356.3 - 37.73 f^2 + 0.3022 f L - 115.9 L^(1/4) / (f + 1), at most the total
//     horizontal: total = 816.2 + 10.20 L - 0.1806 L^2; diffuse 170, at most the total
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29 (21 July). Changed: the azimuth counts from
// north, as the chapter's own table has it, not from south, as its text says; the power of f and the fourth
// root, which the copy at hand had lost, are fitted to that table. Symbols: W/m2; f the azimuth from the
// pole's side by 180 degrees, 0 north to 1 south; L latitude in degrees, north of the equator. South of it
// north and south change places. Range: latitude 20 to 60. Accuracy: 1 W/m2 of the chapter's table; the sky
// itself +-10 % (estimate). Throws house::CannotAnswer beyond these latitudes.
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method total_irradiance_method{
    "peak irradiance",
    "423.5 + 1240 f - 5143 f^3 + 3191 f^4 + 35.25 f L + 0.1427 f L^2 - 12.89 L - 0.6172 L^2 + "
    "0.7802 L^2 / (f + 1), f: azimuth from north / 180, L: latitude",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29"};
inline constexpr Method diffuse_irradiance_method{
    "peak diffuse irradiance", "356.3 - 37.73 f^2 + 0.3022 f L - 115.9 L^(1/4) / (f + 1), at most the total",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29"};

inline constexpr Method flat_irradiance_method{"peak irradiance of what lies flat",
                                               "816.2 + 10.20 L - 0.1806 L^2, L: latitude",
                                               "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29"};

struct Irradiance {
    units::HeatFlux total, diffuse;
    units::HeatFlux direct() const { return total - diffuse; }
};

// How far what faces this azimuth is turned from the pole towards the equator: 0 to 1, east and west alike.
double turned_from_pole(double azimuth, double latitude);
// The azimuth that has the same sun in the north: south of the equator mirrored, from 0 to 360.
double northern_azimuth(double azimuth, double latitude);

Irradiance peak_irradiance(double azimuth, double latitude);  // of what stands upright
Irradiance peak_irradiance_on_the_flat(double latitude);      // of what lies
}  // namespace loads
