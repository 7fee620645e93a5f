// The face a register should have: the sheet's, or the smallest from the shelf that is as large as its pipe
// and through which its air is no more than a soft rush (registers/sound.hpp); the largest where none is.
#pragma once

#include "ducts/stock_sizes.hpp"
#include "questions/size_branch.hpp"

namespace questions {

// Whether a face from the shelf is as large as that.
struct RegisterFace {
    house::Rectangular face;
    bool of_the_sheet = false;
    bool large_enough = true;
};
inline constexpr units::Length any_length{10};
// Of an outlet that may be led to another mount than the sheet's: its face is then chosen anew. `longest`:
// that a floor register may be; where none so short is large enough, a longer one is told.
RegisterFace register_face(const house::Outlet& outlet, house::Mount mount, const BranchTrial& trial,
                           units::Length longest = any_length, ducts::Stock stock = ducts::Stock::us);

}  // namespace questions
