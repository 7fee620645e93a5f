// How the outdoor air that enters the house is shared among its rooms.
//
// Of a leaky or very leaky house (or of 14 ACH50 and more) in winter: by exposed surface. Where it has two
// storeys or more, warm air leaves upstairs and cold air comes in downstairs: the part the wind drives enters
// by exposed surface everywhere, the part the warmth drives by exposed surface x inflow of the storey,
//
//     inflow of a storey = integral over its height of (distance below the neutral level)^0.65
//
// with the neutral level half-way up the house; nothing above it. Of any other house, and in summer: by
// volume, the same air changes everywhere.
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, which shares by volume and lets leaky houses of several
// storeys give part of it, for heating, to the lower rooms by exposed surface. The inflow: stack pressure of
// ch. 16, leaks spread evenly (derived). Exponent 0.65: loads/infiltration.hpp.
// The rooms not described have what is left. Their exposed surface lies on the storeys as that of the box
// (loads/infiltration.hpp), less the described. Where no described room and no other lies below the neutral
// level all goes by exposed surface.
// The shares of all rooms add up to 1. Range: up to four storeys of like height. Accuracy: fair; an open
// stairwell or one large leak upsets it.
#pragma once

#include <array>

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method leakage_by_volume{"share of the air leakage",
                                          "volume of the room / of the house x leakage of the house",
                                          "ASHRAE Handbook-Fundamentals 2021 ch. 17"};
inline constexpr Method leakage_by_surface{
    "share of the air leakage", "outside surface of the room / of the house x leakage of the house",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17: the rule for leaky houses"};
inline constexpr Method leakage_by_storey{
    "share of the air leakage",
    "outside surface of the room x (wind's part / surface of the house + (1 - wind's part) x inflow of the "
    "storey / sum of surface x inflow) x leakage of the house",
    "ASHRAE Handbook-Fundamentals 2021 ch. 17: the rule for leaky houses of several storeys; inflow derived"};

inline constexpr int most_storeys_shared = 4;
using ByStorey = std::array<double, most_storeys_shared>;

struct LeakageShares {
    units::Volume volume;  // heated
    units::Area exposed;
    bool by_volume = false, less_upstairs = false;
    double wind = 1;               // the wind's part of the leakage
    ByStorey inflow{}, surface{};  // of each storey: relative inflow, and exposed surface, m2
    double surface_inflow = 0;     // sum of surface x inflow
    double inflow_of(const house::Room& room) const;
};

// Of a room in winter; in summer by volume whatever the house.
double share_of(const LeakageShares& shares, const house::Room& room);
double share_by_volume(const LeakageShares& shares, const house::Room& room);

// Relative inflow of each storey of a house with so many.
ByStorey stack_inflow(int storeys);

struct Leaks {  // what loads/infiltration.hpp found of the house
    units::Area exposed;
    units::Volume volume;
    double wind = 1;
};
LeakageShares leakage_shares(const house::House& house, const Leaks& leaks);

}  // namespace loads
