#include "registers/draught.hpp"

#include <gtest/gtest.h>

#include "units/unit.hpp"

namespace registers {
namespace {

Draught at(double celsius, double speed, double turbulence = usual_turbulence) {
    return draught(units::unit::celsius(celsius), units::Velocity(speed), turbulence);
}

TEST(Draught, still_air_is_none) {
    EXPECT_EQ(at(21, 0).dissatisfied, 0);
    EXPECT_EQ(at(21, 0.05).dissatisfied, 0);
}

TEST(Draught, never_below_none_nor_above_all) {
    EXPECT_EQ(at(40, 0.3).dissatisfied, 0);
    EXPECT_EQ(at(-20, 2).dissatisfied, 1);
}

TEST(Draught, tells_where_it_was_not_tested) {
    EXPECT_TRUE(at(20, 0.5).tested);
    EXPECT_TRUE(at(26, 0.1).tested);
    EXPECT_FALSE(at(19.9, 0.2).tested);
    EXPECT_FALSE(at(26.1, 0.2).tested);
    EXPECT_FALSE(at(22, 0.51).tested);
    EXPECT_FALSE(at(22, 0.2, 0.71).tested);
}

}  // namespace
}  // namespace registers
