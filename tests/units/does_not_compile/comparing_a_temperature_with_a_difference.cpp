#include "units/unit.hpp"

#ifdef COMPILES
constexpr bool colder = units::unit::celsius(20) < units::unit::fahrenheit(70);
#else
constexpr bool colder = units::unit::celsius(20) < units::unit::kelvin;
#endif
