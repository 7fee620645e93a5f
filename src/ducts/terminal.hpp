// What the air loses in a register or a grille.
//
//     C = (0.707 sqrt(1 - a) + 1 - a)^2 / a^2 on the velocity over the whole face, a the free share of it
//
// Square-edged grid of general flow-resistance handbooks (memory: Idelchik); a supply outlet adds one
// velocity pressure for the jet it throws away. Where the sheet gives no free share, 0.75 of a stamped
// grille's face (common practice), and of a register's what is usual of its mount (stock_sizes.hpp).
// Good to +-30 %; measured data win.
#pragma once

#include "ducts/duct_system.hpp"
#include "loads/air.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr double usual_free_share = 0.75;  // of a grille

double grid_coefficient(double free_share);
// The largest loss among the return grilles with a described face; the house's assumed drop where none is.
units::Pressure grille_loss(const house::House& house, const Side& return_side, const loads::Air& return_air);

}  // namespace ducts
