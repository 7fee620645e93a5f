#include "report/counting_units.hpp"

#include "units/unit.hpp"

namespace report {
namespace {

namespace unit = units::unit;
using units::System;

constexpr double pound = 0.45359237;  // kg

CountingUnit either(System system, CountingUnit us, CountingUnit si) {
    return system == System::us ? us : si;
}

}  // namespace

CountingUnit unit_of(units::Power, System system) {
    return either(system, {1 / unit::btu_per_hour.si(), "Btu/h"}, {1, "W"});
}
CountingUnit unit_of(units::Airflow, System system) {
    return either(system, {1 / unit::cfm.si(), "cfm"}, {1000, "L/s"});
}
CountingUnit unit_of(units::Length, System system) {
    return either(system, {1 / unit::foot.si(), "ft"}, {1, "m"});
}
CountingUnit unit_of(units::Area, System system) {
    return either(system, {1 / unit::square_foot.si(), "ft2"}, {1, "m2"});
}
CountingUnit unit_of(units::Volume, System system) {
    return either(system, {1 / unit::cubic_foot.si(), "ft3"}, {1, "m3"});
}
CountingUnit unit_of(units::Pressure, System system) {
    return either(system, {1 / unit::inch_wc.si(), "in.wc"}, {1, "Pa"});
}
CountingUnit unit_of(units::Velocity, System system) {
    return either(system, {1 / unit::foot_per_minute.si(), "ft/min"}, {1, "m/s"});
}
CountingUnit unit_of(units::TemperatureDifference, System system) {
    return either(system, {1.8, "F"}, {1, "K"});
}
CountingUnit unit_of(units::Transmittance, System system) {
    return either(system, {1 / unit::btu_per_hour_square_foot_fahrenheit.si(), "Btu/h.ft2.F"}, {1, "W/m2K"});
}
CountingUnit unit_of(units::Conductivity, System system) {
    return either(system, {1 / unit::btu_per_hour_foot_fahrenheit.si(), "Btu/h.ft.F"}, {1, "W/mK"});
}
CountingUnit unit_of(units::HeatFlux, System system) {
    return either(system, {1 / unit::btu_per_hour_square_foot.si(), "Btu/h.ft2"}, {1, "W/m2"});
}
CountingUnit unit_of(units::Resistance, System system) {
    return either(system, {1 / unit::r_value_us.si(), "h.ft2.F/Btu"}, {1, "m2K/W"});
}
CountingUnit unit_of(units::Density, System system) {
    constexpr double cubic_foot = unit::cubic_foot.si();
    return either(system, {cubic_foot / pound, "lb/ft3"}, {1, "kg/m3"});
}
CountingUnit unit_of(units::SpecificHeat, System system) {
    constexpr double btu_per_pound_fahrenheit = unit::btu_per_hour.si() * 3600 * 1.8 / pound;
    return either(system, {1 / btu_per_pound_fahrenheit, "Btu/lb.F"}, {1, "J/kgK"});
}
CountingUnit unit_of(units::MassFlow, System system) {
    return either(system, {3600 / pound, "lb/h"}, {1, "kg/s"});
}
CountingUnit unit_of(units::FrictionRate, System system) {
    return either(system, {1 / unit::inch_wc_per_100_ft.si(), "in.wc/100 ft"}, {1, "Pa/m"});
}
CountingUnit unit_of(units::Viscosity, System system) {
    return either(system, {unit::foot.si() * 3600 / pound, "lb/ft.h"}, {1, "Pa s"});
}
CountingUnit unit_of(units::HeatLossPerKelvin, System system) {
    return either(system, {1 / unit::btu_per_hour_fahrenheit.si(), "Btu/h.F"}, {1, "W/K"});
}

double count(units::Temperature temperature, System system) {
    return system == System::us ? unit::in_fahrenheit(temperature) : unit::in_celsius(temperature);
}

double heat_per_airflow(System system) { return system == System::us ? 60 : 0.001; }

}  // namespace report
