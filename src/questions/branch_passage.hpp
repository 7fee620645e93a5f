// Does the branch pass the bays the sheet leads it through: each size tried, what would have to move for the
// one that is wanted, and the largest sizes that pass.
//
// Only new ducts are asked: one that is there has passed. A duct whose shape the sheet gives keeps it,
// whatever size is tried for the rest.
#pragma once

#include <optional>
#include <vector>

#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "routes/bay_section.hpp"

namespace questions {

// One duct in the bay it is led through.
struct BayPassage {
    int bay = 0;                        // position in House::bays
    int duct = 0;                       // position in House::ducts
    std::vector<units::Length> spares;  // one for each trial; below zero it does not pass
    std::optional<routes::Move> move;   // that lets the chosen size pass, where it does not
    units::Length empty_bay;            // spare of the chosen size without any pipe
    std::optional<house::Round> largest_pipe;
    std::optional<house::FlatOval> largest_oval;
    std::optional<house::Rectangular> largest_stack;
    bool passes(std::size_t trial) const { return routes::passes(spares[trial]); }
};

struct BranchPassage {
    std::vector<BayPassage> bays;       // from the trunk outwards; one at least
    std::size_t tightest = 0;           // position in bays: the least spare of the chosen size
    std::vector<units::Length> spares;  // of the tightest, for the table
    const BayPassage& narrowest() const { return bays[tightest]; }
    bool passes(std::size_t trial) const;  // every one of them
};

// Positions in House::ducts of the new ducts on the way that are led through a bay, from the trunk outwards.
std::vector<int> led_through_bays(const house::House& house, const BranchSetting& setting);
bool passes_every_bay(const house::House& house, const BranchSetting& setting, const house::Shape& tried);

// Where every size tried is too large for the bays, the largest that passes is tried too: what it would do
// for the room.
void add_largest_that_passes(const house::House& house, BranchSizing& sizing);
// The trial to be chosen: where the chosen size does not pass, another one that both holds the room and
// passes, if any.
std::size_t best_that_passes(const house::House& house, const BranchSizing& sizing);

// Of every bay on the way, for the trials there are and the choice among them; empty where none is named.
std::optional<BranchPassage> branch_passage(const house::House& house, const BranchSizing& sizing);

}  // namespace questions
