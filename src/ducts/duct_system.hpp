// The duct tree: the house's flat list as sections from plenum to outlets (supply) and from grilles to blower
// (return).
//
// Built on Boost.Graph: a trunk is cut at each takeoff, so one section has one flow. Sections come leaves
// first, each with the position of its parent (the next section towards the blower). A duct's fittings sit on
// its first section, where the flow is largest; what lies beyond its last branch carries no air and is left
// out. Outlets that share the end of a duct, with each other or with a branch, get a section of no length
// each. The outlets nobody described leave the duct the sheet names, or the trunks at equal spacing (or the
// plenum, where no trunk is described), the nearest with the shortest reach, the farthest with the longest. A
// trunk leaves the plenum and feeds no outlet itself; it is wider than an 8 in pipe, or something leaves it
// before its end, or it feeds only what is not described.
#pragma once

#include <optional>
#include <vector>

#include "ducts/fittings.hpp"
#include "ducts/run_heat_loss.hpp"
#include "ducts/section.hpp"
#include "house/house.hpp"
#include "loads/air.hpp"
#include "loads/room_heat_loss.hpp"
#include "units/quantity.hpp"

namespace ducts {

// The air every outlet gets in the plan: the blower's mass flow shared by the rooms' heat losses.
struct DesignFlows {
    std::vector<units::MassFlow> outlets;  // one for each of House::outlets; return grilles share equally
    units::MassFlow each_other_outlet;
};
DesignFlows design_flows(const house::House& house, const loads::HouseHeatLoss& loss, units::MassFlow total);

struct SystemSection {
    int parent = -1;  // position in the same list; -1: plenum or blower
    int duct = -1;    // position in House::ducts; -1: a run to rooms not described
    int outlet = -1;  // position in House::outlets, of a leaf; -1: none
    Section section;
    house::DuctKind kind = house::DuctKind::metal;
    double stretch = 1;    // of a flexible duct
    bool unsized = false;  // the sheet gives no shape: the section's is on trial
    units::Length length;
    std::vector<Fitting> fittings;
    double loss_factor = 1;
    units::Resistance bare, wrap;  // films and wall; rated, of its insulation
    units::Resistance resistance;  // from duct air to surroundings, of both with this section
    units::Temperature surroundings;
    units::MassFlow flow;
};
using Side = std::vector<SystemSection>;  // leaves first

struct DuctSystem {
    Side supply, return_side;
};

// `unsized`: the shape that ducts without one are given. Throws house::CannotAnswer for an unknown fitting or
// a duct without a shape where `unsized` is empty.
DuctSystem duct_system(const house::House& house, const DesignFlows& flows,
                       const std::optional<house::Shape>& unsized);

// Gives the sections without a shape of their own another one to try.
void give_shape(DuctSystem& system, const house::Shape& shape);
// Gives every section of a system the flow of these outlets, summed towards plenum and blower.
void set_flows(DuctSystem& system, const DesignFlows& flows);

// Positions from the root (next to plenum or blower) to the leaf that serves the outlet; throws where the
// outlet has none.
std::vector<int> way_to(const Side& side, const house::House& house, int outlet);

units::Velocity velocity(const SystemSection& section, const loads::Air& air);
// Pressure lost in the section's fittings at its flow, its parent's flow given by the side it belongs to.
units::Pressure fittings_loss(const Side& side, const SystemSection& section, const loads::Air& air);
// The same with another flow in the section, its parent's as it is.
units::Pressure fittings_loss(const Side& side, const SystemSection& section, units::MassFlow flow,
                              const loads::Air& air);

}  // namespace ducts
