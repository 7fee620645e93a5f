#include "psychro/humidity_ratio.hpp"

#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"
#include "psychro/constants.hpp"

namespace psychro {
namespace {

TEST(HumidityRatio, dry_air_has_none) {
    EXPECT_EQ(humidity_ratio(0.0, sea_level_pressure_pa), 0.0);
    EXPECT_EQ(vapour_pressure_pa(0.0, sea_level_pressure_pa), 0.0);
}

TEST(HumidityRatio, equal_partial_pressures_give_the_mass_ratio) {
    EXPECT_DOUBLE_EQ(humidity_ratio(50e3, 100e3), vapour_mass_ratio);
    EXPECT_DOUBLE_EQ(vapour_pressure_pa(vapour_mass_ratio, 100e3), 50e3);
}

// Water boils at 60 C where the pressure is 20 kPa: saturated air there has no humidity ratio.
TEST(HumidityRatio, boiling_is_an_error) { EXPECT_THROW(saturation_humidity_ratio(60.1, 20e3), OutOfRange); }

}  // namespace
}  // namespace psychro
