#include "psychro/saturation.hpp"

#include <cmath>

#include "psychro/constants.hpp"
#include "psychro/root.hpp"

namespace psychro {
namespace {

constexpr Range saturation_limits_c{ice_limits_c.low, water_limits_c.high};

// ln p and its slope with temperature. The logarithm is nearly linear in temperature, which is why the
// inverse is sought on it: Newton then needs few steps from anywhere.
Residual log_pressure_over_ice(double t_c) {
    const double t = t_c + freezing_point_k;
    const double polynomial =
        6.3925247 + t * (-9.6778430e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.4840240e-13)));
    const double polynomial_slope =
        -9.6778430e-3 + t * (2.0 * 6.2215701e-7 + t * (3.0 * 2.0747825e-9 + t * 4.0 * -9.4840240e-13));
    return {-5.6745359e3 / t + polynomial + 4.1635019 * std::log(t),
            5.6745359e3 / (t * t) + polynomial_slope + 4.1635019 / t};
}

Residual log_pressure_over_water(double t_c) {
    const double t = t_c + freezing_point_k;
    const double polynomial = 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8));
    const double polynomial_slope = -4.8640239e-2 + t * (2.0 * 4.1764768e-5 + t * 3.0 * -1.4452093e-8);
    return {-5.8002206e3 / t + polynomial + 6.5459673 * std::log(t),
            5.8002206e3 / (t * t) + polynomial_slope + 6.5459673 / t};
}

Residual log_pressure(double t_c) {
    require_in_range("temperature, C,", t_c, saturation_limits_c);
    return t_c <= triple_point_c ? log_pressure_over_ice(t_c) : log_pressure_over_water(t_c);
}

}  // namespace

double saturation_pressure_over_ice_pa(double t_c) {
    require_in_range("temperature over ice, C,", t_c, ice_limits_c);
    return std::exp(log_pressure_over_ice(t_c).value);
}

double saturation_pressure_over_water_pa(double t_c) {
    require_in_range("temperature over water, C,", t_c, water_limits_c);
    return std::exp(log_pressure_over_water(t_c).value);
}

double saturation_pressure_pa(double t_c) { return std::exp(log_pressure(t_c).value); }

double saturation_pressure_slope_pa_per_k(double t_c) {
    const Residual log_p = log_pressure(t_c);
    return std::exp(log_p.value) * log_p.slope;
}

double saturation_temperature_c(double vapour_pressure_pa) {
    require_in_range(
        "vapour pressure, Pa,", vapour_pressure_pa,
        {saturation_pressure_pa(saturation_limits_c.low), saturation_pressure_pa(saturation_limits_c.high)});
    const double target = std::log(vapour_pressure_pa);
    const auto excess = [target](double t_c) {
        const Residual log_p = log_pressure(t_c);
        return Residual{log_p.value - target, log_p.slope};
    };
    return increasing_root(excess, saturation_limits_c);
}

}  // namespace psychro
