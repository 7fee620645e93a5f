// What bends, boots and takeoffs cost: one table of plainly described fittings, each with one of a few loss
// laws.
//
//     fixed     loss = C x velocity pressure in the duct that holds the fitting
//     takeoff   loss = (1 + s^2 - 2 s cos(angle)) x velocity pressure in the trunk, upstream of the takeoff;
//               s = branch velocity / trunk velocity
//
// A takeoff with no trunk velocity leaves a plenum: that is an entry, its fixed C on the branch's velocity
// pressure. In a trunk the velocity goes to 0 only together with the branch's, so the change of law is never
// felt.
//
// Source: general duct tables for C; general pipe-flow handbooks (dividing tee) for the takeoff. Changed
// there: their factors that jump with the shares of flow and area (0.6 to 1.3) are taken as 1, so that the
// loss is smooth; exact at right angles for a branch up to 0.3 of the trunk's area, above that up to twice
// too high. C is good to +-30 % at best; low and high give the honest range. Reynolds number and aspect ratio
// are left out. Equivalent length and C are two spellings of one loss: equivalent length = loss / friction
// per length at the real flow and size.
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "house/place.hpp"
#include "loads/air.hpp"
#include "units/quantity.hpp"

namespace ducts {

enum class LossLaw { fixed, takeoff };

struct Fitting {
    std::string_view name;
    LossLaw law;
    double coefficient, low, high;  // fixed: C; takeoff: C as an entry from a plenum
    double angle_degrees;           // takeoff: between branch and trunk; 0 otherwise
    std::string_view source;
};

std::span<const Fitting> fittings();
std::variant<const Fitting*, house::Mistake> look_up_fitting(const house::CatalogueName& name);
// What a turn counted but not named is taken for: "square" or "rounded".
const Fitting& counted_turn(bool square);

// Velocity in the duct that holds the fitting, and in the trunk it leaves (0 from a plenum); both 0 or more.
units::Pressure fitting_loss(const Fitting& fitting, units::Velocity in_duct, units::Velocity in_trunk,
                             const loads::Air& air);
units::Pressure velocity_pressure(units::Velocity velocity, const loads::Air& air);

}  // namespace ducts
