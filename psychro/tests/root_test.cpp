#include "psychro/root.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace psychro {
namespace {

TEST(Root, finds_a_smooth_root) {
    const auto square = [](double x) { return Residual{x * x - 2.0, 2.0 * x}; };
    EXPECT_NEAR(increasing_root(square, {0.0, 10.0}), std::sqrt(2.0), 1e-14);
}

TEST(Root, bisects_where_newton_diverges) {
    const auto arctangent = [](double x) {
        return Residual{std::atan(x - 1.0), 1.0 / (1.0 + (x - 1.0) * (x - 1.0))};
    };
    EXPECT_NEAR(increasing_root(arctangent, {-500.0, 900.0}), 1.0, 1e-9);
}

TEST(Root, survives_a_flat_slope) {
    const auto flat = [](double x) { return Residual{x < 0.3 ? -1.0 : 1.0, 0.0}; };
    EXPECT_NEAR(increasing_root(flat, {0.0, 1.0}), 0.3, 2e-9);
}

TEST(Root, survives_a_slope_of_the_wrong_sign) {
    const auto wrong = [](double x) { return Residual{x - 0.3, -1.0}; };
    EXPECT_NEAR(increasing_root(wrong, {0.0, 1.0}), 0.3, 1e-8);
}

TEST(Root, gives_the_nearer_end_when_the_root_is_outside) {
    const auto line = [](double x) { return Residual{x - 5.0, 1.0}; };
    EXPECT_NEAR(increasing_root(line, {0.0, 1.0}), 1.0, 1e-8);
    EXPECT_NEAR(increasing_root(line, {6.0, 7.0}), 6.0, 1e-8);
}

TEST(Root, is_exact_when_the_first_point_is_the_root) {
    const auto line = [](double x) { return Residual{x - 0.5, 1.0}; };
    EXPECT_EQ(increasing_root(line, {0.0, 1.0}), 0.5);
}

TEST(Root, takes_an_empty_bracket) {
    const auto line = [](double x) { return Residual{x, 1.0}; };
    EXPECT_EQ(increasing_root(line, {0.0, 0.0}), 0.0);
}

}  // namespace
}  // namespace psychro
