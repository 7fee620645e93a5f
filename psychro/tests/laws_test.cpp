// Laws that must hold for every state, tried on random ones.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "psychro/atmosphere.hpp"
#include "psychro/constants.hpp"
#include "psychro/density.hpp"
#include "psychro/dew_point.hpp"
#include "psychro/enthalpy.hpp"
#include "psychro/humidity_ratio.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/saturation.hpp"
#include "psychro/specific_heat.hpp"
#include "psychro/wet_bulb.hpp"

namespace psychro {
namespace {

double between(double low, double high) {
    constexpr int steps = 10'000'000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

// Two values of the range, the first below the second.
Range ordered_pair(double low, double high) {
    const double first = between(low, high);
    const double second = between(low, high);
    RC_PRE(first < second);
    return {first, second};
}

double any_pressure_pa() {
    return standard_pressure_pa(between(altitude_limits_m.low, altitude_limits_m.high));
}

// A relative humidity that keeps the humidity ratio in its range, also that of air saturated at the wet bulb.
double highest_relative_humidity(double t_c, double pressure_pa) {
    const double highest_pa = vapour_pressure_pa(humidity_ratio_limits.high, pressure_pa);
    return std::min(1.0, 0.9 * highest_pa / saturation_pressure_pa(t_c));
}

State any_state() {
    const double t_c = between(dry_bulb_limits_c.low, dry_bulb_limits_c.high);
    const double p = any_pressure_pa();
    return state_from_relative_humidity(t_c, between(0.01, 1.0) * highest_relative_humidity(t_c, p), p);
}

RC_GTEST_PROP(Laws, pressure_falls_with_altitude, ()) {
    const Range z = ordered_pair(altitude_limits_m.low, altitude_limits_m.high);
    RC_ASSERT(standard_pressure_pa(z.high) < standard_pressure_pa(z.low));
}

RC_GTEST_PROP(Laws, saturation_pressure_rises_with_temperature, ()) {
    const Range t = ordered_pair(ice_limits_c.low, water_limits_c.high);
    RC_ASSERT(saturation_pressure_pa(t.high) > saturation_pressure_pa(t.low));
    RC_ASSERT(saturation_pressure_slope_pa_per_k(t.low) > 0.0);
}

RC_GTEST_PROP(Laws, saturation_temperature_inverts_saturation_pressure, ()) {
    const double t_c = between(ice_limits_c.low, water_limits_c.high);
    RC_ASSERT(std::abs(saturation_temperature_c(saturation_pressure_pa(t_c)) - t_c) < 1e-8);
}

// Supercooled water gives off more than ice; here at the one place both equations hold.
RC_GTEST_PROP(Laws, water_gives_off_more_than_ice_below_the_triple_point, ()) {
    const double t_c = between(water_limits_c.low, ice_limits_c.high);
    RC_ASSERT(saturation_pressure_over_water_pa(t_c) > saturation_pressure_over_ice_pa(t_c));
}

RC_GTEST_PROP(Laws, dew_point_below_wet_bulb_below_dry_bulb, ()) {
    const State air = any_state();
    const double wet_c = wet_bulb_c(air);
    RC_ASSERT(dew_point_c(air) <= wet_c + 1e-8);
    RC_ASSERT(wet_c <= air.dry_bulb_c + 1e-8);
}

RC_GTEST_PROP(Laws, dew_point_gives_the_humidity_ratio_back, ()) {
    const State air = any_state();
    const double dew_c = std::min(dew_point_c(air), air.dry_bulb_c);
    const double w = state_from_dew_point(air.dry_bulb_c, dew_c, air.pressure_pa).humidity_ratio;
    RC_ASSERT(std::abs(w / air.humidity_ratio - 1.0) < 1e-8);
}

RC_GTEST_PROP(Laws, wet_bulb_gives_the_humidity_ratio_back, ()) {
    const State air = any_state();
    const double wet_c = std::min(wet_bulb_c(air), air.dry_bulb_c);
    const double w = state_from_wet_bulb(air.dry_bulb_c, wet_c, air.pressure_pa).humidity_ratio;
    RC_ASSERT(std::abs(w - air.humidity_ratio) < 1e-9);
}

RC_GTEST_PROP(Laws, relative_humidity_comes_back, ()) {
    const double t_c = between(dry_bulb_limits_c.low, dry_bulb_limits_c.high);
    const double p = any_pressure_pa();
    const double rh = between(0.0, 1.0) * highest_relative_humidity(t_c, p);
    RC_ASSERT(std::abs(relative_humidity(state_from_relative_humidity(t_c, rh, p)) - rh) < 1e-12);
}

RC_GTEST_PROP(Laws, enthalpy_gives_the_dry_bulb_back, ()) {
    const double t_c = between(-59.0, 89.0);
    const double p = any_pressure_pa();
    const State air = state_from_relative_humidity(t_c, 0.9 * highest_relative_humidity(t_c, p), p);
    const State back = state_from_enthalpy(enthalpy_j_per_kg_dry_air(air), air.humidity_ratio, p);
    RC_ASSERT(std::abs(back.dry_bulb_c - t_c) < 1e-9);
}

RC_GTEST_PROP(Laws, humidity_ratio_wet_bulb_and_enthalpy_rise_with_relative_humidity, ()) {
    const double t_c = between(dry_bulb_limits_c.low, dry_bulb_limits_c.high);
    const double p = any_pressure_pa();
    const double highest = highest_relative_humidity(t_c, p);
    const Range share = ordered_pair(0.0, 1.0);
    const State low = state_from_relative_humidity(t_c, share.low * highest, p);
    const State high = state_from_relative_humidity(t_c, share.high * highest, p);
    RC_ASSERT(high.humidity_ratio > low.humidity_ratio);
    RC_ASSERT(wet_bulb_c(high) > wet_bulb_c(low) - 1e-8);
    RC_ASSERT(enthalpy_j_per_kg_dry_air(high) > enthalpy_j_per_kg_dry_air(low));
}

// Dalton: the dry air alone fills the volume at its own partial pressure.
RC_GTEST_PROP(Laws, partial_pressures_add_up, ()) {
    const State air = any_state();
    const double dry_pa = air.pressure_pa - vapour_pressure_pa(air.humidity_ratio, air.pressure_pa);
    const double v = dry_air_gas_constant_j_per_kg_k * (air.dry_bulb_c + freezing_point_k) / dry_pa;
    RC_ASSERT(std::abs(specific_volume_m3_per_kg_dry_air(air) / v - 1.0) < 1e-12);
    RC_ASSERT(std::abs(density_kg_per_m3(air) * v - (1.0 + air.humidity_ratio)) < 1e-12);
}

RC_GTEST_PROP(Laws, specific_heat_is_the_slope_of_enthalpy, ()) {
    const double w = between(0.0, 0.0005);
    const State cold{between(-20.0, 80.0), w, any_pressure_pa()};
    const State warm{cold.dry_bulb_c + 1.0, w, cold.pressure_pa};
    const double rise = enthalpy_j_per_kg_dry_air(warm) - enthalpy_j_per_kg_dry_air(cold);
    RC_ASSERT(std::abs(specific_heat_j_per_kg_k(cold) * (1.0 + w) - rise) < 1e-6);
}

}  // namespace
}  // namespace psychro
