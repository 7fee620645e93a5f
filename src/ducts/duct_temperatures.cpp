#include "ducts/duct_temperatures.hpp"

namespace ducts {

Run run_of(const SystemSection& section) {
    return {section.length, section.section.perimeter, section.resistance, section.surroundings};
}

std::vector<units::Temperature> leaving_temperatures(const Side& supply, units::Temperature plenum,
                                                     units::SpecificHeat specific_heat) {
    std::vector<units::Temperature> leaving(supply.size(), plenum);
    for (std::size_t i = supply.size(); i-- > 0;) {  // leaves come first, so parents are met before them
        const int parent = supply[i].parent;
        const units::Temperature entering = parent < 0 ? plenum : leaving[static_cast<std::size_t>(parent)];
        leaving[i] = supply[i].duct < 0
                         ? entering
                         : leaving_temperature(run_of(supply[i]), supply[i].flow, specific_heat, entering);
    }
    return leaving;
}

}  // namespace ducts
