// A window whose wall has no other, and of which the sheet does not say where along the wall it is: it is
// taken in the middle.
#pragma once

#include <string>
#include <vector>

#include "house/survey.hpp"

namespace house {

// Gives the lone windows of a room that centre; their names, in the sheet's order.
std::vector<std::string> centre_lone_windows(Survey& survey, const std::string& room);

}  // namespace house
