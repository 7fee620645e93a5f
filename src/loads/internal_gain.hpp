// Heat and moisture that people, lights and kitchen give a house in summer.
//
//     heat     = 136 + 2.2 x floor area + 22 x people
//     moisture = 20 + 0.22 x floor area + 12 x people
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 30-32. Unchanged: for the whole house, and then all
// of the heat to kitchen and living rooms, here by their floor area. Where rooms are not described, some of
// these are such rooms too: together they have at least their usual share of the house's floor. Where the
// sheet describes neither, it stays with the rooms not described; where there are none, it goes to all rooms
// by floor area. Symbols: W,
// m2; people: one more than bedrooms. Range: a household. Accuracy: +-30 % (estimate).
#pragma once

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method internal_heat_method{"heat of people, lights and kitchen",
                                             "136 + 2.2 x floor area + 22 x people",
                                             "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 30-32"};
inline constexpr Method internal_moisture_method{"moisture of people and kitchen",
                                                 "20 + 0.22 x floor area + 12 x people",
                                                 "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 30-32"};

struct InternalGain {
    units::Area floor;  // of the whole house
    int people = 0;
    units::Power sensible, latent;
};

InternalGain internal_gain(units::Area floor, int people);
InternalGain internal_gain(const house::House& house);
// The floor area that shares the heat; 0 where it stays with the rooms not described.
units::Area floor_that_shares(const house::House& house);
// Of the whole house's heat, the part of one room.
double internal_share(const house::House& house, const house::Room& room);

}  // namespace loads
