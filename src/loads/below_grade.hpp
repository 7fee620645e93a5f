// U of walls and floors in the ground, from the air inside to the ground at its design temperature.
//
//     wall  = 2 k / (pi (to - from)) x [ln(to + 2 k R / pi) - ln(from + 2 k R / pi)]
//     floor = 2 k / (pi w) x [ln(w/2 + depth/2 + k R / pi) - ln(depth/2 + k R / pi)]
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 18, eq. 36-39. Unchanged.
// Symbols: from and to depths of the wall's top and bottom below grade, m; w shortest width of the floor, m;
// R of the wall or floor itself with its inside film, m2 K/W; k of the soil, W/(m K).
// Heat goes by circles to the surface: the average over the depths, or the width, in the steady cold.
// Range: from 0 or more, to above from, width, R and k above zero. Accuracy: the printed tables of walls
// within 0.5 %, of floors within 1.5 % (the tables lie 0.8 to 1.2 % below the formula); the soil itself is
// known to half and double.
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method below_grade_wall_method{
    "U of a wall in the ground", "2 k / (pi (to - from)) x [ln(to + 2 k R / pi) - ln(from + 2 k R / pi)]",
    "ASHRAE Handbook-Fundamentals 2021 ch. 18, eq. 36-37"};
inline constexpr Method below_grade_floor_method{
    "U of a floor in the ground", "2 k / (pi w) x [ln(w/2 + depth/2 + k R / pi) - ln(depth/2 + k R / pi)]",
    "ASHRAE Handbook-Fundamentals 2021 ch. 18, eq. 38-39"};

// Of damp soil, and of bare concrete with its inside film: ibid., tables 22 and 23.
inline constexpr units::Conductivity usual_soil{1.4};
inline constexpr units::Resistance bare_concrete{0.259};

units::Transmittance below_grade_wall(units::Length from, units::Length to, units::Resistance resistance,
                                      units::Conductivity soil);
units::Transmittance below_grade_floor(units::Length shortest_width, units::Length depth,
                                       units::Resistance resistance, units::Conductivity soil);

}  // namespace loads
