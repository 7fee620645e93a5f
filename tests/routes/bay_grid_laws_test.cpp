// The search for a duct's place against a plain look at a grid of places, with distances to points of the
// pipes.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "routes/bay_section.hpp"
#include "units/unit.hpp"

namespace routes {
namespace {

using units::unit::inch;

double in_range(double low, double high) {
    return low + (high - low) * (*rc::gen::inRange(0, 1000)) / 1000.0;
}

// All in inches here: a tape's plain numbers.
struct Spot {
    double x = 0, y = 0, radius = 0;
};
constexpr int points_of_a_pipe = 80;
struct Crowd {
    double width = 0, depth = 0, clearance = 0;
    house::Bay bay;
    std::vector<Spot> spots;  // points of all pipes' middles
};

void add_pipe(Crowd& crowd, double outside, double from_side, double top, double other_top, bool across) {
    constexpr int steps = points_of_a_pipe;
    for (int i = 0; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        const double r = outside / 2;
        if (across) {  // it runs on through the joists on both sides
            const double part = 3 * share - 1;
            crowd.spots.push_back({part * crowd.width, top + r + part * (other_top - top), r});
        } else {
            crowd.spots.push_back({from_side + r, top + r + share * (other_top - top), r});
        }
    }
    house::BayPipe pipe;
    pipe.outside = outside * inch, pipe.from_side = from_side * inch;
    pipe.top = top * inch, pipe.other_top = other_top * inch;
    pipe.across = across;
    crowd.bay.pipes.push_back(pipe);
}

Crowd any_crowd() {
    Crowd crowd;
    crowd.width = in_range(7, 22), crowd.depth = in_range(5, 12), crowd.clearance = in_range(0, 1);
    crowd.bay.width = crowd.width * inch, crowd.bay.depth = crowd.depth * inch;
    crowd.bay.clearance = crowd.clearance * inch;
    const int pipes = *rc::gen::inRange(1, 4);
    for (int i = 0; i < pipes; ++i) {
        const double outside = in_range(0.5, 4);
        const double from = in_range(0, 1) * (crowd.width - outside), deep = crowd.depth - outside;
        const bool across = *rc::gen::inRange(0, 3) == 0;
        add_pipe(crowd, outside, from, in_range(0, 1) * deep, in_range(0, 1) * deep, across);
    }
    return crowd;
}

constexpr int places = 40;  // in each direction

template <class Best>
double best_of_grid(const Crowd& crowd, Best best_at) {
    double best = -1e9;
    for (int i = 0; i <= places; ++i)
        for (int j = 0; j <= places; ++j)
            best = std::max(best, best_at(crowd.width * i / places, crowd.depth * j / places));
    return best;
}

double step_of(const Crowd& crowd) { return std::hypot(crowd.width, crowd.depth) / places; }

// The points of a pipe stand some way apart.
double gap_of(const Crowd& crowd) { return 3 * std::hypot(crowd.width, crowd.depth) / points_of_a_pipe / 2; }

// Diameter of the largest round that finds a place.
double largest_round_of_grid(const Crowd& crowd) {
    return best_of_grid(crowd, [&](double x, double y) {
        double radius = std::min({x, y, crowd.width - x, crowd.depth - y});
        for (const Spot& spot : crowd.spots)
            radius = std::min(radius, std::hypot(x - spot.x, y - spot.y) - spot.radius - crowd.clearance);
        return 2 * radius;
    });
}

double largest_round(const house::Bay& bay) {
    double low = 0, high = 24;
    for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        (passes(spare(bay, house::Round{middle * inch})) ? low : high) = middle;
    }
    return low;
}

RC_GTEST_PROP(BayGrid, the_largest_round_is_that_of_a_grid_of_places, ()) {
    const Crowd crowd = any_crowd();
    const double by_search = largest_round(crowd.bay), by_grid = std::max(0.0, largest_round_of_grid(crowd));
    RC_ASSERT(by_search <= by_grid + step_of(crowd) + 0.001);
    RC_ASSERT(by_search >= by_grid - 2 * gap_of(crowd) * gap_of(crowd) - 0.001);
}

// How much room a rectangle leaves at its best place: to the walls all of it, to the pipes less the
// clearance.
double spare_of_grid(const Crowd& crowd, double half_width, double half_height) {
    return best_of_grid(crowd, [&](double x, double y) {
        double room = std::min(
            {x - half_width, crowd.width - x - half_width, y - half_height, crowd.depth - y - half_height});
        if (room < 0) return -1.0;
        room = 1e9;
        for (const Spot& spot : crowd.spots) {
            const double dx = std::max(0.0, std::abs(x - spot.x) - half_width);
            const double dy = std::max(0.0, std::abs(y - spot.y) - half_height);
            room = std::min(room, std::hypot(dx, dy) - spot.radius - crowd.clearance);
        }
        return room;
    });
}

RC_GTEST_PROP(BayGrid, a_rectangle_passes_where_a_grid_of_places_lets_it, ()) {
    const Crowd crowd = any_crowd();
    const double wide = in_range(2, 12), high = in_range(2, 5);
    const double by_grid =
        std::max(spare_of_grid(crowd, wide / 2, high / 2), spare_of_grid(crowd, high / 2, wide / 2));
    const double by_search = spare(crowd.bay, house::Rectangular{wide * inch, high * inch}) / inch;
    if (by_grid > gap_of(crowd)) RC_ASSERT(by_search >= -0.001);
    // A place the grid misses lies within one step of one it looks at, where the walls allow that.
    const house::Rectangular larger{(wide + 2 * step_of(crowd)) * inch, (high + 2 * step_of(crowd)) * inch};
    if (passes(spare(crowd.bay, larger))) RC_ASSERT(by_grid >= -0.001);
}

}  // namespace
}  // namespace routes
