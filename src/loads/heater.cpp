#include "loads/heater.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

constexpr units::Length derated_above = 2000 * units::unit::foot;
constexpr double least_left_in_the_cold = 0.25;

double left_by_elevation(const house::Heater& heater, units::Length elevation) {
    if (elevation <= derated_above) return 1;
    return std::max(0.0, 1 - heater.output_lost_per_metre * (elevation / units::unit::metre));
}

double left_by_cold(const house::Heater& heater, units::Temperature outdoor) {
    const double colder = (house::heat_pump_rating - outdoor) / units::unit::kelvin;
    if (colder <= 0 || heater.output_lost_per_kelvin <= 0) return 1;
    return std::max(least_left_in_the_cold, 1 - heater.output_lost_per_kelvin * colder);
}

}  // namespace

double share_of_plate(const house::Heater& heater, const house::Site& site) {
    return left_by_elevation(heater, site.elevation) * left_by_cold(heater, site.winter_outdoor);
}

units::Power rated_output(const house::Heater& heater, const house::Site& site, units::Power house_loss) {
    if (const auto* plate = std::get_if<units::Power>(&heater.capacity))
        return left_by_elevation(heater, site.elevation) * *plate;
    const double share_of_time = std::get<double>(heater.capacity);
    if (share_of_time <= 0) throw house::CannotAnswer({}, "a heater that is never on heats nothing");
    return house_loss * (1 + heater.duct_loss) / share_of_time;
}

units::Power heater_output(const house::Heater& heater, const house::Site& site, units::Power house_loss) {
    return left_by_cold(heater, site.winter_outdoor) * rated_output(heater, site, house_loss);
}

OnTime on_time(const house::House& house, const HouseHeatLoss& loss) {
    const units::Power output = heater_output(house.heater, house.site, loss.total);
    if (output <= units::Power()) throw house::CannotAnswer({}, "the heater gives no heat");
    const double wanted = std::max(0.0, loss.total * (1 + house.heater.duct_loss) / output);
    return {output, wanted, std::min(wanted, 1.0)};
}

units::Temperature supply_temperature(units::Power output, units::MassFlow flow,
                                      units::SpecificHeat specific_heat, units::Temperature return_air) {
    if (flow <= units::MassFlow()) throw house::CannotAnswer({}, "no air passes the heater");
    return return_air + output / (flow * specific_heat);
}

units::MassFlow airflow_for(units::Power load, double on_time, units::SpecificHeat specific_heat,
                            units::TemperatureDifference arrival_above_room) {
    if (load <= units::Power()) return {};
    if (on_time <= 0) throw house::CannotAnswer({}, "the heater is never on, so no air is warm");
    if (arrival_above_room <= units::TemperatureDifference())
        throw house::CannotAnswer(
            {}, "the air arrives no warmer than the room, so no amount of it heats the room");
    return load / (on_time * specific_heat * arrival_above_room);
}

units::Power left_to_heat(units::Power load, double on_time, units::MassFlow flow,
                          units::SpecificHeat specific_heat,
                          units::TemperatureDifference arrival_above_room) {
    return std::max(units::Power(), load - on_time * (flow * specific_heat * arrival_above_room));
}

}  // namespace loads
