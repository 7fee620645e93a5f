#include "psychro/wet_bulb.hpp"

#include <algorithm>

#include "psychro/constants.hpp"
#include "psychro/humidity_ratio.hpp"
#include "psychro/root.hpp"
#include "psychro/saturation.hpp"

namespace psychro {
namespace {

constexpr double rounding = 1e-12;

// What the bulb is wetted with: the heat of its phase change at 0 C, how that heat varies with the bulb's
// temperature, and the specific heat of the wetting itself.
struct Wetting {
    double heat_j_per_kg;
    double heat_slope_j_per_kg_k;
    double specific_heat_j_per_kg_k;
};

constexpr Wetting water{vaporization_heat_j_per_kg, -2326.0, 4186.0};
constexpr Wetting ice{2.830e6, -240.0, 2100.0};

double heat_j_per_kg(const Wetting& wetting, double bulb_c) {
    return wetting.heat_j_per_kg + wetting.heat_slope_j_per_kg_k * bulb_c;
}

// Factor of W in the source equations: heat that each kilogram of vapour already in the air brings.
double vapour_heat_j_per_kg(const Wetting& wetting, double dry_bulb_c, double bulb_c) {
    return wetting.heat_j_per_kg + vapour_specific_heat_j_per_kg_k * dry_bulb_c -
           wetting.specific_heat_j_per_kg_k * bulb_c;
}

// Heat taken by evaporation less heat given by the air, times p - p_ws; rises with the bulb temperature.
Residual balance(const State& air, const Wetting& wetting, double bulb_c) {
    const double saturation_pa = saturation_pressure_pa(bulb_c);
    const double saturation_slope = saturation_pressure_slope_pa_per_k(bulb_c);
    const double dry_part_pa = air.pressure_pa - saturation_pa;
    const double heat = heat_j_per_kg(wetting, bulb_c);
    const double given = dry_air_specific_heat_j_per_kg_k * (air.dry_bulb_c - bulb_c) +
                         air.humidity_ratio * vapour_heat_j_per_kg(wetting, air.dry_bulb_c, bulb_c);
    const double given_slope =
        -dry_air_specific_heat_j_per_kg_k - air.humidity_ratio * wetting.specific_heat_j_per_kg_k;
    const double taken_slope =
        vapour_mass_ratio * (wetting.heat_slope_j_per_kg_k * saturation_pa + heat * saturation_slope);
    return {vapour_mass_ratio * heat * saturation_pa - dry_part_pa * given,
            taken_slope + saturation_slope * given - dry_part_pa * given_slope};
}

double equilibrium_c(const State& air, const Wetting& wetting, Range bracket_c) {
    return increasing_root([&](double t_c) { return balance(air, wetting, t_c); }, bracket_c);
}

}  // namespace

double wet_bulb_c(const State& air) {
    require_valid(air);
    // A dry bulb below 0 C leaves no water root either: the balance at 0 C is then positive.
    const bool liquid = balance(air, water, 0.0).value <= 0.0;
    return liquid ? equilibrium_c(air, water, {0.0, air.dry_bulb_c})
                  : equilibrium_c(air, ice, {ice_limits_c.low, std::min(air.dry_bulb_c, 0.0)});
}

State state_from_wet_bulb(double dry_bulb_c, double wet_bulb_c, double pressure_pa) {
    require_in_range("dry bulb, C,", dry_bulb_c, dry_bulb_limits_c);
    require_in_range("wet bulb, C,", wet_bulb_c, {ice_limits_c.low, dry_bulb_c});
    const Wetting& wetting = wet_bulb_c >= 0.0 ? water : ice;
    const double saturated = saturation_humidity_ratio(wet_bulb_c, pressure_pa);
    const double ratio = (heat_j_per_kg(wetting, wet_bulb_c) * saturated -
                          dry_air_specific_heat_j_per_kg_k * (dry_bulb_c - wet_bulb_c)) /
                         vapour_heat_j_per_kg(wetting, dry_bulb_c, wet_bulb_c);
    if (ratio < -rounding) {
        throw OutOfRange("humidity ratio from wet bulb, kg/kg,", ratio, {0.0, saturated});
    }
    return require_valid({dry_bulb_c, std::clamp(ratio, 0.0, saturated), pressure_pa});
}

}  // namespace psychro
