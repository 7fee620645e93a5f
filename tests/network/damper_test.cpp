#include "network/damper.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ducts/loss_laws.hpp"

namespace network {
namespace {

TEST(Damper, none_and_open_lose_nothing) { EXPECT_EQ(handle_coefficient(0), 0); }

TEST(Damper, is_the_tables_to_its_end) {
    for (const double degrees : {5.0, 20.0, 45.0, 60.0})
        EXPECT_DOUBLE_EQ(handle_coefficient(degrees), ducts::damper_coefficient(degrees));
}

TEST(Damper, rises_without_a_jump_to_1500_when_shut) {
    EXPECT_NEAR(handle_coefficient(60 + 1e-9), handle_coefficient(60), 1e-6);
    EXPECT_NEAR(handle_coefficient(75), std::sqrt(118 * 1500.0), 1e-9);  // half-way in the logarithm
    EXPECT_NEAR(handle_coefficient(shut_damper), 1500, 1e-9);
    for (double degrees = 1; degrees <= shut_damper; ++degrees)
        EXPECT_GT(handle_coefficient(degrees), handle_coefficient(degrees - 1)) << degrees;
}

}  // namespace
}  // namespace network
