// Air at the site: pressure from the elevation, density, specific heat and viscosity from the temperature.
//
// Source: psychro (perfect gas, standard atmosphere, Sutherland). Dry air: room and supply air in the heating
// season hold so little water (0.004 kg/kg) that density is under 0.3 % and specific heat under 0.8 % off.
// Summer air of 0.010 kg/kg: density 0.6 % and specific heat 1.9 % off, the two against each other.
// Range -60 to 90 C, -500 to 11,000 m.
#pragma once

#include "house/house.hpp"
#include "units/quantity.hpp"

namespace loads {

struct Air {
    units::Density density;
    units::SpecificHeat specific_heat;
    units::Viscosity viscosity;
};

units::Pressure site_pressure(const house::Site& site);
Air air_at(units::Temperature temperature, units::Pressure pressure);

}  // namespace loads
