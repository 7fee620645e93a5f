#include "ducts/crowded_fittings.hpp"

#include <gtest/gtest.h>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

// 6 in pipe: five widths are 2 ft 6 in.
TEST(CrowdedFittings, stand_close_under_five_widths) {
    const Section pipe = section_of(round_of(6));
    EXPECT_TRUE(stand_close(pipe, 4.9 * unit::foot, 2));
    EXPECT_FALSE(stand_close(pipe, 5.1 * unit::foot, 2));
    EXPECT_FALSE(stand_close(pipe, 0.1 * unit::foot, 1));
    EXPECT_FALSE(stand_close(pipe, units::Length(), 0));
}

// Handbook companion (read): square elbow before the inlet of a fan, no vanes.
TEST(CrowdedFittings, an_elbow_at_the_inlet_adds_what_the_table_says) {
    EXPECT_EQ(inlet_allowance(0), 2.5);
    EXPECT_EQ(inlet_allowance(2), 1.6);
    EXPECT_NEAR(inlet_allowance(4.999999), 0.8, 1e-6);
    EXPECT_NEAR(inlet_allowance(1), 2.05, 1e-12);
    EXPECT_EQ(inlet_allowance(-1), 2.5);
    EXPECT_EQ(inlet_allowance(5), 0);
}

}  // namespace
}  // namespace ducts
