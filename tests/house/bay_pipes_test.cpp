// Pipes of a bay in three dimensions: which run through each other.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "house/bay.hpp"
#include "house/pipe_sizes.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

using units::unit::inch;

constexpr units::Length width{14.5 * inch};

BayPipe along(double outside, double from_side, double top, double other_top) {
    BayPipe pipe;
    pipe.outside = outside * inch, pipe.from_side = from_side * inch;
    pipe.top = top * inch, pipe.other_top = other_top * inch;
    return pipe;
}

BayPipe across(double outside, double top, double other_top) {
    BayPipe pipe = along(outside, 0, top, other_top);
    pipe.across = true;
    return pipe;
}

bool meet(const BayPipe& a, const BayPipe& b) {
    const bool met = run_through_each_other(a, b, width);
    EXPECT_EQ(met, run_through_each_other(b, a, width));
    return met;
}

TEST(BayPipes, side_by_side_or_one_below_the_other_they_are_apart) {
    EXPECT_FALSE(meet(along(2, 0, 1, 1), along(2, 2, 1, 1)));
    EXPECT_TRUE(meet(along(2, 0, 1, 1), along(2, 1.9, 1, 1)));
    EXPECT_FALSE(meet(along(2, 0, 0, 0), along(3, 0, 2, 2)));
    EXPECT_TRUE(meet(along(2, 0, 0, 0), along(3, 0, 1.9, 1.9)));
}

TEST(BayPipes, that_change_places_meet_midway) {
    EXPECT_TRUE(meet(along(1, 3, 0, 5), along(1, 3, 5, 0)));
    EXPECT_TRUE(meet(along(1, 3, 0, 5), along(1, 3.5, 2, 2)));
    EXPECT_FALSE(meet(along(1, 3, 0, 5), along(1, 4.5, 5, 0)));
    EXPECT_FALSE(meet(along(1, 3, 0, 3), along(1, 3, 2, 5)));  // falling together
}

TEST(BayPipes, one_across_passes_over_or_runs_through) {
    EXPECT_TRUE(meet(along(3, 4, 2, 2), across(2, 4.5, 4.5)));
    EXPECT_FALSE(meet(along(3, 4, 2, 2), across(2, 5, 5)));
    EXPECT_FALSE(meet(along(3, 4, 2, 2), across(2, 0, 0)));
}

TEST(BayPipes, one_across_that_falls_is_looked_at_where_they_cross) {
    EXPECT_FALSE(meet(along(2, 0, 4, 4), across(1, 0, 6)));  // still high there
    EXPECT_TRUE(meet(along(2, 11, 4, 4), across(1, 0, 6)));
}

TEST(BayPipes, one_across_finds_a_place_where_the_other_has_fallen) {
    EXPECT_FALSE(meet(along(2, 4, 0, 5), across(2, 0, 0)));  // it may lie at the low end
    EXPECT_TRUE(meet(along(2, 4, 0, 1), across(2, 0, 0)));
    EXPECT_FALSE(meet(across(2, 1, 1), across(2, 1, 1)));  // one behind the other
}

TEST(BayPipes, sizes_by_trade_name_rise_within_a_kind) {
    ASSERT_NE(pipe_size_named("3 in PVC"), nullptr);
    EXPECT_NEAR(pipe_size_named("3 in PVC")->outside / inch, 3.94, 1e-9);
    EXPECT_EQ(pipe_size_named("3 in pvc pipe"), nullptr);
    for (const PipeSize& row : pipe_sizes()) EXPECT_FALSE(row.source.empty()) << row.name;
}

RC_GTEST_PROP(BayPipes, neither_mirror_nor_order_nor_end_changes_what_meets, ()) {
    const auto any = [] { return *rc::gen::inRange(0, 100) / 10.0; };
    BayPipe a = along(0.5 + any() / 4, any(), any(), any()), b = along(0.5 + any() / 4, any(), any(), any());
    b.across = *rc::gen::inRange(0, 2) == 0;
    const bool met = run_through_each_other(a, b, width);
    RC_ASSERT(met == run_through_each_other(b, a, width));
    BayPipe a_mirrored = a, b_mirrored = b;
    a_mirrored.from_side = width - a.from_side - a.outside,
    b_mirrored.from_side = width - b.from_side - b.outside;
    if (b.across) std::swap(b_mirrored.top, b_mirrored.other_top);
    RC_ASSERT(met == run_through_each_other(a_mirrored, b_mirrored, width));
    std::swap(a.top, a.other_top);
    if (!b.across) std::swap(b.top, b.other_top);
    RC_ASSERT(met == run_through_each_other(a, b, width));
}

}  // namespace
}  // namespace house
