#include "loads/summer_leakage.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"
#include "loads/air.hpp"
#include "loads/damp_air.hpp"
#include "psychro/enthalpy.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;

// J per kg of air that brings so much more moisture than the air indoors has.
double heat_of_moisture(psychro::State indoor, double more) {
    const double without = psychro::enthalpy_j_per_kg_dry_air(indoor);
    indoor.humidity_ratio += more;
    return psychro::enthalpy_j_per_kg_dry_air(indoor) - without;
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
        const SummerMoisture moisture = summer_moisture(house);
        const psychro::State indoor{unit::in_celsius(summer.indoor), moisture.indoors, pressure.si()};
        leaks.moisture = std::max(0.0, moisture.outdoors - moisture.indoors);
        leaks.latent = units::Power((leaks.air.entering() * air.density).si() *
                                    heat_of_moisture(indoor, leaks.moisture));
    } catch (const psychro::OutOfRange& range) {
        throw house::CannotAnswer({}, std::string("no figures for the summer air: ") + range.what());
    }
    return leaks;
}

}  // namespace loads
