// Outlets and glass for tests of registers.
#pragma once

#include "loads/air.hpp"
#include "registers/buoyant_jet.hpp"
#include "registers/falling_air.hpp"
#include "units/unit.hpp"

namespace an_outlet {

namespace unit = units::unit;

inline const units::Temperature room = unit::celsius(21);
inline const loads::Air room_air{units::Density(1.2), units::SpecificHeat(1006), units::Viscosity(1.8e-5)};

// A floor grille of 4 x 10 in with straight blades, 0.65 of it free.
inline registers::Jet floor_jet(double litres = 30, double k = 4.7) {
    return {litres * unit::litre_per_second, units::Area(0.01625), k};
}
inline registers::WarmJet warm(const registers::Jet& jet, double kelvin) {
    return {jet, units::TemperatureDifference(kelvin), room};
}
inline registers::ColdGlass glass(double height, double colder) {
    return {units::Length(height), units::TemperatureDifference(colder)};
}

}  // namespace an_outlet
