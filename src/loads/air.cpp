#include "loads/air.hpp"

#include "house/cannot_answer.hpp"
#include "psychro/atmosphere.hpp"
#include "psychro/density.hpp"
#include "psychro/specific_heat.hpp"
#include "psychro/viscosity.hpp"
#include "units/unit.hpp"

namespace loads {

units::Pressure site_pressure(const house::Site& site) {
    try {
        return units::Pressure(psychro::standard_pressure_pa(site.elevation.si()));
    } catch (const psychro::OutOfRange& range) {
        throw house::CannotAnswer({},
                                  std::string("no air pressure is known at this elevation: ") + range.what());
    }
}

Air air_at(units::Temperature temperature, units::Pressure pressure) {
    const double celsius = units::unit::in_celsius(temperature);
    const psychro::State dry{celsius, 0.0, pressure.si()};
    try {
        return {units::Density(psychro::density_kg_per_m3(dry)),
                units::SpecificHeat(psychro::specific_heat_j_per_kg_k(dry)),
                units::Viscosity(psychro::dynamic_viscosity_pa_s(celsius))};
    } catch (const psychro::OutOfRange& range) {
        throw house::CannotAnswer({}, std::string("no figures for such air: ") + range.what());
    }
}

}  // namespace loads
