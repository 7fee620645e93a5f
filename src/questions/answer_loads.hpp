// "How much heat does each room lose, and how much air does that take": every room and the whole house, as
// found and as planned.
#pragma once

#include <optional>
#include <vector>

#include "ducts/blower.hpp"
#include "house/build.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"
#include "questions/verdict.hpp"
#include "questions/weigh_assumptions.hpp"

namespace questions {

// The air a room needs at the plenum's temperature: at least so much, and more by what the way to it loses.
struct RoomAir {
    bool enough = true;  // false: the supply air is not warmer than the room, no flow would do
    units::MassFlow flow;
    units::Airflow airflow;  // at the plenum's temperature
};

struct HouseLoads {
    house::House house;
    loads::HouseHeatLoss loss;
    loads::OnTime on_time;
    ducts::DesignBlower blower;
    units::Temperature supply;
    std::vector<RoomAir> air;  // for each room
};

struct LoadsAnswer {
    HouseLoads planned;
    std::optional<HouseLoads> found;  // where the sheet plans a change
    Weighed weighed;  // figures: each room's loss in the planned house, then the whole house's, W
};

// Throws house::CannotAnswer. The survey must be free of mistakes (questions/check_sheet).
LoadsAnswer answer_loads(const house::Survey& survey);

}  // namespace questions
