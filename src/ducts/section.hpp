// The cross section of a duct as its friction sees it: area, hydraulic diameter, inner perimeter, roughness.
//
//     hydraulic diameter = 4 x area / perimeter
//
// With the true velocity, right for any shape within 2 % (Darcy-Weisbach on Re and roughness of that
// diameter). The equivalent round carries the same flow at the same friction: shown beside a size, never used
// for velocity.
//
//     rectangular: 1.30 (ab)^0.625 / (a+b)^0.25      flat oval: 1.55 area^0.625 / perimeter^0.25
//
// both ASHRAE Fundamentals (read: published tables and course notes). A flexible duct that is not pulled taut
// loses 1 + 0.58 rc exp(-0.126 D) times as much, rc the per cent it is short, D its diameter in inches
// (memory: ASHRAE Fundamentals since 2009; laboratory and university tests of 6 to 10 in, read, bear it out
// to 30 %).
#pragma once

#include <span>
#include <string_view>

#include "house/shape.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"

namespace ducts {

struct Section {
    units::Area area;
    units::Length hydraulic_diameter;
    units::Length perimeter;
    units::Length roughness;
    double compression = 1;  // on its friction, of a flexible duct that is not taut
};

// Roughness of what a duct is made of, as used, with its honest range.
struct Roughness {
    house::DuctKind kind;
    units::Length value, low, high;
    std::string_view source;  // and its mark
};
std::span<const Roughness> roughnesses();
units::Length roughness_of(house::DuctKind kind);
inline constexpr units::Length galvanized_roughness{0.0003 * 0.3048};

Section section_of(const house::Shape& shape, units::Length roughness = galvanized_roughness);
// stretch: of a flexible duct, as a share of its full length. What is not round is no flexible duct: metal.
Section section_of(const house::Shape& shape, house::DuctKind kind, double stretch);

double flex_compression(units::Length diameter, double stretch);
units::Length equivalent_round(const house::Rectangular& rectangle);
units::Length equivalent_round(const house::FlatOval& oval);
units::Length equivalent_round(const house::Shape& shape);  // of a round duct its diameter

}  // namespace ducts
