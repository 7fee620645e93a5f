#include "report/expression.hpp"

#include <gtest/gtest.h>

#include <cmath>

using report_test::printed_sums;
using report_test::worked_out;

TEST(Expression, does_sums_in_the_usual_order) {
    EXPECT_EQ(worked_out("2 + 3 x 4"), 14.0);
    EXPECT_EQ(worked_out("(2 + 3) x 4 / 10"), 2.0);
    EXPECT_EQ(worked_out("10 - 3 - 2"), 5.0);
    EXPECT_EQ(worked_out("2 x (-3.5)^2"), 24.5);
    EXPECT_EQ(worked_out("-2 x log10(100)"), -4.0);
    EXPECT_EQ(worked_out("1,570 / 2"), 785.0);
    EXPECT_DOUBLE_EQ(*worked_out("exp(-1 / 2) + sqrt(9)"), std::exp(-0.5) + 3);
}

TEST(Expression, takes_nothing_else_for_a_sum) {
    for (const char* text : {"", "2 +", "(2", "two", "2 2", "2 = 2", "1e3 x"})
        EXPECT_EQ(worked_out(text), std::nullopt) << text;
}

TEST(Expression, finds_the_sums_of_a_text) {
    const auto sums =
        printed_sums("on 62 % of the time: 1,570 / (0.62 x 1.06 x (120 - 74)) = 52 cfm, and 2 - 1 = 1.");
    ASSERT_EQ(sums.size(), 2u);
    EXPECT_NEAR(sums[0].by_hand, 51.93, 0.01);
    EXPECT_EQ(sums[0].result, 52);
    EXPECT_NEAR(sums[0].half_a_digit, 0.5, 1e-6);
    EXPECT_EQ(sums[1].result, 1);
}
