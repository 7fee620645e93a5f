// "How much heat does each room lose, and how much air does that take": every room and the whole house, as
// found and as planned; and, where there is cooling, what they gain on the design day of summer.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "ducts/blower.hpp"
#include "house/build.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"
#include "loads/surface_temperature.hpp"
#include "questions/house_gains.hpp"
#include "questions/method_limits.hpp"
#include "questions/verdict.hpp"
#include "questions/weigh_assumptions.hpp"

namespace questions {

// A room that is wanted warmer than the house, at the house's temperature; and what an electric heater would
// add to the air it then needs to reach the wanted one.
struct RoomAsTheHouse {
    units::Temperature inside;
    units::Power loss;
    RoomAir air;
    units::Power electric;
};

struct HouseLoads {
    house::House house;
    loads::HouseHeatLoss loss;
    loads::OnTime on_time;
    ducts::DesignBlower blower;
    units::Temperature supply;
    std::vector<RoomAir> air;                                   // for each room
    std::vector<std::optional<loads::ColdestSurface>> coldest;  // for each room
    std::vector<std::optional<RoomAsTheHouse>> as_the_house;    // for each room, where it is wanted warmer
    std::optional<HouseGains> gains;                            // where there is cooling
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
    std::vector<BeyondLimit> beyond_limits;  // of the planned house
    std::optional<house::RoomId> only;       // the room that was asked for by name

    std::size_t house_loss_figure() const { return planned.loss.rooms.size(); }
    std::size_t gain_figure(std::size_t room) const { return house_loss_figure() + 1 + room; }
    std::size_t house_gain_figure() const { return gain_figure(planned.loss.rooms.size()); }
    std::size_t moisture_figure() const { return house_gain_figure() + 1; }
};

// All rooms, or the one asked for by name; the house counts all of them. Throws house::CannotAnswer, and
// house::AskedWrongly where no room has that name. The survey must be free of mistakes
// (questions/check_sheet).
LoadsAnswer answer_loads(const house::Survey& survey, const std::string& room_name = {});

}  // namespace questions
