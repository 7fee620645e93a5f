#include "report/worked.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "report/closing_sum.hpp"
#include "report/expression.hpp"
#include "units/write.hpp"

namespace {

using namespace report;

TEST(Worked, writes_a_sum_with_as_few_brackets_as_it_needs) {
    const Worked a = printed(1, 0), b = printed(2, 0), c = printed(3, 0);
    EXPECT_EQ((a + b * c).text, "1 + 2 x 3");
    EXPECT_EQ(((a + b) * c).text, "(1 + 2) x 3");
    EXPECT_EQ((a - (b - c)).text, "1 - (2 - 3)");
    EXPECT_EQ((a / (b * c)).text, "1 / (2 x 3)");
    EXPECT_EQ((a * (b / c)).text, "1 x 2 / 3");
    EXPECT_EQ(squared(a + b).text, "(1 + 2)^2");
    EXPECT_EQ(squared(squared(a)).text, "(1^2)^2");
    EXPECT_EQ(exp(-(a + b)).text, "exp(-(1 + 2))");
    EXPECT_EQ((b - printed(-3, 0)).text, "2 - (-3)");
}

TEST(Worked, says_what_the_printed_digits_give) {
    const Worked sum = printed(0.6666, 2) * printed_to(1234.6, 3);
    EXPECT_EQ(sum.text, "0.67 x 1235");
    EXPECT_DOUBLE_EQ(sum.exact, 0.6666 * 1234.6);
    EXPECT_DOUBLE_EQ(sum.by_hand, *report_test::worked_out(sum.text));
    EXPECT_LE(std::abs(sum.by_hand - sum.exact), sum.within());
}

TEST(Worked, bounds_hold_what_rounding_may_do) {
    const Worked a = printed(3.14159, 1), b = printed(-2.71828, 2), c = printed(0.50049, 3);
    for (const Worked& sum :
         {a * b, a / c, b - a / (b * c), exp(-a) * b, log10(a) / c, sqrt(a) + b, squared(b)}) {
        EXPECT_LE(sum.low, sum.exact) << sum.text;
        EXPECT_GE(sum.high, sum.exact) << sum.text;
        EXPECT_GE(sum.by_hand, sum.low) << sum.text;
        EXPECT_LE(sum.by_hand, sum.high) << sum.text;
        EXPECT_NEAR(*report_test::worked_out(sum.text), sum.by_hand, 1e-12) << sum.text;
    }
}

TEST(Worked, keeps_a_figure_as_it_was_written) {
    const Worked loss = rounded(1568.2, "1,570");
    EXPECT_EQ(loss.text, "1,570");
    EXPECT_EQ(loss.by_hand, 1570);
    EXPECT_EQ(loss.exact, 1568.2);
}

std::string whole(double value) { return units::decimal(value, 0); }

TEST(ClosingSum, takes_as_few_digits_as_close_it) {
    const auto sum = [](int more) { return printed(99.6, more) / printed(2.04, more); };
    EXPECT_EQ(closing_sum(sum, whole), "99.60 / 2.04 = 49");  // 100 / 2 and 99.6 / 2.0 give 50
    EXPECT_EQ(closing_sum([](int more) { return printed(100.2, more) / printed(4.01, more); }, whole),
              "100 / 4 = 25");
}

}  // namespace
