#include "psychro/humidity_ratio.hpp"

#include "psychro/constants.hpp"
#include "psychro/saturation.hpp"

namespace psychro {

double humidity_ratio(double vapour_pressure_pa, double pressure_pa) {
    const double highest_pa = psychro::vapour_pressure_pa(humidity_ratio_limits.high, pressure_pa);
    require_in_range("vapour pressure, Pa,", vapour_pressure_pa, {0.0, highest_pa});
    return vapour_mass_ratio * vapour_pressure_pa / (pressure_pa - vapour_pressure_pa);
}

double vapour_pressure_pa(double humidity_ratio, double pressure_pa) {
    require_in_range("pressure, Pa,", pressure_pa, pressure_limits_pa);
    require_in_range("humidity ratio, kg/kg,", humidity_ratio, humidity_ratio_limits);
    return pressure_pa * humidity_ratio / (vapour_mass_ratio + humidity_ratio);
}

double saturation_humidity_ratio(double t_c, double pressure_pa) {
    return humidity_ratio(saturation_pressure_pa(t_c), pressure_pa);
}

}  // namespace psychro
