// The joists or studs between which a register's boot stands. Exact, as the sheet's tape.
#pragma once

#include <optional>

#include "house/plan.hpp"
#include "registers/locations.hpp"

namespace registers {

// Numbers as in the sheet; 0: none on that side within the room.
struct FramingBeside {
    bool studs = false;  // else joists
    int before = 0, after = 0;
};
// Of one in the floor or in a wall; empty where the sheet does not place what it stands between.
std::optional<FramingBeside> framing_beside(const house::Plan& plan, const Location& location);

}  // namespace registers
