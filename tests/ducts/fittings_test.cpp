#include "ducts/fittings.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "ducts/a_fitting_place.hpp"
#include "ducts/friction.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;
using units::Velocity;

units::Pressure loss_of(const Fitting& fitting, const FittingPlace& place) {
    return fitting_loss(fitting, place, reference_air());
}

// In velocity pressures of the branch, and of the trunk.
double branch_coefficient(const Fitting& fitting, Velocity branch, Velocity trunk) {
    return loss_of(fitting, place_of(branch, trunk)) / velocity_pressure(branch, reference_air());
}
double trunk_coefficient(const Fitting& fitting, const FittingPlace& place) {
    return loss_of(fitting, place) / velocity_pressure(place.trunk_flow / place.trunk.area, reference_air());
}

TEST(Fittings, velocity_pressure_at_4004_feet_a_minute_is_one_inch) {
    EXPECT_NEAR(velocity_pressure(4004 * unit::foot_per_minute, reference_air()) / unit::inch_wc, 1, 1e-4);
}

TEST(Fittings, fixed_loss_ignores_the_trunk) {
    const units::Pressure loss = loss_of(named("stackhead"), place_of(Velocity(2), Velocity(0)));
    EXPECT_EQ(loss, 1.3 * velocity_pressure(Velocity(2), reference_air()));
    EXPECT_EQ(loss, loss_of(named("stackhead"), place_of(Velocity(2), Velocity(5))));
}

// Trunk 800 ft/min, branch 500: 1 + 1.6^2
TEST(Fittings, a_straight_takeoff_pays_for_the_trunks_velocity) {
    EXPECT_NEAR(branch_coefficient(named("top takeoff"), Velocity(5), Velocity(8)), 1 + 1.6 * 1.6, 1e-12);
}

// On the trunk's velocity pressure at s = 0.8 and a fifth of its area: 1.64 straight; at 45 degrees
// (1.1 - 0.7 x 0.16) x 0.5086 = 0.5025.
TEST(Fittings, a_45_degree_takeoff_costs_a_third) {
    const FittingPlace place = place_of(Velocity(4), Velocity(5));
    EXPECT_NEAR(trunk_coefficient(named("side takeoff, straight"), place), 1.64, 1e-12);
    EXPECT_NEAR(trunk_coefficient(named("side takeoff, 45 degree entry"), place), 0.5025, 1e-4);
}

TEST(Fittings, a_takeoff_from_a_plenum_is_an_entry) {
    EXPECT_NEAR(branch_coefficient(named("side takeoff, straight"), Velocity(3), Velocity(0)), 0.6, 1e-12);
    EXPECT_NEAR(branch_coefficient(named("side takeoff, 45 degree entry"), Velocity(3), Velocity(0)), 0.2,
                1e-12);
}

TEST(Fittings, a_shut_takeoff_has_a_finite_loss) {
    EXPECT_EQ(loss_of(named("top takeoff"), place_of(Velocity(0), Velocity(4))),
              velocity_pressure(Velocity(4), reference_air()));
}

// A branch of little flow is drawn along by the trunk it joins: no loss, and no gain either.
TEST(Fittings, a_joining_flow_drawn_along_counts_as_no_loss) {
    const Fitting joins = named("joins the trunk, straight");
    EXPECT_EQ(loss_of(joins, place_of(Velocity(0.5), Velocity(4))), units::Pressure(0));
    EXPECT_NEAR(trunk_coefficient(joins, place_of(Velocity(4), Velocity(4))), 0.72, 1e-12);  // q 0.2
    EXPECT_NEAR(branch_coefficient(joins, Velocity(4), Velocity(0)), 1, 1e-12);
}

TEST(Fittings, a_bullhead_tee_pays_for_the_trunk_that_ends_there) {
    EXPECT_NEAR(trunk_coefficient(named("bullhead tee"), place_of(Velocity(1), Velocity(4))), 1.3, 1e-12);
}

TEST(Fittings, a_step_loses_by_both_sizes) {
    const Fitting reducer = named("trunk reducer, abrupt"), increaser = named("trunk increaser, tapered");
    EXPECT_NEAR(branch_coefficient(reducer, Velocity(4), Velocity(2)), 0.415, 1e-9);  // areas 5 to 1
    const FittingPlace half = place_of(Velocity(4), Velocity(2), 0.5);
    EXPECT_NEAR(loss_of(reducer, half) / velocity_pressure(Velocity(4), reference_air()), 0.26, 1e-12);
    EXPECT_NEAR(loss_of(increaser, half) / velocity_pressure(Velocity(4), reference_air()), 0.28 * 0.75,
                1e-12);
    EXPECT_EQ(loss_of(reducer, place_of(Velocity(4), Velocity(4), 1)), units::Pressure(0));
    EXPECT_NEAR(loss_of(increaser, place_of(Velocity(4), Velocity(4), 1)).si(), 0, 1e-12);
    EXPECT_EQ(loss_of(increaser, place_of(Velocity(4), Velocity(0), 0.5)), units::Pressure(0));
}

TEST(Fittings, an_equivalent_length_of_the_sheet_is_friction) {
    const FittingPlace place = place_of(Velocity(3), Velocity(5));
    const Fitting own = named("40 ft");
    EXPECT_TRUE(own.of_the_sheet());
    EXPECT_EQ(loss_of(own, place), friction(place.duct, place.flow, reference_air()) * (40 * unit::foot));
    EXPECT_EQ(named("12.192 m").length, own.length);
}

