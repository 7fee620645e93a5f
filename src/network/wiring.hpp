// The whole system as nodes and links: which part is joined to which; private to this folder.
//
// Losses that follow from the flows or from how warm the air is (ducts, registers, grilles, the static
// pressure behind a leak) are set by real_losses.cpp.
#pragma once

#include <vector>

#include "network/operating_point.hpp"
#include "network/solve.hpp"

namespace network {

inline constexpr int no_link = -1;
inline constexpr int devices_link = 0;  // all the blower's air passes it

// Of one side, by its sections: positions in Network::links.
struct SideLinks {
    std::vector<int> sections;   // the duct itself, flow away from the plenum (supply) or towards the blower
    std::vector<int> terminals;  // its register or grille; no_link where it has none
    std::vector<int> leaks;      // through its walls; no_link where nothing leaks
    int plenum_leak = no_link;
};

struct SystemAir {
    units::Temperature supply_temperature;
    loads::Air supply, returns;
};

struct Wired {
    Network network;
    SideLinks supply, return_side;
    int blower = no_link;  // no_link while its flow is held
    int whole_return = no_link;
    std::vector<int> doors;  // by RoomId; no_link where the room is open
};

enum PlenumNode { supply_plenum, return_plenum, blower_inlet, first_section_node };

Wired wire(const house::House& house, const ducts::DuctSystem& system, const Machine& machine, Fans fans);
// Holds the blower's flow, or gives it its curve.
void put_blower(Wired& wired, const BlowerLaw& law);

}  // namespace network
