#include "units/unit.hpp"

#ifdef COMPILES
constexpr units::Temperature room = units::unit::celsius(20);
#else
constexpr units::Temperature room = 20.0;
#endif
