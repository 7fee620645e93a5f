#include "psychro/relative_humidity.hpp"

#include <algorithm>

#include "psychro/humidity_ratio.hpp"
#include "psychro/saturation.hpp"

namespace psychro {

State state_from_relative_humidity(double dry_bulb_c, double relative_humidity, double pressure_pa) {
    require_in_range("dry bulb, C,", dry_bulb_c, dry_bulb_limits_c);
    require_in_range("relative humidity", relative_humidity, {0.0, 1.0});
    const double vapour_pa = relative_humidity * saturation_pressure_pa(dry_bulb_c);
    return require_valid({dry_bulb_c, humidity_ratio(vapour_pa, pressure_pa), pressure_pa});
}

double relative_humidity(const State& air) {
    require_valid(air);
    const double vapour_pa = vapour_pressure_pa(air.humidity_ratio, air.pressure_pa);
    return std::min(1.0, vapour_pa / saturation_pressure_pa(air.dry_bulb_c));
}

}  // namespace psychro
