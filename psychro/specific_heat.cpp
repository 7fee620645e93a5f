#include "psychro/specific_heat.hpp"

#include "psychro/constants.hpp"
#include "psychro/humidity_ratio.hpp"

namespace psychro {

double specific_heat_j_per_kg_dry_air_k(double humidity_ratio) {
    require_in_range("humidity ratio, kg/kg,", humidity_ratio, humidity_ratio_limits);
    return dry_air_specific_heat_j_per_kg_k + vapour_specific_heat_j_per_kg_k * humidity_ratio;
}

double specific_heat_j_per_kg_k(const State& air) {
    require_valid(air);
    return specific_heat_j_per_kg_dry_air_k(air.humidity_ratio) / (1.0 + air.humidity_ratio);
}

}  // namespace psychro
