#include "registers/falling_air.hpp"

#include <algorithm>
#include <cmath>

#include "loads/surface_temperature.hpp"

namespace registers {
namespace {

constexpr units::Length near{0.4}, far{2.0};

// Of the speed in m/s to the root of K m.
double speed_factor(units::Length distance) {
    if (distance < near) return 0.055;
    if (distance < far) return 0.095 / (distance.si() + 1.32);
    return 0.028;
}

}  // namespace

ColdGlass cold_glass(units::Length height, units::Transmittance u, units::Resistance inside_film,
                     units::TemperatureDifference indoors_over_outdoors) {
    return {height, (1 - loads::temperature_factor(u, inside_film)) * indoors_over_outdoors};
}

units::Velocity falling_air_speed(const ColdGlass& glass, units::Length distance) {
    if (glass.colder.si() <= 0 || glass.height.si() <= 0) return {};
    const double root = std::sqrt(glass.colder.si() * glass.height.si());
    return units::Velocity(speed_factor(distance) * root);
}

units::TemperatureDifference falling_air_colder(const ColdGlass& glass, units::Length distance) {
    if (glass.colder.si() <= 0 || glass.height.si() <= 0) return {};
    return std::max(0.0, 0.30 - 0.034 * distance.si()) * glass.colder;
}

units::TemperatureDifference colder_at_most(units::Velocity speed, units::Length height,
                                            units::Length distance) {
    const double root = speed.si() / speed_factor(distance);
    return units::TemperatureDifference(root * root / height.si());
}

std::optional<units::Transmittance> glass_at_most(units::TemperatureDifference colder,
                                                  units::Resistance inside_film,
                                                  units::TemperatureDifference indoors_over_outdoors) {
    if (indoors_over_outdoors.si() <= 0) return std::nullopt;
    return (colder / indoors_over_outdoors) * (1 / inside_film);
}

}  // namespace registers
