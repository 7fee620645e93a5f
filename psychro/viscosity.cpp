#include "psychro/viscosity.hpp"

#include <cmath>

#include "psychro/constants.hpp"

namespace psychro {

double dynamic_viscosity_pa_s(double t_c) {
    require_in_range("temperature, C,", t_c, viscosity_limits_c);
    const double t = t_c + freezing_point_k;
    return 1.458e-6 * t * std::sqrt(t) / (t + 110.4);
}

}  // namespace psychro
