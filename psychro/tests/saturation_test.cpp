#include "psychro/saturation.hpp"

#include <gtest/gtest.h>

#include "psychro/constants.hpp"

namespace psychro {
namespace {

TEST(Saturation, ice_below_the_triple_point_and_water_above) {
    EXPECT_EQ(saturation_pressure_pa(-5.0), saturation_pressure_over_ice_pa(-5.0));
    EXPECT_EQ(saturation_pressure_pa(0.0), saturation_pressure_over_ice_pa(0.0));
    EXPECT_EQ(saturation_pressure_pa(0.02), saturation_pressure_over_water_pa(0.02));
    EXPECT_EQ(saturation_pressure_pa(20.0), saturation_pressure_over_water_pa(20.0));
}

TEST(Saturation, branches_meet_at_the_triple_point) {
    const double ice = saturation_pressure_over_ice_pa(triple_point_c);
    EXPECT_NEAR(saturation_pressure_over_water_pa(triple_point_c) / ice, 1.0, 1e-8);
    EXPECT_NEAR(ice, 611.657, 1e-3);
}

TEST(Saturation, is_continuous_and_rising_through_freezing) {
    double below = saturation_pressure_pa(-0.05);
    for (int i = -49; i <= 50; ++i) {
        const double here = saturation_pressure_pa(i * 1e-3);
        EXPECT_GT(here, below) << "at " << i * 1e-3;
        EXPECT_LT(here - below, 0.06) << "at " << i * 1e-3;
        below = here;
    }
}

TEST(Saturation, slope_is_the_derivative) {
    for (const double t_c : {-90.0, -40.0, -5.0, 5.0, 20.0, 60.0, 150.0}) {
        const double h = 1e-3;
        const double difference =
            (saturation_pressure_pa(t_c + h) - saturation_pressure_pa(t_c - h)) / (2.0 * h);
        EXPECT_NEAR(saturation_pressure_slope_pa_per_k(t_c) / difference, 1.0, 1e-7) << "at " << t_c;
    }
}

TEST(Saturation, inverse_holds_at_the_ends_and_at_the_join) {
    for (const double t_c : {-100.0, 0.0, 0.01, 0.010001, 200.0}) {
        EXPECT_NEAR(saturation_temperature_c(saturation_pressure_pa(t_c)), t_c, 2e-9);
    }
}

// IAPWS R14-08 at -100 C and IAPWS-IF97 at 150 and 200 C, from published coefficients (memory).
TEST(Saturation, stays_near_iapws_at_the_ends_of_the_range) {
    EXPECT_NEAR(saturation_pressure_pa(-100.0) / 1.40485325e-3, 1.0, 4e-4);
    EXPECT_NEAR(saturation_pressure_pa(150.0) / 476101.381, 1.0, 4e-4);
    EXPECT_NEAR(saturation_pressure_pa(200.0) / 1554671.87, 1.0, 4e-4);
}

}  // namespace
}  // namespace psychro
