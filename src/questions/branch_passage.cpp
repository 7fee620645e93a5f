#include "questions/branch_passage.hpp"

#include "ducts/stock_sizes.hpp"

namespace questions {
namespace {

const house::Duct* duct_through_a_bay(const house::House& house, const BranchSizing& sizing) {
    for (int at : sizing.setting.way) {
        const int duct = sizing.setting.system.supply[static_cast<std::size_t>(at)].duct;
        if (duct < 0) continue;
        const house::Duct& candidate = house.ducts[static_cast<std::size_t>(duct)];
        if (candidate.through && candidate.state == house::State::added) return &candidate;
    }
    return nullptr;
}

// A duct whose shape the sheet gives keeps it whatever size is tried for the rest.
house::Shape taken_up(const house::Duct& duct, const house::Shape& tried) {
    return routes::outside(duct.shape ? *duct.shape : tried, duct.wrap);
}

}  // namespace

std::optional<BranchPassage> branch_passage(const house::House& house, const BranchSizing& sizing) {
    const house::Duct* duct = duct_through_a_bay(house, sizing);
    if (!duct) return std::nullopt;
    const house::Bay& bay = house.bays[static_cast<std::size_t>(*duct->through)];
    BranchPassage passage;
    passage.bay = *duct->through;
    for (const BranchTrial& trial : sizing.trials)
        passage.spares.push_back(routes::spare(bay, taken_up(*duct, trial.pipe)));
    house::Bay empty = bay;
    empty.pipes.clear();
    const house::Shape wanted = taken_up(*duct, sizing.choice().pipe);
    passage.empty_bay = routes::spare(empty, wanted);
    if (!passage.passes(sizing.chosen)) passage.move = routes::least_move(bay, wanted);
    passage.largest_pipe = routes::largest_that_passes(bay, ducts::stock_round_pipes(), duct->wrap);
    passage.largest_stack = routes::largest_that_passes(bay, ducts::stock_wall_stacks(), duct->wrap);
    return passage;
}

void add_largest_that_passes(const house::House& house, BranchSizing& sizing, BranchPassage& passage) {
    const auto* smallest = std::get_if<house::Round>(&sizing.trials.front().pipe);
    if (!sizing.to_size || !smallest || !passage.largest_pipe || *passage.largest_pipe >= *smallest) return;
    const house::Duct& duct = *duct_through_a_bay(house, sizing);
    const house::Shape pipe(*passage.largest_pipe);
    sizing.trials.insert(sizing.trials.begin(), try_size(house, sizing.setting, pipe));
    passage.spares.insert(
        passage.spares.begin(),
        routes::spare(house.bays[static_cast<std::size_t>(passage.bay)], taken_up(duct, pipe)));
    ++sizing.chosen;
}

std::size_t best_that_passes(const BranchSizing& sizing, const BranchPassage& passage) {
    if (!sizing.to_size || passage.passes(sizing.chosen)) return sizing.chosen;
    for (std::size_t i = 0; i < sizing.trials.size(); ++i)
        if (sizing.trials[i].holds() && passage.passes(i)) return i;
    return sizing.chosen;
}

}  // namespace questions
