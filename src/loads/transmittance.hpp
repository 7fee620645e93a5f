// U-factor of a surface: its layers between the air films on both sides, wood and bay as parallel paths.
//
//     U = framing / R(through the wood) + (1 - framing) / R(through the bay)
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 27, parallel path. Unchanged.
// Films, ibid. ch. 26: inside vertical 0.12, heat up 0.11, heat down 0.16; outside in a 6.7 m/s wind 0.030
// m2 K/W; still air on the far side of anything that does not face outdoors. Between two rooms 0.12 on both
// sides whatever lies flat, so that both rooms see one U. Wood across the grain k 0.115 (ibid., softwood).
// A slope has the film of heat going up at 45 degrees, 0.11. A U given outright is taken as it stands, films
// included. In the ground there is no far film: the layers and the inside film go into the formulas of
// loads/below_grade.hpp, and a U given outright counts as theirs. A slab's U is that of its edge spread over
// its area: edge loss x edge / area (loads/slab_edges.hpp).
// Range: wood framing; metal studs need another method. Accuracy: arithmetic exact; an old wall itself is
// known to +-30 % (common practice).
// Throws house::CannotAnswer for a name no table holds (questions/check_sheet finds those first).
#pragma once

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method parallel_path{"parallel-path U-factor", "framing / R wood + (1 - framing) / R bay",
                                      "ASHRAE Handbook-Fundamentals 2021 ch. 27"};

// The two paths through layers, from air to air, and the U-factor they make.
struct Paths {
    units::Resistance through_bay, through_wood;
    double framing = 0;
    units::Transmittance u;
};

Paths parallel_paths(units::Resistance through_bay, units::Resistance through_wood,
                     double framing);  // both resistances above zero
Paths paths(const house::Layers& layers, units::Resistance films, units::Resistance empty_bay);
// From the room's air to the soil, of what lies in the ground.
units::Resistance to_the_soil(const house::Surface& surface, units::Resistance empty_bay);
units::Resistance inside_film(const house::Surface& surface);  // of air, on the room's side
units::Resistance films(const house::Surface& surface);        // on both sides
units::Transmittance transmittance(const house::Surface& surface, units::Resistance empty_bay);

}  // namespace loads
