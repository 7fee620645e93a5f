#include "units/unit.hpp"

#ifdef COMPILES
constexpr units::Velocity speed = units::unit::cfm / units::unit::square_foot;
#else
constexpr units::Velocity speed = units::unit::cfm / units::unit::foot;
#endif
