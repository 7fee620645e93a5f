// What warmth or cold does to a jet: how it rises or drops, what it gains or loses blown up or down, where it
// stops.
//
//     Ar    = g x sqrt(area) x warmer / (outlet speed^2 x room)
//     rise  = 0.407 / K x Ar x (distance / sqrt(area))^3 x sqrt(area)          blown across; below 0: drop
//     speed = that of the plain jet x (1 +- 1.83 / K x Ar x distance^2 / area)^(1/3)
//     stops = sqrt(K x area / (1.83 x Ar))                                     blown against its buoyancy
//
// + warm air up and cold air down, - warm air down and cold air up.
// Source: momentum and buoyancy of a jet with bell-shaped profiles, that of temperature 1.2 times as wide
// (derived). Published: 0.42 instead of 0.407 (Koestel 1955, memory); a fountain stops within 6 % of 1.74
// diameters x Froude number (Turner 1966, memory). Changed: near the outlet the plain jet is cut off at its
// outlet speed (registers/jet.hpp). Symbols: Ar with the root of the area as its length; room in kelvin.
// Range: that of the plain jet; a jet along a wall mixes less and carries farther. The rise is not cut off
// at the ceiling. Accuracy: +-20 % (estimate); of blades spread wide no more than a ranking.
#pragma once

#include <optional>

#include "loads/method.hpp"
#include "registers/jet.hpp"
#include "registers/outlet_pattern.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method rise_method{
    "rise of a warm jet",
    "0.407 / K x Ar x distance^3 / area, Ar = 9.81 x sqrt(area) x warmer / (speed^2 x room)",
    "momentum and buoyancy of a jet (derived; Koestel 1955 has 0.42)"};
inline constexpr loads::Method upward_jet_method{"speed of a warm jet blown up",
                                                 "plain jet x (1 + 1.83 / K x Ar x distance^2 / area)^(1/3)",
                                                 "momentum and buoyancy of a jet (derived)"};
inline constexpr loads::Method stopping_method{"where warm air blown down stops",
                                               "sqrt(K x area / (1.83 x Ar))",
                                               "momentum and buoyancy of a jet (derived; Turner 1966)"};
inline constexpr double buoyant_jet_accuracy = 0.2;

struct WarmJet {
    Jet jet;
    units::TemperatureDifference warmer;  // than the room, as it leaves the register; below zero: colder
    units::Temperature room;
};

double archimedes(const WarmJet& warm);
units::Length rise(const WarmJet& warm, units::Length distance);
// Blown up or down; across it is that of the plain jet, measured along its bent way.
units::Velocity speed_at(const WarmJet& warm, Blows direction, units::Length distance);
// Empty: its buoyancy does not stop it.
std::optional<units::Length> stops_at(const WarmJet& warm, Blows direction);

}  // namespace registers
