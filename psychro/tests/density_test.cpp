#include "psychro/density.hpp"

#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"

namespace psychro {
namespace {

// 101325 / (287.042 * 293.15)
TEST(Density, dry_air_at_20_c) {
    EXPECT_NEAR(density_kg_per_m3({20.0, 0.0, sea_level_pressure_pa}), 1.204152, 1e-6);
}

TEST(Density, moist_air_is_lighter) {
    EXPECT_LT(density_kg_per_m3({20.0, 0.01, sea_level_pressure_pa}),
              density_kg_per_m3({20.0, 0.0, sea_level_pressure_pa}));
}

TEST(Density, rises_with_pressure_in_proportion) {
    EXPECT_DOUBLE_EQ(density_kg_per_m3({20.0, 0.01, 100e3}), 2.0 * density_kg_per_m3({20.0, 0.01, 50e3}));
}

}  // namespace
}  // namespace psychro
