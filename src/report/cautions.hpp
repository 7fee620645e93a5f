// The usual cautions, each once and only where something in the house calls for it.
#pragma once

#include <string>
#include <vector>

#include "house/house.hpp"

namespace report {

std::vector<std::string> cautions(const house::House& house);

}  // namespace report
