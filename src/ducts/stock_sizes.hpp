// Sizes that a shop has on the shelf (common practice, North America), and how fast air may run in them.
#pragma once

#include <span>
#include <string_view>

#include "house/shape.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace ducts {

std::span<const house::Round> stock_round_pipes();            // 3 to 20 in, rising
std::span<const house::Rectangular> stock_wall_stacks();      // 2-1/4 x 10 in ..., rising in what they carry
std::span<const house::Rectangular> stock_floor_registers();  // rising in area
std::span<const house::Rectangular> stock_wall_registers();   // rising in area

// Velocity above which a duct of this kind is heard (trade training material; residential).
inline constexpr units::Velocity branch_velocity_limit{600 * units::unit::foot_per_minute};
inline constexpr units::Velocity trunk_velocity_limit{900 * units::unit::foot_per_minute};

// The smallest stock round pipe that is not smaller than `least`; the largest one where none is large enough.
house::Round round_up(units::Length least);

}  // namespace ducts
