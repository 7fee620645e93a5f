// The friction rate: how much pressure each length of duct may lose.
//
//     available static pressure = blower's external static
//                                 - devices outside the maker's curve - register - grille
//     total effective length    = longest supply path + longest return path, fittings as equivalent lengths
//     friction rate             = available static pressure / total effective length
//
// Trade-association procedure (common practice). A fitting's equivalent length is its loss divided by the
// duct's friction per length, both at the design flow and real size; where that friction is below the least
// sensible rate, by that rate, so that a duct with little air does not count its fittings as miles. "Longest"
// is by effective length. Static and total pressure are not told apart here: with like velocities in both
// plenums the error is under 0.03 in.wc. Sensible rates run from 0.06 to 0.18 in.wc/100 ft.
#pragma once

#include <string>
#include <vector>

#include "ducts/blower.hpp"
#include "ducts/duct_system.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method friction_rate_method{"friction rate",
                                                    "available static pressure / total effective length",
                                                    "trade-association procedure, common practice"};
inline constexpr units::FrictionRate least_sensible_rate{0.06 * 249.08891 / 30.48};
inline constexpr units::FrictionRate most_sensible_rate{0.18 * 249.08891 / 30.48};

// The friction by which the fittings of a duct of so much friction are turned into length.
units::FrictionRate counting_rate(units::FrictionRate of_the_duct);

struct PathPiece {
    int duct = -1;  // position in House::ducts; -1: a run to rooms not described
    units::Length length, equivalent;
    units::Pressure fittings;        // what they lose, a hidden duct's factor included
    units::FrictionRate counted_at;  // the rate by which that is turned into length
};
struct Path {
    std::vector<PathPiece> pieces;  // from plenum or blower outwards
    units::Length total() const;
};

struct PressureLoss {
    std::string name;  // "filter", "supply register"
    units::Pressure loss;
};

struct FrictionRateBudget {
    units::Pressure external_static;
    std::vector<PressureLoss> taken;  // devices, register, grille
    units::Pressure available;        // may be zero or below: the blower has nothing left for the ducts
    Path supply, return_side;         // where no return duct is described: one piece of the assumed length
    units::Length total_effective_length;
    units::FrictionRate rate;  // not below zero
};

FrictionRateBudget friction_rate(const house::House& house, const DuctSystem& system,
                                 const DesignBlower& blower, const loads::Air& supply_air,
                                 const loads::Air& return_air);

}  // namespace ducts
