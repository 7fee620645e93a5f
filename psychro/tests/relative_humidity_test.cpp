#include "psychro/relative_humidity.hpp"

#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"
#include "psychro/humidity_ratio.hpp"

namespace psychro {
namespace {

TEST(RelativeHumidity, saturated_air_is_one_and_dry_air_zero) {
    for (const double t_c : {-60.0, -10.0, 0.0, 20.0, 90.0}) {
        const double saturated = saturation_humidity_ratio(t_c, sea_level_pressure_pa);
        EXPECT_NEAR(relative_humidity({t_c, saturated, sea_level_pressure_pa}), 1.0, 1e-12);
        EXPECT_EQ(relative_humidity({t_c, 0.0, sea_level_pressure_pa}), 0.0);
    }
}

TEST(RelativeHumidity, never_exceeds_one_by_rounding) {
    const double saturated = saturation_humidity_ratio(20.0, sea_level_pressure_pa);
    EXPECT_EQ(relative_humidity({20.0, saturated * (1.0 + 1e-10), sea_level_pressure_pa}), 1.0);
}

}  // namespace
}  // namespace psychro
