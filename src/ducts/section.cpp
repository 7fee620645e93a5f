#include "ducts/section.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

#include "units/unit.hpp"

namespace ducts {
namespace {

Section with(units::Area area, units::Length perimeter, units::Length roughness) {
    return {area, 4 * area / perimeter, perimeter, roughness, 1};
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

// Two half circles and the flat between them.
Section section_of(const house::FlatOval& oval, units::Length roughness) {
    const units::Length flat = oval.major - oval.minor;
    const units::Length around = std::numbers::pi * oval.minor;
    return with(std::numbers::pi / 4 * (oval.minor * oval.minor) + oval.minor * flat, around + 2 * flat,
                roughness);
}

constexpr units::Length feet(double count) { return count * units::unit::foot; }
constexpr units::Length mm(double count) { return count * units::unit::millimetre; }

using enum house::DuctKind;
constexpr Roughness rows[] = {
    {metal, galvanized_roughness, feet(0.00016), feet(0.0005),
     "galvanized, design value of the ASHRAE roughness table (read); by length of joints"},
    {flex, feet(0.003), feet(0.0003), feet(0.003),
     "flexible, fully stretched: ASHRAE roughness table (read)"},
    {lined, feet(0.003), feet(0.003), feet(0.01),
     "fibrous liner, faced; sprayed: ASHRAE Fundamentals (memory)"},
    {plastic, feet(0.00015), feet(0.00003), feet(0.00015), "PVC pipe: ASHRAE roughness table (read)"},
    {panned_joist, mm(3), mm(1), mm(5),
     "sheet on joists with nails and bridging: estimate; planed wood 0.18 to 0.9 mm, rough 5 mm (read)"},
    {stud_bay, mm(1), mm(0.18), mm(5), "board on planed studs: estimate; planed wood 0.18 to 0.9 mm (read)"},
    {masonry, feet(0.010), feet(0.004), feet(0.016), "brick or block: handbook tables (memory)"},
};

}  // namespace

std::span<const Roughness> roughnesses() { return rows; }

units::Length roughness_of(house::DuctKind kind) {
    const auto row =
        std::find_if(std::begin(rows), std::end(rows), [kind](const Roughness& r) { return r.kind == kind; });
    return row == std::end(rows) ? galvanized_roughness : row->value;
}

Section section_of(const house::Shape& shape, units::Length roughness) {
    return std::visit([roughness](const auto& any) { return section_of(any, roughness); }, shape);
}

Section section_of(const house::Shape& shape, house::DuctKind kind, double stretch) {
    const auto* round = std::get_if<house::Round>(&shape);
    if (kind != flex) return section_of(shape, roughness_of(kind));
    if (!round) return section_of(shape);
    Section section = section_of(shape, roughness_of(flex));
    section.compression = flex_compression(round->diameter, stretch);
    return section;
}

double flex_compression(units::Length diameter, double stretch) {
    const double short_by = 100 * std::clamp(1 - stretch, 0.0, 1.0);
    return 1 + 0.58 * short_by * std::exp(-0.126 * (diameter / units::unit::inch));
}

units::Length equivalent_round(const house::Rectangular& rectangle) {
    const double a = rectangle.width.si();
    const double b = rectangle.height.si();
    return units::Length(1.30 * std::pow(a * b, 0.625) / std::pow(a + b, 0.25));
}

units::Length equivalent_round(const house::FlatOval& oval) {
    const Section section = section_of(oval, galvanized_roughness);
    return units::Length(1.55 * std::pow(section.area.si(), 0.625) / std::pow(section.perimeter.si(), 0.25));
}

units::Length equivalent_round(const house::Shape& shape) {
    if (const auto* flat = std::get_if<house::Rectangular>(&shape)) return equivalent_round(*flat);
    if (const auto* oval = std::get_if<house::FlatOval>(&shape)) return equivalent_round(*oval);
    return std::get<house::Round>(shape).diameter;
}

}  // namespace ducts
