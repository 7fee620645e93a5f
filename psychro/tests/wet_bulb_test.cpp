#include "psychro/wet_bulb.hpp"

#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"
#include "psychro/relative_humidity.hpp"

namespace psychro {
namespace {

TEST(WetBulb, saturated_air_is_at_its_wet_bulb) {
    for (const double t_c : {-60.0, -20.0, 0.0, 0.005, 0.02, 20.0, 90.0}) {
        EXPECT_NEAR(wet_bulb_c(state_from_relative_humidity(t_c, 1.0, sea_level_pressure_pa)), t_c, 1e-8);
    }
}

TEST(WetBulb, dry_air_has_one) {
    EXPECT_NEAR(wet_bulb_c({15.0, 0.0, sea_level_pressure_pa}), 3.207, 0.002);
    EXPECT_LT(wet_bulb_c({5.0, 0.0, sea_level_pressure_pa}), 0.0);
}

TEST(WetBulb, equal_bulbs_give_saturated_air) {
    for (const double t_c : {-60.0, -0.1, 0.0, 30.0}) {
        EXPECT_NEAR(relative_humidity(state_from_wet_bulb(t_c, t_c, sea_level_pressure_pa)), 1.0, 1e-12);
    }
}

TEST(WetBulb, reading_of_dry_air_gives_dry_air) {
    for (const double t_c : {-40.0, 5.0, 50.0}) {
        const State dry{t_c, 0.0, sea_level_pressure_pa};
        EXPECT_NEAR(state_from_wet_bulb(t_c, wet_bulb_c(dry) + 1e-9, sea_level_pressure_pa).humidity_ratio,
                    0.0, 1e-11);
    }
}

// Between the humidity that would put a water bulb and the one that would put an ice bulb at 0 C both have
// a root; the water one is given, and the step down to ice is small.
TEST(WetBulb, prefers_water_where_both_bulbs_have_a_root) {
    const State both = state_from_wet_bulb(5.0, -0.1, sea_level_pressure_pa);
    EXPECT_GT(wet_bulb_c(both), 0.0);
    EXPECT_LT(wet_bulb_c(both), 0.6);
}

TEST(WetBulb, steps_from_zero_to_the_ice_root) {
    for (const double t_c : {1.0, 3.0, 5.0, 9.0}) {
        const double w = state_from_wet_bulb(t_c, 0.0, sea_level_pressure_pa).humidity_ratio;
        EXPECT_NEAR(wet_bulb_c({t_c, w + 1e-9, sea_level_pressure_pa}), 0.0, 1e-3);
        EXPECT_LT(wet_bulb_c({t_c, w - 1e-9, sea_level_pressure_pa}), 0.0);
        EXPECT_GT(wet_bulb_c({t_c, w - 1e-9, sea_level_pressure_pa}), -0.8);
    }
}

// At 11000 m water boils near 63 C, below this dry bulb.
TEST(WetBulb, is_found_where_water_would_boil_at_the_dry_bulb) {
    const State air{90.0, 0.05, standard_pressure_pa(11000.0)};
    const double bulb_c = wet_bulb_c(air);
    EXPECT_LT(bulb_c, 60.0);
    EXPECT_NEAR(state_from_wet_bulb(90.0, bulb_c, air.pressure_pa).humidity_ratio, 0.05, 1e-9);
}

TEST(WetBulb, too_cold_a_bulb_names_the_humidity_ratio) {
    try {
        state_from_wet_bulb(30.0, 5.0, sea_level_pressure_pa);
        FAIL() << "no error";
    } catch (const OutOfRange& error) {
        EXPECT_STREQ(error.quantity(), "humidity ratio from wet bulb, kg/kg,");
        EXPECT_LT(error.value(), 0.0);
        EXPECT_EQ(error.low(), 0.0);
    }
}

}  // namespace
}  // namespace psychro
