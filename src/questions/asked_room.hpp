// The room that a question is about.
#pragma once

#include <string>

#include "house/house.hpp"

namespace questions {

// Throws house::AskedWrongly where no room has that name.
house::RoomId asked_room(const house::House& house, const std::string& name);

}  // namespace questions
