#include "psychro/enthalpy.hpp"

#include "psychro/constants.hpp"
#include "psychro/specific_heat.hpp"

namespace psychro {

double enthalpy_j_per_kg_dry_air(const State& air) {
    require_valid(air);
    return specific_heat_j_per_kg_dry_air_k(air.humidity_ratio) * air.dry_bulb_c +
           vaporization_heat_j_per_kg * air.humidity_ratio;
}

State state_from_enthalpy(double enthalpy_j_per_kg_dry_air, double humidity_ratio, double pressure_pa) {
    const double sensible = enthalpy_j_per_kg_dry_air - vaporization_heat_j_per_kg * humidity_ratio;
    const double dry_bulb_c = sensible / specific_heat_j_per_kg_dry_air_k(humidity_ratio);
    return require_valid({dry_bulb_c, humidity_ratio, pressure_pa});
}

}  // namespace psychro
