#include "psychro/density.hpp"

#include "psychro/constants.hpp"

namespace psychro {

double specific_volume_m3_per_kg_dry_air(const State& air) {
    require_valid(air);
    return dry_air_gas_constant_j_per_kg_k * (air.dry_bulb_c + freezing_point_k) *
           (1.0 + air.humidity_ratio / vapour_mass_ratio) / air.pressure_pa;
}

double density_kg_per_m3(const State& air) {
    return (1.0 + air.humidity_ratio) / specific_volume_m3_per_kg_dry_air(air);
}

}  // namespace psychro
