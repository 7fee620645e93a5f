#include "psychro/dew_point.hpp"

#include "psychro/humidity_ratio.hpp"
#include "psychro/saturation.hpp"

namespace psychro {

State state_from_dew_point(double dry_bulb_c, double dew_point_c, double pressure_pa) {
    require_in_range("dry bulb, C,", dry_bulb_c, dry_bulb_limits_c);
    require_in_range("dew point, C,", dew_point_c, {ice_limits_c.low, dry_bulb_c});
    return require_valid({dry_bulb_c, saturation_humidity_ratio(dew_point_c, pressure_pa), pressure_pa});
}

double dew_point_c(const State& air) {
    require_valid(air);
    return saturation_temperature_c(vapour_pressure_pa(air.humidity_ratio, air.pressure_pa));
}

}  // namespace psychro
