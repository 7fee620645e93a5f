#include "registers/draught.hpp"

#include <algorithm>
#include <cmath>

#include "units/unit.hpp"

namespace registers {
namespace {

constexpr double still = 0.05, fastest_tested = 0.5;        // m/s
constexpr double coldest_tested = 20, warmest_tested = 26;  // C
constexpr double most_turbulent_tested = 0.7;
constexpr double rounding = 1e-9;  // 20 C is 293.15 K and may come back a hair colder

bool is_tested(double celsius, double speed, double turbulence) {
    return celsius >= coldest_tested - rounding && celsius <= warmest_tested + rounding &&
           speed <= fastest_tested + rounding && turbulence <= most_turbulent_tested + rounding;
}

}  // namespace

Draught draught(units::Temperature air, units::Velocity speed, double turbulence) {
    const double celsius = units::unit::in_celsius(air);
    const double moving = std::max(speed.si(), still);
    const double percent =
        (34 - celsius) * std::pow(moving - still, 0.62) * (0.37 * moving * 100 * turbulence + 3.14);
    return {std::clamp(percent / 100, 0.0, 1.0), is_tested(celsius, moving, turbulence)};
}

}  // namespace registers
