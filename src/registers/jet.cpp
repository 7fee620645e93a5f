#include "registers/jet.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace registers {
namespace {

constexpr double of_last_zone = 0.7;

// Over a distance a speed, over a speed a distance: K x flow / sqrt(area), m2/s.
FlowPerWidth reach(const Jet& jet) { return jet.k * (jet.flow / units::Length(std::sqrt(jet.area.si()))); }

}  // namespace

bool blows(const Jet& jet) { return jet.flow.si() > 0 && jet.area.si() > 0 && jet.k > 0; }

units::Velocity outlet_speed(const Jet& jet) { return blows(jet) ? jet.flow / jet.area : units::Velocity(); }

units::Velocity speed_at(const Jet& jet, units::Length distance) {
    if (!blows(jet)) return {};
    if (distance.si() <= 0) return outlet_speed(jet);
    return std::min(outlet_speed(jet), reach(jet) / distance);
}

units::Length distance_to(const Jet& jet, units::Velocity speed) {
    if (!blows(jet) || outlet_speed(jet) < speed) return {};
    return reach(jet) / speed;
}

units::Length throw_of(const Jet& jet) { return of_last_zone * distance_to(jet, end_of_throw); }

units::Length width_at(units::Length distance, units::Length outlet_width, double spread_degrees) {
    if (spread_degrees >= 360) return outlet_width + 2 * distance;
    return outlet_width + 2 * std::tan(spread_degrees / 2 * std::numbers::pi / 180) * distance;
}

Momentum momentum_of(const Jet& jet) { return jet.flow * outlet_speed(jet); }

}  // namespace registers
