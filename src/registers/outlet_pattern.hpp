// How registers throw their air: one row for each kind of outlet and setting of its blades.
//
// K, and which of its areas it counts on: ASHRAE Handbook-Fundamentals 2021 ch. 20, table 1, generic values
// (read; the maker's figures are better). A K "up the wall" or "along the ceiling" has the surface's help in
// it already: it is never raised by the root of 2 again. The spread is that of the jet as a whole: 22 degrees
// straight (20 to 24, ibid., read), 60 degrees of blades turned out by 45 (older editions of the chapter,
// memory). Of a grille the free area is about 0.8 of the core, of a thin linear one 0.5 (ibid., read).
// Accuracy: K +-20 % (estimate), of blades spread wide the weakest, as the law of the jet is that of a cone.
#pragma once

#include <span>
#include <string_view>

#include "house/words.hpp"

namespace registers {

// Which area K counts on: what the air passes between the blades, the opening around them, or the neck.
enum class CountedArea { free, core, neck };
enum class Blows { up, across, down };

struct OutletPattern {
    std::string_view name;
    house::Mount mount;
    Blows blows;
    double k;
    CountedArea counts;
    double spread;  // whole angle in degrees; 360: all round
    std::string_view mark;
};

std::span<const OutletPattern> outlet_patterns();  // those of one mount stand together
// What is taken where nothing is said of the blades: the first row of the mount.
const OutletPattern& usual_pattern(house::Mount mount);

}  // namespace registers
