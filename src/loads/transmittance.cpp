#include "loads/transmittance.hpp"

#include "loads/below_grade.hpp"
#include "loads/materials.hpp"
#include "loads/named_rows.hpp"
#include "loads/slab_edges.hpp"

namespace loads {
namespace {

constexpr units::Conductivity wood{0.115};
constexpr units::Resistance outside_film{0.030}, vertical_film{0.12}, heat_up_film{0.11},
    heat_down_film{0.16};

units::Transmittance without_ground(const house::Surface& surface, units::Resistance empty_bay) {
    if (const auto* given = std::get_if<units::Transmittance>(&surface.assembly)) return *given;
    if (const auto* glass = std::get_if<house::CatalogueName>(&surface.assembly))
        return units::Transmittance(found_or_throw(look_up_glass(*glass)).u);
    return paths(std::get<house::Layers>(surface.assembly), films(surface), empty_bay).u;
}

units::Transmittance in_the_ground(const house::Buried& buried, units::Resistance resistance) {
    if (buried.shortest_width > units::Length())
        return below_grade_floor(buried.shortest_width, buried.bottom, resistance, buried.soil);
    return below_grade_wall(buried.top, buried.bottom, resistance, buried.soil);
}

}  // namespace

// Heat goes up through a ceiling and down through a floor. Between two rooms it goes either way, so both see
// the same film: else what one loses would not be what the other gains.
units::Resistance inside_film(const house::Surface& surface) {
    if (std::holds_alternative<house::RoomId>(surface.beyond)) return vertical_film;
    if (surface.kind == house::SurfaceKind::ceiling || surface.kind == house::SurfaceKind::slope)
        return heat_up_film;
    if (surface.kind == house::SurfaceKind::floor) return heat_down_film;
    return vertical_film;
}

Paths parallel_paths(units::Resistance through_bay, units::Resistance through_wood, double framing) {
    return {through_bay, through_wood, framing, framing / through_wood + (1 - framing) / through_bay};
}

Paths paths(const house::Layers& layers, units::Resistance films, units::Resistance empty_bay) {
    units::Resistance through_bay = films + layers.unknown + layers.bay;
    units::Resistance through_wood =
        films + layers.unknown + (layers.framing > 0 ? layers.bay_depth / wood : layers.bay);
    for (const house::CatalogueName& name : layers.names) {
        const Layer layer = found_or_throw(look_up_layer(name));
        const units::Resistance resistance = layer.empty_bay ? empty_bay : layer.resistance;
        const bool bridged = layer.between_studs && layers.framing > 0;
        through_bay += resistance;
        through_wood += bridged ? layer.thickness / wood : resistance;
    }
    return parallel_paths(through_bay, through_wood, layers.framing);
}

units::Resistance films(const house::Surface& surface) {
    const auto* space = std::get_if<house::Space>(&surface.beyond);
    const units::Resistance inside = inside_film(surface);
    if (surface.buried) return inside;
    return inside + (space && *space == house::Space::outdoors ? outside_film : inside);
}

units::Resistance to_the_soil(const house::Surface& surface, units::Resistance empty_bay) {
    return 1 / without_ground(surface, empty_bay);
}

units::Transmittance transmittance(const house::Surface& surface, units::Resistance empty_bay) {
    if (surface.slab) return edge_loss(*surface.slab) * surface.slab->edge / surface.area;
    if (surface.buried) return in_the_ground(*surface.buried, to_the_soil(surface, empty_bay));
    return without_ground(surface, empty_bay);
}

}  // namespace loads
