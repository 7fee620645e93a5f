#include "questions/sweating_branch.hpp"

#include "ducts/duct_sweat.hpp"
#include "loads/damp_air.hpp"

namespace questions {
namespace {

bool needs_more(const std::optional<units::Resistance>& a, const std::optional<units::Resistance>& b) {
    if (!b) return false;
    return !a || *a > *b;
}

}  // namespace

std::optional<BranchInSummer> branch_in_summer(const house::House& house, const BranchSizing& sizing) {
    if (!house.summer) return std::nullopt;
    std::optional<BranchInSummer> worst;
    for (int at : sizing.setting.way) {
        const int index = sizing.setting.system.supply[static_cast<std::size_t>(at)].duct;
        if (index < 0) continue;
        const house::Duct& duct = house.ducts[static_cast<std::size_t>(index)];
        const auto* space = std::get_if<house::Space>(&duct.surroundings);
        if (duct.state != house::State::added || !space || *space == house::Space::heated_rooms) continue;
        const loads::DampAir air = loads::summer_air_in(house, *space);
        const units::Temperature inside = house.summer->supply;
        BranchInSummer one{index,
                           *space,
                           air.temperature,
                           air.dew_point,
                           ducts::outside_of_duct(inside, air.temperature, duct.wrap),
                           ducts::insulation_that_keeps_dry(inside, air.temperature, air.dew_point)};
        const bool worse = !worst || (one.sweats() && !worst->sweats()) ||
                           (one.sweats() == worst->sweats() && needs_more(one.needed, worst->needed));
        if (worse) worst = one;
    }
    return worst;
}

}  // namespace questions
