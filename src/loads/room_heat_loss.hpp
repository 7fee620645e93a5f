// Heat a room loses on the design night, surface by surface, and the heat loss of the whole house.
//
//     loss of a surface = area x U x (inside - beyond)
//     loss by leakage   = airflow x density x specific heat x (inside - outdoors)
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, heating. Changed: density and specific heat from the air
// at the site, not a constant. No credit for sun, people or stored heat.
// A neighbour at another temperature counts, equal and opposite, and so vanishes from the house.
// Linear in the room's temperature: loss = conductance x (inside - balance).
// The rooms not described: as stated in the sheet, leakage included, or the described rooms' mean loss per
// exposed area to what is not heated, at the house's temperature, times the others' exposed surface, and
// their share of the leakage. Rooms the work alters are left out of that mean where others are described: the
// work does not change the rest of the house. What a warm room gives the others is not in the figure, as it
// never leaves the house. Accuracy: +-10 % at best for the method (ibid.), beside what was assumed.
#pragma once

#include <string>
#include <vector>

#include "house/house.hpp"
#include "loads/buffer_space.hpp"
#include "loads/infiltration.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method surface_loss{"heat loss of a surface", "area x U x difference",
                                     "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 33"};
inline constexpr Method leakage_loss{"heat to warm the leaking air",
                                     "airflow x density x specific heat x difference",
                                     "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 1"};

struct SurfaceLoss {
    std::string surface;  // "north wall"
    house::SurfaceKind kind = house::SurfaceKind::wall;
    std::string beyond_name;    // "outdoors", "attic", "hall"
    bool to_neighbour = false;  // a heated room: the heat stays in the house
    units::Area area;
    units::Transmittance u;
    units::Temperature beyond;
    bool on_slab = false;  // a floor on the ground, which loses by its edge
    units::Length edge;
    units::Conductivity edge_loss;
    units::Power loss;
};

struct RoomHeatLoss {
    house::RoomId room;
    units::Temperature inside;
    std::vector<SurfaceLoss> surfaces;  // as in the house, largest first only when printed
    units::Airflow leakage;             // outdoor air to be heated, ventilation's included, at indoor density
    units::Power leakage_loss;
    units::Power total;  // surfaces, neighbours and leakage
    units::HeatLossPerKelvin conductance;
    units::Temperature balance;  // at this temperature the room would lose nothing
};

struct HouseHeatLoss {
    Infiltration infiltration;
    SpacesInWinter spaces;
    std::vector<RoomHeatLoss> rooms;  // in the sheet's order
    units::Airflow other_leakage;     // of the rooms not described: what the described ones leave
    units::Power other_rooms;         // without what described rooms give them or take
    units::Power total;               // what leaves the house: flows between heated rooms cancel
};

RoomHeatLoss room_heat_loss(const house::House& house, const Infiltration& leakage, house::RoomId room);
HouseHeatLoss house_heat_loss(const house::House& house);

}  // namespace loads
