#include "questions/branch_ducts.hpp"

#include <algorithm>

#include "ducts/return_path.hpp"

namespace questions {

ducts::DuctSystem planned_system(const BranchSizing& sizing) {
    const BranchSetting& setting = sizing.setting;
    ducts::DuctSystem system = setting.system;
    ducts::DesignFlows flows = setting.flows;
    if (sizing.to_size) ducts::give_shape(system, sizing.choice().pipe);
    if (sizing.choice().needs)
        flows.outlets[static_cast<std::size_t>(setting.outlet)] = sizing.choice().needs->flow;
    ducts::set_flows(system, flows);
    return system;
}

std::vector<ducts::JudgedDuct> judged_ducts(const house::House& house, const BranchSizing& sizing) {
    const BranchSetting& setting = sizing.setting;
    const ducts::DuctSystem system = planned_system(sizing);
    std::vector<ducts::JudgedDuct> judged =
        ducts::judge_ducts(house, system.supply, sizing.budget.rate, setting.supply_air);
    const std::vector<ducts::JudgedDuct> back =
        ducts::judge_ducts(house, system.return_side, sizing.budget.rate, setting.return_air);
    judged.insert(judged.end(), back.begin(), back.end());
    return judged;
}

std::optional<WayBack> way_back(const house::House& house, const BranchSizing& sizing) {
    const BranchSetting& setting = sizing.setting;
    const house::RoomId room = setting.asked.room;
    const bool has_return =
        std::any_of(house.outlets.begin(), house.outlets.end(),
                    [&](const house::Outlet& o) { return o.room == room && !house.is_supply(o); });
    const auto& needs = sizing.choice().needs;
    if (has_return || !needs || needs->flow <= units::MassFlow()) return std::nullopt;
    // All its outlets blow at once, and what leaves is as warm as the room.
    const loads::Air air = loads::air_at(setting.asked.inside, setting.supply.pressure);
    constexpr double usual_free_share = 0.75;  // of a stamped grille's face; common practice
    WayBack back;
    back.flow = setting.outlets_in_room * (needs->flow / air.density);
    back.opening = ducts::opening_for(back.flow, ducts::closed_door_limit, air);
    back.grille = ducts::transfer_grille_for(back.flow, usual_free_share, air);
    return back;
}

}  // namespace questions
