#include "registers/stack_in_wall.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace registers {
namespace {

namespace unit = units::unit;

StackSetting in_wall(double layers, double inches) {
    return {{units::Resistance(layers), inches * unit::inch},
            units::Area(0.1),
            unit::celsius(20),
            unit::celsius(-15),
            unit::celsius(45)};
}

// Nothing is left of 3-1/2 in: Ro 0.03 + 0.3, and 0.25 before it.
TEST(StackInWall, by_hand) {
    const StackInWall stack = stack_in_wall(in_wall(0.3, 3.5));
    EXPECT_EQ(stack.left, units::Length());
    EXPECT_NEAR(stack.behind.si(), 0.3, 1e-12);
    EXPECT_NEAR(unit::in_celsius(stack.at_rest), -15 + 0.33 / 0.58 * 35, 1e-9);  // 4.9 C
    EXPECT_NEAR(stack.sweats_above, 0.371, 0.002);                               // 868 Pa of 2339
    EXPECT_NEAR(stack.loses.si(), 0.1 * 60 / 0.39, 1e-9);
    EXPECT_FALSE(stack.enough());
}

TEST(StackInWall, a_deeper_wall_has_room_for_board_and_is_enough) {
    const StackInWall stack = stack_in_wall(in_wall(0.3, 5.5));
    EXPECT_NEAR(stack.left / unit::inch, 2, 1e-9);
    EXPECT_NEAR(stack.behind.si(), 0.3 + 0.0508 / 0.0275, 1e-9);
    EXPECT_TRUE(stack.enough());
}

TEST(StackInWall, needs_a_bay_as_deep_as_itself) {
    EXPECT_TRUE(holds_a_stack({{}, 3.25 * unit::inch}));
    EXPECT_FALSE(holds_a_stack({{}, 2.5 * unit::inch}));
    EXPECT_FALSE(holds_a_stack({{}, {}}));
}

// --- laws

TEST(StackInWallLaws, more_behind_it_never_makes_it_colder_or_lose_more) {
    for (double layers = 0; layers < 3; layers += 0.1)
        for (double inches = 3.25; inches < 9; inches += 0.25) {
            const StackInWall here = stack_in_wall(in_wall(layers, inches)),
                              more = stack_in_wall(in_wall(layers + 0.1, inches)),
                              deeper = stack_in_wall(in_wall(layers, inches + 0.25));
            for (const StackInWall& better : {more, deeper}) {
                EXPECT_GE(better.at_rest, here.at_rest);
                EXPECT_GE(better.sweats_above, here.sweats_above);
                EXPECT_LE(better.loses, here.loses);
            }
            EXPECT_TRUE(std::isfinite(here.sweats_above));
            EXPECT_LE(here.at_rest, unit::celsius(20));
            EXPECT_GE(here.at_rest, unit::celsius(-15));
        }
}

TEST(StackInWallLaws, a_room_as_cold_as_outdoors_does_not_sweat_and_cold_air_loses_nothing) {
    StackSetting setting = in_wall(0.3, 3.5);
    setting.outdoors = setting.room;
    EXPECT_EQ(stack_in_wall(setting).sweats_above, 1);
    setting.air = unit::celsius(10);
    EXPECT_EQ(stack_in_wall(setting).loses, units::Power());
}

}  // namespace
}  // namespace registers
