// Fittings close together, or close to the blower: what is added, and when to be careful.
//
//     two bends in a row   together 2 C within 10 % where they stand far apart (ventilation-research
//     abstract,
//                          read); closer they lose more or less than that, and count as 2 C
//     elbow at the inlet   added to its own C: 2.5 with no straight duct before the blower, 1.6 with two
//                          diameters, 0.8 with five (handbook companion, after the Handbook of 1988, read; a
//                          square elbow without vanes, straight between the knots)
//
// "Far apart" and "far from the blower" are taken as five hydraulic diameters, where that table ends
// (estimate).
#pragma once

#include "ducts/section.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr double far_apart_diameters = 5;

// Whether so many fittings along such a length of duct stand closer than five diameters on the mean.
bool stand_close(const Section& section, units::Length length, int fittings);

// The coefficient an elbow adds by standing so many diameters before the blower's inlet; 0 from five on.
double inlet_allowance(double diameters_straight);

}  // namespace ducts
