#include "psychro/state.hpp"

#include "psychro/humidity_ratio.hpp"
#include "psychro/saturation.hpp"

namespace psychro {

const State& require_valid(const State& air) {
    require_in_range("dry bulb, C,", air.dry_bulb_c, dry_bulb_limits_c);
    const double vapour_pa = vapour_pressure_pa(air.humidity_ratio, air.pressure_pa);
    const double saturation_pa = saturation_pressure_pa(air.dry_bulb_c);
    if (vapour_pa > saturation_pa * (1.0 + 1e-9)) {
        throw OutOfRange("humidity ratio, kg/kg,", air.humidity_ratio,
                         {0.0, humidity_ratio(saturation_pa, air.pressure_pa)});
    }
    return air;
}

}  // namespace psychro
