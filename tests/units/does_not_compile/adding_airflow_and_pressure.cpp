#include "units/unit.hpp"

#ifdef COMPILES
constexpr auto sum = units::unit::cfm + units::unit::litre_per_second;
#else
constexpr auto sum = units::unit::cfm + units::unit::pascal;
#endif
