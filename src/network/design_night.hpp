// The design night with the air that really flows: how long the heater is on, and how warm every room gets.
//
//     room      conductance to what is not heated and to its neighbours x (room - beyond), leakage included
//                   = on-time x sum over its outlets of flow x specific heat x (arrival - room)
//     heater    on-time x output = heat of all rooms + what ducts lose on the way and by leaks
//     supply    return air + output / (blower's flow x specific heat)
//     return    what the grilles draw from their rooms, and what leaks in from around the return ducts
//     between   a room that is supplied more than its grilles draw gives the rest to the house's mix; a room
//               whose grilles draw more (a hall) gets that from the mix
//     arrival   exponential along each run (ducts/run_heat_loss.hpp), linear in the supply temperature
//
// For a given on-time all room temperatures are one linear system; the thermostat's room is warmer the longer
// the heater is on, so the on-time that holds it at its temperature is found by bracketing. Where the sheet
// names no thermostat's room, or one that no air passes, the rooms not described hold the house's
// temperature, or, with all described, the mean of all by their heat loss. A return that nobody described
// draws from the rooms not described, or, with all described, from each what it is supplied. A room without
// register or grille is warmed through its open door: 100 W for each K to the rooms not described, or, with
// all described, to those that are supplied (estimate: the exchange through an open door at 1 K). On-time
// above 1: the heater is on all the time and the house falls behind. Runs to rooms not described lose
// duct_loss of their heat (House::heater), leaks included. A supply leak's heat is lost where the duct runs;
// air that leaks into the return comes from around the return ducts; a return that leaks outwards gives away
// air as warm as it comes back.
// Outdoor air drawn in because one side leaks more than the other is not counted. Steady; no sun, no people,
// no stored heat. Accuracy: the system to 1e-9 K; loads +-10 %.
#pragma once

#include <vector>

#include "house/house.hpp"
#include "loads/method.hpp"
#include "loads/room_heat_loss.hpp"
#include "network/operating_point.hpp"
#include "units/quantity.hpp"

namespace network {

inline constexpr loads::Method design_night_method{
    "temperature a room reaches",
    "heat lost at that temperature = on-time x flow x specific heat x (arrival - room)",
    "energy balance of all rooms at once"};

struct DesignNight {
    double on_time_wanted = 0;  // above 1: the heater cannot hold the house
    double on_time = 0;         // at most 1
    units::Temperature supply;
    std::vector<units::Temperature> rooms;     // by RoomId
    units::Temperature other_rooms;            // where there are any
    std::vector<units::Temperature> arrivals;  // by position in House::outlets; of a grille its room's
    units::Temperature others_arrival;         // at the registers not described
    units::Power delivered;                    // to all rooms, while the heater is on
    units::Power lost_on_the_way;              // by ducts and leaks, while the heater is on
    bool holds() const { return on_time_wanted <= 1; }
};

// Throws house::CannotAnswer where no air reaches the room of the thermostat, or it would leave the heater
// above 90 C.
DesignNight design_night(const house::House& house, const loads::HouseHeatLoss& loss, const Machine& machine,
                         const OperatingPoint& point);

}  // namespace network
