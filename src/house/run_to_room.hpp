// The run that a question about places leads about: the sheet's new one to the room, or, where it plans none,
// the one that is there, led on.
#pragma once

#include <string>

#include "house/survey.hpp"

namespace house {

struct SurveyWithRun {
    Survey survey;
    std::string outlet;        // its name
    bool of_the_sheet = true;  // false: what is there becomes removed, and a new one like it takes its place
};
// Throws CannotAnswer where no run leads to the room, or what is there serves others too.
SurveyWithRun with_run_to(Survey survey, const std::string& room);

}  // namespace house
