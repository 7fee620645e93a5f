// What a flow of air loses on its way through one part of a duct system. Every law rises with the flow, and
// all but a blower's lose the same the other way.
//
//     fixed:  linear m + quadratic m|m|                        dampers, fittings, registers, filters, coils,
//     doors duct:   friction at the real flow x length x factor + quadratic m|m| leak:   m = coefficient x
//     p^exponent                     holes in a duct, a room or a house blower: less than nothing: its gain,
//     falling with the flow
//
// m mass flow in kg/s, losses of total pressure in Pa. A loss coefficient C on the velocity pressure in an
// area A is quadratic = C / (2 density A^2).
//
// Range: any flow either way. A leak's slope would be endless at no pressure, so below 1e-4 Pa the flow
// through it is a smooth cubic that is straight at zero: of a hole that passes 10 l/s at 10 Pa that is the
// last 6 ml/s. A leak with a coefficient of 0 lets nothing through that counts. Accuracy: that of double
// arithmetic; friction as in ducts/friction. Source: ducts/friction; power law of leaks ASHRAE
// Handbook-Fundamentals 2021 ch. 16; the cubic derived.
#pragma once

#include <variant>

#include "ducts/section.hpp"
#include "loads/air.hpp"
#include "network/fan_curve.hpp"
#include "network/loss.hpp"
#include "units/quantity.hpp"

namespace network {

struct FixedLoss {
    double linear = 0;     // Pa s/kg, zero or more
    double quadratic = 0;  // Pa s2/kg2, zero or more
};

struct DuctLoss {
    ducts::Section section;
    units::Length length;
    loads::Air air;
    double factor = 1;     // on its friction
    double quadratic = 0;  // of its fittings, Pa s2/kg2
};

struct LeakLaw {
    double coefficient = 0;  // kg/s at 1 Pa, zero or more
    double exponent = 0.65;  // 0.5 to 1
};

using Law = std::variant<FixedLoss, DuctLoss, LeakLaw, FanCurve>;

Loss loss(const Law& law, units::MassFlow flow);

}  // namespace network
