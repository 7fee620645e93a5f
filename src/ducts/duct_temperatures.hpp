// How warm the air is at the end of each section of the supply side, at the sections' flows.
//
// Section by section from the plenum, each by ducts/run_heat_loss.hpp; a section in which the air stands
// takes the temperature of its surroundings; a run to rooms not described, of which nothing is known, loses
// nothing here. Accuracy: that of the sections' R and flows.
#pragma once

#include <vector>

#include "ducts/duct_system.hpp"
#include "units/quantity.hpp"

namespace ducts {

// One for each section, in the side's order.
std::vector<units::Temperature> leaving_temperatures(const Side& supply, units::Temperature plenum,
                                                     units::SpecificHeat specific_heat);
// The straight run of a section, as heat sees it.
Run run_of(const SystemSection& section);

}  // namespace ducts
