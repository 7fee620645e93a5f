// A survey seen in a mirror: what was in the east is in the west, or what was in the north is in the south.
#pragma once

#include "house/survey.hpp"

namespace a_survey {

inline house::WallSide swapped(house::WallSide side, house::WallSide one, house::WallSide other) {
    return side == one ? other : side == other ? one : side;
}

struct Mirror {
    house::WallSide one, other;  // change places
    bool east_west;

    units::Length& turned(house::Two& two) const { return east_west ? two.first : two.second; }
    // Whether what stands in such a wall moves along it.
    bool runs_along(house::WallSide side) const { return side != one && side != other; }
    // Centre and wall of a window, door or outlet in a room of that size.
    template <class Thing>
    void turn(Thing& thing, units::Length room) const {
        if (!thing.wall) return;
        if (thing.centre && runs_along(thing.wall->value)) thing.centre->value = room - thing.centre->value;
        thing.wall->value = swapped(thing.wall->value, one, other);
    }
};

inline house::Survey mirrored(house::Survey survey, const Mirror& mirror) {
    for (house::SurveyRoom& room : survey.rooms) {
        if (!room.size) continue;
        const units::Length size = mirror.turned(room.size->value);
        if (room.corner) mirror.turned(room.corner->value) = -(mirror.turned(room.corner->value) + size);
        for (house::SurveyWall& wall : room.walls) wall.side = swapped(wall.side, mirror.one, mirror.other);
        for (house::SurveyWindow& window : room.windows) mirror.turn(window, size);
        for (house::SurveyDoor& door : room.doors) mirror.turn(door, size);
        for (house::SurveyOutlet& outlet : survey.outlets)
            if (outlet.room && room.name && outlet.room->value == room.name->value) mirror.turn(outlet, size);
    }
    return survey;
}

inline house::Survey mirrored_east_west(const house::Survey& survey) {
    using house::WallSide;
    return mirrored(survey, {WallSide::east, WallSide::west, true});
}
inline house::Survey mirrored_north_south(const house::Survey& survey) {
    using house::WallSide;
    return mirrored(survey, {WallSide::north, WallSide::south, false});
}

}  // namespace a_survey
