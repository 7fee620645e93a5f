#include "questions/verdict.hpp"

#include <gtest/gtest.h>

namespace {

using questions::holds;
using questions::Range;
using questions::Verdict;
using questions::verdict;

constexpr double hair = 1e-300;

TEST(VerdictRule, low_above_zero_is_yes) {
    EXPECT_EQ(verdict({hair, 1, 2}), Verdict::yes);
    EXPECT_EQ(verdict({1, 1, 1}), Verdict::yes);
}

TEST(VerdictRule, low_at_or_below_zero_with_the_middle_not_below_is_probably) {
    EXPECT_EQ(verdict({0, 1, 2}), Verdict::probably);
    EXPECT_EQ(verdict({-1, hair, 2}), Verdict::probably);
    EXPECT_EQ(verdict({-1, 0, 2}), Verdict::probably);
    EXPECT_EQ(verdict({0, 0, 0}), Verdict::probably);
    EXPECT_EQ(verdict({-1, -0.0, 0}), Verdict::probably);
}

TEST(VerdictRule, middle_below_zero_with_high_above_is_probably_not) {
    EXPECT_EQ(verdict({-2, -hair, hair}), Verdict::probably_not);
    EXPECT_EQ(verdict({-2, -1, 1}), Verdict::probably_not);
}

TEST(VerdictRule, high_at_or_below_zero_is_no) {
    EXPECT_EQ(verdict({-2, -1, 0}), Verdict::no);
    EXPECT_EQ(verdict({-2, -1, -hair}), Verdict::no);
}

TEST(VerdictRule, yes_and_probably_hold) {
    EXPECT_TRUE(holds(Verdict::yes));
    EXPECT_TRUE(holds(Verdict::probably));
    EXPECT_FALSE(holds(Verdict::probably_not));
    EXPECT_FALSE(holds(Verdict::no));
}

}  // namespace
