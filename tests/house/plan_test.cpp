// Boxes that overlap and doors that sweep them.
#include "house/plan.hpp"

#include <gtest/gtest.h>

namespace {

using house::Box;
using house::DoorSwing;
using house::overlap;
using house::sweeps;

Box box(double west, double south, double east, double north) {
    return {units::Length(west), units::Length(south), units::Length(east), units::Length(north)};
}

// A leaf of 0.8 m hinged at (1, 0), that opens towards east and north.
constexpr DoorSwing swing{units::Length(1), units::Length(0), units::Length(0.8), true, true};

TEST(Plan, boxes_that_touch_do_not_overlap) {
    EXPECT_FALSE(overlap(box(0, 0, 1, 1), box(1, 0, 2, 1)));
    EXPECT_FALSE(overlap(box(0, 0, 1, 1), box(0.995, 0, 2, 1)));
    EXPECT_TRUE(overlap(box(0, 0, 1, 1), box(0.9, 0.9, 2, 2)));
    EXPECT_FALSE(overlap(box(0, 0, 1, 1), box(0.9, 1, 2, 2)));
    EXPECT_TRUE(overlap(box(0, 0, 3, 3), box(1, 1, 2, 2)));
}

TEST(Plan, a_door_sweeps_what_lies_within_its_leaf) {
    EXPECT_TRUE(sweeps(swing, box(1.2, 0.2, 1.4, 0.4)));
    EXPECT_TRUE(sweeps(swing, box(0, 0.7, 3, 1)));
    EXPECT_TRUE(sweeps(swing, box(0, 0, 3, 3)));
}

TEST(Plan, beyond_its_leaf_and_in_the_corner_of_its_square_it_sweeps_nothing) {
    EXPECT_FALSE(sweeps(swing, box(1.81, 0, 2, 1)));
    EXPECT_FALSE(sweeps(swing, box(1.6, 0.6, 1.8, 0.8)));
}

TEST(Plan, behind_its_hinge_it_sweeps_nothing) {
    EXPECT_FALSE(sweeps(swing, box(0, 0, 1, 1)));
    EXPECT_FALSE(sweeps(swing, box(1, -1, 2, 0)));
}

TEST(Plan, a_door_may_open_towards_each_corner) {
    for (const bool east : {false, true})
        for (const bool north : {false, true}) {
            const DoorSwing door{units::Length(0), units::Length(0), units::Length(0.8), east, north};
            EXPECT_EQ(sweeps(door, box(0.1, 0.1, 0.2, 0.2)), east && north);
            EXPECT_EQ(sweeps(door, box(-0.2, 0.1, -0.1, 0.2)), !east && north);
            EXPECT_EQ(sweeps(door, box(0.1, -0.2, 0.2, -0.1)), east && !north);
            EXPECT_EQ(sweeps(door, box(-0.2, -0.2, -0.1, -0.1)), !east && !north);
        }
}

}  // namespace
