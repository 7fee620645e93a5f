// Heat lost along a duct while air runs in it.
//
//     out = surroundings + (in - surroundings) exp(-perimeter x length / (R x mass flow x specific heat))
//
// Source: open building-simulation engineering reference (duct model), log-mean solution; R from duct air to
// surroundings on the inner face. Steady while the heater is on; the warming-up of the metal is left out.
// Still air (flow 0) takes the temperature of its surroundings. Exact for the R given, which
// for a bare duct is good to 20 to 30 %.
#pragma once

#include "ducts/section.hpp"
#include "house/words.hpp"
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

// Of a flexible duct's insulation, on its inner face: the heat leaves through a wider face than it enters by.
//
//     R = D / (2 k) x ln(1 + 2 k rated / D), the rated R being flat: thickness / k
//
// D inside diameter over 0, rated R from 0 (none); k 0.0513 W/m.K. Source: laboratory R of 6 in
// flexible duct, 3.41 and 5.62 (read); k derived from them. Good to 0.5 % there, some 10 % elsewhere.
units::Resistance flexible_insulation(units::Resistance rated, units::Length inside);

// Either of them, as the duct is made: R from duct air to surroundings. What is not round is no flexible
// duct.
units::Resistance insulated_resistance(units::Resistance bare, units::Resistance wrap, house::DuctKind kind,
                                       const Section& section);

}  // namespace ducts
