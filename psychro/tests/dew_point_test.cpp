#include "psychro/dew_point.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "psychro/atmosphere.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/saturation.hpp"

namespace psychro {
namespace {

TEST(DewPoint, dry_air_has_none) {
    try {
        dew_point_c({20.0, 0.0, sea_level_pressure_pa});
        FAIL() << "no error";
    } catch (const OutOfRange& error) {
        EXPECT_STREQ(error.quantity(), "vapour pressure, Pa,");
        EXPECT_EQ(error.value(), 0.0);
        EXPECT_EQ(error.low(), saturation_pressure_pa(-100.0));
    }
}

TEST(DewPoint, saturated_air_is_at_its_dew_point) {
    for (const double t_c : {-60.0, -20.0, 0.0, 0.01, 0.02, 20.0, 90.0}) {
        const State air = state_from_relative_humidity(t_c, 1.0, sea_level_pressure_pa);
        EXPECT_NEAR(dew_point_c(air), t_c, 1e-8);
    }
}

TEST(DewPoint, is_continuous_through_freezing) {
    double below = dew_point_c({10.0, 0.0037, sea_level_pressure_pa});
    for (int i = 1; i <= 200; ++i) {
        const double here = dew_point_c({10.0, 0.0037 + i * 1e-6, sea_level_pressure_pa});
        EXPECT_GT(here, below);
        EXPECT_LT(here - below, 0.005);
        below = here;
    }
    EXPECT_GT(below, 0.4);
}

// Explicit fit of ASHRAE Handbook-Fundamentals 2021, SI, ch. 1, for 0 to 93 C; it is within 0.033 K.
TEST(DewPoint, is_near_the_explicit_fit) {
    for (const double t_c : {1.0, 10.0, 20.0, 40.0, 60.0, 90.0}) {
        const double p_kpa = saturation_pressure_pa(t_c) / 1000.0;
        const double a = std::log(p_kpa);
        const double fit =
            6.54 + 14.526 * a + 0.7389 * a * a + 0.09486 * a * a * a + 0.4569 * std::pow(p_kpa, 0.1984);
        EXPECT_NEAR(saturation_temperature_c(1000.0 * p_kpa), fit, 0.033);
    }
}

}  // namespace
}  // namespace psychro
