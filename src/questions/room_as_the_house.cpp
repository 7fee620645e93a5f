#include "questions/room_as_the_house.hpp"

namespace questions {

std::optional<house::House> with_room_as_the_house(const house::House& house, house::RoomId room) {
    const units::Temperature usual = house.site.winter_indoor;
    if (house.room(room).winter_indoor <= usual) return std::nullopt;
    house::House changed = house;
    changed.rooms[static_cast<std::size_t>(room.index)].winter_indoor = usual;
    return changed;
}

}  // namespace questions
