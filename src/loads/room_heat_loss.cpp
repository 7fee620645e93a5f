#include "loads/room_heat_loss.hpp"

#include "loads/air.hpp"
#include "loads/known_transmittances.hpp"
#include "loads/slab_edges.hpp"

namespace loads {
namespace {

struct Beyond {
    std::string name;
    bool heated = false;
    units::Temperature temperature;
};

Beyond beyond(const house::House& house, const SpacesInWinter& spaces, const house::Surface& surface) {
    if (const auto* id = std::get_if<house::RoomId>(&surface.beyond)) {
        const house::Room& neighbour = house.room(*id);
        return {neighbour.name, true, neighbour.winter_indoor};
    }
    const auto space = std::get<house::Space>(surface.beyond);
    return {std::string(house::word(space)), space == house::Space::heated_rooms, spaces.of(space)};
}

SurfaceLoss loss_through(const Beyond& other_side, const house::Surface& surface, units::Transmittance u,
                         units::Temperature inside) {
    SurfaceLoss lost;
    lost.surface = surface.name;
    lost.kind = surface.kind;
    lost.beyond_name = other_side.name;
    lost.to_neighbour = other_side.heated;
    lost.area = surface.area;
    lost.u = u;
    lost.beyond = other_side.temperature;
    if (surface.slab) {
        lost.on_slab = true;
        lost.edge = surface.slab->edge;
        lost.edge_loss = edge_loss(*surface.slab);
    }
    lost.loss = lost.area * lost.u * (inside - lost.beyond);
    return lost;
}

}  // namespace

units::HeatLossPerKelvin to_warm_the_air(const house::House& house, units::Airflow leakage) {
    const Air indoors = air_at(house.site.winter_indoor, site_pressure(house.site));
    return leakage * indoors.density * indoors.specific_heat;
}

RoomHeatLoss room_heat_loss(const house::House& house, const Infiltration& leakage, house::RoomId room) {
    KnownTransmittances known(house.empty_bay);
    const SpacesInWinter spaces = spaces_in_winter(house, known);
    return room_heat_loss({house, leakage, spaces, known}, room);
}

RoomHeatLoss room_heat_loss(const Night& night, house::RoomId id) {
    const house::House& house = night.house;
    const house::Room& room = house.room(id);
    RoomHeatLoss lost;
    lost.room = id;
    lost.inside = room.winter_indoor;
    lost.leakage = share_of(night.leakage.shares, room) * night.leakage.air.to_heat();
    lost.conductance = to_warm_the_air(house, lost.leakage);
    lost.leakage_loss = lost.conductance * (lost.inside - house.site.winter_outdoor);
    lost.total = lost.leakage_loss;
    lost.surfaces.reserve(room.surfaces.size());
    for (const house::Surface& surface : room.surfaces) {
        lost.surfaces.push_back(loss_through(beyond(house, night.spaces, surface), surface,
                                             night.known.of(surface), lost.inside));
        lost.conductance += surface.area * lost.surfaces.back().u;
        lost.total += lost.surfaces.back().loss;
    }
    lost.balance = lost.inside;
    if (lost.conductance > units::HeatLossPerKelvin())
        lost.balance = lost.inside - lost.total / lost.conductance;
    return lost;
}

}  // namespace loads
