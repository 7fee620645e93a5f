// Warm air from a ceiling or a high wall: does it come down to where people are, or stay up?
//
//     mixes        less than 8 K warmer than the room
//     comes down   across: still 0.75 m/s after the run to the far wall and down to 1.4 m above the floor
//                  straight down: stops no higher than 1.4 m above the floor
//     stays up     else: a warm layer under the ceiling, and cold feet
//
// Source: our own proposal. The 8 K and the 0.8 m/s (150 ft/min) to 1.4 m above the floor are those by which
// a ventilation standard counts warm air from a ceiling in full (ASHRAE 62.1-2007, table 6-2, read as quoted;
// it asks both at once). Along the ceiling and down the wall the jet is reckoned as one straight plain jet.
// Range: heating; air no warmer than the room is always mixed. An outlet no higher than 1.4 m is among the
// people. Accuracy: that of the jet, +-20 % of the distances.
#pragma once

#include "loads/method.hpp"
#include "registers/buoyant_jet.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method stays_up_method{
    "warm air from high up",
    "across: K x flow / (0.75 m/s x sqrt(area)) against height - 1.4 m + run to the far wall; "
    "down: sqrt(K x area / (1.83 x Ar)) against height - 1.4 m",
    "our own proposal after ASHRAE 62.1, table 6-2"};
inline constexpr double stays_up_accuracy = buoyant_jet_accuracy;

enum class WarmAir { mixes, comes_down, stays_up };

struct HighOutlet {
    WarmJet jet;
    Blows direction = Blows::across;
    units::Length height;  // above the floor
    units::Length run;     // to the wall it blows at
};
struct FromHighUp {
    WarmAir warm_air = WarmAir::mixes;
    units::Length needed, carries;  // along the jet
};
FromHighUp from_high_up(const HighOutlet& outlet);

}  // namespace registers
