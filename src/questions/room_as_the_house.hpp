// A room that is wanted warmer than the house, a bath say, taken at the house's temperature instead: what the
// warmth costs is the difference.
#pragma once

#include <optional>

#include "house/house.hpp"

namespace questions {

// Empty where the room is not wanted warmer.
std::optional<house::House> with_room_as_the_house(const house::House& house, house::RoomId room);

}  // namespace questions
