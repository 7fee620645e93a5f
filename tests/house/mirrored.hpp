// A survey seen in a mirror: what was in the east is in the west, or what was in the north is in the south.
#pragma once

#include <algorithm>
#include <cmath>

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

inline void mirror_hinge(house::SurveyDoor& door, const Mirror& mirror) {
    if (door.swings && door.swings->value.hinged)
        door.swings->value.hinged = swapped(*door.swings->value.hinged, mirror.one, mirror.other);
}

// Joists are counted from the other wall; all rooms of the storey have a corner and a size.
inline void mirror_joists(house::SurveyFloor& floor, const house::Survey& survey, const Mirror& mirror) {
    const bool across =
        floor.joists_run && mirror.east_west == (floor.joists_run->value == house::JoistsRun::north_south);
    if (!across || !floor.first || !floor.spacing || !floor.under) return;
    units::Length from{1e9}, to{-1e9};
    for (const house::SurveyRoom& room : survey.rooms) {
        if (room.storey->value != floor.under->value) continue;
        house::Two corner = room.corner->value, size = room.size->value;
        from = std::min(from, mirror.turned(corner));
        to = std::max(to, mirror.turned(corner) + mirror.turned(size));
    }
    const units::Length rest = to - from - floor.first->value;
    const int last = static_cast<int>(std::floor(rest / floor.spacing->value));
    floor.first->value = rest - last * floor.spacing->value;
    for (house::SurveySister& sister : floor.sisters) {
        sister.joist->value = last + 2 - sister.joist->value;
        sister.side->value = swapped(sister.side->value, mirror.one, mirror.other);
    }
}

// Studs are counted from the other end of their wall.
inline void mirror_studs(house::SurveyWall& wall, units::Length length, const Mirror& mirror) {
    house::SurveyStuds& studs = wall.studs;
    if (!mirror.runs_along(wall.side) || !studs.first || !studs.spacing) return;
    const units::Length rest = length - studs.first->value;
    studs.first->value = rest - std::floor(rest / studs.spacing->value) * studs.spacing->value;
}

inline house::Survey mirrored(house::Survey survey, const Mirror& mirror) {
    for (house::SurveyFloor& floor : survey.floors) mirror_joists(floor, survey, mirror);
    for (house::SurveyRoom& room : survey.rooms) {
        if (!room.size) continue;
        const units::Length size = mirror.turned(room.size->value);
        if (room.corner) mirror.turned(room.corner->value) = -(mirror.turned(room.corner->value) + size);
        for (house::SurveyWall& wall : room.walls) {
            mirror_studs(wall, size, mirror);
            wall.side = swapped(wall.side, mirror.one, mirror.other);
        }
        for (house::SurveyWindow& window : room.windows) mirror.turn(window, size);
        for (house::SurveyDoor& door : room.doors) {
            mirror.turn(door, size);
            mirror_hinge(door, mirror);
        }
        for (house::SurveyFixture& fixture : room.fixtures)
            mirror.turned(fixture.corner->value) =
                size - mirror.turned(fixture.corner->value) - mirror.turned(fixture.size->value);
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
