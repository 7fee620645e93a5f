// A place in words: where it is, what stops it, why it is ruled out.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/figures.hpp"
#include "report/place_parts.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::RuledOut;
using registers::Location;
using registers::Stop;
using registers::Where;

constexpr units::Length hardly_off = 0.5 * units::unit::inch;

bool runs_west_east(const Location& location) {
    return location.wall == house::WallSide::north || location.wall == house::WallSide::south;
}

std::string side_of_the_window(const Location& location) {
    const bool first = location.off_centre < units::Length();
    return runs_west_east(location) ? (first ? "west" : "east") : (first ? "south" : "north");
}

std::string wall_of(const Location& location) {
    return location.wall ? std::string(house::word(*location.wall)) : std::string("inner");
}

const char* inside_or_outside(const Location& location) {
    return location.where == Where::outside_wall ? "outside" : "inside";
}

bool is_in_a_wall(house::Mount mount) {
    return mount == house::Mount::low_wall || mount == house::Mount::high_wall;
}

// Of one in the ceiling: the middle, or so far from two walls.
std::string in_the_ceiling(const PlaceView& view, const Location& location) {
    constexpr units::Length about = 6 * units::unit::inch;
    const house::Room& room = view.room();
    const bool middle = abs(location.middle.east - room.width / 2) < about &&
                        abs(location.middle.north - room.depth / 2) < about;
    if (middle) return "middle";
    return fmt::format("{} from the west wall, {} from the south wall",
                       to_the_inch(location.middle.east, view.system),
                       to_the_inch(location.middle.north, view.system));
}

std::string short_words(const PlaceView& view, const Location& location) {
    const std::string mount(house::word(location.mount));
    switch (location.where) {
        case Where::under_window:
            return mount + ", under the " + location.name;
        case Where::beside_window:
            return mount + ", " + side_of_the_window(location) + " of the " + location.name;
        case Where::toe_kick:
            return mount + ", " + location.name;
        case Where::ceiling:
            return mount + ", " + in_the_ceiling(view, location);
        case Where::outside_wall:
        case Where::inside_wall:
            break;
    }
    return fmt::format("{}, {}{} ({})", mount, wall_of(location), is_in_a_wall(location.mount) ? "" : " wall",
                       inside_or_outside(location));
}

std::string along_its_wall(const PlaceView& view, const Location& location) {
    if (!location.wall) return {};
    return fmt::format(", {} from its {} end", to_the_inch(location.along, view.system),
                       runs_west_east(location) ? "west" : "south");
}

std::string opening_of(const Location& location) {
    switch (location.mount) {
        case house::Mount::floor:
            return "in the floor";
        case house::Mount::low_wall:
            return "low in the wall";
        case house::Mount::toe_kick:
            return "in the toe kick";
        case house::Mount::high_wall:
            return "high in the wall";
        case house::Mount::ceiling:
            break;
    }
    return "in the ceiling";
}

}  // namespace

std::string to_the_inch(units::Length length, units::System system) {
    const units::Length step = system == units::System::us ? units::unit::inch : 10 * units::unit::millimetre;
    return figure(std::round(length / step) * step, system);
}

std::string to_the_foot(units::Length length, units::System system) {
    const units::Length step =
        system == units::System::us ? units::unit::foot : 100 * units::unit::millimetre;
    return figure(std::round(length / step) * step, system);
}

std::string where_words(const PlaceView& view, const Location& location) {
    const std::string off = off_centre_words(view, location);
    const std::string words = short_words(view, location);
    if (!off.empty()) return words + ", " + off;
    // Of those on the same side of possible: one that is stopped stands in another list.
    const auto alike = std::count_if(
        view.answer.places.begin(), view.answer.places.end(), [&](const questions::Place& place) {
            return place.location.stopped.has_value() == location.stopped.has_value() &&
                   short_words(view, place.location) == words;
        });
    return alike > 1 ? words + along_its_wall(view, location) : words;
}

std::string where_sentence(const PlaceView& view, const Location& location) {
    const std::string opening = opening_of(location);
    switch (location.where) {
        case Where::under_window:
            return opening + " under the " + location.name;
        case Where::beside_window:
            return opening + " " + side_of_the_window(location) + " of the " + location.name;
        case Where::toe_kick:
            return opening + " of the " + location.name;
        case Where::ceiling:
            return opening + ", " + in_the_ceiling(view, location);
        case Where::outside_wall:
        case Where::inside_wall:
            break;
    }
    const std::string wall = wall_of(location) + " wall" + along_its_wall(view, location);
    if (location.mount == house::Mount::low_wall) return "low in the " + wall;
    if (location.mount == house::Mount::high_wall) return "high in the " + wall;
    return opening + " at the " + wall;
}

std::string off_centre_words(const PlaceView& view, const Location& location) {
    if (location.where != Where::under_window || abs(location.off_centre) < hardly_off) return {};
    return fmt::format("{} {} of its centre", to_the_inch(abs(location.off_centre), view.system),
                       side_of_the_window(location));
}

std::string stopped_words(const Location& location) {
    if (!location.stopped) return {};
    const registers::Stopped& stopped = *location.stopped;
    switch (stopped.by) {
        case Stop::joist:
            return fmt::format("joist {} is in the way of the boot", stopped.member);
        case Stop::stud:
            return fmt::format("stud {} is in the way of the boot", stopped.member);
        case Stop::fixture:
            return (location.mount == house::Mount::floor ? "under the " : "behind the ") + stopped.name;
        case Stop::door_swing:
            return "the door swings over it, or hides it when open";
        case Stop::door:
            return "the door is there";
        case Stop::splash:
            return "in the splash of the " + stopped.name;
        case Stop::shallow_wall:
            break;
    }
    return "the wall has no stud bay deep enough for a stack";
}

std::string ruled_out_words(RuledOut ruled_out) {
    switch (ruled_out) {
        case RuledOut::no:
            return {};
        case RuledOut::stopped:
            return "cannot be built";
        case RuledOut::too_little_air:
            return "it brings too little air";
        case RuledOut::stays_up:
            return "its warm air stays under the ceiling: cold feet";
        case RuledOut::cold_wall:
            return "too little insulation is left behind its stack";
        case RuledOut::loud:
            break;
    }
    return "it would be loud";
}

std::string stands_at(const questions::FallingAir& falling, units::System system) {
    if (!falling.at.empty()) return "at the " + falling.at;
    return to_the_inch(falling.distance, system) + " from the glass";
}

std::vector<std::size_t> PlaceView::rows() const {
    std::vector<std::size_t> rows;
    for (std::size_t i = 0; i < answer.places.size(); ++i)
        if (answer.places[i].figures) rows.push_back(i);
    return rows;
}

std::size_t PlaceView::number_of(std::size_t index) const {
    const auto buildable = [](const questions::Place& place) { return place.figures.has_value(); };
    const auto end = answer.places.begin() + static_cast<std::ptrdiff_t>(index) + 1;
    return static_cast<std::size_t>(std::count_if(answer.places.begin(), end, buildable));
}

}  // namespace report
