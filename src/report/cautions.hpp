// The usual cautions, each once and only where something in the house calls for it.
#pragma once

#include <string>
#include <vector>

#include "house/house.hpp"

namespace report {

// What the air as it flows adds to them, as words; empty where nobody looked.
struct FlowingAir {
    std::vector<std::string> draws;  // "the exhaust fans draw 50 cfm": on a flue that shares the house's air
    std::string beyond_plate;        // "temperature rise comes to 72 F, 35 to 65 is allowed"
};

std::vector<std::string> cautions(const house::House& house, const FlowingAir& air = {});

}  // namespace report
