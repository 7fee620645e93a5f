// The state of moist air: three independent quantities from which the others follow.
//
// A state is made by one of
//   state_from_relative_humidity   psychro/relative_humidity.hpp
//   state_from_dew_point           psychro/dew_point.hpp
//   state_from_wet_bulb            psychro/wet_bulb.hpp
//   state_from_enthalpy            psychro/enthalpy.hpp
// or written out. Every function that takes a state checks it, so a written-out one is as safe.
// Range: dry bulb -60 to 90 C, humidity ratio and pressure as in psychro/humidity_ratio.hpp, and not
// supersaturated: fog is two phases, and these equations are for vapour alone.
#pragma once

#include "psychro/out_of_range.hpp"

namespace psychro {

// Chosen here: below -60 C no dwelling is designed for, and the constant specific heats drift; above 90 C the
// perfect-gas humidity ratio at saturation is more than 1.4 % off.
inline constexpr Range dry_bulb_limits_c{-60.0, 90.0};

struct State {
    double dry_bulb_c;
    double humidity_ratio;
    double pressure_pa;
};

// Returns the same state, or throws OutOfRange. Supersaturation is allowed up to 1e-9 of the vapour
// pressure, so that rounding does not refuse saturated air.
const State& require_valid(const State& air);

}  // namespace psychro
