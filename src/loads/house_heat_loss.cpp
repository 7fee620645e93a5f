// The whole house, the rooms nobody described included: see loads/room_heat_loss.hpp.
#include "house/cannot_answer.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

// What a room loses from the house: all but what goes to its heated neighbours.
units::Power out_of_the_house(const RoomHeatLoss& room) {
    units::Power lost = room.leakage_loss;
    for (const SurfaceLoss& surface : room.surfaces)
        if (!surface.to_neighbour) lost += surface.loss;
    return lost;
}

units::Power other_rooms_loss(const house::House& house, units::Area whole_exposed,
                              units::Power described_loss) {
    if (!house.other_rooms) return {};
    if (house.other_rooms->heat_loss) return *house.other_rooms->heat_loss;
    const units::Area described = described_exposed_surface(house);
    if (described <= units::Area())
        throw house::CannotAnswer({},
                                  "the other rooms' heat loss is judged by the described rooms that face "
                                  "outdoors, and there is none: describe one, or give heat_loss under "
                                  "[other_rooms]");
    return ((whole_exposed - described) / described) * described_loss;
}

}  // namespace

HouseHeatLoss house_heat_loss(const house::House& house) {
    HouseHeatLoss loss;
    loss.infiltration = infiltration(house);
    for (const house::Room& room : house.rooms) {
        loss.rooms.push_back(room_heat_loss(house, loss.infiltration, room.id));
        loss.total += out_of_the_house(loss.rooms.back());
    }
    loss.other_rooms = other_rooms_loss(house, loss.infiltration.exposed, loss.total);
    loss.total += loss.other_rooms;
    return loss;
}

}  // namespace loads
