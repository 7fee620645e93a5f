// Where in a room a register could stand, and what is in the way of each place.
//
// Along every outside wall under each window (centred; where a joist is in the boot's way, moved along the
// wall to the nearest place that clears it) and beside it, along outside walls without a window; on inside
// walls; in the toe kick of cabinets; in the ceiling; high on an inside wall where that is asked for. A place
// that cannot be built is kept, with what stops it.
//
//     floor register   its long side along the wall, 2 in of floor left at the wall for trim and sill
//     floor boot       fits between two joists with 1/4 in left on each side; moved by no more than half
//                      the window and half the register
//     wall boot        between two studs with 1/8 in left on each side, where the sheet places them; else
//                      it is taken to stand between them
//     splash           within 12 in of a shower nothing opens upwards
//     wall register    clear of doors and of what stands against the wall; of an inside wall as near as can
//                      be to where the run comes from, of an outside wall to its middle
//
// Source: geometry of the plan; the distances are common practice. Nothing here is warm or moves. Exact, as
// the sheet's tape.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "house/house.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace registers {

enum class Where { under_window, beside_window, outside_wall, inside_wall, toe_kick, ceiling };

// What stops a place: `name` tells the fixture, `member` the number of the joist or stud.
enum class Stop { joist, stud, fixture, door_swing, door, splash, shallow_wall };
struct Stopped {
    Stop by = Stop::joist;
    std::string name;
    int member = 0;
};

struct Spot {
    units::Length east, north;  // of the room's south-west corner
};

struct Location {
    house::Mount mount = house::Mount::floor;
    Where where = Where::under_window;
    std::optional<house::WallSide> wall;  // that it stands at or in; none of one in the ceiling
    std::string name;                     // of the window it is under or beside, or the cabinet it is in
    Spot middle;
    house::Box face;      // seen from above
    units::Length along;  // of the middle, from the wall's west or south end
    units::Length
        off_centre;  // from the window's middle, of one under or beside it; below zero: to west or south
    std::optional<Stopped> stopped;
};

inline constexpr units::Length splash{12 * units::unit::inch};

struct Looked {
    house::Rectangular face;            // of a floor register, long side first
    house::Rectangular wall_face;       // of one in a wall, width first
    std::optional<house::Mount> mount;  // only these
    std::string window;                 // only at this one
    Spot from;                          // where the run comes from
};

// In the order: windows as in the sheet, outside walls, cabinets, inside walls, ceiling. The room needs its
// plan.
std::vector<Location> locations(const house::Room& room, const Looked& looked);

// The corner of the room farthest from its outside walls; its middle where none is outside, or all are.
Spot inner_corner(const house::Plan& plan);
// The middle of a floor register so far along a wall.
Spot at_wall(const house::Plan& plan, house::WallSide wall, units::Length along,
             const house::Rectangular& face);
// The longest register whose boot stands between two joists of the plan; of a plan without joists any.
units::Length longest_between_joists(const house::Plan& plan);
// Between the nearest points of two boxes; 0 where they touch or overlap.
units::Length distance(const house::Box& a, const house::Box& b);

}  // namespace registers
