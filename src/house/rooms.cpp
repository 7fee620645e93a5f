// Rooms: their sizes and temperatures; surfaces are added by surfaces.cpp and partitions.cpp.
#include <algorithm>

#include "house/builders.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

constexpr units::Length most_growth = 2 * units::unit::foot;  // more is another room, not another wall face

// The room's size or its floor's area; planned walls may stand farther out.
void build_floor(Work& work, const SurveyRoom& written, Room& room) {
    const std::string the_room = "the " + room.name;
    if (written.floor_area && written.size)
        work.ledger.blame(Mistake{the_room + " has its floor written twice",
                                  {},
                                  "give its size, or its floor_area and a list of its surfaces",
                                  written.floor_area->place,
                                  written.size->place});
    if (written.floor_area && !written.size) {
        room.stated_floor = written.floor_area->value;
        return;
    }
    const Two size = work.ledger.required(written.size, written.place, "the size of " + the_room,
                                          "size = [\"7 ft 6 in\", \"9 ft\"]: west-east, then south-north");
    if (written.size && (size.first.si() <= 0 || size.second.si() <= 0))
        work.ledger.blame(written.size->place, the_room + " has no floor", "both sizes must be above zero");
    room.width = size.first + growth(work, written, WallSide::west) + growth(work, written, WallSide::east);
    room.depth =
        size.second + growth(work, written, WallSide::south) + growth(work, written, WallSide::north);
}

void blame_growth(Work& work, const SurveyRoom& written, const Room& room) {
    for (const SurveyWall& wall : written.walls) {
        if (!wall.room_grows) continue;
        if (abs(wall.room_grows->value) > most_growth)
            work.ledger.blame(wall.room_grows->place,
                              "no finish makes the " + room.name + " so much larger or smaller",
                              "write how far the inside face of the wall moves out: up to 2 ft");
        else if (!written.size)
            work.ledger.blame(wall.room_grows->place, "only a room with a size can grow",
                              "give the size of the " + room.name);
    }
}

Room build_room(Work& work, const SurveyRoom& written, int index) {
    Ledger& ledger = work.ledger;
    Room room;
    room.id = RoomId{index};
    room.name = ledger.required(written.name, written.place, "the name of this room", "name = \"bath\"");
    const std::string the_room = "the " + room.name;
    build_floor(work, written, room);
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
    blame_growth(work, written, room);
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
            if (!written[i].size || !written[j].size) continue;
            const Two at = corner_of(work, written[i]), bt = corner_of(work, written[j]);
            if (overlap(at.first.si(), a.width.si(), bt.first.si(), b.width.si()) &&
                overlap(at.second.si(), a.depth.si(), bt.second.si(), b.depth.si()))
                work.ledger.blame(Mistake{"the " + a.name + " and the " + b.name + " lie over each other",
                                          {},
                                          "corner is the room's south-west corner, x east and y north",
                                          written[i].corner->place,
                                          written[j].corner->place});
        }
}

// The plan begins at the house's south-west corner, outside.
void blame_outside_the_house(Work& work, const SurveyRoom& written, const Room& room) {
    if (!work.survey.house_size || !written.corner || !written.size) return;
    const Two corner = corner_of(work, written), house = work.survey.house_size->value;
    const auto beyond = [](units::Length from, units::Length length, units::Length whole) {
        constexpr units::Length tape{0.02};
        return from < -tape || from + length > whole + tape;
    };
    if (beyond(corner.first, room.width, house.first) || beyond(corner.second, room.depth, house.second))
        work.ledger.blame(Mistake{"the " + room.name + " lies outside the house",
                                  {},
                                  "corner counts from the house's south-west corner, x east and y north",
                                  written.corner->place,
                                  work.survey.house_size->place});
}

}  // namespace

units::Length growth(const Work& work, const SurveyRoom& written, WallSide side) {
    if (work.stage == Stage::planned)
        for (const SurveyWall& wall : written.walls)
            if (wall.side == side && wall.room_grows && abs(wall.room_grows->value) <= most_growth)
                return wall.room_grows->value;
    return {};
}

Two corner_of(const Work& work, const SurveyRoom& written) {
    return {written.corner->value.first - growth(work, written, WallSide::west),
            written.corner->value.second - growth(work, written, WallSide::south)};
}

bool is_altered(const SurveyRoom& room) {
    const auto becomes = [](const auto& thing) { return thing.becomes.has_value(); };
    const auto changes = [&](const SurveyWall& wall) { return becomes(wall) || wall.room_grows.has_value(); };
    return std::any_of(room.walls.begin(), room.walls.end(), changes) ||
           std::any_of(room.surfaces.begin(), room.surfaces.end(), becomes) ||
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
        const SurveyRoom& room = written[i];
        constexpr std::size_t silent = 6;  // ceiling, floor, and what lies between rooms
        work.house.rooms[i].surfaces.reserve(room.walls.size() + room.surfaces.size() + room.windows.size() +
                                             room.doors.size() + silent);
        blame_outside_the_house(work, written[i], work.house.rooms[i]);
        build_walls(work, written[i], work.house.rooms[i]);
        build_listed_surfaces(work, written[i], work.house.rooms[i]);
        build_ceiling_and_floor(work, written[i], work.house.rooms[i]);
    }
    build_partitions(work);
}

}  // namespace house
