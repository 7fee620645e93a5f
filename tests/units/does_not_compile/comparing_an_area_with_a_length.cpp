#include "units/unit.hpp"

#ifdef COMPILES
constexpr bool smaller = units::unit::square_foot < units::unit::square_metre;
#else
constexpr bool smaller = units::unit::square_foot < units::unit::metre;
#endif
