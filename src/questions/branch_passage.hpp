// Does the branch pass the bay the sheet leads it through: each size tried, what would have to move for the
// one that is wanted, and the largest sizes that pass.
#pragma once

#include <optional>
#include <vector>

#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "routes/bay_section.hpp"

namespace questions {

struct BranchPassage {
    int bay = 0;                        // position in House::bays
    std::vector<units::Length> spares;  // one for each trial; below zero it does not pass
    std::optional<routes::Move> move;   // that lets the chosen size pass, where it does not
    units::Length empty_bay;            // spare of the chosen size without any pipe
    std::optional<house::Round> largest_pipe;
    std::optional<house::Rectangular> largest_stack;
    bool passes(std::size_t trial) const { return routes::passes(spares[trial]); }
};

// Of the bay the branch's first new duct that names one runs through; empty where none does.
std::optional<BranchPassage> branch_passage(const house::House& house, const BranchSizing& sizing);

// Where every size tried is too large for the bay, the largest that passes is tried too: what it would do for
// the room.
void add_largest_that_passes(const house::House& house, BranchSizing& sizing, BranchPassage& passage);
// The trial to be chosen: where the chosen size does not pass, another one that both holds the room and
// passes, if any.
std::size_t best_that_passes(const BranchSizing& sizing, const BranchPassage& passage);

}  // namespace questions
