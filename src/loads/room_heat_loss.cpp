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

Beyond beyond(const house::House& house, const house::Surface& surface) {
    if (const auto* id = std::get_if<house::RoomId>(&surface.beyond)) {
        const house::Room& neighbour = house.room(*id);
        return {neighbour.name, true, neighbour.winter_indoor};
    }
    const auto space = std::get<house::Space>(surface.beyond);
    return {std::string(house::word(space)), space == house::Space::heated_rooms, house.winter(space)};
}

SurfaceLoss loss_through(const house::House& house, const house::Surface& surface, units::Transmittance u,
                         units::Temperature inside) {
    const Beyond other_side = beyond(house, surface);
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

units::HeatLossPerKelvin to_warm_the_air(const house::House& house, units::Airflow leakage) {
    const Air indoors = air_at(house.site.winter_indoor, site_pressure(house.site));
    return leakage * indoors.density * indoors.specific_heat;
}

}  // namespace

RoomHeatLoss room_heat_loss(const house::House& house, const Infiltration& leakage, house::RoomId room) {
    KnownTransmittances known(house.empty_bay);
    return room_heat_loss(house, leakage, room, known);
}

RoomHeatLoss room_heat_loss(const house::House& house, const Infiltration& leakage, house::RoomId id,
                            KnownTransmittances& known) {
    const house::Room& room = house.room(id);
    RoomHeatLoss lost;
    lost.room = id;
    lost.inside = room.winter_indoor;
    if (leakage.exposed > units::Area())
        lost.leakage = (exposed_surface(room) / leakage.exposed) * leakage.airflow;
    lost.conductance = to_warm_the_air(house, lost.leakage);
    lost.leakage_loss = lost.conductance * (lost.inside - house.site.winter_outdoor);
    lost.total = lost.leakage_loss;
    lost.surfaces.reserve(room.surfaces.size());
    for (const house::Surface& surface : room.surfaces) {
        lost.surfaces.push_back(loss_through(house, surface, known.of(surface), lost.inside));
        lost.conductance += surface.area * lost.surfaces.back().u;
        lost.total += lost.surfaces.back().loss;
    }
    lost.balance = lost.inside;
    if (lost.conductance > units::HeatLossPerKelvin())
        lost.balance = lost.inside - lost.total / lost.conductance;
    return lost;
}

}  // namespace loads
