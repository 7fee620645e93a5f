// The face a register should have: the sheet's, or the smallest from the shelf that is as large as the duct
// behind it, through which its air is no more than a soft rush (registers/sound.hpp), and to which the shelf
// has a boot from that duct. Where no boot fits the boot is made up; where no face is large enough it is the
// largest.
#pragma once

#include "ducts/stock_sizes.hpp"
#include "questions/size_branch.hpp"

namespace questions {

// Whether a face from the shelf is as large as that.
struct RegisterFace {
    house::Rectangular face;
    units::Area free;  // what of it is open
    bool of_the_sheet = false;
    bool large_enough = true;
    bool has_boot = true;  // on the shelf
};
inline constexpr units::Length any_length{10};

// The last duct before a register, and the air through both.
struct RunEnd {
    house::Shape duct;
    units::Airflow gives;
};
// Of an outlet of this house: the shape the sheet gives its duct, else the one tried; where that is round and
// a boot to a stack is among its fittings, the shelf's stack for it.
RunEnd run_end(const house::House& house, const house::Outlet& outlet, const BranchTrial& trial,
               ducts::Stock stock = ducts::Stock::us);

// The same where the duct goes on in the shelf's stack for it.
RunEnd on_a_stack(const RunEnd& end, ducts::Stock stock = ducts::Stock::us);

// Of an outlet that may be led to another mount than the sheet's: its face is then chosen anew. `longest`:
// that a floor register may be; where none so short is large enough, a longer one is told.
RegisterFace register_face(const house::Outlet& outlet, house::Mount mount, const RunEnd& end,
                           units::Length longest = any_length, ducts::Stock stock = ducts::Stock::us);

}  // namespace questions
