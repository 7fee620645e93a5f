// Rooms: their sizes and temperatures; surfaces are added by surfaces.cpp and partitions.cpp.
#include <algorithm>

#include "house/builders.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

Room build_room(Work& work, const SurveyRoom& written, int index) {
    Ledger& ledger = work.ledger;
    Room room;
    room.id = RoomId{index};
    room.name = ledger.required(written.name, written.place, "the name of this room", "name = \"bath\"");
    const std::string the_room = "the " + room.name;
    const Two size = ledger.required(written.size, written.place, "the size of " + the_room,
                                     "size = [\"7 ft 6 in\", \"9 ft\"]: west-east, then south-north");
    room.width = size.first;
    room.depth = size.second;
    room.storey = written.storey ? written.storey->value : 1;
    if (!written.storey && work.house.storeys > 1)
        ledger.blame_missing(written.place, "the storey of " + the_room, "storey = 2");
    if (written.storey && work.survey.storeys && written.storey->value > work.house.storeys)
        ledger.blame(written.storey->place, the_room + " lies above the top storey",
                     "the house has " + std::to_string(work.house.storeys) + " (storeys, under [house])");
    room.ceiling = ledger.or_default(written.ceiling, DefaultId::ceiling_height, the_room);
    room.winter_indoor = written.winter_indoor ? written.winter_indoor->value : work.house.site.winter_indoor;
    if (written.use) room.use = written.use->value;
    room.altered = is_altered(written);
    if (written.size && (size.first.si() <= 0 || size.second.si() <= 0))
        ledger.blame(written.size->place, the_room + " has no floor", "both sizes must be above zero");
    if (written.ceiling && room.ceiling.si() <= 0)
        ledger.blame(written.ceiling->place, "the ceiling of " + the_room + " is on its floor",
                     "give its height");
    return room;
}

bool overlap(double a, double a_size, double b, double b_size) {
    constexpr double tape = 0.01;  // a centimetre of measuring slack
    return a + a_size > b + tape && b + b_size > a + tape;
}

void blame_overlaps(Work& work) {
    const auto& written = work.survey.rooms;
    for (std::size_t i = 0; i < written.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const Room &a = work.house.rooms[i], &b = work.house.rooms[j];
            if (a.storey != b.storey || !written[i].corner || !written[j].corner) continue;
            const Two &at = written[i].corner->value, &bt = written[j].corner->value;
            if (overlap(at.first.si(), a.width.si(), bt.first.si(), b.width.si()) &&
                overlap(at.second.si(), a.depth.si(), bt.second.si(), b.depth.si()))
                work.ledger.blame(Mistake{"the " + a.name + " and the " + b.name + " lie over each other",
                                          {},
                                          "corner is the room's south-west corner, x east and y north",
                                          written[i].corner->place,
                                          written[j].corner->place});
        }
}

}  // namespace

bool is_altered(const SurveyRoom& room) {
    const auto becomes = [](const auto& thing) { return thing.becomes.has_value(); };
    return std::any_of(room.walls.begin(), room.walls.end(), becomes) ||
           std::any_of(room.windows.begin(), room.windows.end(), becomes) ||
           (room.above && becomes(*room.above)) || (room.below && becomes(*room.below));
}

units::Length wall_length(const Room& room, WallSide side) {
    return side == WallSide::north || side == WallSide::south ? room.width : room.depth;
}

units::Area wall_area(const Room& room, WallSide side) { return wall_length(room, side) * room.ceiling; }

void build_rooms(Work& work) {
    const auto& written = work.survey.rooms;
    if (written.empty())
        work.ledger.blame(Mistake{"the sheet describes no room",
                                  {},
                                  "begin one with [[room]]",
                                  Place{1, 1, 1},
                                  std::nullopt,
                                  true});
    work.house.rooms.reserve(written.size());
    for (std::size_t i = 0; i < written.size(); ++i)
        work.house.rooms.push_back(build_room(work, written[i], static_cast<int>(i)));
    blame_overlaps(work);
    for (std::size_t i = 0; i < written.size(); ++i) {
        build_walls(work, written[i], work.house.rooms[i]);
        build_ceiling_and_floor(work, written[i], work.house.rooms[i]);
    }
    build_partitions(work);
}

}  // namespace house
