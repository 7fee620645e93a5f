// The parts of the drawing of a room and its places, one file each; private to this folder.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "report/drawing.hpp"
#include "report/place_parts.hpp"

namespace report {

inline constexpr double wall_thickness = 12, place_radius = 11, half_cross = 5;
// Of walls: to outdoors or to a space without heat, and to heated rooms.
inline constexpr std::string_view hatched = R"x(fill="url(#outside)" stroke="#000" stroke-width="1.2")x";
inline constexpr std::string_view grey = R"x(fill="#bbb" stroke="#000" stroke-width="1.2")x";

inline constexpr std::string_view shaded =
    R"(fill="#000" fill-opacity="0.07" stroke="#000" stroke-width="1" stroke-dasharray="2 3")";

// From the room's metres to the paper; north is up.
struct PlanScale {
    double left = 0, bottom = 0, per_metre = 1;
    Pixel at(units::Length east, units::Length north) const {
        return {left + per_metre * east.si(), bottom - per_metre * north.si()};
    }
    Frame of(const house::Box& box) const;
};

struct RoomDrawing {
    const PlaceView& view;
    Drawing& drawing;
    PlanScale scale;
    std::vector<Frame> taken = {};                      // by marks and words: nothing is written over them
    std::vector<std::pair<Pixel, Pixel>> leaders = {};  // from faces to their numbers, doors: none cross

    const house::Plan& plan() const { return *view.room().plan; }
    Frame room() const { return scale.of({{}, {}, plan().width, plan().depth}); }
    bool is_free(const Frame& frame) const;
};

// Where a wall's stretch lies on the paper, with the wall's thickness.
Frame wall_stretch(const RoomDrawing& room, const house::Stretch& stretch);
// From a wall into the room, as a step of one pixel.
Pixel into_the_room(house::WallSide wall);
// Outdoors or a space without heat.
bool is_cold_beyond(const house::PlanWall& wall);
// From the wall or the cabinet a register is in or at; none of one in the ceiling.
std::optional<Pixel> away_from_its_back(const RoomDrawing& room, const registers::Location& location);

// place_svg_walls.cpp, place_svg_floor.cpp
void draw_walls(RoomDrawing& room);
void draw_windows(RoomDrawing& room);
void draw_doors(RoomDrawing& room);
void draw_joists(RoomDrawing& room);
void draw_fixtures(RoomDrawing& room);
// The names that fit nowhere in their outlines, which get a letter instead: "a", "b" in their order.
std::vector<std::string> name_fixtures(RoomDrawing& room);
std::string letter_of(std::size_t position);

// place_svg_places.cpp, place_svg_air.cpp
void draw_places(RoomDrawing& room);
void draw_number(Drawing& drawing, Pixel middle, std::size_t number, bool chosen);
void draw_cross(Drawing& drawing, Pixel middle);
void draw_throw(RoomDrawing& room);
void draw_falling_air(RoomDrawing& room);
std::string throw_words(const PlaceView& view);  // empty: none is drawn
std::string falling_words(const PlaceView& view);

// place_svg_legend.cpp: how far down it comes.
double draw_legend(RoomDrawing& room, Pixel top_left, const std::vector<std::string>& lettered);

}  // namespace report
