// The cross section of a duct: round, or rectangular (a wall stack is a flat rectangle).
#pragma once

#include <variant>

#include "units/quantity.hpp"

namespace house {

struct Round {
    units::Length diameter;
    auto operator<=>(const Round&) const = default;
};
struct Rectangular {
    units::Length width;   // as written first
    units::Length height;  // as written second
    auto operator<=>(const Rectangular&) const = default;
};
using Shape = std::variant<Round, Rectangular>;

}  // namespace house
