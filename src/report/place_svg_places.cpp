// The places on the plan of a room: each face to scale with its number, a cross where none can be built.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "report/place_drawing.hpp"

namespace report {
namespace {

bool lies_within(const Frame& inner, const Frame& outer) {
    return inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top &&
           inner.bottom <= outer.bottom;
}

// On which side of the line from a to b.
double side_of(Pixel a, Pixel b, Pixel c) { return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x); }

bool cross(std::pair<Pixel, Pixel> p, std::pair<Pixel, Pixel> q) {
    return side_of(p.first, p.second, q.first) * side_of(p.first, p.second, q.second) < 0 &&
           side_of(q.first, q.second, p.first) * side_of(q.first, q.second, p.second) < 0;
}

// Whether a line comes closer to a number than its circle's edge.
bool runs_through(std::pair<Pixel, Pixel> line, Pixel number) {
    const double x = line.second.x - line.first.x, y = line.second.y - line.first.y;
    const double length = x * x + y * y;
    if (!(length > 0)) return false;
    const double along =
        std::clamp(((number.x - line.first.x) * x + (number.y - line.first.y) * y) / length, 0.0, 1.0);
    return std::hypot(line.first.x + along * x - number.x, line.first.y + along * y - number.y) <
           place_radius;
}

bool tangles(const RoomDrawing& room, std::pair<Pixel, Pixel> leader) {
    return std::any_of(room.leaders.begin(), room.leaders.end(), [&](const auto& other) {
        return cross(leader, other) || runs_through(leader, other.second) ||
               runs_through(other, leader.second);
    });
}

// Beside the face, first towards the middle of the room, farther off where something is in the way; on the
// face itself where there is no room at all.
Pixel number_beside(const RoomDrawing& room, const Frame& face, Pixel inwards) {
    const double first = std::atan2(inwards.y, inwards.x);
    const double clear = place_radius + 4 + (inwards.x != 0 ? face.width() : face.height()) / 2;
    constexpr int directions = 32;
    for (const bool may_tangle : {false, true})
        for (double away = clear; away < clear + 110; away += 9)
            for (int turn = 0; turn < directions; ++turn) {
                const int step = turn % 2 == 0 ? -turn / 2 : (turn + 1) / 2;  // 0, 1, -1, 2 ...
                const double angle = first + step * 2 * std::numbers::pi / directions;
                const Pixel at{face.middle().x + away * std::cos(angle),
                               face.middle().y + away * std::sin(angle)};
                const Frame circle = around(at, place_radius + 2, place_radius + 2);
                const bool free = lies_within(circle, room.room()) && room.is_free(circle);
                if (free && (may_tangle || !tangles(room, {face.middle(), at}))) return at;
            }
    return face.middle();
}

// Seen from above a register in a wall is a strip; the plan keeps room for a hand before it.
Frame seen_from_above(const RoomDrawing& room, const registers::Location& location) {
    constexpr double strip = 4;
    Frame face = room.scale.of(location.face);
    const bool in_a_wall =
        location.mount == house::Mount::low_wall || location.mount == house::Mount::high_wall;
    if (!in_a_wall || !location.wall) return face;
    const Pixel inwards = into_the_room(*location.wall);
    if (inwards.x > 0) face.right = std::min(face.right, face.left + strip);
    if (inwards.x < 0) face.left = std::max(face.left, face.right - strip);
    if (inwards.y > 0) face.bottom = std::min(face.bottom, face.top + strip);
    if (inwards.y < 0) face.top = std::max(face.top, face.bottom - strip);
    return face;
}

void draw_place(RoomDrawing& room, std::size_t index) {
    const registers::Location& location = room.view.place(index).location;
    const bool chosen = room.view.is_chosen(index);
    const Frame face = seen_from_above(room, location);
    const Pixel number = number_beside(room, face, away_from_its_back(room, location).value_or(Pixel{0, 1}));
    room.drawing.open_group(fmt::format("place-{}", room.view.number_of(index)),
                            chosen ? "class=\"chosen\"" : "");
    room.drawing.rectangle(face, chosen ? stroke::filled : stroke::outline);
    room.drawing.line(face.middle(), number, stroke::thin);
    draw_number(room.drawing, number, room.view.number_of(index), chosen);
    room.drawing.close_group();
    room.taken.push_back(around(number, place_radius + 2, place_radius + 2));
    room.leaders.emplace_back(face.middle(), number);
}

}  // namespace

void draw_cross(Drawing& drawing, Pixel middle) {
    constexpr double c = half_cross;
    drawing.line({middle.x - c, middle.y - c}, {middle.x + c, middle.y + c}, stroke::line);
    drawing.line({middle.x - c, middle.y + c}, {middle.x + c, middle.y - c}, stroke::line);
}

void draw_number(Drawing& drawing, Pixel middle, std::size_t number, bool chosen) {
    drawing.circle(middle, place_radius, chosen ? stroke::filled : stroke::outline);
    drawing.text({middle.x, middle.y + 4.5}, fmt::format("{}", number),
                 {13, Anchor::middle, true, 0, chosen ? "#fff" : "#000"});
}

std::optional<Pixel> away_from_its_back(const RoomDrawing& room, const registers::Location& location) {
    if (location.wall) return into_the_room(*location.wall);
    for (const house::Fixture& fixture : room.plan().fixtures) {
        if (location.where != registers::Where::toe_kick || fixture.name != location.name) continue;
        const Frame cabinet = room.scale.of(fixture.box);
        const Pixel face = room.scale.of(location.face).middle(), middle = cabinet.middle();
        // By how much of the cabinet's own width and depth the face is off its middle.
        const double x = (face.x - middle.x) / cabinet.width(), y = (face.y - middle.y) / cabinet.height();
        if (std::abs(x) > std::abs(y)) return Pixel{x > 0 ? 1.0 : -1.0, 0};
        return Pixel{0, y > 0 ? 1.0 : -1.0};
    }
    return std::nullopt;
}

void draw_places(RoomDrawing& room) {
    room.drawing.open_group("not-possible");
    for (const questions::Place& place : room.view.answer.places) {
        if (place.figures) continue;
        const Pixel middle = room.scale.at(place.location.middle.east, place.location.middle.north);
        draw_cross(room.drawing, middle);
        room.taken.push_back(around(middle, half_cross + 1, half_cross + 1));
    }
    room.drawing.close_group();
    const std::vector<std::size_t> rows = room.view.rows();
    for (const std::size_t index : rows)
        room.taken.push_back(seen_from_above(room, room.view.place(index).location));
    if (room.view.answer.chosen) draw_place(room, *room.view.answer.chosen);
    for (const std::size_t index : rows)
        if (!room.view.is_chosen(index)) draw_place(room, index);
}

}  // namespace report
