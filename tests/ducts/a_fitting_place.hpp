// Where a fitting sits, told by velocities and the ratio of areas.
#pragma once

#include <string>
#include <variant>

#include "ducts/fittings.hpp"
#include "ducts/reference_air.hpp"

namespace ducts {

// A 6 in pipe with its velocity, at a square trunk with its own (0: a plenum); area_ratio: pipe to trunk.
inline FittingPlace place_of(units::Velocity in_duct, units::Velocity in_trunk, double area_ratio = 0.2) {
    FittingPlace place;
    place.duct = section_of(round_of(6));
    const units::Length side{std::sqrt(place.duct.area.si() / area_ratio)};
    place.trunk = section_of(house::Rectangular{side, side});
    place.flow = in_duct * place.duct.area;
    place.trunk_flow = in_trunk * place.trunk.area;
    return place;
}

inline Fitting named(const std::string& name) { return std::get<Fitting>(look_up_fitting({name, {}})); }
inline house::Mistake mistake_of(const std::string& name) {
    return std::get<house::Mistake>(look_up_fitting({name, {12, 5, 17}}));
}

}  // namespace ducts
