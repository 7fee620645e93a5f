#include "routes/bay_section.hpp"

#include <algorithm>
#include <cmath>
#include <queue>

namespace routes {
namespace {

struct Point {
    double x = 0, y = 0;  // m, from the first side and from the top
};

// Half the sizes of a duct about its middle: with square corners, or with round ends (a circle, a flat oval).
struct Body {
    double half_width = 0, half_height = 0;
    bool round = false;
};

Body body_of(const house::Shape& shape) {
    if (const auto* round = std::get_if<house::Round>(&shape))
        return {round->diameter.si() / 2, round->diameter.si() / 2, true};
    if (const auto* oval = std::get_if<house::FlatOval>(&shape))
        return {oval->major.si() / 2, oval->minor.si() / 2, true};
    const auto& flat = std::get<house::Rectangular>(shape);
    return {flat.width.si() / 2, flat.height.si() / 2, false};
}

// What a pipe along the bay sweeps: all points no farther than `radius` from an upright line. A pipe across
// is a band from side to side instead, that starts at `high` and falls by `fall` for each metre of width.
struct Obstacle {
    double x = 0, high = 0, low = 0, radius = 0;
    bool across = false;
    double fall = 0;
};

Obstacle obstacle_of(const house::BayPipe& pipe, units::Length width) {
    const double radius = pipe.outside.si() / 2;
    const double a = pipe.top.si() + radius, b = pipe.other_top.si() + radius;
    if (pipe.across) return {0, a, a, radius, true, (b - a) / width.si()};
    return {pipe.from_side.si() + radius, std::min(a, b), std::max(a, b), radius};
}

// From the outside of a duct to a band across the bay: to its line, less what the duct reaches square to it.
double distance_to_band(const Body& duct, Point middle, const Obstacle& pipe) {
    const double end = duct.round ? std::min(duct.half_width, duct.half_height) : 0;
    const double cosine = 1 / std::hypot(1, pipe.fall), sine = std::abs(pipe.fall) * cosine;
    const double reach = (duct.half_width - end) * sine + (duct.half_height - end) * cosine + end;
    return std::abs(middle.y - pipe.high - pipe.fall * middle.x) * cosine - reach - pipe.radius;
}

// From the outside of a duct whose middle is at `middle` to the outside of the pipe; below zero they overlap.
double distance(const Body& duct, Point middle, const Obstacle& pipe) {
    if (pipe.across) return distance_to_band(duct, middle, pipe);
    const double dy = std::max({0.0, pipe.high - middle.y, middle.y - pipe.low});
    const double dx = std::abs(middle.x - pipe.x);
    if (duct.round) {
        const double end = std::min(duct.half_width, duct.half_height);  // radius of the round ends
        return std::hypot(std::max(0.0, dx - (duct.half_width - end)),
                          std::max(0.0, dy - (duct.half_height - end))) -
               end - pipe.radius;
    }
    const double beside = dx - duct.half_width, above = dy - duct.half_height;
    // Beyond a face the way to the pipe's line is straight, beyond a corner it is aslant, within both it is
    // negative.
    const double to_line = beside > 0 && above > 0 ? std::hypot(beside, above) : std::max(beside, above);
    return to_line - pipe.radius;
}

// The largest of the least distances over the places the duct's middle can take. Distances change no faster
// than the middle moves.
class Widest {
  public:
    Widest(const Body& duct, std::vector<Obstacle> pipes) : duct_(duct), pipes_(std::move(pipes)) {}

    // Stops as soon as it is known whether there is `enough`, where that is all that is asked.
    double over(Point low, Point high, std::optional<double> enough) {
        push(low, high);
        constexpr double accuracy = 1e-5;  // m
        constexpr int most_parts = 200'000;
        const auto settled = [&] { return enough && (best_ >= *enough || parts_.top().bound < *enough); };
        for (int i = 0; i < most_parts && !parts_.empty() && parts_.top().bound > best_ + accuracy; ++i) {
            if (settled()) break;
            split();
        }
        return best_;
    }

  private:
    struct Part {
        Point low, high;
        double bound = 0;
        bool operator<(const Part& other) const { return bound < other.bound; }
    };

    double least(Point middle) const {
        double nearest = 1e9;
        for (const Obstacle& pipe : pipes_) nearest = std::min(nearest, distance(duct_, middle, pipe));
        return nearest;
    }

    void push(Point low, Point high) {
        const double here = least({(low.x + high.x) / 2, (low.y + high.y) / 2});
        for (const Point corner : {low, high, Point{low.x, high.y}, Point{high.x, low.y}})
            best_ = std::max(best_, least(corner));
        best_ = std::max(best_, here);
        parts_.push({low, high, here + std::hypot(high.x - low.x, high.y - low.y) / 2});
    }

    void split() {
        const Part part = parts_.top();
        parts_.pop();
        const bool wide = part.high.x - part.low.x > part.high.y - part.low.y;
        Point middle_high = part.high, middle_low = part.low;
        (wide ? middle_high.x : middle_high.y) =
            wide ? (part.low.x + part.high.x) / 2 : (part.low.y + part.high.y) / 2;
        (wide ? middle_low.x : middle_low.y) = wide ? middle_high.x : middle_high.y;
        push(part.low, middle_high);
        push(middle_low, part.high);
    }

