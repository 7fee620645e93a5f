// The air that really flows in the whole system, supply and return, with its blower running.
//
// Every section of the duct tree, every register and grille, the devices outside the maker's curve, dampers,
// leaks and the doors of shut rooms are links of one network (network/solve.hpp), in mass flow and total
// pressure over the house's air. A fitting whose loss depends on how the air splits is taken at the real
// split, and a leak is driven by the static pressure (network/real_losses.hpp): rounds with squares in their
// place come near, Newton with the real losses (network/coupled.hpp) comes there.
//
//     register, grille   by its face (ducts/terminal.hpp), or the usual drop at the plan's flow
//     return             not described: the usual drop of a grille and 0.08 in.wc/100 ft along its assumed
//                        length, at the plan's flow (common practice)
//     door               flow = 0.607 x area x sqrt(2 x pressure / density) through undercut and transfer
//                        opening (ducts/return_path.hpp); of a shut room without either a crack of 10 cm2
//                        is left (estimate)
//     leak               flow = coefficient x static pressure^exponent, over the walls of the ducts alike, or
//                        at the plenum
//     air                supply side at the temperature that output and flow give, return side at the house's
//
// Leaks, and the air behind a shut door that does not come back, leave the house's own pressure as it is: the
// house is the reference (0 Pa). Static and total pressure differ by like velocity pressures in both plenums,
// which cancel (friction_rate.hpp). Accuracy: the network to 1e-9 of the flow; what goes into it +-10 % at
// best, and 30 % in single fittings.
#pragma once

#include <vector>

#include "ducts/duct_system.hpp"
#include "house/house.hpp"
#include "loads/air.hpp"
#include "network/blower_law.hpp"
#include "units/quantity.hpp"

namespace network {

// kg/s at 1 Pa.
struct SideLeak {
    double per_area = 0;         // of duct wall, m2
    double at_plenum = 0;        // at the plenum
    units::MassFlow taken = {};  // at the plenum, whatever the pressure
};
struct Leaks {
    SideLeak supply, return_side;
    double exponent = 0.65;
};

// What is the same in the house as found and as planned, and in every trial.
struct Machine {
    BlowerLaw blower;
    Leaks leaks;
    units::Power output;          // of the heater while it is on
    units::Temperature returns;   // of the air that comes back
    units::Pressure pressure;     // of the site
    units::MassFlow design_flow;  // of the plan: what usual drops belong to
    ducts::DesignFlows design;
};

enum class Fans { off, on };  // exhaust fans that run at times

struct OperatingPoint {
    ducts::DuctSystem system;              // with the real flows; below zero where the air runs backwards
    std::vector<units::MassFlow> outlets;  // by position in House::outlets
    units::MassFlow other_rooms;           // to all rooms not described
    units::MassFlow blower;
    units::Pressure external_static;               // the blower's gain
    units::Pressure supply_plenum, return_plenum;  // over the house's air; the latter below zero
    units::MassFlow supply_leak, return_leak;
    std::vector<units::Pressure> rooms;       // by RoomId, over the rest of the house
    std::vector<units::MassFlow> door_flows;  // by RoomId, out of a shut room
    units::Temperature supply;                // of the air that leaves the heater
    loads::Air supply_air, return_air;
    int steps = 0, loops = 0;  // Newton steps in all, rounds
    double residual = 0;       // with the real losses, as Solution::residual
};

// The house needs its WholeSystem. Throws house::CannotAnswer where no flows settle, and says where.
OperatingPoint operating_point(const house::House& house, const ducts::DuctSystem& system,
                               const Machine& machine, Fans fans = Fans::off);

}  // namespace network
