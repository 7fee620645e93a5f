// The error itself, and every public function refusing what lies outside its range.
#include "psychro/out_of_range.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>
#include <utility>
#include <vector>

#include "psychro/atmosphere.hpp"
#include "psychro/density.hpp"
#include "psychro/dew_point.hpp"
#include "psychro/enthalpy.hpp"
#include "psychro/humidity_ratio.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/saturation.hpp"
#include "psychro/specific_heat.hpp"
#include "psychro/viscosity.hpp"
#include "psychro/wet_bulb.hpp"

namespace psychro {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

TEST(OutOfRange, carries_quantity_value_and_range) {
    try {
        require_in_range("altitude, m,", 12000.0, {-500.0, 11000.0});
        FAIL() << "no error";
    } catch (const OutOfRange& error) {
        EXPECT_STREQ(error.quantity(), "altitude, m,");
        EXPECT_EQ(error.value(), 12000.0);
        EXPECT_EQ(error.low(), -500.0);
        EXPECT_EQ(error.high(), 11000.0);
        EXPECT_STREQ(error.what(), "altitude, m, 12000 is outside -500 to 11000");
    }
}

TEST(OutOfRange, both_ends_are_inside) {
    EXPECT_NO_THROW(require_in_range("x", 1.0, {1.0, 2.0}));
    EXPECT_NO_THROW(require_in_range("x", 2.0, {1.0, 2.0}));
}

struct Argument {
    const char* name;
    std::function<double(double)> function;
    std::vector<double> inside;
    std::vector<double> outside;
};

// Each argument of each function in turn, the others held at ordinary values.
const std::vector<Argument> arguments{
    {"altitude", standard_pressure_pa, {-500, 11000}, {-501, 11001}},
    {"viscosity", dynamic_viscosity_pa_s, {-100, 200}, {-101, 201}},
    {"over ice", saturation_pressure_over_ice_pa, {-100, 0.01}, {-100.1, 0.02}},
    {"over water", saturation_pressure_over_water_pa, {0, 200}, {-0.1, 200.1}},
    {"saturation", saturation_pressure_pa, {-100, 200}, {-100.1, 200.1}},
    {"slope", saturation_pressure_slope_pa_per_k, {-100, 200}, {-100.1, 200.1}},
    {"inverse", saturation_temperature_c, {0.00141, 1.555e6}, {-1, 0, 0.0014, 1.556e6}},
    {"ratio, vapour",
     [](double x) { return humidity_ratio(x, sea_level_pressure_pa); },
     {0, 71000},
     {-1, 72000, 2e5}},
    {"ratio, pressure", [](double x) { return humidity_ratio(1000, x); }, {2e4, 1.2e5}, {0, 19999, 120001}},
    {"vapour, ratio",
     [](double x) { return vapour_pressure_pa(x, sea_level_pressure_pa); },
     {0, 1.5},
     {-1e-6, 1.51}},
    {"vapour, pressure", [](double x) { return vapour_pressure_pa(0.01, x); }, {2e4}, {0, -1, 120001}},
    {"saturated, t",
     [](double x) { return saturation_humidity_ratio(x, sea_level_pressure_pa); },
     {-100, 90},
     {-101, 91, 150}},
    {"saturated, pressure", [](double x) { return saturation_humidity_ratio(20, x); }, {2e4}, {0, 2000}},
    {"rh state, t",
     [](double x) { return density_kg_per_m3(state_from_relative_humidity(x, 0.5, sea_level_pressure_pa)); },
     {-60, 90},
     {-61, 91}},
    {"rh state, rh",
     [](double x) { return density_kg_per_m3(state_from_relative_humidity(20, x, sea_level_pressure_pa)); },
     {0, 1},
     {-0.01, 1.01, 50}},
    {"rh state, p",
     [](double x) { return density_kg_per_m3(state_from_relative_humidity(20, 0.5, x)); },
     {2e4, 1.2e5},
     {0, 101.325}},
    {"dew state, t",
     [](double x) { return density_kg_per_m3(state_from_dew_point(x, -70, sea_level_pressure_pa)); },
     {-60, 90},
     {-61, 91}},
    {"dew state, dew",
     [](double x) { return density_kg_per_m3(state_from_dew_point(20, x, sea_level_pressure_pa)); },
     {-100, 20},
     {-101, 20.1}},
    {"dew state, p",
     [](double x) { return density_kg_per_m3(state_from_dew_point(20, 10, x)); },
     {2e4},
     {0, 120001}},
    {"wet state, t",
     [](double x) { return density_kg_per_m3(state_from_wet_bulb(x, 15, sea_level_pressure_pa)); },
     {15, 40},
     {14.9, 60, 91}},
    {"wet state, wet",
     [](double x) { return density_kg_per_m3(state_from_wet_bulb(20, x, sea_level_pressure_pa)); },
     {6, 20},
     {20.1, 5, -50, -101}},
    {"wet state, p",
     [](double x) { return density_kg_per_m3(state_from_wet_bulb(20, 15, x)); },
     {2e4},
     {0, 120001}},
    {"enthalpy state, h",
     [](double x) { return density_kg_per_m3(state_from_enthalpy(x, 0.005, sea_level_pressure_pa)); },
     {30e3, 100e3},
     {0, 200e3}},
    {"enthalpy state, w",
     [](double x) { return density_kg_per_m3(state_from_enthalpy(40e3, x, sea_level_pressure_pa)); },
     {0, 0.01},
     {-0.001, 0.0115, 2}},
    {"enthalpy state, p",
     [](double x) { return density_kg_per_m3(state_from_enthalpy(40e3, 0.005, x)); },
     {2e4},
     {0, 120001}},
    {"specific heat", specific_heat_j_per_kg_dry_air_k, {0, 1.5}, {-1e-6, 1.51}},
};

TEST(OutOfRange, every_argument_is_checked) {
    for (const auto& argument : arguments) {
        for (const double x : argument.inside) {
            EXPECT_TRUE(std::isfinite(argument.function(x))) << argument.name << " at " << x;
        }
        for (const double x : argument.outside) {
            EXPECT_THROW(argument.function(x), OutOfRange) << argument.name << " at " << x;
        }
        for (const double x : {nan, infinity, -infinity}) {
            EXPECT_THROW(argument.function(x), OutOfRange) << argument.name << " at " << x;
        }
    }
}

const std::vector<std::pair<const char*, double (*)(const State&)>> properties{
    {"relative humidity", relative_humidity},
    {"dew point", dew_point_c},
    {"wet bulb", wet_bulb_c},
    {"enthalpy", enthalpy_j_per_kg_dry_air},
    {"specific heat", specific_heat_j_per_kg_k},
    {"specific volume", specific_volume_m3_per_kg_dry_air},
    {"density", density_kg_per_m3},
};

TEST(OutOfRange, every_property_checks_its_state) {
    const std::vector<State> refused{{-60.1, 0.0, sea_level_pressure_pa},
                                     {90.1, 0.01, sea_level_pressure_pa},
                                     {20.0, -1e-9, sea_level_pressure_pa},
                                     {90.0, 1.51, sea_level_pressure_pa},
                                     {20.0, 0.01, 19e3},
                                     {20.0, 0.01, 121e3},
                                     {20.0, 0.015, sea_level_pressure_pa},
                                     {nan, 0.01, sea_level_pressure_pa},
                                     {20.0, nan, sea_level_pressure_pa},
                                     {20.0, 0.01, nan},
                                     {20.0, infinity, sea_level_pressure_pa}};
    for (const auto& [name, property] : properties) {
        for (const State& state : refused) {
            EXPECT_THROW(property(state), OutOfRange) << name << " at " << state.dry_bulb_c << ' '
                                                      << state.humidity_ratio << ' ' << state.pressure_pa;
        }
    }
}

}  // namespace
}  // namespace psychro
