#include "questions/branch_ducts.hpp"

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

}  // namespace questions
