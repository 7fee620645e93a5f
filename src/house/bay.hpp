// The spaces between joists or studs, and the pipes in them; plain geometry.
#pragma once

#include <string>
#include <vector>

#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

// A pipe in a bay, along it or from side to side. Heights below the bay's top, to the top of the pipe, at its
// two ends.
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

}  // namespace house
