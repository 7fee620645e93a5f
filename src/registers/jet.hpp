// The jet from a register, of air as warm as the room: its speed, how far it carries, how wide it is.
//
//     speed    = K x flow / (distance x sqrt(area)), no more than flow / area
//     distance = K x flow / (speed x sqrt(area)), 0 where the air leaves slower than that
//     throw    = 0.7 x distance to 0.25 m/s
//     width    = outlet + 2 x distance x tan(spread / 2); all round: outlet + 2 x distance
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 20, zone 3 of a jet, and its 70 % for the last zone, in which
// a jet of 0.25 m/s falls apart (read). Changed: zones 1 and 2 as zone 3, cut off at the speed of the outlet.
// Symbols: speed along the axis; K and which area counts, registers/outlet_pattern.hpp. Distances in m.
// Range: flow and area above zero, else there is no jet and all is 0; to 1.5 times the root of the area the
// room turns to the jet. The flow is what really comes, not what was planned: the throw falls with it.
// Accuracy: +-20 % (estimate, that of K).
#pragma once

#include "loads/method.hpp"
#include "registers/moving_air.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method throw_method{"throw of a register", "0.7 x K x flow / (0.25 m/s x sqrt(area))",
                                            "ASHRAE Handbook-Fundamentals 2021 ch. 20"};
inline constexpr double jet_accuracy = 0.2;
inline constexpr units::Velocity end_of_throw{0.25};

struct Jet {
    units::Airflow flow;
    units::Area area;  // the one K counts on
    double k = 0;
};

bool blows(const Jet& jet);
units::Velocity outlet_speed(const Jet& jet);
units::Velocity speed_at(const Jet& jet, units::Length distance);
units::Length distance_to(const Jet& jet, units::Velocity speed);
units::Length throw_of(const Jet& jet);
units::Length width_at(units::Length distance, units::Length outlet_width, double spread_degrees);
Momentum momentum_of(const Jet& jet);

}  // namespace registers
