#include "registers/buoyant_jet.hpp"

#include <algorithm>
#include <cmath>

namespace registers {
namespace {

constexpr double bend = 0.407, lift = 1.83;

// Ar x lift / (K x area): what buoyancy adds to 1 for each m2 of distance squared, 1/m2.
double buoyancy(const WarmJet& warm, Blows direction) {
    if (direction == Blows::across || !blows(warm.jet)) return 0;
    const double along = direction == Blows::up ? 1 : -1;
    return along * lift / warm.jet.k * archimedes(warm) / warm.jet.area.si();
}

}  // namespace

double archimedes(const WarmJet& warm) {
    if (!blows(warm.jet)) return 0;
    const double speed = outlet_speed(warm.jet).si();
    return gravity * std::sqrt(warm.jet.area.si()) * warm.warmer.si() / (speed * speed * warm.room.si());
}

units::Length rise(const WarmJet& warm, units::Length distance) {
    if (!blows(warm.jet)) return {};
    const double x = distance.si();
    return units::Length(bend / warm.jet.k * archimedes(warm) * x * x * x / warm.jet.area.si());
}

units::Velocity speed_at(const WarmJet& warm, Blows direction, units::Length distance) {
    const double x = distance.si();
    return std::cbrt(std::max(0.0, 1 + buoyancy(warm, direction) * x * x)) * speed_at(warm.jet, distance);
}

std::optional<units::Length> stops_at(const WarmJet& warm, Blows direction) {
    if (!blows(warm.jet)) return units::Length();
    const double against = -buoyancy(warm, direction);
    if (against <= 0) return std::nullopt;
    return units::Length(1 / std::sqrt(against));
}

}  // namespace registers
