#include "loads/outside_the_bay.hpp"

#include "loads/materials.hpp"
#include "loads/named_rows.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

Layer layer_named(const house::CatalogueName& name) { return found_or_throw(look_up_layer(name)); }

OutsideTheBay of_layers(const house::Layers& layers) {
    OutsideTheBay outside;
    outside.bay = layers.bay_depth;
    std::size_t position = 0;
    for (const house::CatalogueName& name : layers.names) {
        const Layer layer = layer_named(name);
        const bool before_open_bay = layers.bay_depth.si() <= 0 || position < layers.bay_after;
        const bool before_filled_bay = outside.bay <= layers.bay_depth;
        if (layer.between_studs)
            outside.bay += layer.thickness;
        else if (before_open_bay && before_filled_bay)
            outside.layers += layer.resistance;
        ++position;
    }
    return outside;
}

}  // namespace

std::optional<OutsideTheBay> outside_the_bay(const house::Surface& wall) {
    const auto* layers = std::get_if<house::Layers>(&wall.assembly);
    if (!layers) return std::nullopt;
    const OutsideTheBay outside = of_layers(*layers);
    const bool bay_is_unknown = outside.bay.si() <= 0 && layers->unknown.si() > 0;
    return bay_is_unknown ? std::nullopt : std::optional(outside);
}

OutsideTheBay usual_outside_the_bay() {
    return {
        layer_named({"lap siding", {}}).resistance + layer_named({"board sheathing, 3/4 in", {}}).resistance,
        3.5 * units::unit::inch, true};
}

}  // namespace loads
