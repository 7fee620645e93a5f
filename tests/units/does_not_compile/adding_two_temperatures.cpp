#include "units/unit.hpp"

#ifdef COMPILES
constexpr auto sum = units::unit::celsius(20) + units::unit::kelvin;
#else
constexpr auto sum = units::unit::celsius(20) + units::unit::celsius(1);
#endif
