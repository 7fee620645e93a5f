// Is a duct too small, fair, or larger than needed for its design flow?
//
//     too small            it loses more than the friction rate, or its air runs faster than its part may
//     larger than needed   a smaller size from the shelf would do for both
//
// A duct that carries no air leads nowhere and is not judged.
//
// Limits of velocity by the part a duct plays, for noise (trade training material; building design handbook:
// trunk 900 ft/min, branch two thirds, riser half of it; return: common practice).
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "ducts/duct_system.hpp"
#include "ducts/friction_rate.hpp"
#include "house/house.hpp"
#include "loads/air.hpp"
#include "units/quantity.hpp"

namespace ducts {

enum class DuctPart { supply_trunk, supply_branch, wall_stack, return_trunk, return_branch };
struct VelocityLimit {
    DuctPart part;
    std::string_view name;
    units::Velocity usual, most;  // usual: the upper end of what is recommended
    std::string_view source;      // and its mark
};
std::span<const VelocityLimit> velocity_limits();  // in the order of DuctPart
const VelocityLimit& velocity_limit(DuctPart part);

// A trunk is what others leave or join before it ends at the plenum or blower; a wall stack a flat rectangle
// no deeper than a stud.
DuctPart part_of(const house::House& house, const house::Duct& duct);

enum class Size { too_small, fair, larger_than_needed };
struct JudgedDuct {
    int duct = -1;  // position in House::ducts
    DuctPart part = DuctPart::supply_branch;
    units::MassFlow flow;  // the largest along it
    units::Velocity velocity;
    units::FrictionRate friction;  // a hidden duct's factor included
    bool too_fast = false, loses_too_much = false;
    std::optional<house::Shape>
        would_do;  // the smallest size of its kind that is enough, where it is smaller
    Size size() const;
};

// The next size down of the same kind; empty where it is the smallest.
std::optional<house::Shape> next_size_down(const house::Shape& shape);

// Every duct of a side whose shape the sheet gives, in the sheet's order.
std::vector<JudgedDuct> judge_ducts(const house::House& house, const Side& side, units::FrictionRate rate,
                                    const loads::Air& air);

}  // namespace ducts
