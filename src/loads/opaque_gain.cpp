#include "loads/opaque_gain.hpp"

namespace loads {
namespace {

using house::Space;
using house::SurfaceKind;
using units::TemperatureDifference;

OpaqueGain towards_outdoors(SurfaceKind kind, double roof) {
    if (kind == SurfaceKind::ceiling || kind == SurfaceKind::slope)
        return {1, TemperatureDifference(38.3 * roof - 7.0), -0.36};
    if (kind == SurfaceKind::floor) return {1, {}, -0.06};
    return {1, TemperatureDifference(8.2), -0.36};
}

}  // namespace

OpaqueGain opaque_gain(const house::Surface& surface, double roof_absorptance) {
    const auto* space = std::get_if<Space>(&surface.beyond);
    if (!space) return {};
    switch (*space) {
        case Space::outdoors:
            return towards_outdoors(surface.kind, roof_absorptance);
        case Space::attic:
            return {0.62, TemperatureDifference(14.3 * roof_absorptance - 4.5), -0.19};
        case Space::garage:
        case Space::porch:
            return {1, {}, surface.kind == SurfaceKind::floor ? -0.06 : -0.36};
        case Space::crawl:
            return {0.33, {}, -0.28};
        case Space::basement:
        case Space::ground:
        case Space::heated_rooms:
            break;
    }
    return {};
}

TemperatureDifference driving_difference(const OpaqueGain& gain, TemperatureDifference warmer,
                                         TemperatureDifference daily_range) {
    return gain.of_difference * warmer + gain.of_sun + gain.of_daily_range * daily_range;
}

}  // namespace loads
