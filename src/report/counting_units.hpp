// The units that sums are printed in: how many of them one SI unit is, and their name.
#pragma once

#include <string_view>

#include "units/quantity.hpp"
#include "units/write.hpp"

namespace report {

struct CountingUnit {
    double per_si = 1;
    std::string_view name;
};

CountingUnit unit_of(units::Power, units::System system);
CountingUnit unit_of(units::Airflow, units::System system);
CountingUnit unit_of(units::Length, units::System system);  // ft, m
CountingUnit unit_of(units::Area, units::System system);
CountingUnit unit_of(units::Volume, units::System system);
CountingUnit unit_of(units::Pressure, units::System system);
CountingUnit unit_of(units::Velocity, units::System system);
CountingUnit unit_of(units::TemperatureDifference, units::System system);
CountingUnit unit_of(units::Transmittance, units::System system);
CountingUnit unit_of(units::Conductivity, units::System system);
CountingUnit unit_of(units::HeatFlux, units::System system);
CountingUnit unit_of(units::Resistance, units::System system);
CountingUnit unit_of(units::Density, units::System system);
CountingUnit unit_of(units::SpecificHeat, units::System system);
CountingUnit unit_of(units::MassFlow, units::System system);  // lb/h, kg/s
CountingUnit unit_of(units::FrictionRate, units::System system);
CountingUnit unit_of(units::Viscosity, units::System system);  // lb/ft.h, Pa s
CountingUnit unit_of(units::HeatLossPerKelvin, units::System system);

template <class Q>
double count(Q quantity, units::System system) {
    return quantity.si() * unit_of(quantity, system).per_si;
}
double count(units::Temperature temperature, units::System system);  // degrees F or C

// What a unit of airflow carries of heat, per degree and per (density x specific heat), in the counting
// units: 60 of cfm and Btu/h, 0.001 of L/s and W.
double heat_per_airflow(units::System system);

}  // namespace report
