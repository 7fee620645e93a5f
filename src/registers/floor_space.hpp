// What a register would stand on or hit at one place of the plan. Exact, as the sheet's tape.
#pragma once

#include <optional>

#include "house/plan.hpp"
#include "house/shape.hpp"
#include "registers/locations.hpp"
#include "units/quantity.hpp"

namespace registers {

bool runs_east(house::WallSide wall);  // south and north
bool is_outside(const house::PlanWall& wall);

// A face so long and so deep, its middle so far along the wall, its back so far out from it.
house::Box box_at(const house::Plan& plan, house::WallSide wall, units::Length along, units::Length out,
                  const house::Rectangular& face);
Spot middle_of(const house::Box& box);

// The joist a boot would hit, 1/4 in left beside it; 0: none.
int joist_at(const house::Plan& plan, const house::Box& box);
// The stud that the boot of a wall register would hit, 1/8 in left beside it; 0: none.
int stud_at(const house::PlanWall& wall, units::Length along, units::Length wide);
// A fixture that stands there, a door that swings over it or hides it when open, a shower that splashes it.
std::optional<Stopped> stopped_by_things(const house::Plan& plan, const house::Box& box);
// A door's opening in the wall it stands at.
std::optional<Stopped> stopped_by_door(const house::Plan& plan, house::WallSide wall, units::Length along,
                                       units::Length wide);

}  // namespace registers
