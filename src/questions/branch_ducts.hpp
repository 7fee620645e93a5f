// What the plan with the chosen branch makes of the ducts that are there.
#pragma once

#include <vector>

#include "ducts/judge_duct.hpp"
#include "house/house.hpp"
#include "questions/size_branch.hpp"

namespace questions {

// The duct tree with the chosen size, at the plan's flows and what this outlet needs.
ducts::DuctSystem planned_system(const BranchSizing& sizing);

// Every duct whose shape the sheet gives, supply before return, at its flow in the plan.
std::vector<ducts::JudgedDuct> judged_ducts(const house::House& house, const BranchSizing& sizing);

}  // namespace questions
