// Does the new branch sweat in summer: cooled air in a run through a damp or hot space.
//
// Looked at: the new supply ducts on the way that run in a space the sheet names and that is not heated, each
// with its own wrap, with the air as it leaves the coil. Air around: loads/damp_air.hpp. The one that would
// need most insulation speaks for the branch.
#pragma once

#include <optional>

#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "units/quantity.hpp"

namespace questions {

struct BranchInSummer {
    int duct = -1;  // position in House::ducts
    house::Space space = house::Space::outdoors;
    units::Temperature around, dew_point, outside;  // outside: of the duct as the sheet has it
    std::optional<units::Resistance> needed;        // of insulation; empty: none does
    bool sweats() const { return outside <= dew_point; }
};

// Empty without cooling, and where no new duct on the way runs in such a space.
std::optional<BranchInSummer> branch_in_summer(const house::House& house, const BranchSizing& sizing);

}  // namespace questions
