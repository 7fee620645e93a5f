#include "loads/roofs.hpp"

#include "loads/named_rows.hpp"

namespace loads {
namespace {

constexpr Roof rows[] = {
    {"asphalt, white", 0.75},     {"asphalt, light", 0.75}, {"asphalt, medium", 0.85},
    {"asphalt, dark", 0.92},      {"tile, white", 0.30},    {"tile, light", 0.40},
    {"tile, medium", 0.80},       {"tile, dark", 0.80},     {"metal, white", 0.35},
    {"metal, light", 0.50},       {"metal, medium", 0.70},  {"metal, dark", 0.90},
    {"elastomeric, white", 0.30},
};

}  // namespace

std::span<const Roof> roofs() { return rows; }

std::variant<Roof, house::Mistake> look_up_roof(const house::CatalogueName& name) {
    return row_named(name, roofs(), "roof", "roofs");
}

double roof_absorptance(const house::Summer& summer) {
    if (const auto* name = std::get_if<house::CatalogueName>(&summer.roof))
        return found_or_throw(look_up_roof(*name)).absorptance;
    return std::get<double>(summer.roof);
}

}  // namespace loads
