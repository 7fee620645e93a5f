// How a room's heat loss is told: its parts in words, largest first.
#pragma once

#include <string>
#include <vector>

#include "house/house.hpp"
#include "loads/room_heat_loss.hpp"
#include "units/write.hpp"

namespace report {

// One part of a loss: "west wall", "air leakage", "to the 70 F hall and bedroom".
struct LossPart {
    std::string words;
    units::Power loss;
};
// Largest first; what prints as nothing is left out; neighbours of one temperature together.
std::vector<LossPart> loss_parts(const house::House& house, const loads::RoomHeatLoss& room,
                                 units::System system);

// "air leakage", with the ventilation where some runs all the time.
std::string outdoor_air_words(const house::House& house);
std::string the_room(const house::House& house, house::RoomId room);  // "the bath"
// What a room loses from the house: all but what goes to heated neighbours.
units::Power out_of_the_house(const loads::RoomHeatLoss& room);
bool prints_as_nothing(units::Power loss, units::System system);

// Where storeys of the house hold no room and [other_rooms] is not there.
std::string rooms_forgotten(const house::House& house);

}  // namespace report
