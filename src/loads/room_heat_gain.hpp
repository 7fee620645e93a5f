// Heat a room gains on the design day of summer, surface by surface, and the heat gain of the whole house.
//
//     gain = sum of area x factor of each surface + leakage + its part of the internal gain
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, the load-factor method; its parts in
// loads/opaque_gain.hpp, window_gain.hpp, summer_leakage.hpp and internal_gain.hpp. All rooms are held at one
// temperature, so nothing goes from room to room; all rooms' peaks count at the hour of the house's. The
// rooms not described: the described rooms' mean gain through surfaces per exposed area, times the others'
// exposed surface, and what is left of leakage and internal gain; as for the heat loss
// (loads/room_heat_loss.hpp), rooms the work alters are left out of that mean. Moisture counts for the house
// alone: it asks for no more air in a room. Range: light-frame houses below 2,000 m, latitude 20 to 60, 21
// July. Accuracy: +-10 % at best for the method (ibid.); one room of a house is known less well.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "house/house.hpp"
#include "loads/infiltration.hpp"
#include "loads/internal_gain.hpp"
#include "loads/opaque_gain.hpp"
#include "loads/summer_leakage.hpp"
#include "loads/window_gain.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method surface_gain_method{"heat gain of a surface", "area x gain of a square foot or metre",
                                            "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 20-24"};

struct SlabGain {
    units::Resistance covering;
};

struct SurfaceGain {
    std::string surface;  // "west window"
    std::string beyond_name;
    units::Area area;
    units::Transmittance u;
    std::variant<OpaqueGain, WindowGain, SlabGain> parts;
    units::HeatFlux factor;
    units::Power gain;
};

struct RoomHeatGain {
    house::RoomId room;
    std::vector<SurfaceGain> surfaces;  // as in the house
    units::Airflow leakage;
    units::Power leakage_gain, internal, total;  // sensible
};

struct HouseHeatGain {
    SummerLeakage leakage;
    InternalGain internal;
    std::vector<RoomHeatGain> rooms;  // in the sheet's order
    units::Power other_rooms;
    units::Power sensible, latent;
};

// The house must have a summer.
RoomHeatGain room_heat_gain(const house::House& house, const HouseHeatGain& of_house,
                            const Infiltration& winter, house::RoomId room);
HouseHeatGain house_heat_gain(const house::House& house, const Infiltration& winter);

}  // namespace loads
