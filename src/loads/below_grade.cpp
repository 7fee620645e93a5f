#include "loads/below_grade.hpp"

#include <cmath>
#include <numbers>

namespace loads {

using std::numbers::pi;

units::Transmittance below_grade_wall(units::Length from, units::Length to, units::Resistance resistance,
                                      units::Conductivity soil) {
    const units::Length beyond = 2 * (soil * resistance) / pi;
    return 2 * soil / (pi * (to - from)) * std::log((to + beyond) / (from + beyond));
}

units::Transmittance below_grade_floor(units::Length shortest_width, units::Length depth,
                                       units::Resistance resistance, units::Conductivity soil) {
    const units::Length beyond = depth / 2 + soil * resistance / pi;
    return 2 * soil / (pi * shortest_width) * std::log((shortest_width / 2 + beyond) / beyond);
}

}  // namespace loads
