// What moving air carries, over its density: the measures that sheets and jets of air are compared by. SI.
#pragma once

#include "units/quantity.hpp"

namespace registers {

using FlowPerWidth = units::Quantity<units::Dim<2, 0, -1, 0>>;
using Momentum = units::Quantity<units::Dim<4, 0, -2, 0>>;  // flow x speed
using MomentumPerWidth = units::Quantity<units::Dim<3, 0, -2, 0>>;

inline constexpr double gravity = 9.80665;  // m/s2, standard

}  // namespace registers
