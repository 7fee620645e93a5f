#include "routes/bay_section.hpp"

#include <gtest/gtest.h>

#include "units/unit.hpp"

namespace routes {
namespace {

using units::unit::inch;

house::Bay bay(double width, double depth) {
    house::Bay made;
    made.width = width * inch;
    made.depth = depth * inch;
    made.clearance = 0.5 * inch;
    return made;
}

void add_pipe(house::Bay& to, double outside, double from_side, double top, double other_top) {
    house::BayPipe pipe;
    pipe.outside = outside * inch;
    pipe.from_side = from_side * inch;
    pipe.top = top * inch;
    pipe.other_top = other_top * inch;
    to.pipes.push_back(pipe);
}

double spare_inches(const house::Bay& in, const house::Shape& duct) { return spare(in, duct) / inch; }
house::Shape round(double diameter) { return house::Round{diameter * inch}; }
house::Shape flat(double width, double height) { return house::Rectangular{width * inch, height * inch}; }

TEST(Bay, an_empty_one_passes_what_its_lesser_side_does) {
    EXPECT_NEAR(spare_inches(bay(14.5, 9.25), round(7.25)), 2, 1e-9);
    EXPECT_NEAR(spare_inches(bay(14.5, 9.25), round(10)), -0.75, 1e-9);
}

TEST(Bay, a_flat_duct_may_stand_or_lie) {
    EXPECT_NEAR(spare_inches(bay(4, 12), flat(10.25, 3.5)), 0.5, 1e-9);
    EXPECT_NEAR(spare_inches(bay(12, 4), flat(10.25, 3.5)), 0.5, 1e-9);
}

TEST(Bay, a_pipe_in_the_middle_leaves_half) {
    house::Bay split = bay(14, 9);
    add_pipe(split, 2, 6, 3.5, 3.5);
    // From the middle of the pipe to the middle of a 4 in duct in a corner: 5 in across, 2.5 in down.
    EXPECT_NEAR(spare_inches(split, round(4)), std::hypot(5.0, 2.5) - 1 - 2 - 0.5, 0.001);
}

TEST(Bay, below_a_pipe_that_lies_across_only_its_height_counts) {
    house::Bay crossed = bay(13, 9.25);
    add_pipe(crossed, 2.375, 0, 3.4375, 3.4375);
    crossed.pipes[0].across = true;
    EXPECT_NEAR(spare_inches(crossed, flat(8.25, 3.5)), 9.25 - 3.4375 - 2.375 - 3.5 - 0.5, 0.001);
    EXPECT_LT(spare_inches(crossed, flat(8.25, 3.5)), 0);  // the published row X18
}

TEST(Bay, a_pipe_that_slopes_blocks_all_it_sweeps) {
    house::Bay level = bay(11, 8), sloped = bay(11, 8);
    add_pipe(level, 3, 0, 0, 0);
    add_pipe(sloped, 3, 0, 0, 4);
    EXPECT_LT(spare(sloped, round(6)), spare(level, round(6)));
}

TEST(Bay, the_crowded_one_of_the_case_passes_a_5_in_pipe_or_a_6_in_once_the_drain_moves) {
    house::Bay crowded = bay(11.375, 7.5);
    add_pipe(crowded, 3.9375, 1.5, 0.75, 1.5);
    EXPECT_TRUE(passes(spare(crowded, outside(round(5)))));
    EXPECT_FALSE(passes(spare(crowded, outside(round(6)))));
    const auto move = least_move(crowded, outside(round(6)));
    ASSERT_TRUE(move);
    EXPECT_EQ(move->way, Way::to_first_side);
    EXPECT_NEAR(move->by / inch, 0.75, 1e-9);
    crowded.pipes[0].from_side -= move->by;
    EXPECT_TRUE(passes(spare(crowded, outside(round(6)))));
    crowded.pipes[0].from_side += inch / 8;
    EXPECT_FALSE(passes(spare(crowded, outside(round(6)))));
}

TEST(Bay, no_move_helps_where_the_empty_bay_is_too_small) {
    house::Bay shallow = bay(14, 5.5);
    add_pipe(shallow, 2, 0, 0, 0);
    EXPECT_FALSE(least_move(shallow, round(6.25)));
}

TEST(Bay, a_moved_pipe_stays_clear_of_the_others) {
    house::Bay two = bay(8, 4);
    add_pipe(two, 2, 0, 0, 0);
    add_pipe(two, 2, 5, 0, 0);
    EXPECT_FALSE(least_move(two, round(4)));  // pushed aside, both leave 4 in less two clearances
    two.width = 9 * inch;
    const auto move = least_move(two, round(4));
    ASSERT_TRUE(move);
    EXPECT_EQ(move->pipe, 1);
    // Middles apart: 2 in across for 1 in down, twice.  5 + by >= 2 sqrt(3.5^2 - 1), in eighths.
    EXPECT_NEAR(move->by / inch, 1.75, 1e-9);
}

TEST(Bay, pipes_that_fall_together_do_not_hold_each_other_fast) {
    house::Bay falling = bay(12, 6);
    add_pipe(falling, 1, 0, 0, 2);
    add_pipe(falling, 1, 1.2, 0, 2);
    add_pipe(falling, 3, 5, 0, 0);
    const auto move = least_move(falling, round(5));
    ASSERT_TRUE(move);
    EXPECT_EQ(move->pipe, 2);
}

TEST(Bay, a_flat_oval_rounds_the_corner_that_a_rectangle_does_not) {
    house::Bay corner = bay(10, 5);
    add_pipe(corner, 2, 0, 0, 0);
    const house::Shape oval = house::FlatOval{9 * inch, 4 * inch};
    EXPECT_GT(spare_inches(corner, oval), spare_inches(corner, flat(9, 4)));
    EXPECT_NEAR(spare_inches(bay(10, 5), oval), 1, 1e-9);
}

TEST(Bay, wrap_and_seams_take_room) {
    EXPECT_NEAR(std::get<house::Round>(outside(round(6))).diameter / inch, 6.25, 1e-9);
    EXPECT_NEAR(std::get<house::Round>(outside(round(6), 6 * units::unit::r_value_us)).diameter / inch, 10.25,
                1e-9);
}

TEST(Bay, the_largest_that_passes) {
    const house::Round sizes[] = {{4 * inch}, {5 * inch}, {6 * inch}, {7 * inch}};
    EXPECT_EQ(largest_that_passes(bay(14, 6.5), std::span<const house::Round>(sizes))->diameter, 6 * inch);
    EXPECT_FALSE(largest_that_passes(bay(14, 4), std::span<const house::Round>(sizes)));
}

}  // namespace
}  // namespace routes
