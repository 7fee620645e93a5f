// Old round supply pipes that are much too wide for the air they carry now: keep, sleeve or blank.
//
// An old heater that worked without a blower left pipes two sizes and more wider than a blower needs. They do
// not hold back the air, but it crawls in them and cools: the heat each loses on its way is set beside what
// the smallest pipe that would do, run through it as a sleeve, would lose at the same flow. The air gap
// around a sleeve insulates too; that is left out, so a sleeve saves at least so much. Bare heat loss is good
// to 20 to 30 % (ducts/run_heat_loss.hpp). A pipe that nothing hangs on leads nowhere and is to be blanked
// off.
#pragma once

#include <vector>

#include "ducts/judge_duct.hpp"
#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "units/quantity.hpp"

namespace questions {

enum class Advice { keep, sleeve, blank };

struct OnAPipe {
    units::Temperature arrives;  // at the pipe's end
    units::Power lost;           // along the pipe while the heater is on
};
struct LeftoverDuct {
    int duct = -1;  // position in House::ducts
    Advice advice = Advice::keep;
    units::Velocity speed;  // from here on not where it is to be blanked
    house::Round sleeve;    // the smallest stock pipe that would do
    OnAPipe as_it_is, sleeved;
};

// Less than this is not felt at a register: within the accuracy of a bare duct's loss.
inline constexpr units::TemperatureDifference hardly_warmer{2 / 1.8};

// In the sheet's order. `judged`: of the same plan.
std::vector<LeftoverDuct> leftover_ducts(const house::House& house, const BranchSizing& sizing,
                                         const std::vector<ducts::JudgedDuct>& judged);

}  // namespace questions
