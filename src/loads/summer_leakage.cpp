#include "loads/summer_leakage.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"
#include "loads/air.hpp"
#include "psychro/enthalpy.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/wet_bulb.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;

constexpr double indoor_humidity = 0.5;

psychro::State indoors(const house::Summer& summer, units::Pressure pressure) {
    return psychro::state_from_relative_humidity(unit::in_celsius(summer.indoor), indoor_humidity,
                                                 pressure.si());
}

double more_outdoors(const house::Summer& summer, const psychro::State& indoor) {
    if (const auto* given = std::get_if<double>(&summer.moisture)) return *given;
    const double wet_bulb = unit::in_celsius(std::get<units::Temperature>(summer.moisture));
    const psychro::State outdoor =
        psychro::state_from_wet_bulb(unit::in_celsius(summer.outdoor), wet_bulb, indoor.pressure_pa);
    return std::max(0.0, outdoor.humidity_ratio - indoor.humidity_ratio);
}

// J per kg of air that brings so much more moisture.
double heat_of_moisture(const psychro::State& indoor, double more) {
    psychro::State moister = indoor;
    moister.humidity_ratio += more;
    return psychro::enthalpy_j_per_kg_dry_air(moister) - psychro::enthalpy_j_per_kg_dry_air(indoor);
}

}  // namespace

double summer_driving_force(units::Length stack_height, units::TemperatureDifference difference) {
    return (25 + 0.38 * (stack_height / unit::metre) * (units::abs(difference) / unit::kelvin)) / 1000;
}

SummerLeakage summer_leakage(const house::House& house, const Infiltration& winter) {
    const house::Summer& summer = *house.summer;
    const units::Pressure pressure = site_pressure(house.site);
    const Air air = air_at(summer.indoor, pressure);
    SummerLeakage leaks;
    leaks.warmer = summer.outdoor - summer.indoor;
    leaks.airflow = summer_driving_force(winter.stack_height, leaks.warmer) *
                    (winter.leakage_area / unit::square_centimetre) * unit::litre_per_second;
    leaks.air = outdoor_air(leaks.airflow, house.ventilation);
    leaks.heat_per_kelvin = leaks.air.to_heat() * air.density * air.specific_heat;
    try {
        const psychro::State indoor = indoors(summer, pressure);
        leaks.moisture = more_outdoors(summer, indoor);
        leaks.latent = units::Power((leaks.air.entering() * air.density).si() *
                                    heat_of_moisture(indoor, leaks.moisture));
    } catch (const psychro::OutOfRange& range) {
        throw house::CannotAnswer({}, std::string("no figures for the summer air: ") + range.what());
    }
    return leaks;
}

}  // namespace loads
