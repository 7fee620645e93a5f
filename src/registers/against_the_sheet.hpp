// Does a register below a window wash it: does its jet at the middle of the glass hold the cold air that
// falls down it?
//
//     jet      speed of the jet, blown up, at sill + height / 2 above the outlet
//     covered  what of the window's width the jet reaches there
//     washes   jet no slower than the sheet at the bottom of the glass, and half the width or more covered
//
// Source: our own proposal: no published pass mark was found. That the two streams are to be compared is
// measured: how far warm air turns leaking cold air aside follows the ratio of their momenta (Weier 1974,
// read: abstract). Accuracy: the jet +-20 %, the sheet +-20 %: +-30 % of their ratio (root of the sum of
// squares). Range: nothing in the jet's way. A projecting sill, a curtain, a tub or a vanity over the outlet
// stop it, and while the blower rests the cold air falls as if there were no register.
#pragma once

#include "loads/method.hpp"
#include "registers/buoyant_jet.hpp"
#include "registers/falling_sheet.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method against_the_sheet_method{
    "jet against the falling air",
    "speed of the jet at the middle of the glass / speed of the falling air at its bottom",
    "our own proposal"};
inline constexpr double against_the_sheet_accuracy = 0.3;
inline constexpr double half_covered = 0.5;

struct WashingJet {
    WarmJet jet;
    units::Length outlet_width;  // along the wall
    double spread = 0;           // whole angle in degrees
};
struct WindowAbove {
    units::Length sill;  // above the outlet
    units::Length height, width;
    units::Length off_centre;  // of the outlet, to either side
};
struct AgainstTheSheet {
    units::Velocity jet, sheet;
    Momentum jet_momentum, sheet_momentum;
    double covered = 0;  // of the window's width, 0 to 1
    bool washes = false;
};
// Glass that sends no air down is washed by any jet that reaches it.
AgainstTheSheet against_the_sheet(const WashingJet& jet, const WindowAbove& window,
                                  const FallingSheet& sheet);

}  // namespace registers
