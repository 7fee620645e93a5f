#include "ducts/section.hpp"

#include <cmath>
#include <numbers>
#include <variant>

namespace ducts {
namespace {

Section with(units::Area area, units::Length perimeter, units::Length roughness) {
    return {area, 4 * area / perimeter, perimeter, roughness};
}

Section section_of(const house::Round& round, units::Length roughness) {
    const units::Length D = round.diameter;
    return with(std::numbers::pi / 4 * (D * D), std::numbers::pi * D, roughness);
}

Section section_of(const house::Rectangular& rectangle, units::Length roughness) {
    const units::Length a = rectangle.width;
    const units::Length b = rectangle.height;
    return with(a * b, 2 * (a + b), roughness);
}

}  // namespace

Section section_of(const house::Shape& shape, units::Length roughness) {
    return std::visit([roughness](const auto& any) { return section_of(any, roughness); }, shape);
}

units::Length equivalent_round(const house::Rectangular& rectangle) {
    const double a = rectangle.width.si();
    const double b = rectangle.height.si();
    return units::Length(1.30 * std::pow(a * b, 0.625) / std::pow(a + b, 0.25));
}

}  // namespace ducts
