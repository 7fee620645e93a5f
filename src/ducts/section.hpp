// The cross section of a duct as its friction sees it: area, hydraulic diameter, inner perimeter, roughness.
//
// Hydraulic diameter 4 x area / perimeter with the true velocity, right for any shape within 2 %
// (Darcy-Weisbach on Re and roughness of that diameter). The equivalent round (1.30 (ab)^0.625 / (a+b)^0.25,
// ASHRAE Fundamentals) carries the same flow at the same friction: shown beside a size, never used for
// velocity. Roughness of galvanized pipe 0.0003 ft (0.0914 mm), the design value of the ASHRAE roughness
// table.
#pragma once

#include "house/shape.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr units::Length galvanized_roughness{0.0003 * 0.3048};

struct Section {
    units::Area area;
    units::Length hydraulic_diameter;
    units::Length perimeter;
    units::Length roughness;
};

Section section_of(const house::Shape& shape, units::Length roughness = galvanized_roughness);
units::Length equivalent_round(const house::Rectangular& rectangle);

}  // namespace ducts
