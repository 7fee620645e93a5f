// A house whose ducts are two trees, supply and return, as the other method sees it: no nodes and links, but
// ducts that hold ducts.
//
// The return side is written as a supply side seen in a mirror: what it draws in flows out, suction is
// pressure.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "network/solve.hpp"

namespace network {

struct Piece {
    ducts::Section section;
    double length = 0, factor = 1;     // of its friction
    double linear = 0, quadratic = 0;  // of all else
    double flow = 0;                   // as the other method found it
};

// A register or grille at the end of a run, straight in the house or in a room behind a door.
struct Mouth {
    Piece run;
    bool behind_door = false;
    double door = 0;   // quadratic
    double drawn = 0;  // by an exhaust fan in that room, kg/s; below zero in the mirror
};

struct Hole {
    double coefficient = 0, exponent = 0.65;
    double flow = 0;
};

// A piece of trunk and what leaves its far end.
struct Trunk {
    Piece piece;
    Hole hole;
    std::vector<Mouth> mouths;
    std::vector<Trunk> trunks;
    double end = 5;  // Pa, where the last of its trunks ends, as the other method guessed last
};

struct TreeHouse {
    loads::Air air;
    Trunk supply, returns;
    std::vector<FanPoint> blower;  // empty: it holds its airflow
    Between between = Between::smooth;
    double held_flow = 0;
};

TreeHouse random_house(std::uint64_t seed);

// The same house as a network, and for each of its links where the other method left its flow, with its sign.
struct Counterpart {
    const double* flow;
    double sign;
};
struct HouseAsNetwork {
    Network network;
    std::vector<Counterpart> counterparts;
    std::vector<std::size_t> supply_mouths;  // links
};
HouseAsNetwork as_network(const TreeHouse& house);

// Finds the flows from the far ends backwards: guess the pressure where the trunk ends, add up what flows and
// what is lost on the way to the blower, and bracket the guess until it meets there; the same within for each
// run and side trunk. No tangent, no system of equations.
void shoot(TreeHouse& house);

}  // namespace network
