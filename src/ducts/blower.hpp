// The airflow and external static pressure that the friction-rate plan starts from.
//
// In this order: a measured airflow; the maker's table read at the external static pressure; the heater's
// temperature rise (airflow = rated output / (density x specific heat x rise)). Table pressures hold at
// sea-level density and scale with density at the same airflow (fan laws). Between the table's points linear;
// beyond its ends the end slope, never below zero. What the whole network really lets the blower move is
// another question.
#pragma once

#include <span>

#include "house/house.hpp"
#include "loads/air.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method airflow_from_rise{
    "airflow from the temperature rise", "output / (density x specific heat x rise)", "energy balance"};

enum class AirflowBasis { measured, makers_table, temperature_rise };

struct DesignBlower {
    AirflowBasis basis = AirflowBasis::measured;
    units::Airflow airflow;  // of return air
    units::MassFlow mass_flow;
    units::Pressure external_static;
    units::TemperatureDifference rise;  // of the heater at that airflow
};

units::Pressure static_pressure_at(std::span<const house::BlowerPoint> points, units::Airflow airflow);
units::Airflow airflow_at_static(std::span<const house::BlowerPoint> points, units::Pressure external_static);
DesignBlower design_blower(const house::Blower& blower, units::Power output, const loads::Air& return_air);

}  // namespace ducts
