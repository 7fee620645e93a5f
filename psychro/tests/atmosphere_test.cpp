#include "psychro/atmosphere.hpp"

#include <gtest/gtest.h>

namespace psychro {
namespace {

TEST(Atmosphere, sea_level_is_exact) { EXPECT_EQ(standard_pressure_pa(0.0), sea_level_pressure_pa); }

// 22632.06 Pa at the top of the troposphere, US Standard Atmosphere 1976 (memory).
TEST(Atmosphere, top_of_the_troposphere) { EXPECT_NEAR(standard_pressure_pa(11000.0), 22632.06, 0.5); }

TEST(Atmosphere, pressure_is_higher_below_sea_level) {
    EXPECT_NEAR(standard_pressure_pa(-500.0), 107478.0, 1.0);
}

}  // namespace
}  // namespace psychro
