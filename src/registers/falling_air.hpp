// The cold current over the floor in front of glass: how fast and how cold it is at a distance.
//
//     root  = sqrt(glass colder than the room x height of the glass)
//     speed = 0.055 root                       closer than 0.4 m
//             0.095 root / (distance + 1.32)   to 2 m
//             0.028 root                       beyond
//     colder than the room = (0.30 - 0.034 x distance) x glass colder than the room, never below 0
//
// Source: Heiselberg 1994, Building and Environment 29, 297-301 (read as carried in open code). Unchanged but
// for the clamp at 8.8 m. Symbols: m, K, m/s; the fastest and coldest about 0.1 m over the floor.
// The pieces do not quite meet: the speed steps up by 0.4 % at 0.4 m and down by 2.1 % at 2 m.
// Range: glass as warm as the room or warmer sends no air down. Measured in still rooms with cold glass from
// wall to wall and down to the floor (memory); a narrow window over a warm wall gives less, so the speed is
// at most this (found on the safe side in a climate chamber: Schellen and others 2012, read: abstract). Floor
// heating raises it; leaks through the sash come on top and can be the larger draught; curtains, a
// deep sill and a jet of supply air are not in it.
// Accuracy: +-20 % as an upper bound (estimate).
#pragma once

#include <optional>

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method falling_air_method{
    "falling cold air over the floor",
    "0.095 x root / (distance + 1.32), root = sqrt(glass colder than the room x height); "
    "0.055 x root within 0.4 m, 0.028 x root beyond 2 m",
    "Heiselberg 1994"};
inline constexpr double falling_air_accuracy = 0.2;

struct ColdGlass {
    units::Length height;                 // of the glass, or of what is as cold without a ledge between
    units::TemperatureDifference colder;  // than the room; below zero: warmer
};
// The film is the one the U was worked out with. Without U or difference nothing is colder.
ColdGlass cold_glass(units::Length height, units::Transmittance u, units::Resistance inside_film,
                     units::TemperatureDifference indoors_over_outdoors);

units::Velocity falling_air_speed(const ColdGlass& glass, units::Length distance);
units::TemperatureDifference falling_air_colder(const ColdGlass& glass, units::Length distance);

// The other way round: how much colder than the room the glass may be, and the U that makes it so, for a
// current no faster than this at a distance. No U where it is not colder outdoors: any glass will do.
units::TemperatureDifference colder_at_most(units::Velocity speed, units::Length height,
                                            units::Length distance);
std::optional<units::Transmittance> glass_at_most(units::TemperatureDifference colder,
                                                  units::Resistance inside_film,
                                                  units::TemperatureDifference indoors_over_outdoors);

}  // namespace registers
