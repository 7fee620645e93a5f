#include "ducts/crowded_fittings.hpp"

#include <algorithm>

namespace ducts {

bool stand_close(const Section& section, units::Length length, int fittings) {
    if (fittings < 2) return false;
    return length / fittings < far_apart_diameters * section.hydraulic_diameter;
}

double inlet_allowance(double diameters_straight) {
    constexpr double none = 2.5, at_two = 1.6, at_five = 0.8;
    const double d = std::max(0.0, diameters_straight);
    if (d >= far_apart_diameters) return 0;
    return d <= 2 ? none + (at_two - none) * d / 2 : at_two + (at_five - at_two) * (d - 2) / 3;
}

}  // namespace ducts
