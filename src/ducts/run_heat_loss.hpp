// Heat lost along a duct while air runs in it.
//
//     out = surroundings + (in - surroundings) exp(-perimeter x length / (R x mass flow x specific heat))
//
// Source: open building-simulation engineering reference (duct model), log-mean solution; R from duct air to
// surroundings on the inner face. Steady while the heater is on; the warming-up of the metal is left out.
// Still air (flow 0) takes the temperature of its surroundings. Exact for the R given, which
// for a bare duct is good to 20 to 30 %.
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method run_loss_method{
    "temperature at the end of a run",
    "surroundings + (in - surroundings) x exp(-perimeter x length / (R x mass flow x cp))",
    "building-simulation engineering references"};

struct Run {
    units::Length length, perimeter;
    units::Resistance resistance;
    units::Temperature surroundings;
};

units::Temperature leaving_temperature(const Run& run, units::MassFlow flow,
                                       units::SpecificHeat specific_heat, units::Temperature entering);
// R from duct air to surroundings with a wrap of so much R, flat, around the bare duct's R (both films).
units::Resistance wrapped_resistance(units::Resistance bare, units::Resistance wrap);

}  // namespace ducts
