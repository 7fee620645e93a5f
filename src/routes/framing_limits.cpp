#include "routes/framing_limits.hpp"

#include <algorithm>

#include "units/unit.hpp"

namespace routes {

JoistLimits joist_limits(units::Length depth) {
    constexpr units::Length both_edges{4 * units::unit::inch};
    const units::Length between_edges = std::max(units::Length(), depth - both_edges);
    return {std::min(depth / 3, between_edges), depth / 6, depth / 3, depth / 4};
}

StudLimits stud_limits(units::Length width, bool bearing) {
    const units::Length three_fifths = 0.6 * width;
    if (!bearing) return {0.4 * width, three_fifths, three_fifths};
    return {0.25 * width, 0.4 * width, three_fifths};
}

}  // namespace routes
