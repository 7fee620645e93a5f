// The air on the plan of a room: how far the chosen register throws, and where cold air comes from.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "registers/jet.hpp"
#include "registers/outlet_pattern.hpp"
#include "report/figures.hpp"
#include "report/place_drawing.hpp"

namespace report {
namespace {

// Air, cut off at the walls.
const std::string blown = std::string(shaded) + R"x( clip-path="url(#inside)")x";

const house::PlanWindow* window_named(const house::Plan& plan, const std::string& name) {
    for (const house::PlanWindow& window : plan.windows)
        if (window.name == name && window.stretch) return &window;
    return nullptr;
}

// Where the cold air leaves the glass, and how far it is to where one stands.
struct Stream {
    Frame glass;
    Pixel inwards;
    double length = 0;
};

std::optional<Stream> stream_of(const RoomDrawing& room) {
    const questions::FallingAir* falling = room.view.felt_most();
    const house::PlanWindow* window = falling ? window_named(room.plan(), falling->window) : nullptr;
    if (!window || falling->speed <= units::Velocity()) return std::nullopt;
    constexpr double least = 24, margin = 6;
    const Pixel inwards = into_the_room(window->wall);
    const double across = inwards.x != 0 ? room.room().width() : room.room().height();
    const double length = falling->distance.si() * room.scale.per_metre;
    return Stream{wall_stretch(room, *window->stretch), inwards,
                  std::min(std::max(length, least), across - margin)};
}

// Seen from above, of a jet blown up or down: half its width where it ends, or at the ceiling or floor.
double radius_at_its_end(const RoomDrawing& room, const questions::Place& place) {
    const house::Box& face = place.location.face;
    const units::Length outlet = std::max(face.east - face.west, face.north - face.south);
    const units::Length reach = std::min(place.figures->warm.throw_length, room.view.room().ceiling);
    const double spread = registers::usual_pattern(place.location.mount).spread;
    return registers::width_at(reach, outlet, spread).si() / 2 * room.scale.per_metre;
}

void draw_fan(RoomDrawing& room, const questions::Place& place, double spread) {
    const double reach = place.figures->warm.throw_length.si() * room.scale.per_metre;
    const Pixel from = room.scale.of(place.location.face).middle();
    const std::optional<Pixel> inwards = away_from_its_back(room, place.location);
    if (spread >= 180 || !inwards) return room.drawing.circle(from, reach, blown);
    const double ahead = std::atan2(inwards->y, inwards->x), half = spread / 2 * std::numbers::pi / 180;
    const auto end = [&](double angle) {
        return Pixel{from.x + reach * std::cos(angle), from.y + reach * std::sin(angle)};
    };
    room.drawing.arc(from, end(ahead - half), end(ahead + half), blown, true);
}

}  // namespace

std::string throw_words(const PlaceView& view) {
    if (!view.answer.chosen) return {};
    const questions::Place& choice = view.answer.choice();
    const registers::Blows blows = registers::usual_pattern(choice.location.mount).blows;
    const units::Length reach = choice.figures->warm.throw_length;
    const std::size_t number = view.number_of(*view.answer.chosen);
    if (blows == registers::Blows::across)
        return fmt::format("throw of {}, {}", number, to_the_foot(reach, view.system));
    const bool up = blows == registers::Blows::up;
    if (reach >= view.room().ceiling)
        return fmt::format("warm air of {}, so wide where it meets the {}", number, up ? "ceiling" : "floor");
    return fmt::format("warm air of {}, so wide where it ends, {} {}", number,
                       to_the_foot(reach, view.system), up ? "up" : "down");
}

void draw_throw(RoomDrawing& room) {
    if (!room.view.answer.chosen) return;
    const questions::Place& choice = room.view.answer.choice();
    const registers::OutletPattern& pattern = registers::usual_pattern(choice.location.mount);
    room.drawing.open_group("throw");
    if (pattern.blows == registers::Blows::across)
        draw_fan(room, choice, pattern.spread);
    else
        room.drawing.circle(room.scale.of(choice.location.face).middle(), radius_at_its_end(room, choice),
                            blown);
    room.drawing.close_group();
}

std::string falling_words(const PlaceView& view) {
    const questions::FallingAir* falling = view.felt_most();
    if (!falling || falling->speed <= units::Velocity()) return {};
    return fmt::format("cold air off the {}: {}, {}", falling->window, figure(falling->speed, view.system),
                       stands_at(*falling, view.system));
}

void draw_falling_air(RoomDrawing& room) {
    const std::optional<Stream> stream = stream_of(room);
    if (!stream) return;
    room.drawing.open_group("falling-air");
    for (const double share : {0.12, 0.5, 0.88}) {
        const Frame& glass = stream->glass;
        const bool across = stream->inwards.y != 0;
        const Pixel edge{
            across ? glass.left + share * glass.width() : (stream->inwards.x > 0 ? glass.right : glass.left),
            across ? (stream->inwards.y > 0 ? glass.bottom : glass.top) : glass.top + share * glass.height()};
        const Pixel tip{edge.x + stream->inwards.x * stream->length,
                        edge.y + stream->inwards.y * stream->length};
        room.drawing.arrow(edge, tip);
        room.taken.push_back(along(edge, tip));
    }
    room.drawing.close_group();
}

}  // namespace report
