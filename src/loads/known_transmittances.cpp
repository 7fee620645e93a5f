#include "loads/known_transmittances.hpp"

#include <algorithm>

#include "loads/transmittance.hpp"

namespace loads {
namespace {

bool same_make(const house::Layers& a, const house::Layers& b) {
    return a.framing == b.framing && a.unknown == b.unknown && a.bay == b.bay && a.bay_depth == b.bay_depth &&
           std::equal(
               a.names.begin(), a.names.end(), b.names.begin(), b.names.end(),
               [](const house::CatalogueName& x, const house::CatalogueName& y) { return x.text == y.text; });
}

}  // namespace

units::Transmittance KnownTransmittances::of(const house::Surface& surface) {
    const auto* layers = std::get_if<house::Layers>(&surface.assembly);
    if (!layers || surface.buried || surface.slab) return transmittance(surface, empty_bay_);
    const units::Resistance both_films = films(surface);
    for (const Known& known : known_)
        if (known.films == both_films && same_make(*known.layers, *layers)) return known.u;
    known_.push_back({layers, both_films, transmittance(surface, empty_bay_)});
    return known_.back().u;
}

}  // namespace loads
