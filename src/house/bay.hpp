// The spaces between joists or studs, and the pipes in them; plain geometry.
#pragma once

#include <string>
#include <vector>

#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

// A pipe in a bay, along it or from side to side. Heights below the bay's top, to the top of the pipe, at its
// two ends: of the bay, or, where it lies across, at the first side and at the other.
struct BayPipe {
    std::string name;  // "3 in drain"
    units::Length outside;
    units::Length from_side;  // of the bay's first side (west or south) to the pipe
    units::Length top, other_top;
    bool across = false;
    bool operator==(const BayPipe&) const = default;
};

// The space between two joists or studs, as a duct along it sees it. Its first side is west or south.
struct Bay {
    std::string name;
    Framing framing = Framing::joists;
    bool from_west = true;  // the first side: west, else south
    units::Length width, depth;
    units::Length clearance;  // to be kept between a duct and a pipe
    std::vector<BayPipe> pipes;
};

// Whether two pipes of a bay so wide are in one place somewhere; m throughout, exact for straight pipes.
//
//     along, both     hypot(distance across, least difference of height from end to end) < half of both
//     outsides one across      difference of height where they cross, square to the pipe across < half of
//     both outsides
//
// Where along the bay a pipe across lies the sheet does not say: it runs through a pipe that slopes only
// where it would anywhere, and two pipes across may lie one behind the other. Source: plane geometry
// (derived).
bool run_through_each_other(const BayPipe& a, const BayPipe& b, units::Length bay_width);

}  // namespace house
