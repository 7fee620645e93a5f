#include "units/unit.hpp"

constexpr double metres(units::Length length) { return length.si(); }

#ifdef COMPILES
constexpr double passed = metres(units::unit::foot);
#else
constexpr double passed = metres(units::unit::pascal);
#endif
