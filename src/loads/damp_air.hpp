// How moist the air is in summer: outdoors, indoors, and in the spaces that ducts run through.
//
// Outdoors: by the wet bulb of the design day, or so much more than indoors; indoors: 50 % relative humidity
// at the summer temperature (ASHRAE Handbook-Fundamentals 2021 ch. 17, common practice). An attic, crawl
// space, basement, garage or porch holds the outdoor air's moisture, but no more than 80 % relative humidity:
// damper air leaves its water on colder things first (estimate).
// Temperatures: attic 49 C, basement 20 C, crawl space 22 C (read: ASHRAE Handbook-Fundamentals 2017 ch. 17,
// assumed for the heat gain of ducts); garage and porch as outdoors; ground as a crawl space.
// Throws house::CannotAnswer where psychro has no figures. The house must have a Summer.
#pragma once

#include "house/house.hpp"
#include "units/quantity.hpp"

namespace loads {

struct SummerMoisture {
    double indoors = 0, outdoors = 0;  // kg of water per kg of dry air
};
SummerMoisture summer_moisture(const house::House& house);

struct DampAir {
    units::Temperature temperature, dew_point;
};
DampAir summer_air_in(const house::House& house, house::Space space);

}  // namespace loads
