// What every room gains on the design day of summer, and the cooled air that takes.
#pragma once

#include <vector>

#include "house/house.hpp"
#include "loads/room_heat_gain.hpp"
#include "units/quantity.hpp"

namespace questions {

// The air a room needs at the plenum's temperature: at least so much, and more by what the way to it loses.
struct RoomAir {
    bool enough = true;  // false: the supply air is not warmer than the room, no flow would do
    units::MassFlow flow;
    units::Airflow airflow;  // at the plenum's temperature
};

// The air that cools a room while the coil is on all the time, as it leaves the coil.
struct HouseGains {
    loads::HouseHeatGain gain;
    std::vector<RoomAir> air;  // for each room; none for one that gains nothing
    RoomAir of_house;          // that cools all of it
};

// Of a house with a Summer.
HouseGains house_gains(const house::House& house, const loads::Infiltration& infiltration);

}  // namespace questions
