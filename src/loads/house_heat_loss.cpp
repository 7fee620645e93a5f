// The whole house, the rooms nobody described included: see loads/room_heat_loss.hpp.
#include <algorithm>

#include "house/cannot_answer.hpp"
#include "loads/known_transmittances.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

// What a room loses from the house through its surfaces: all but what goes to its heated neighbours.
units::Power through_surfaces(const RoomHeatLoss& room) {
    units::Power lost;
    for (const SurfaceLoss& surface : room.surfaces)
        if (!surface.to_neighbour) lost += surface.loss;
    return lost;
}

// Rooms the work does not touch tell best what the others are like; where all are touched, all of them have
// to.
struct Likeness {
    units::Area exposed;
    units::Power loss;  // through surfaces, at the house's temperature
};
Likeness likeness(const house::House& house, const std::vector<RoomHeatLoss>& rooms, bool altered_too) {
    Likeness like;
    const units::Temperature outdoors = house.site.winter_outdoor;
    for (const RoomHeatLoss& room : rooms) {
        if (house.room(room.room).altered && !altered_too) continue;
        like.exposed += exposed_surface(house.room(room.room));
        const units::TemperatureDifference difference = room.inside - outdoors;
        if (difference.si() > 0)
            like.loss += through_surfaces(room) * ((house.site.winter_indoor - outdoors) / difference);
    }
    return like;
}

units::Power other_rooms_loss(const house::House& house, const HouseHeatLoss& loss) {
    if (!house.other_rooms) return {};
    if (house.other_rooms->heat_loss) return *house.other_rooms->heat_loss;
    Likeness like = likeness(house, loss.rooms, false);
    if (like.exposed <= units::Area()) like = likeness(house, loss.rooms, true);
    if (like.exposed <= units::Area())
        throw house::CannotAnswer({},
                                  "the other rooms' heat loss is judged by the described rooms that face "
                                  "outdoors, and there is none: describe one, or give heat_loss under "
                                  "[other_rooms]");
    const units::Area others = loss.infiltration.exposed - described_exposed_surface(house);
    const units::HeatLossPerKelvin air = to_warm_the_air(house, loss.other_leakage);
    return (others / like.exposed) * like.loss + air * (house.site.winter_indoor - house.site.winter_outdoor);
}

}  // namespace

HouseHeatLoss house_heat_loss(const house::House& house) {
    HouseHeatLoss loss;
    loss.infiltration = infiltration(house);
    KnownTransmittances known(house.empty_bay);
    loss.spaces = spaces_in_winter(house, known);
    loss.rooms.reserve(house.rooms.size());
    units::Airflow left = loss.infiltration.air.to_heat();
    for (const house::Room& room : house.rooms) {
        loss.rooms.push_back(room_heat_loss({house, loss.infiltration, loss.spaces, known}, room.id));
        const RoomHeatLoss& lost = loss.rooms.back();
        loss.total += through_surfaces(lost) + lost.leakage_loss;
        left -= lost.leakage;
    }
    if (house.other_rooms) loss.other_leakage = std::max(left, units::Airflow());
    loss.other_rooms = other_rooms_loss(house, loss);
    loss.total += loss.other_rooms;
    return loss;
}

}  // namespace loads
