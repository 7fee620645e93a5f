// The walls of a room on paper, with the windows and doors in them.
#include <algorithm>

#include "report/place_drawing.hpp"

namespace report {
namespace {

using house::WallSide;

constexpr WallSide sides[] = {WallSide::north, WallSide::east, WallSide::south, WallSide::west};

constexpr bool runs_west_east(WallSide side) { return side == WallSide::north || side == WallSide::south; }

// North and south walls have the corners.
Frame whole_wall(const Frame& room, WallSide side) {
    constexpr double t = wall_thickness;
    switch (side) {
        case WallSide::north:
            return {room.left - t, room.top - t, room.right + t, room.top};
        case WallSide::south:
            return {room.left - t, room.bottom, room.right + t, room.bottom + t};
        case WallSide::east:
            return {room.right, room.top, room.right + t, room.bottom};
        case WallSide::west:
            break;
    }
    return {room.left - t, room.top, room.left, room.bottom};
}

// A name outside of its wall, farther out where another one is in the way.
void write_outside(RoomDrawing& room, const Frame& opening, WallSide side, const std::string& name) {
    constexpr double size = 12, line = 15, gap = 8;
    const Pixel inwards = into_the_room(side);
    const double half = text_width(name, size) / 2;
    const bool across = runs_west_east(side);
    for (double out = gap; out < gap + 4 * line; out += line) {
        const double reach = wall_thickness / 2 + out + size / 3;
        const Pixel middle{opening.middle().x - inwards.x * reach, opening.middle().y - inwards.y * reach};
        const Frame frame = across ? around(middle, half, size / 2) : around(middle, size / 2, half);
        if (!room.is_free(frame)) continue;
        room.taken.push_back(frame);
        const Pixel base =
            across ? Pixel{middle.x, middle.y + size / 3} : Pixel{middle.x + size / 3, middle.y};
        room.drawing.text(base, name, {size, Anchor::middle, false, across ? 0.0 : -90.0});
        return;
    }
}

void draw_window(RoomDrawing& room, const house::PlanWindow& window) {
    const Frame glass = wall_stretch(room, *window.stretch);
    room.drawing.rectangle(glass, stroke::outline);
    for (const double share : {0.35, 0.65}) {
        const double x = glass.left + share * glass.width(), y = glass.top + share * glass.height();
        if (runs_west_east(window.wall))
            room.drawing.line({glass.left, y}, {glass.right, y}, stroke::line);
        else
            room.drawing.line({x, glass.top}, {x, glass.bottom}, stroke::line);
    }
    write_outside(room, glass, window.wall, window.name);
}

void draw_swing(RoomDrawing& room, const house::DoorSwing& swing, WallSide wall) {
    const double leaf = swing.leaf.si() * room.scale.per_metre;
    const Pixel hinge = room.scale.at(swing.hinge_east, swing.hinge_north);
    const Pixel east{hinge.x + (swing.towards_east ? leaf : -leaf), hinge.y};
    const Pixel north{hinge.x, hinge.y - (swing.towards_north ? leaf : -leaf)};
    const bool across = runs_west_east(wall);
    const Pixel edge = across ? north : east;
    room.drawing.line(hinge, edge, stroke::bold_line);
    room.taken.push_back(along(hinge, edge));
    room.leaders.emplace_back(hinge, edge);
    room.drawing.arc(hinge, across ? east : north, edge, stroke::thin);
}

}  // namespace

Pixel into_the_room(WallSide wall) {
    switch (wall) {
        case WallSide::north:
            return {0, 1};
        case WallSide::south:
            return {0, -1};
        case WallSide::east:
            return {-1, 0};
        case WallSide::west:
            break;
    }
    return {1, 0};
}

bool is_cold_beyond(const house::PlanWall& wall) { return wall.beyond != house::Space::heated_rooms; }

Frame wall_stretch(const RoomDrawing& room, const house::Stretch& stretch) {
    Frame frame = whole_wall(room.room(), stretch.wall);
    const Pixel from = room.scale.at(stretch.from, stretch.from), to = room.scale.at(stretch.to, stretch.to);
    if (runs_west_east(stretch.wall)) {
        frame.left = from.x;
        frame.right = to.x;
    } else {
        frame.top = to.y;
        frame.bottom = from.y;
    }
    return frame;
}

namespace {

void draw_studs(RoomDrawing& room, WallSide side) {
    const house::PlanWall& wall = room.plan().wall(side);
    for (const house::Stud& stud : wall.studs)
        room.drawing.rectangle(
            wall_stretch(room, {side, std::max(stud.from, units::Length()), std::min(stud.to, wall.length)}),
            stroke::outline);
}

}  // namespace

void draw_walls(RoomDrawing& room) {
    room.drawing.define_hatching("outside");
    room.drawing.open_group("walls");
    for (const WallSide side : sides) {
        const bool cold = is_cold_beyond(room.plan().wall(side));
        room.drawing.rectangle(whole_wall(room.room(), side), cold ? hatched : grey);
        draw_studs(room, side);
    }
    room.drawing.close_group();
}

void draw_windows(RoomDrawing& room) {
    room.drawing.open_group("windows");
    for (const house::PlanWindow& window : room.plan().windows)
        if (window.stretch) draw_window(room, window);
    room.drawing.close_group();
}

void draw_doors(RoomDrawing& room) {
    room.drawing.open_group("doors");
    for (const house::PlanDoor& door : room.plan().doors) {
        if (!door.stretch) continue;
        room.drawing.rectangle(wall_stretch(room, *door.stretch), stroke::outline);
        if (door.swing) draw_swing(room, *door.swing, door.wall);
    }
    room.drawing.close_group();
}

}  // namespace report
