// Heat gain through walls, doors, ceilings and floors, their sunshine included.
//
//     gain = area x U x (t x difference + b + r x daily range)
//
//     next to                              t      b, K               r
//     attic                                0.62   14.3 a - 4.5      -0.19
//     sky (a ceiling or slope, no attic)   1      38.3 a - 7.0      -0.36
//     outdoors, a wall or door in the sun  1      8.2               -0.36
//     garage, porch: shaded                1      0                 -0.36
//     outdoors, garage or porch below      1      0                 -0.06
//     crawl space                          0.33   0                 -0.28
//     basement, ground, heated rooms       0      0                  0
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 20-22 and table 7. Changed: basement and ground are
// taken to be as warm as the rooms; a wall of a crawl space counts as a floor over it. Symbols: a absorptance
// of the roof; difference outdoors less indoors. Range: light frame on 21 July; an attic that is vented. One
// factor for all orientations: fair for a house, less so for one room. Accuracy: +-10 % of the house for the
// method (ibid.).
#pragma once

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method opaque_gain_method{"heat gain of a square foot or metre",
                                           "U x (t x difference + b + r x daily range)",
                                           "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 20-22, table 7"};

struct OpaqueGain {
    double of_difference = 0;             // t
    units::TemperatureDifference of_sun;  // b
    double of_daily_range = 0;            // r
};

OpaqueGain opaque_gain(const house::Surface& surface, double roof_absorptance);
units::TemperatureDifference driving_difference(const OpaqueGain& gain, units::TemperatureDifference warmer,
                                                units::TemperatureDifference daily_range);

}  // namespace loads
