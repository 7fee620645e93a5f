#include "loads/slab_edges.hpp"

#include "loads/materials.hpp"
#include "loads/named_rows.hpp"

namespace loads {
namespace {

constexpr std::string_view code = "WAC 51-11C, table A106.1 (read)";
constexpr std::string_view handbook = "ASHRAE Handbook-Fundamentals 2021 ch. 18, table 24 (read)";

// Unheated slabs; "under": lying below the slab from its edge, "down": standing at its edge.
constexpr SlabEdge rows[] = {
    {"bare", 1.263, code},
    {"R-5, 2 ft under", 1.212, code},
    {"R-10, 2 ft under", 1.212, code},
    {"R-5, 4 ft under", 1.160, code},
    {"R-10, 4 ft under", 1.108, code},
    {"R-5, 2 ft down", 1.004, code},
    {"R-10, 2 ft down", 0.935, code},
    {"R-5, 4 ft down", 0.935, code},
    {"R-10, 4 ft down", 0.831, code},
    {"8 in block wall", 1.170, handbook},
    {"8 in block wall, insulated", 0.860, handbook},
    {"4 in block wall", 1.450, handbook},
    {"4 in block wall, insulated", 0.850, handbook},
    {"stucco wall", 2.070, handbook},
    {"stucco wall, insulated", 0.920, handbook},
    {"poured wall, heated duct in it", 3.670, handbook},
    {"poured wall, heated duct in it, insulated", 1.240, handbook},
};

}  // namespace

std::span<const SlabEdge> slab_edges() { return rows; }

std::variant<SlabEdge, house::Mistake> look_up_slab_edge(const house::CatalogueName& name) {
    return row_named(name, slab_edges(), "slab edge", "slab edges");
}

units::Conductivity edge_loss(const house::Slab& slab) {
    if (const auto* name = std::get_if<house::CatalogueName>(&slab.edge_loss))
        return units::Conductivity(found_or_throw(look_up_slab_edge(*name)).loss);
    return std::get<units::Conductivity>(slab.edge_loss);
}

units::Resistance covering(const house::Slab& slab) {
    if (const auto* name = std::get_if<house::CatalogueName>(&slab.covering))
        return found_or_throw(look_up_layer(*name)).resistance;
    return std::get<units::Resistance>(slab.covering);
}

units::HeatFlux slab_gain(units::Resistance covering) {
    constexpr double film = 0.12;  // m2 K/W
    return units::HeatFlux(1.9 - 1.4 / (covering.si() + film));
}

}  // namespace loads
