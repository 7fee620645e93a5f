// Outdoor air that leaks in on the design day of summer, with its heat and its moisture.
//
//     airflow  = leakage area x (25 + H dt 0.38) / 1000
//     heat     = airflow x density x specific heat x (outdoors - indoors)
//     moisture = airflow x density x (enthalpy of the indoor air with the outdoors' moisture, less its own)
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 1-10 (cooling, 3.4 m/s of wind, no flue). Changed:
// density and heat of the moisture from the air at the site. Shared among the rooms by volume
// (loads/leakage_shares.hpp), mechanical ventilation counted (loads/ventilation.hpp). Symbols: as in
// loads/infiltration.hpp, whose leakage area and stack height hold in summer too. Indoors half saturated (50
// %); air drier outdoors takes no credit. Accuracy: as loads/infiltration.hpp. Throws house::CannotAnswer for
// air no figures are known for.
#pragma once

#include "house/house.hpp"
#include "loads/infiltration.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method summer_leakage_method{"air leakage in summer",
                                              "leakage area x (25 + stack height x difference x 0.38) / 1000",
                                              "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 6-10"};

struct SummerLeakage {
    units::Airflow airflow;  // of the whole house, at indoor density
    OutdoorAir air;          // with the mechanical ventilation
    units::HeatLossPerKelvin heat_per_kelvin;
    units::TemperatureDifference warmer;  // outdoors than indoors
    double moisture = 0;                  // kg/kg more outdoors than indoors; never below zero
    units::Power latent;
    units::Power sensible() const { return heat_per_kelvin * warmer; }
};

// L/s per cm2 of leakage area. Outdoors colder than indoors drives as much, the other way.
double summer_driving_force(units::Length stack_height, units::TemperatureDifference difference);
SummerLeakage summer_leakage(const house::House& house, const Infiltration& winter);

}  // namespace loads
