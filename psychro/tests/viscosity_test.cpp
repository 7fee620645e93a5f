#include "psychro/viscosity.hpp"

#include <gtest/gtest.h>

namespace psychro {
namespace {

// 1.7894e-5 Pa s at 15 C, US Standard Atmosphere 1976, sea-level value (memory).
TEST(Viscosity, sea_level_value_of_the_standard_atmosphere) {
    EXPECT_NEAR(dynamic_viscosity_pa_s(15.0), 1.7894e-5, 1e-9);
}

TEST(Viscosity, rises_with_temperature) {
    EXPECT_GT(dynamic_viscosity_pa_s(50.0), dynamic_viscosity_pa_s(20.0));
}

}  // namespace
}  // namespace psychro
