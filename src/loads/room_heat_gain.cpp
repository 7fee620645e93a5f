#include "loads/room_heat_gain.hpp"

#include "loads/roofs.hpp"
#include "loads/slab_edges.hpp"
#include "loads/transmittance.hpp"

namespace loads {
namespace {

std::string beyond_name(const house::House& house, const house::Surface& surface) {
    if (surface.slab) return std::string(house::word(house::Space::ground));
    if (const auto* id = std::get_if<house::RoomId>(&surface.beyond)) return house.room(*id).name;
    return std::string(house::word(std::get<house::Space>(surface.beyond)));
}

bool lies_inside(const house::Surface& surface) {
    const auto* space = std::get_if<house::Space>(&surface.beyond);
    return !space || *space == house::Space::heated_rooms || *space == house::Space::basement ||
           *space == house::Space::ground;
}

SurfaceGain gain_through(const house::House& house, const house::Surface& surface) {
    const house::Summer& summer = *house.summer;
    const units::TemperatureDifference warmer = summer.outdoor - summer.indoor;
    SurfaceGain gain;
    gain.surface = surface.name;
    gain.beyond_name = beyond_name(house, surface);
    gain.area = surface.area;
    gain.u = transmittance(surface, house.empty_bay);
    if (surface.slab) {
        gain.parts = SlabGain{covering(*surface.slab)};
        gain.factor = slab_gain(covering(*surface.slab));
        gain.gain = gain.area * gain.factor;
        return gain;
    }
    if (surface.kind == house::SurfaceKind::window && !lies_inside(surface)) {
        const WindowGain window = window_gain(surface, summer.latitude);
        gain.parts = window;
        gain.factor = gain.u * (warmer - window_daily_range * summer.daily_range) + window.from_the_sun();
    } else {
        const OpaqueGain opaque = opaque_gain(surface, roof_absorptance(summer));
        gain.parts = opaque;
        gain.factor = gain.u * driving_difference(opaque, warmer, summer.daily_range);
    }
    gain.gain = gain.area * gain.factor;
    return gain;
}

}  // namespace

RoomHeatGain room_heat_gain(const house::House& house, const HouseHeatGain& of_house,
                            const Infiltration& winter, house::RoomId id) {
    const house::Room& room = house.room(id);
    RoomHeatGain gain;
    gain.room = id;
    const double share = share_by_volume(winter.shares, room);
    gain.leakage = share * of_house.leakage.air.to_heat();
    gain.leakage_gain = share * of_house.leakage.sensible();
    gain.internal = internal_share(house, room) * of_house.internal.sensible;
    gain.total = gain.leakage_gain + gain.internal;
    for (const house::Surface& surface : room.surfaces) {
        gain.surfaces.push_back(gain_through(house, surface));
        gain.total += gain.surfaces.back().gain;
    }
    return gain;
}

}  // namespace loads
