#include "questions/branch_passage.hpp"

#include <algorithm>

#include "ducts/stock_sizes.hpp"

namespace questions {
namespace {

const house::Duct& duct_at(const house::House& house, int duct) {
    return house.ducts[static_cast<std::size_t>(duct)];
}

const house::Bay& bay_of(const house::House& house, int duct) {
    return house.bays[static_cast<std::size_t>(*duct_at(house, duct).through)];
}

house::Shape taken_up(const house::Duct& duct, const house::Shape& tried) {
    return routes::outside(duct.shape ? *duct.shape : tried, duct.wrap);
}

BayPassage bay_passage(const house::House& house, const BranchSizing& sizing, int duct) {
    const house::Bay& bay = bay_of(house, duct);
    const units::Resistance wrap = duct_at(house, duct).wrap;
    const ducts::Stock stock = sizing.setting.stock;
    BayPassage passage;
    passage.duct = duct;
    passage.bay = *duct_at(house, duct).through;
    for (const BranchTrial& trial : sizing.trials)
        passage.spares.push_back(routes::spare(bay, taken_up(duct_at(house, duct), trial.pipe)));
    house::Bay empty = bay;
    empty.pipes.clear();
    const house::Shape wanted = taken_up(duct_at(house, duct), sizing.choice().pipe);
    passage.empty_bay = routes::spare(empty, wanted);
    if (!passage.passes(sizing.chosen)) passage.move = routes::least_move(bay, wanted);
    passage.largest_pipe = routes::largest_that_passes(bay, ducts::stock_round_pipes(stock), wrap);
    passage.largest_oval = routes::largest_that_passes(bay, ducts::stock_flat_ovals(stock), wrap);
    passage.largest_stack = routes::largest_that_passes(bay, ducts::stock_wall_stacks(stock), wrap);
    return passage;
}

}  // namespace

bool BranchPassage::passes(std::size_t trial) const {
    return std::all_of(bays.begin(), bays.end(), [&](const BayPassage& bay) { return bay.passes(trial); });
}

std::vector<int> led_through_bays(const house::House& house, const BranchSetting& setting) {
    std::vector<int> led;
    for (int at : setting.way) {
        const int duct = setting.system.supply[static_cast<std::size_t>(at)].duct;
        if (duct < 0 || (!led.empty() && led.back() == duct)) continue;  // a trunk is several sections
        if (duct_at(house, duct).through && duct_at(house, duct).state == house::State::added)
            led.push_back(duct);
    }
    return led;
}

bool passes_every_bay(const house::House& house, const BranchSetting& setting, const house::Shape& tried) {
    const std::vector<int> led = led_through_bays(house, setting);
    return std::all_of(led.begin(), led.end(), [&](int duct) {
        return routes::passes(bay_of(house, duct), taken_up(duct_at(house, duct), tried));
    });
}

void add_largest_that_passes(const house::House& house, BranchSizing& sizing) {
    const auto* smallest = std::get_if<house::Round>(&sizing.trials.front().pipe);
    if (!sizing.to_size || !smallest) return;
    const auto stock = ducts::stock_round_pipes(sizing.setting.stock);
    for (std::size_t i = stock.size(); i-- > 0;) {
        const house::Shape pipe(stock[i]);
        if (!passes_every_bay(house, sizing.setting, pipe)) continue;
        if (stock[i] >= *smallest) return;
        sizing.trials.insert(sizing.trials.begin(), try_size(house, sizing.setting, pipe));
        ++sizing.chosen;
        return;
    }
}

std::size_t best_that_passes(const house::House& house, const BranchSizing& sizing) {
    if (!sizing.to_size || passes_every_bay(house, sizing.setting, sizing.choice().pipe))
        return sizing.chosen;
    for (std::size_t i = 0; i < sizing.trials.size(); ++i)
        if (sizing.trials[i].holds() && passes_every_bay(house, sizing.setting, sizing.trials[i].pipe))
            return i;
    return sizing.chosen;
}

std::optional<BranchPassage> branch_passage(const house::House& house, const BranchSizing& sizing) {
    BranchPassage passage;
    for (int duct : led_through_bays(house, sizing.setting))
        passage.bays.push_back(bay_passage(house, sizing, duct));
    if (passage.bays.empty()) return std::nullopt;
    const auto spare = [&](std::size_t bay) { return passage.bays[bay].spares[sizing.chosen]; };
    for (std::size_t i = 1; i < passage.bays.size(); ++i)
        if (spare(i) < spare(passage.tightest)) passage.tightest = i;
    passage.spares = passage.narrowest().spares;
    return passage;
}

}  // namespace questions
