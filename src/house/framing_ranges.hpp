// What framing can measure: a slip of the unit is told from a real joist or bay.
//
//     clear width or depth of a bay   1 in to 10 ft
//     spacing of joists               4 in to 10 ft
//     joist, thickness and depth      1/2 in to 1 ft; 1 in to 4 ft; a stud's alike, its depth to 1 ft
//     studs of a wall                 1000
//     clearance to a pipe             to 1 ft
//     pipes in a bay                  40
//
// Source: common practice, wide: the widest posts and beams and the thinnest furring lie within. Lengths in
// m.
#pragma once

#include <string>

#include "house/ledger.hpp"
#include "units/unit.hpp"

namespace house {

struct LengthRange {
    units::Length least, most;
    bool holds(units::Length length) const {
        constexpr units::Length rounding{1e-9};
        return length >= least - rounding && length <= most + rounding;
    }
};

inline constexpr LengthRange bay_clear{1 * units::unit::inch, 10 * units::unit::foot};
inline constexpr LengthRange joist_spacing{4 * units::unit::inch, 10 * units::unit::foot};
inline constexpr LengthRange joist_thickness{0.5 * units::unit::inch, 1 * units::unit::foot};
inline constexpr LengthRange joist_depth{1 * units::unit::inch, 4 * units::unit::foot};
inline constexpr LengthRange stud_depth{1 * units::unit::inch, 1 * units::unit::foot};
inline constexpr LengthRange clearance_to_pipe{0 * units::unit::foot, 1 * units::unit::foot};
inline constexpr std::size_t most_pipes_in_a_bay = 40;
inline constexpr int most_joists_in_a_floor = 200;
inline constexpr int most_studs_in_a_wall = 1000;

// Blames a length out of its range, and says whether it is within.
bool within(Ledger& ledger, Place place, units::Length length, const LengthRange& range,
            const std::string& what);

}  // namespace house
