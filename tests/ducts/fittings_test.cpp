#include "ducts/fittings.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;
using units::Velocity;

const Fitting& named(const std::string& name) {
    const auto found = look_up_fitting({name, {}});
    return *std::get<const Fitting*>(found);
}

// In velocity pressures of the branch.
double branch_coefficient(const std::string& name, Velocity branch, Velocity trunk) {
    return fitting_loss(named(name), branch, trunk, reference_air()) /
           velocity_pressure(branch, reference_air());
}

TEST(Fittings, velocity_pressure_at_4004_feet_a_minute_is_one_inch) {
    EXPECT_NEAR(velocity_pressure(4004 * unit::foot_per_minute, reference_air()) / unit::inch_wc, 1, 1e-4);
}

TEST(Fittings, fixed_loss_ignores_the_trunk) {
    const units::Pressure loss = fitting_loss(named("stackhead"), Velocity(2), Velocity(0), reference_air());
    EXPECT_EQ(loss, 1.3 * velocity_pressure(Velocity(2), reference_air()));
    EXPECT_EQ(loss, fitting_loss(named("stackhead"), Velocity(2), Velocity(5), reference_air()));
}

// Trunk 800 ft/min, branch 500: 1 + 1.6^2
TEST(Fittings, a_straight_takeoff_pays_for_the_trunks_velocity) {
    EXPECT_NEAR(branch_coefficient("top takeoff", Velocity(5), Velocity(8)), 1 + 1.6 * 1.6, 1e-12);
}

// On the trunk's velocity pressure at s = 0.8: 1.64 straight, 0.51 at 45 degrees.
TEST(Fittings, a_45_degree_takeoff_costs_a_third) {
    EXPECT_NEAR(0.64 * branch_coefficient("side takeoff, straight", Velocity(4), Velocity(5)), 1.64, 1e-12);
    EXPECT_NEAR(0.64 * branch_coefficient("side takeoff, 45 degree entry", Velocity(4), Velocity(5)), 0.5086,
                1e-4);
}

TEST(Fittings, a_takeoff_from_a_plenum_is_an_entry) {
    EXPECT_NEAR(branch_coefficient("side takeoff, straight", Velocity(3), Velocity(0)), 0.6, 1e-12);
    EXPECT_NEAR(branch_coefficient("side takeoff, 45 degree entry", Velocity(3), Velocity(0)), 0.2, 1e-12);
}

TEST(Fittings, a_shut_takeoff_has_a_finite_loss) {
    const units::Pressure loss =
        fitting_loss(named("top takeoff"), Velocity(0), Velocity(4), reference_air());
    EXPECT_EQ(loss, velocity_pressure(Velocity(4), reference_air()));
}

TEST(Fittings, names_are_distinct) {
    std::vector<std::string_view> names;
    for (const Fitting& fitting : fittings()) names.push_back(fitting.name);
    std::sort(names.begin(), names.end());
    EXPECT_EQ(std::adjacent_find(names.begin(), names.end()), names.end());
}

TEST(Fittings, every_row_is_whole) {
    for (const Fitting& fitting : fittings()) {
        EXPECT_FALSE(fitting.name.empty() || fitting.source.empty()) << fitting.name;
        EXPECT_LE(fitting.low, fitting.coefficient) << fitting.name;
        EXPECT_LE(fitting.coefficient, fitting.high) << fitting.name;
        EXPECT_EQ(fitting.law == LossLaw::takeoff, fitting.angle_degrees > 0) << fitting.name;
    }
}

TEST(Fittings, counted_turns) {
    EXPECT_EQ(counted_turn(true).name, "square turn");
    EXPECT_EQ(counted_turn(false).name, "rounded turn");
    EXPECT_GT(counted_turn(true).coefficient, counted_turn(false).coefficient);
}

TEST(Fittings, an_unknown_name_is_answered_with_the_nearest) {
    const auto found = look_up_fitting({"top takoff", {12, 5, 17}});
    const auto& mistake = std::get<house::Mistake>(found);
    EXPECT_EQ(mistake.text, "unknown fitting 'top takoff'");
    EXPECT_EQ(mistake.under, "did you mean 'top takeoff'?");
    EXPECT_THAT(mistake.remedy, testing::StartsWith("the nearest fittings are 'top takeoff', '"));
    EXPECT_EQ(mistake.place, (house::Place{12, 5, 17}));
}

TEST(Fittings, a_name_like_no_other_gets_no_guess) {
    const auto found = look_up_fitting({"xyzzyxyzzyxyzzyxyzzy", {}});
    const auto& mistake = std::get<house::Mistake>(found);
    EXPECT_EQ(mistake.under, "");
    EXPECT_FALSE(mistake.remedy.empty());
    EXPECT_TRUE(std::holds_alternative<house::Mistake>(look_up_fitting({"", {}})));
}

}  // namespace
}  // namespace ducts
