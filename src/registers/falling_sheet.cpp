#include "registers/falling_sheet.hpp"

#include <cmath>

namespace registers {
namespace {

const double prandtl = 0.71;
const double drag = 1 + 0.494 * std::pow(prandtl, 2.0 / 3.0);

}  // namespace

FallingSheet falling_sheet(const ColdGlass& glass, units::Temperature room, const loads::Air& room_air) {
    if (glass.colder.si() <= 0 || glass.height.si() <= 0) return {};
    const double height = glass.height.si();
    const double nu = room_air.viscosity.si() / room_air.density.si();
    const double grashof = gravity * glass.colder.si() / room.si() * height * height * height / (nu * nu);
    const units::Velocity u{1.185 * nu / height * std::sqrt(grashof / drag)};
    const units::Length thickness =
        0.565 * std::pow(prandtl, -8.0 / 15.0) * std::pow(drag / grashof, 0.1) * glass.height;
    return {0.537 * u, thickness, 0.1464 * (u * thickness), 0.0523 * (u * u * thickness)};
}

}  // namespace registers
