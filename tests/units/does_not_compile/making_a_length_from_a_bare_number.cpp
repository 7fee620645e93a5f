#include "units/unit.hpp"

#ifdef COMPILES
constexpr units::Length length = 3.8 * units::unit::metre;
#else
constexpr units::Length length = 3.8;
#endif
