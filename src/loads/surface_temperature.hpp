// How cold a room's surfaces are inside on the design night, and how damp the room's air may be before water
// or frost forms on the coldest of them.
//
//     temperature factor = 1 - U x inside film
//     inside surface     = beyond + temperature factor x (inside - beyond)
//     sweats above       = saturation pressure at the surface / saturation pressure at the room's temperature
//
// Source: temperature factor as EN ISO 13788 defines it (1 where the surface is as warm as the room, 0 where
// it is as cold as what lies beyond); saturation pressure ASHRAE Handbook-Fundamentals 2021 ch. 1. Changed:
// the film is the one U was worked out with (loads/transmittance.hpp), by the way the surface lies, not the
// standard's 0.13 or 0.25 m2 K/W. A U above 1 / film, which no surface has, counts as factor 0.
// Symbols: relative humidity a fraction; below freezing over ice.
// Each is the mean over its surface: sash, glass edge, studs, a corner behind furniture are colder than the
// mean and sweat sooner. Walls between heated rooms do not count.
// Accuracy: the arithmetic exact; U of an old window +-20 %, an old wall +-30 % (loads/materials.hpp,
// loads/transmittance.hpp).
#pragma once

#include <optional>
#include <string>

#include "house/house.hpp"
#include "loads/method.hpp"
#include "loads/room_heat_loss.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method inside_surface_method{"inside surface temperature",
                                              "inside - U x inside film x (inside - beyond)",
                                              "temperature factor, EN ISO 13788"};
inline constexpr Method sweating_method{
    "humidity at which a surface sweats",
    "saturation pressure at the surface / at the room's temperature, in %",
    "ASHRAE Handbook-Fundamentals 2021 ch. 1"};

struct ColdestSurface {
    SurfaceLoss surface;
    units::Resistance film;          // inside
    units::Temperature temperature;  // mean over the surface
    double sweats_above = 1;         // relative humidity of the room's air
};

double temperature_factor(units::Transmittance u, units::Resistance inside_film);
units::Temperature inside_surface_temperature(double temperature_factor, units::Temperature inside,
                                              units::Temperature beyond);
// Throws house::CannotAnswer below -100 C and above 200 C.
units::Pressure saturation_pressure(units::Temperature temperature);
double sweating_humidity(units::Temperature surface, units::Temperature room);

// Empty where nothing but heated rooms lies around the room, or nothing colder than it.
std::optional<ColdestSurface> coldest_surface(const house::Room& room, const RoomHeatLoss& loss);

}  // namespace loads
