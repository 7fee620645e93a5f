// A stack or a boot in the bay of an outside wall: what is left behind it for insulation, how cold its metal
// gets while the blower rests, and the heat it loses while warm air runs in it.
//
//     left       bay - 3-1/4 in - 1/4 in of seam; no less than 0, filled with rigid board
//     behind     layers outside the bay + board
//     at rest    outdoors + (room - outdoors) x (Ro + behind) / (Ro + behind + Rs)
//     sweats     above the humidity of the room's air at which water forms on that (surface_temperature.hpp)
//     loses      face x (air in it - outdoors) / (Ro + behind + Ri)
//     enough     R-6 or more behind it
//
// Source: steady heat flow through layers. Ro 0.030 m2 K/W, outside film, ASHRAE Handbook-Fundamentals 2021
// ch. 26; Rs 0.25 still air before a covered surface (memory: EN ISO 13788, mould); Ri 0.06, as in
// ducts/duct_sweat.hpp. R-6: a federal guide for new houses wants that much of continuous insulation outside
// of a duct in an outside wall (read); some codes want more. Range: one bay; the studs beside it and air
// that leaks into the bay are left out, so the metal is colder yet. Accuracy: +-2 K of the metal; the loss
// +-30 %. Throws house::CannotAnswer below -100 C.
#pragma once

#include "loads/method.hpp"
#include "loads/outside_the_bay.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace registers {

inline constexpr units::Length stack_depth{3.25 * units::unit::inch}, stack_seam{0.25 * units::unit::inch};
inline constexpr units::Resistance enough_behind_a_stack{6 * units::unit::r_value_us};
inline constexpr units::Resistance stack_outside_film{0.030}, stack_covered_film{0.25},
    stack_inner_film{0.06};
inline constexpr loads::Method stack_in_wall_method{
    "stack in an outside wall, while it rests",
    "outdoors + (room - outdoors) x (Ro + behind) / (Ro + behind + Rs)",
    "steady heat flow; Rs 0.25 m2 K/W, EN ISO 13788 (memory)"};

struct StackInWall {
    units::Length left;          // behind it
    units::Resistance behind;    // without films
    units::Temperature at_rest;  // its metal
    double sweats_above = 1;     // relative humidity of the room's air
    units::Power loses;
    bool wall_assumed = false;  // its layers are not known, the usual ones are taken
    bool enough() const { return behind >= enough_behind_a_stack; }
};

struct StackSetting {
    loads::OutsideTheBay wall;
    units::Area face;  // of stack and boot, towards outdoors
    units::Temperature room, outdoors, air;
};

bool holds_a_stack(const loads::OutsideTheBay& wall);  // the bay is deep enough for one
StackInWall stack_in_wall(const StackSetting& setting);

}  // namespace registers
