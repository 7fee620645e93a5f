#include "house/bay.hpp"

#include <algorithm>
#include <cmath>

namespace house {
namespace {

constexpr double slack = 1e-6;  // m; pipes that just touch are no mistake

double reach(const BayPipe& a, const BayPipe& b) { return ((a.outside + b.outside) / 2).si() - slack; }
double middle_from_side(const BayPipe& pipe) { return (pipe.from_side + pipe.outside / 2).si(); }

// How far the middle of one lies below the other's at the two ends of the bay.
std::pair<double, double> below(const BayPipe& a, const BayPipe& b) {
    const units::Length radii = (a.outside - b.outside) / 2;
    return {(a.top - b.top + radii).si(), (a.other_top - b.other_top + radii).si()};
}

bool alongside(const BayPipe& a, const BayPipe& b) {
    const auto [here, there] = below(a, b);
    // Heights change evenly from end to end: pipes that change places meet midway.
    const double nearest = here * there <= 0 ? 0 : std::min(std::abs(here), std::abs(there));
    return std::hypot(middle_from_side(a) - middle_from_side(b), nearest) < reach(a, b);
}

bool crossing(const BayPipe& along, const BayPipe& across, units::Length width) {
    const double fall = (across.other_top - across.top) / width;
    const double height =
        (across.top + across.outside / 2).si() + fall * middle_from_side(along);  // where they cross
    const auto apart = [&](units::Length top) {
        return std::abs((top + along.outside / 2).si() - height) / std::hypot(1, fall);
    };
    return std::max(apart(along.top), apart(along.other_top)) < reach(along, across);
}

}  // namespace

bool run_through_each_other(const BayPipe& a, const BayPipe& b, units::Length bay_width) {
    if (a.across && b.across) return false;
    if (!a.across && !b.across) return alongside(a, b);
    return a.across ? crossing(b, a, bay_width) : crossing(a, b, bay_width);
}

}  // namespace house
