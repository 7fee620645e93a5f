// The cross section of a duct, inside: round, rectangular (a wall stack is a flat rectangle), or flat oval.
#pragma once

#include <utility>
#include <variant>

#include "units/quantity.hpp"

namespace house {

using Two = std::pair<units::Length, units::Length>;

struct Round {
    units::Length diameter;
    auto operator<=>(const Round&) const = default;
};
struct Rectangular {
    units::Length width;   // as written first
    units::Length height;  // as written second
    auto operator<=>(const Rectangular&) const = default;
};
struct FlatOval {
    units::Length major;  // over the round ends
    units::Length minor;  // no more than major
    auto operator<=>(const FlatOval&) const = default;
};
using Shape = std::variant<Round, Rectangular, FlatOval>;

struct NarrowestSide {
    units::Length operator()(const Round& round) const { return round.diameter; }
    units::Length operator()(const Rectangular& flat) const {
        return flat.width < flat.height ? flat.width : flat.height;
    }
    units::Length operator()(const FlatOval& oval) const { return oval.minor; }
};
inline units::Length narrowest_side(const Shape& shape) { return std::visit(NarrowestSide{}, shape); }

}  // namespace house
