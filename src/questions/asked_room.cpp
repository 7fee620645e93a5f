#include "questions/asked_room.hpp"

#include <vector>

#include "house/cannot_answer.hpp"
#include "units/nearest_word.hpp"

namespace questions {

house::RoomId asked_room(const house::House& house, const std::string& name) {
    std::vector<std::string_view> names;
    for (const house::Room& room : house.rooms) {
        if (room.name == name) return room.id;
        names.push_back(room.name);
    }
    const std::string nearest = units::nearest_word(name, names);
    throw house::AskedWrongly({}, "no room of the house is called '" + name + "'" +
                                      (nearest.empty() ? "" : "; did you mean '" + nearest + "'?"));
}

}  // namespace questions
