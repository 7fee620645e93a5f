// What the heater gives, how long it is on in the design night, and how warm the air it sends out is.
//
//     output  = nameplate output x (1 - loss per metre x elevation), gas furnaces above 2,000 ft
//     output  = nameplate output x (1 - loss per degree x (47 F - outdoors)), heat pumps, at least a quarter
//     on-time = heat loss of the house x (1 + duct loss) / output
//     supply  = return + output / (mass flow x specific heat)
//
// Source: NFPA 54 for the elevation (4 % a 1,000 ft, counted from the sea); steady heat balance for the rest.
// A heat pump's plate tells its output at 47 F outdoors; the fall is linear, its slope common practice, a
// quarter the least any keeps; what it gives on the design night is better read from the maker's table.
// Where nothing of the heater is known, its share of time on is taken and the output follows from that.
// While it is on, a room receives mass flow x specific heat x (arrival - room); over the night, on-time times
// that. Doubling the output at the same airflow halves the on-time and leaves the steady temperature of a
// room at the return air's temperature, where the ducts lose nothing. On-time above 1: the heater cannot hold
// the house; it is then on all the time. Accuracy: the balance exact; the derating +-1 % of output a 1,000
// ft. Throws house::CannotAnswer where there is no output, no airflow or no warmth to answer with.
#pragma once

#include "house/house.hpp"
#include "loads/air.hpp"
#include "loads/method.hpp"
#include "loads/room_heat_loss.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method on_time_method{"on-time of the heater", "heat loss x (1 + duct loss) / output",
                                       "energy balance"};
inline constexpr Method derating_method{
    "output on the design night", "nameplate output x share left",
    "NFPA 54 by elevation (memory); a heat pump by cold, common practice"};
inline constexpr Method supply_method{"supply temperature", "return + output / (mass flow x specific heat)",
                                      "energy balance"};
inline constexpr Method cooling_need_method{"air that cools a room",
                                            "gain / (density x specific heat x (room - supply))",
                                            "energy balance, the coil on all the time"};
inline constexpr Method left_to_heat_method{"heat an electric heater adds",
                                            "load - on-time x mass flow x specific heat x (supply - room)",
                                            "energy balance"};
inline constexpr Method need_method{"air a load needs", "load / (on-time x specific heat x (arrival - room))",
                                    "energy balance"};

struct OnTime {
    units::Power output;
    double wanted = 0;  // may be above 1
    double share = 0;   // wanted, but at most 1
    bool holds() const { return wanted <= 1; }
};

// Of the nameplate's output, what is left at this elevation and on this night.
double share_of_plate(const house::Heater& heater, const house::Site& site);
// What the blower and the plate's temperature rise belong to: the output without the cold's toll.
units::Power rated_output(const house::Heater& heater, const house::Site& site, units::Power house_loss);
units::Power heater_output(const house::Heater& heater, const house::Site& site, units::Power house_loss);
OnTime on_time(const house::House& house, const HouseHeatLoss& loss);
units::Temperature supply_temperature(units::Power output, units::MassFlow flow,
                                      units::SpecificHeat specific_heat, units::Temperature return_air);
// The mass flow, while the heater is on, whose heat equals the load over the night; none for a room that
// gains.
units::MassFlow airflow_for(units::Power load, double on_time, units::SpecificHeat specific_heat,
                            units::TemperatureDifference arrival_above_room);
// What that mass flow leaves of the load for another heater; never below zero.
units::Power left_to_heat(units::Power load, double on_time, units::MassFlow flow,
                          units::SpecificHeat specific_heat, units::TemperatureDifference arrival_above_room);

}  // namespace loads
