#include "psychro/enthalpy.hpp"

#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"
#include "psychro/specific_heat.hpp"

namespace psychro {
namespace {

TEST(Enthalpy, zero_is_dry_air_at_zero) {
    EXPECT_EQ(enthalpy_j_per_kg_dry_air({0.0, 0.0, sea_level_pressure_pa}), 0.0);
}

TEST(Enthalpy, one_hand_calculation) {
    // 1006 * 25 + 0.01 * (2501000 + 1860 * 25)
    EXPECT_NEAR(enthalpy_j_per_kg_dry_air({25.0, 0.01, sea_level_pressure_pa}), 50625.0, 1e-9);
}

TEST(Enthalpy, gives_the_dry_bulb_back) {
    EXPECT_NEAR(state_from_enthalpy(50625.0, 0.01, sea_level_pressure_pa).dry_bulb_c, 25.0, 1e-12);
}

TEST(SpecificHeat, one_hand_calculation) {
    EXPECT_DOUBLE_EQ(specific_heat_j_per_kg_dry_air_k(0.01), 1024.6);
    EXPECT_DOUBLE_EQ(specific_heat_j_per_kg_k({25.0, 0.01, sea_level_pressure_pa}), 1024.6 / 1.01);
}

}  // namespace
}  // namespace psychro
