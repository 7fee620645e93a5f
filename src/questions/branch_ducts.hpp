// What the plan with the chosen branch makes of the ducts that are there, and of the way back of the room's
// air.
#pragma once

#include <optional>
#include <vector>

#include "ducts/judge_duct.hpp"
#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "units/quantity.hpp"

namespace questions {

// The duct tree with the chosen size, at the plan's flows and what this outlet needs.
ducts::DuctSystem planned_system(const BranchSizing& sizing);

// Every duct whose shape the sheet gives, supply before return, at its flow in the plan.
std::vector<ducts::JudgedDuct> judged_ducts(const house::House& house, const BranchSizing& sizing);

// What a closed door must let pass: the supply air the room needs, at the pressure that a closed door may
// hold.
struct WayBack {
    units::Airflow flow;
    units::Area opening;
    units::Area grille;  // gross face of each of a pair of transfer grilles
};
// Empty where the room has a return of its own, needs no air, or no flow holds it.
std::optional<WayBack> way_back(const house::House& house, const BranchSizing& sizing);

}  // namespace questions
