#include "questions/leftover_ducts.hpp"

#include <algorithm>

#include "ducts/duct_temperatures.hpp"
#include "questions/branch_ducts.hpp"

namespace questions {
namespace {

bool is_old_round_supply(const house::Duct& duct) {
    return duct.state == house::State::found && duct.side == house::DuctSide::supply && duct.shape &&
           std::holds_alternative<house::Round>(*duct.shape);
}

// Two sizes or more wider than it need be.
bool much_too_wide(const house::Duct& duct, const ducts::JudgedDuct& judged) {
    const auto one_down = ducts::next_size_down(*duct.shape);
    return judged.would_do && one_down && *judged.would_do < *one_down;
}

bool leads_somewhere(const house::House& house, const house::Duct& duct) {
    return std::any_of(house.ducts.begin(), house.ducts.end(),
                       [&](const house::Duct& d) { return d.from == duct.id; }) ||
           std::any_of(house.outlets.begin(), house.outlets.end(),
                       [&](const house::Outlet& o) { return o.duct == duct.id; });
}

// What the air does along all sections of one duct.
OnAPipe along(const ducts::Side& supply, int duct, const ducts::Supply& air) {
    const auto leaving = ducts::leaving_temperatures(supply, air.temperature, air.specific_heat);
    OnAPipe pipe;
    bool at_its_end = true;
    for (std::size_t i = 0; i < supply.size(); ++i) {  // leaves first: its end before its start
        if (supply[i].duct != duct) continue;
        const int parent = supply[i].parent;
        const units::Temperature entering =
            parent < 0 ? air.temperature : leaving[static_cast<std::size_t>(parent)];
        if (at_its_end) pipe.arrives = leaving[i];
        at_its_end = false;
        pipe.lost += supply[i].flow * air.specific_heat * (entering - leaving[i]);
    }
    return pipe;
}

LeftoverDuct compared(const BranchSetting& setting, ducts::Side supply, const ducts::JudgedDuct& judged) {
    LeftoverDuct leftover;
    leftover.duct = judged.duct;
    leftover.speed = judged.velocity;
    leftover.sleeve = std::get<house::Round>(*judged.would_do);
    leftover.as_it_is = along(supply, judged.duct, setting.supply);
    for (ducts::SystemSection& section : supply)
        if (section.duct == judged.duct) section.section = ducts::section_of(leftover.sleeve);
    leftover.sleeved = along(supply, judged.duct, setting.supply);
    const bool warmer = leftover.sleeved.arrives - leftover.as_it_is.arrives >= hardly_warmer;
    leftover.advice = warmer ? Advice::sleeve : Advice::keep;
    return leftover;
}

}  // namespace

std::vector<LeftoverDuct> leftover_ducts(const house::House& house, const BranchSizing& sizing,
                                         const std::vector<ducts::JudgedDuct>& judged) {
    const ducts::DuctSystem system = planned_system(sizing);
    std::vector<LeftoverDuct> leftovers;
    for (std::size_t i = 0; i < house.ducts.size(); ++i) {
        const house::Duct& duct = house.ducts[i];
        if (!is_old_round_supply(duct)) continue;
        const auto found = std::find_if(judged.begin(), judged.end(), [&](const ducts::JudgedDuct& one) {
            return one.duct == static_cast<int>(i);
        });
        if (found != judged.end() && much_too_wide(duct, *found))
            leftovers.push_back(compared(sizing.setting, system.supply, *found));
        else if (found == judged.end() && !leads_somewhere(house, duct))
            leftovers.push_back({static_cast<int>(i), Advice::blank, {}, {}, {}, {}});
    }
    return leftovers;
}

}  // namespace questions
