#include "registers/outlet_pattern.hpp"

#include <algorithm>
#include <array>

namespace registers {
namespace {

using enum house::Mount;
using enum Blows;
using enum CountedArea;

constexpr double straight = 22, wide = 60, all_round = 360;

constexpr std::array patterns{
    OutletPattern{"floor grille, straight blades", floor, up, 4.7, free, straight, "read"},
    OutletPattern{"floor grille, blades spread wide", floor, up, 1.6, free, wide, "read"},
    OutletPattern{"low wall grille, up the wall, straight blades", low_wall, up, 4.5, free, straight, "read"},
    OutletPattern{"low wall grille, up the wall, blades spread wide", low_wall, up, 3.0, free, wide, "read"},
    OutletPattern{"baseboard outlet, up the wall, straight blades", low_wall, up, 4.0, core, straight,
                  "read"},
    OutletPattern{"baseboard outlet, up the wall, blades spread wide", low_wall, up, 2.0, core, wide, "read"},
    OutletPattern{"toe kick grille, out over the floor", toe_kick, across, 4.5, free, straight,
                  "estimate: as a low wall grille"},
    OutletPattern{"high wall grille, straight blades", high_wall, across, 5.7, free, straight, "read"},
    OutletPattern{"high wall grille, blades spread wide", high_wall, across, 4.2, free, wide, "read"},
    OutletPattern{"high wall slot, less than 4 in high", high_wall, across, 4.4, free, straight, "read"},
    OutletPattern{"high wall slot, 4 in high or more", high_wall, across, 5.0, free, straight, "read"},
    OutletPattern{"ceiling outlet, all round", ceiling, across, 1.1, neck, all_round, "read"},
    OutletPattern{"ceiling outlet, four ways", ceiling, across, 3.8, neck, straight, "read"},
    OutletPattern{"ceiling slot, along the ceiling", ceiling, across, 5.5, free, straight, "read"},
    OutletPattern{"ceiling slot, straight down", ceiling, down, 3.9, free, straight, "read"},
};

}  // namespace

std::span<const OutletPattern> outlet_patterns() { return patterns; }

const OutletPattern& usual_pattern(house::Mount mount) {
    return *std::find_if(patterns.begin(), patterns.end(),
                         [mount](const OutletPattern& pattern) { return pattern.mount == mount; });
}

}  // namespace registers
