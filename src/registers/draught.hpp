// Of a hundred people in moving air, how many feel a draught.
//
//     share = (34 - air) x (speed - 0.05)^0.62 x (0.37 x speed x turbulence + 3.14), in %, 0 to 100
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 9, eq. 59, the same as ISO 7730:2005 (read). Unchanged.
// Symbols: air C; speed m/s, below 0.05 as 0.05; turbulence %, 40 where it is not known (ISO 7730, memory).
// Tested on dry, clothed, seated people, at the neck, in air of 20 to 26 C, to 0.5 m/s and 70 % turbulence:
// air outside of that is told by the result. Bare or wet skin feels far more. Accuracy: 0.05 of the share
// (estimate) where tested.
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method draught_method{
    "people who feel a draught", "(34 - air) x (speed - 0.05)^0.62 x (0.37 x speed x 40 + 3.14), in %",
    "ASHRAE Handbook-Fundamentals 2021 ch. 9, eq. 59"};
inline constexpr double draught_accuracy = 0.05;  // of the share, not of its value
inline constexpr double usual_turbulence = 0.4;

struct Draught {
    double dissatisfied = 0;  // 0 to 1
    bool tested = true;       // false: outside the tested range
};
Draught draught(units::Temperature air, units::Velocity speed, double turbulence = usual_turbulence);

}  // namespace registers