TEST(Fittings, a_coefficient_of_the_sheet_counts_on_its_duct) {
    EXPECT_NEAR(branch_coefficient(named("C 0.35"), Velocity(3), Velocity(5)), 0.35, 1e-12);
    EXPECT_TRUE(named("C 0").of_the_sheet());
}

TEST(Fittings, an_elbow_turns_as_far_as_its_name_says) {
    EXPECT_NEAR(named("round elbow 60, smooth").coefficient, 0.15 * 0.78, 1e-12);
    EXPECT_NEAR(named("round elbow 45, smooth").high, 0.3 * 0.60, 1e-12);
    EXPECT_NEAR(named("round elbow 180, adjustable").coefficient, 0.45 * 1.40, 1e-12);
    EXPECT_NEAR(named("round elbow 45, mitred").coefficient, 0.34, 1e-12);
    EXPECT_NEAR(named("damper, 40 degrees").coefficient, 10.8, 1e-9);
    EXPECT_NEAR(named("damper, 0 degrees").coefficient, 0.04, 1e-12);
    EXPECT_EQ(named("round elbow 45, adjustable").coefficient, 0.27);  // the row of that name
}

TEST(Fittings, a_doubted_table_scales_the_loss) {
    Fitting doubted = named("stackhead");
    doubted.factor = 1.3;
    EXPECT_NEAR(branch_coefficient(doubted, Velocity(3), Velocity(0)), 1.69, 1e-12);
}

TEST(Fittings, names_are_distinct) {
    std::vector<std::string_view> names;
    for (const Fitting& fitting : fittings()) names.push_back(fitting.name);
    std::sort(names.begin(), names.end());
    EXPECT_EQ(std::adjacent_find(names.begin(), names.end()), names.end());
}

TEST(Fittings, every_row_is_whole) {
    const std::set<std::string_view> marks{"read", "memory", "derived", "estimate"};
    for (const Fitting& fitting : fittings()) {
        EXPECT_FALSE(fitting.name.empty() || fitting.of_the_sheet()) << fitting.name;
        EXPECT_EQ(marks.count(fitting.mark), 1u) << fitting.name;
        EXPECT_LE(fitting.low, fitting.coefficient) << fitting.name;
        EXPECT_LE(fitting.coefficient, fitting.high) << fitting.name;
        EXPECT_EQ(fitting.factor, 1) << fitting.name;
        const bool angled = fitting.law == LossLaw::takeoff || fitting.law == LossLaw::joining ||
                            fitting.law == LossLaw::elbow || fitting.law == LossLaw::mitre ||
                            fitting.law == LossLaw::damper;
        EXPECT_EQ(angled, fitting.angle > 0) << fitting.name;
        EXPECT_EQ(named(std::string(fitting.name)).coefficient, fitting.coefficient) << fitting.name;
    }
}

TEST(Fittings, counted_turns) {
    EXPECT_EQ(counted_turn(true).name, "square turn");
    EXPECT_EQ(counted_turn(false).name, "rounded turn");
    EXPECT_GT(counted_turn(true).coefficient, counted_turn(false).coefficient);
}

TEST(Fittings, an_unknown_name_is_answered_with_the_nearest) {
    const house::Mistake mistake = mistake_of("top takoff");
    EXPECT_EQ(mistake.text, "unknown fitting 'top takoff'");
    EXPECT_EQ(mistake.under, "did you mean 'top takeoff'?");
    EXPECT_THAT(mistake.remedy, testing::StartsWith("the nearest fittings are 'top takeoff', '"));
    EXPECT_EQ(mistake.place, (house::Place{12, 5, 17}));
}

TEST(Fittings, a_name_like_no_other_gets_no_guess) {
    const house::Mistake mistake = mistake_of("xyzzyxyzzyxyzzyxyzzy");
    EXPECT_EQ(mistake.under, "");
    EXPECT_FALSE(mistake.remedy.empty());
    EXPECT_FALSE(mistake_of("").text.empty());
    EXPECT_FALSE(mistake_of("round elbow 99999999999999999999, smooth").text.empty());
}

TEST(Fittings, an_elbow_turns_no_further_than_back) {
    EXPECT_EQ(mistake_of("round elbow 400, adjustable").text,
              "'round elbow 400, adjustable': an elbow of this make turns 1 to 180 degrees");
    EXPECT_EQ(mistake_of("round elbow 0, smooth").place, (house::Place{12, 5, 17}));
    EXPECT_THAT(mistake_of("round elbow 91, mitred").text, testing::HasSubstr("1 to 90 degrees"));
    EXPECT_THAT(mistake_of("damper, 75 degrees").text, testing::HasSubstr("0 to 60 degrees"));
}

TEST(Fittings, lengths_and_coefficients_out_of_reason_are_refused) {
    EXPECT_THAT(mistake_of("40 fete").text, testing::HasSubstr("neither a fitting nor an equivalent length"));
    EXPECT_THAT(mistake_of("900 ft").remedy, testing::HasSubstr("0 to 500 ft"));
    EXPECT_FALSE(mistake_of("-3 ft").under.empty());
    for (const char* name : {"C -1", "C 1e9", "C nan", "C inf", "C ", "C 0.3x", "C x"})
        EXPECT_THAT(mistake_of(name).remedy, testing::HasSubstr("0 to 200")) << name;
}

}  // namespace
}  // namespace ducts
