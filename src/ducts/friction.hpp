// Friction of air in a straight duct.
//
//     drop per length = f / D x density x velocity^2 / 2            Darcy-Weisbach
//     f = 64/Re                                                     to Re 2000, laminar
//     1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f)))           from Re 4000, Colebrook-White
//     between them a cubic in ln f over ln Re that meets both with their slopes, so that the drop rises
//     smoothly and strictly with the flow
//
// Any Re from 0 (no drop) to 1e8; a flow the other way loses the other way. Relative roughness 0 to 0.06; a
// rougher section counts as 0.06. A flexible duct that is not taut loses so many times as its section says.
// Accuracy: the equation to 1e-12; the equation itself about 5 % against measurement (general fluid
// mechanics).
//
// How steeply it rises, for solving a network, is the derivative written out: rate / flow x
// (2 + d ln f / d ln Re), which in laminar flow is the same down to no flow at all; 1e-12 of the slope.
#pragma once

#include "ducts/section.hpp"
#include "loads/air.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method friction_method{
    "friction", "f / D x density x velocity^2 / 2, f by Colebrook-White", "Darcy-Weisbach; Colebrook 1939"};

double reynolds(const Section& section, units::Airflow flow, const loads::Air& air);
double friction_factor(double reynolds, double relative_roughness);  // Darcy; Re over 0
units::FrictionRate friction(const Section& section, units::Airflow flow, const loads::Air& air);

struct FrictionAndSlope {
    units::FrictionRate rate;
    decltype(units::FrictionRate() /
             units::Airflow()) slope;  // over zero at every flow, and no step anywhere
};
FrictionAndSlope friction_and_slope(const Section& section, units::Airflow flow, const loads::Air& air);

// The airflow that loses so much per length; 0 for a rate of 0 or less. Inverse of friction to 1e-10.
units::Airflow airflow_at(const Section& section, units::FrictionRate rate, const loads::Air& air);

}  // namespace ducts
