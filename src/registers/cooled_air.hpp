// What becomes of cooled air blown from a place.
//
//     spreads above     blown along the ceiling or high across: best
//     to the ceiling    blown up and not stopped below it: good
//     falls back        blown up and stopped by its cold below the ceiling: weak
//     over the floor    blown low across: cold feet
//
// Source: outlets as tests of the 1950s group them (Straub et al., University of Illinois Bulletins 435 and
// 442; grouping read in the ASHRAE Handbook-Fundamentals, the ranking of cooling likewise). Where a jet stops
// and how far it drops: registers/buoyant_jet.hpp, and as accurate.
#pragma once

#include <optional>

#include "registers/buoyant_jet.hpp"
#include "registers/outlet_pattern.hpp"
#include "units/quantity.hpp"

namespace registers {

// Better ones later.
enum class CooledAir { over_the_floor, falls_back, to_the_ceiling, spreads_above };

struct CooledAirThere {
    CooledAir becomes = CooledAir::over_the_floor;
    std::optional<units::Length> reaches;  // blown up: how high, no higher than the ceiling
    std::optional<units::Length> drops;    // blown across: over its throw, no farther than to the floor
};

// `jet`: colder than the room.
CooledAirThere cooled_air(const WarmJet& jet, const OutletPattern& pattern, units::Length ceiling);

}  // namespace registers
