#include "psychro/atmosphere.hpp"

#include <cmath>

namespace psychro {

double standard_pressure_pa(double altitude_m) {
    require_in_range("altitude, m,", altitude_m, altitude_limits_m);
    return sea_level_pressure_pa * std::pow(1.0 - 2.25577e-5 * altitude_m, 5.2559);
}

}  // namespace psychro
