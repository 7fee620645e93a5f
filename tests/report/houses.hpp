// The houses that the report's tests ask about, each a sheet as a user writes it.
#pragma once

#include <string>
#include <string_view>

#include "house/survey.hpp"
#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/answer_trunk.hpp"
#include "questions/check_sheet.hpp"

namespace report_test {

// A balloon-framed house with a cold bath that gets a new outlet from the trunk.
std::string bath_sheet();
std::string cooled_bath_sheet();  // the same with cooling, at 42.1 degrees north
// The same, `from` replaced by `to` everywhere; fails the test where nothing is replaced.
std::string with(std::string sheet, std::string_view from, std::string_view to);

// Houses that lead the answers into their corners, by a name for failures.
struct NamedSheet {
    std::string name;
    std::string sheet;
};
const std::vector<NamedSheet>& sheets();

house::Survey survey_of(const std::string& sheet);  // fails the test where the sheet has mistakes
questions::LoadsAnswer loads_of(const std::string& sheet);
// Worked out once for each sheet: the whole system takes its time.
const questions::BranchAnswer& branch_of(const std::string& sheet);
const questions::TrunkAnswer& trunk_of(const std::string& sheet);
questions::CheckAnswer check_of(const std::string& sheet);

}  // namespace report_test
