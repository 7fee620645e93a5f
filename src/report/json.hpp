// Answers for programs: always SI, the unit in the key ("airflow_m3_s"), 9 significant digits, additive only.
//
//     { schema, question, answer, range, assumptions, cautions }
//
// The schema of each question stands in tests/report/schema/. A number that is not finite is never written:
// such a value is left out or null where the schema says so.
#pragma once

#include <string>

#include "questions/answer_branch.hpp"
#include "questions/answer_loads.hpp"
#include "questions/answer_place.hpp"
#include "questions/answer_trunk.hpp"
#include "questions/check_sheet.hpp"
#include "questions/list_fittings.hpp"

namespace report {

std::string branch_json(const questions::BranchAnswer& answer);
std::string trunk_json(const questions::TrunkAnswer& answer);
std::string place_json(const questions::PlaceAnswer& answer);
std::string loads_json(const questions::LoadsAnswer& answer);
// Of any question that has no answer: why, and where in the sheet (line 0: nowhere in particular).
std::string no_answer_json(const std::string& why, house::Place place);
std::string fittings_json(const questions::FittingsAnswer& answer);
// What `start` wrote, and where.
std::string start_json(const std::string& file);
// With mistakes too: a wrong sheet is an answer of this question.
std::string check_json(const questions::CheckAnswer& answer);

}  // namespace report