    Body duct_;
    std::vector<Obstacle> pipes_;
    std::priority_queue<Part> parts_;
    double best_ = -1e9;
};

constexpr double none_lacking = -1e-5;  // m; a spare above it passes

// passing: only whether the spare is above none_lacking matters, the figure may stop short.
double spare_lying_so(const house::Bay& bay, const Body& duct, bool passing) {
    const double width = bay.width.si(), depth = bay.depth.si();
    const double empty = std::min(width - 2 * duct.half_width, depth - 2 * duct.half_height);
    if (bay.pipes.empty() || empty < 0) return empty;
    std::vector<Obstacle> pipes;
    for (const house::BayPipe& pipe : bay.pipes) pipes.push_back(obstacle_of(pipe, bay.width));
    const double beside =
        Widest(duct, std::move(pipes))
            .over({duct.half_width, duct.half_height}, {width - duct.half_width, depth - duct.half_height},
                  passing ? std::optional<double>(bay.clearance.si() + none_lacking / 2) : std::nullopt);
    return std::min(empty, beside - bay.clearance.si());
}

// Whether a pipe lies within its bay and apart from the others.
bool has_room(const house::Bay& bay, std::size_t moved) {
    constexpr double slack = 1e-6;
    const house::BayPipe& pipe = bay.pipes[moved];
    const units::Length highest = std::min(pipe.top, pipe.other_top),
                        lowest = std::max(pipe.top, pipe.other_top);
    if (highest.si() < -slack || (lowest + pipe.outside - bay.depth).si() > slack) return false;
    if (!pipe.across &&
        (pipe.from_side.si() < -slack || (pipe.from_side + pipe.outside - bay.width).si() > slack))
        return false;
    for (std::size_t i = 0; i < bay.pipes.size(); ++i) {
        if (i != moved && house::run_through_each_other(pipe, bay.pipes[i], bay.width)) return false;
    }
    return true;
}

void shift(house::BayPipe& pipe, Way way, units::Length by) {
    switch (way) {
        case Way::to_first_side:
            pipe.from_side -= by;
            break;
        case Way::to_second_side:
            pipe.from_side += by;
            break;
        case Way::up:
            pipe.top -= by, pipe.other_top -= by;
            break;
        case Way::down:
            pipe.top += by, pipe.other_top += by;
            break;
    }
}

units::Length spare_either_way(const house::Bay& bay, const house::Shape& taken_up, bool passing) {
    const Body duct = body_of(taken_up);
    double most = spare_lying_so(bay, duct, passing);
    const Body turned{duct.half_height, duct.half_width, duct.round};
    if (duct.half_width != duct.half_height) most = std::max(most, spare_lying_so(bay, turned, passing));
    return units::Length(most);
}

bool passes_after(const house::Bay& bay, const house::Shape& taken_up, const Move& move) {
    house::Bay changed = bay;
    const auto moved = static_cast<std::size_t>(move.pipe);
    shift(changed.pipes[moved], move.way, move.by);
    return has_room(changed, moved) && passes(changed, taken_up);
}

}  // namespace

const char* word_of(Way way) {
    switch (way) {
        case Way::to_first_side:
            return "to the first side";
        case Way::to_second_side:
            return "to the second side";
        case Way::up:
            return "up";
        case Way::down:
            break;
    }
    return "down";
}

house::Shape outside(const house::Shape& shape, units::Resistance wrap) {
    constexpr units::Length a_side_for_r6{2 * units::unit::inch};
    const units::Length more = seam + 2 * (wrap / (6 * units::unit::r_value_us)) * a_side_for_r6;
    if (const auto* round = std::get_if<house::Round>(&shape)) return house::Round{round->diameter + more};
    if (const auto* oval = std::get_if<house::FlatOval>(&shape))
        return house::FlatOval{oval->major + more, oval->minor + more};
    const auto& flat = std::get<house::Rectangular>(shape);
    return house::Rectangular{flat.width + more, flat.height + more};
}

units::Length spare(const house::Bay& bay, const house::Shape& taken_up) {
    return spare_either_way(bay, taken_up, false);
}

bool passes(units::Length spare) { return spare.si() > none_lacking; }

bool passes(const house::Bay& bay, const house::Shape& taken_up) {
    return passes(spare_either_way(bay, taken_up, true));
}

std::optional<Move> least_move(const house::Bay& bay, const house::Shape& taken_up) {
    constexpr units::Length eighth{units::unit::inch / 8};
    house::Bay empty = bay;
    empty.pipes.clear();
    if (!passes(empty, taken_up)) return std::nullopt;
    const units::Length farthest = std::max(bay.width, bay.depth);
    for (units::Length by = eighth; by < farthest; by += eighth)
        for (int pipe = 0; pipe < static_cast<int>(bay.pipes.size()); ++pipe)
            for (const Way way : {Way::to_first_side, Way::to_second_side, Way::up, Way::down}) {
                const bool sideways = way == Way::to_first_side || way == Way::to_second_side;
                if (sideways && bay.pipes[static_cast<std::size_t>(pipe)].across) continue;
                const Move move{pipe, way, by};
                if (passes_after(bay, taken_up, move)) return move;
            }
    return std::nullopt;
}

}  // namespace routes
