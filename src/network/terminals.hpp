// Where the air enters and leaves the ducts, as losses that go with the square of the flow: registers,
// grilles, devices, doors, the return nobody described. Sources: operating_point.hpp.
//
// All in Pa s2/kg2, over 0.
#pragma once

#include "network/operating_point.hpp"

namespace network {

// air: of the section's side.
double terminal_quadratic(const house::House& house, const Machine& machine,
                          const ducts::SystemSection& section, bool supply, const loads::Air& air);
double devices_quadratic(const house::House& house, const Machine& machine);
double whole_return_quadratic(const house::House& house, const Machine& machine);
double door_quadratic(const house::WayOut& way, const loads::Air& air);

}  // namespace network
