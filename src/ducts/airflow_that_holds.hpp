// The airflow through a duct that holds a room at its temperature, and the temperature at which that air
// arrives.
//
//     on-time x mass flow x specific heat x (arrival - room) = heat loss of the room
//     arrival: the supply temperature less what the way loses, which depends on the flow
//
// Solved together by bracketing: delivered heat first falls (air that arrives colder than the room) and then
// rises with the flow, so there is one answer at most. On the shared part of the way the plan's flow holds,
// on the room's own part the flow sought. Accuracy 1e-9 of the flow.
#pragma once

#include <optional>
#include <vector>

#include "ducts/duct_system.hpp"
#include "loads/air.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"
#include "units/quantity.hpp"

namespace ducts {

// The way of the air from the plenum to one outlet, as heat sees it.
struct HeatWay {
    std::vector<Run> shared;
    std::vector<units::MassFlow> shared_flows;  // of the plan, one for each shared run
    std::vector<Run> own;                       // serve this outlet alone
};
HeatWay heat_way(const Side& supply, const std::vector<int>& way);

// What the air brings: how warm it starts and what share of the time it flows.
struct Supply {
    units::Temperature temperature;
    units::SpecificHeat specific_heat;
    units::Pressure pressure;  // of the site
    double on_time = 1;
};

units::Temperature arrival(const HeatWay& way, const Supply& supply, units::MassFlow flow);

struct Holding {
    units::MassFlow flow;
    units::Temperature arrival;
    units::Airflow airflow;  // as it leaves the register: at the arrival's density
};
// Empty where no flow holds the room: the supply air is not warm enough.
std::optional<Holding> airflow_that_holds(const HeatWay& way, const Supply& supply,
                                          const loads::RoomHeatLoss& room);

// The steady temperature a room reaches with so much air: its loss, linear in its temperature, equals the
// heat brought.
units::Temperature room_temperature(const HeatWay& way, const Supply& supply, const loads::RoomHeatLoss& room,
                                    units::MassFlow flow);

}  // namespace ducts
