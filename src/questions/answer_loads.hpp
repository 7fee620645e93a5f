// "How much heat does each room lose, and how much air does that take": every room and the whole house, as
// found and as planned; and, where there is cooling, what they gain on the design day of summer.
#pragma once

#include <optional>
#include <vector>

#include "ducts/blower.hpp"
#include "house/build.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_gain.hpp"
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

// The air that cools a room while the coil is on all the time, as it leaves the coil.
struct HouseGains {
    loads::HouseHeatGain gain;
    std::vector<RoomAir> air;  // for each room; none for one that gains nothing
};

struct HouseLoads {
    house::House house;
    loads::HouseHeatLoss loss;
    loads::OnTime on_time;
    ducts::DesignBlower blower;
    units::Temperature supply;
    std::vector<RoomAir> air;         // for each room
    std::optional<HouseGains> gains;  // where there is cooling
    // Whether cooling asks for more air in a room than heating, and so for the larger duct.
    bool cooling_governs(std::size_t room) const {
        return gains && gains->air[room].airflow > air[room].airflow;
    }
};

struct LoadsAnswer {
    HouseLoads planned;
    std::optional<HouseLoads> found;  // where the sheet plans a change
    // Figures of the planned house, W: each room's loss, then the whole house's; where there is cooling, each
    // room's gain, then the house's, then that of its moisture.
    Weighed weighed;

    std::size_t house_loss_figure() const { return planned.loss.rooms.size(); }
    std::size_t gain_figure(std::size_t room) const { return house_loss_figure() + 1 + room; }
    std::size_t house_gain_figure() const { return gain_figure(planned.loss.rooms.size()); }
    std::size_t moisture_figure() const { return house_gain_figure() + 1; }
};

// Throws house::CannotAnswer. The survey must be free of mistakes (questions/check_sheet).
LoadsAnswer answer_loads(const house::Survey& survey);

}  // namespace questions
