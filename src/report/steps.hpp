// The work behind an answer: each step with its formula, its numbers and its source, so that it can be done
// again by hand.
#pragma once

#include <string>
#include <vector>

#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/answer_place.hpp"
#include "questions/answer_trunk.hpp"
#include "report/text.hpp"
#include "units/write.hpp"

namespace report {

// One step: what, "name = formula", the same with numbers in, and the result. The numbers' expression uses +
// - x / ^ ( ) , sqrt exp ln log10 and plain decimals only, and gives the result within `within` when done
// with the digits shown.
struct Step {
    std::string what;     // "loss through the north wall of the bath"
    std::string formula;  // "area x U x difference"
    std::string numbers;  // "73.5 x 0.240 x 71.0"
    double result = 0;    // in the printed unit
    double within = 0;    // how near the numbers come, in the printed unit
    std::string printed;  // "1,250 Btu/h"
    std::string source;
};

std::vector<Step> branch_steps(const questions::BranchAnswer& answer, units::System system);
std::vector<Step> trunk_steps(const questions::TrunkAnswer& answer, units::System system);
std::vector<Step> place_steps(const questions::PlaceAnswer& answer, units::System system);
std::vector<Step> loads_steps(const questions::LoadsAnswer& answer, units::System system);
std::string steps_text(const std::vector<Step>& steps, Paper paper);

}  // namespace report
