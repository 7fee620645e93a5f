// The sheet of cold air that runs down glass, where it leaves the glass's bottom.
//
//     Gr        = g x colder / room x height^3 / nu^2
//     u         = 1.185 x nu / height x sqrt(Gr / (1 + 0.494 Pr^(2/3)))
//     speed     = 0.537 u
//     thickness = 0.565 x height x Pr^(-8/15) x ((1 + 0.494 Pr^(2/3)) / Gr)^0.1
//     flow      = 0.1464 u x thickness          of each metre of width
//     momentum  = 0.0523 u^2 x thickness        of each metre of width, over the density
//
// Source: Eckert and Jackson 1950, turbulent free convection at a plate (memory); Pr 0.71. In room air it is
// about 0.1 sqrt(colder x height) and 2.87e-3 colder^0.4 height^1.2, as handbooks give them (memory).
// Unchanged. Symbols: room in kelvin; nu viscosity / density; SI. Range: turbulent only above a Gr of 1e9,
// which 1 m of glass 10 K colder than the room just reaches: lower or warmer glass sends down less. Glass as
// warm as the room or warmer sends nothing. Accuracy: the handbooks' short forms within 3 %; +-20 %
// (estimate).
#pragma once

#include "loads/air.hpp"
#include "loads/method.hpp"
#include "registers/falling_air.hpp"
#include "registers/moving_air.hpp"
#include "units/quantity.hpp"

namespace registers {

inline constexpr loads::Method falling_sheet_method{
    "cold air at the bottom of the glass",
    "0.537 x 1.185 x sqrt(9.81 x colder / room x height / (1 + 0.494 Pr^(2/3)))",
    "Eckert and Jackson 1950 (memory)"};
inline constexpr double falling_sheet_accuracy = 0.2;

struct FallingSheet {
    units::Velocity speed;  // the fastest in it
    units::Length thickness;
    FlowPerWidth flow;
    MomentumPerWidth momentum;
};
FallingSheet falling_sheet(const ColdGlass& glass, units::Temperature room, const loads::Air& room_air);

}  // namespace registers
