#include "ducts/friction_rate.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <algorithm>

#include <cmath>
#include <numbers>

#include "ducts/a_duct_house.hpp"
#include "ducts/friction.hpp"
#include "house/cannot_answer.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
namespace unit = units::unit;

DesignBlower blower(double in_wc, double cfm = 1200) {
    DesignBlower design;
    design.external_static = in_wc * unit::inch_wc;
    design.airflow = cfm * unit::cfm;
    return design;
}

FrictionRateBudget budget_of(const house::House& house, const DesignBlower& design = blower(0.5)) {
    return friction_rate(house, system_of(house), design, reference_air(), reference_air());
}

house::Device device(double in_wc, double at_cfm = 0) {
    house::Device made;
    made.name = "filter";
    made.drop = in_wc * unit::inch_wc;
    made.at = at_cfm * unit::cfm;
    return made;
}

double rate_in_wc(const FrictionRateBudget& budget) { return budget.rate / unit::inch_wc_per_100_ft; }

// Velocity pressure of so much air in such a duct.
double velocity_pressure_of(double kg_s, double area_m2) {
    const double density = reference_air().density.si();
    const double speed = kg_s / density / area_m2;
    return density / 2 * speed * speed;
}
double loss_per_metre(const house::Shape& shape, double kg_s) {
    const units::Airflow flow = units::MassFlow(kg_s) / reference_air().density;
    return friction(section_of(shape), flow, reference_air()).si();
}

constexpr double trunk_area = 0.4064 * 0.2032;
constexpr double six_inch_area = std::numbers::pi / 4 * 0.1524 * 0.1524;

// 10 ft of trunk from a square start, then 12 ft of pipe by a straight takeoff and a smooth elbow (C 0.15).
TEST(FrictionRate, of_two_sections_worked_by_hand) {
    house::House house;
    const int trunk = add_root(house, trunk_shape, 30, {"trunk start, square"});
    add_outlet(house, add_branch(house, trunk, 10, six_inch, 12,
                                 {"side takeoff, straight", "round elbow 90, smooth"}));
    house.register_drop = units::Pressure(7);
    house.grille_drop = units::Pressure(5);
    house.devices = {device(0.1)};
    house.return_length = units::Length(20);
    const double in_trunk = velocity_pressure_of(0.05, trunk_area);
    const double in_pipe = velocity_pressure_of(0.05, six_inch_area);
    // The wide trunk loses less per metre than the least sensible rate, by which its fittings are then
    // counted.
    ASSERT_LT(loss_per_metre(trunk_shape, 0.05), least_sensible_rate.si());
    const double trunk_equivalent = 0.5 * in_trunk / least_sensible_rate.si();
    const double pipe_equivalent = (in_trunk + in_pipe + 0.15 * in_pipe) / loss_per_metre(six_inch, 0.05);
    const double effective = 22 * 0.3048 + trunk_equivalent + pipe_equivalent + 20;
    const double available = 0.4 * 249.08891 - 12;

    const FrictionRateBudget budget = budget_of(house);
    ASSERT_EQ(budget.supply.pieces.size(), 2u);
    EXPECT_EQ(budget.supply.pieces[0].duct, 0);
    EXPECT_EQ(budget.supply.pieces[1].duct, 1);
    EXPECT_NEAR(in_feet(budget.supply.pieces[0].length), 10, 1e-12);
    EXPECT_NEAR(in_feet(budget.supply.pieces[1].length), 12, 1e-12);
    EXPECT_NEAR(budget.supply.pieces[0].equivalent.si() / trunk_equivalent, 1, 1e-12);
    EXPECT_NEAR(budget.supply.pieces[1].equivalent.si() / pipe_equivalent, 1, 1e-12);
    EXPECT_NEAR(budget.available.si(), available, 1e-12);
    EXPECT_NEAR(budget.total_effective_length.si() / effective, 1, 1e-12);
    EXPECT_NEAR(budget.rate.si() / (available / effective), 1, 1e-12);
}

TEST(FrictionRate, says_what_takes_the_pressure) {
    house::House house = two_branches();
    house.devices = {device(0.10), device(0.05)};
    house.devices[1].name = "coil";
    house.register_drop = 0.03 * unit::inch_wc;
    house.grille_drop = 0.02 * unit::inch_wc;
    const FrictionRateBudget budget = budget_of(house);
    ASSERT_EQ(budget.taken.size(), 4u);
    const double expected[] = {0.10, 0.05, 0.03, 0.02};
    const char* names[] = {"filter", "coil", "supply register", "return grille"};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(budget.taken[i].name, names[i]);
        EXPECT_NEAR(budget.taken[i].loss / unit::inch_wc, expected[i], 1e-12);
    }
    EXPECT_NEAR(budget.available / unit::inch_wc, 0.30, 1e-12);
}

TEST(FrictionRate, a_device_loses_with_the_square_of_the_flow) {
    house::House house = two_branches();
    house.devices = {device(0.10, 1000)};
    EXPECT_NEAR(budget_of(house, blower(0.5, 1200)).taken[0].loss / unit::inch_wc, 0.144, 1e-12);
    EXPECT_NEAR(budget_of(house, blower(0.5, 500)).taken[0].loss / unit::inch_wc, 0.025, 1e-12);
}

TEST(FrictionRate, a_device_without_an_airflow_keeps_its_loss) {
    house::House house = two_branches();
    house.devices = {device(0.10)};
    EXPECT_NEAR(budget_of(house, blower(0.5, 2000)).taken[0].loss / unit::inch_wc, 0.10, 1e-12);
}

// 60 ft of plain pipe against 20 ft with six mitred elbows.
TEST(FrictionRate, the_longest_path_is_so_by_effective_length) {
    house::House house;
    add_outlet(house, add_root(house, six_inch, 60));
    const Names elbows(6, "round elbow 90, mitred");
    add_outlet(house, add_root(house, six_inch, 20, elbows));
    const FrictionRateBudget budget = budget_of(house);
    ASSERT_EQ(budget.supply.pieces.size(), 1u);
    EXPECT_EQ(budget.supply.pieces[0].duct, 1);
    EXPECT_GT(in_feet(budget.supply.total()), 60);
}

TEST(FrictionRate, the_return_path_is_added) {
    house::House house = two_branches();
    house.return_length = units::Length(1000);  // not looked at where a return is described
    const int drop = add_return(house, trunk_shape, 6, {"return drop into the cabinet"});
    add_outlet(house, add_branch(house, drop, 6, trunk_shape, 15));
    const FrictionRateBudget budget = budget_of(house);
    ASSERT_EQ(budget.return_side.pieces.size(), 2u);
    EXPECT_EQ(budget.return_side.pieces[0].duct, drop);
    const double equivalent = 1.3 * velocity_pressure_of(0.07, trunk_area) /
                              std::max(loss_per_metre(trunk_shape, 0.07), least_sensible_rate.si());
    EXPECT_NEAR(budget.return_side.total().si(), 21 * 0.3048 + equivalent, 1e-12);
    EXPECT_EQ(budget.total_effective_length, budget.supply.total() + budget.return_side.total());
}

TEST(FrictionRate, a_return_not_described_is_one_piece_of_the_assumed_length) {
    house::House house = two_branches();
    house.return_length = units::Length(42);
    const FrictionRateBudget budget = budget_of(house);
    ASSERT_EQ(budget.return_side.pieces.size(), 1u);
    EXPECT_EQ(budget.return_side.pieces[0].duct, -1);
    EXPECT_EQ(budget.return_side.total(), units::Length(42));
}

TEST(FrictionRate, with_nothing_left_is_zero_and_says_how_much_is_missing) {
    house::House house = two_branches();
    house.devices = {device(0.6)};
    const FrictionRateBudget budget = budget_of(house);
    EXPECT_NEAR(budget.available / unit::inch_wc, -0.1, 1e-12);
    EXPECT_EQ(budget.rate.si(), 0);
    house.devices = {device(0.5)};
    EXPECT_EQ(budget_of(house).rate.si(), 0);
}

TEST(FrictionRate, an_unseen_duct_counts_for_more) {
    house::House house;
    add_outlet(house, add_root(house, six_inch, 30, {"square turn"}));
    const Path seen = budget_of(house).supply;
    house.ducts[0].loss_factor = 1.4;
    const Path unseen = budget_of(house).supply;
    EXPECT_NEAR(unseen.pieces[0].length / seen.pieces[0].length, 1.4, 1e-12);
    EXPECT_NEAR(unseen.pieces[0].equivalent / seen.pieces[0].equivalent, 1.4, 1e-12);
}

TEST(FrictionRate, a_duct_without_air_counts_by_its_length_alone) {
    house::House house;
    add_outlet(house, add_root(house, six_inch, 30, {"square turn"}));
    DesignFlows flows = some_flows(house);
    flows.outlets[0] = {};
    const DuctSystem system = duct_system(house, flows, std::nullopt);
    const FrictionRateBudget budget =
        friction_rate(house, system, blower(0.5), reference_air(), reference_air());
    EXPECT_EQ(budget.supply.total(), house.ducts[0].length);
    EXPECT_GT(budget.rate.si(), 0);
}

// The trunk's velocity pressure, paid by a takeoff with next to no air of its own, must not count as miles of
// pipe.
TEST(FrictionRate, a_takeoff_with_little_air_does_not_use_up_the_rate) {
    house::House house;
    const int trunk = add_root(house, trunk_shape, 20);
    for (double at : {6.0, 12.0, 18.0})
        add_outlet(house, add_branch(house, trunk, at, six_inch, 12, {"side takeoff, straight"}));
    const auto rate_with = [&](double cfm_of_the_first) {
        DesignFlows flows = some_flows(house);
        for (units::MassFlow& flow : flows.outlets) flow = 300 * unit::cfm * reference_air().density;
        flows.outlets[0] = cfm_of_the_first * unit::cfm * reference_air().density;
        const DuctSystem system = duct_system(house, flows, std::nullopt);
        return friction_rate(house, system, blower(0.5), reference_air(), reference_air()).rate.si();
    };
    EXPECT_GT(rate_with(1), 0.8 * rate_with(50));
    EXPECT_NEAR(rate_with(0) / rate_with(0.001), 1, 1e-3);
}

TEST(FrictionRate, runs_not_described_may_be_the_longest) {
    house::House house;
    add_root(house, trunk_shape, 20);
    add_outlet(house, add_branch(house, 0, 5, six_inch, 8));
    add_other_rooms(house, 2, 10, 40);
    const FrictionRateBudget budget = budget_of(house);
    EXPECT_EQ(budget.supply.pieces.back().duct, -1);
    EXPECT_NEAR(in_feet(budget.supply.pieces.back().length), 40, 1e-12);
}

// Hot supply air is thinner: the same mass loses more.
TEST(FrictionRate, each_side_is_worked_with_its_own_air) {
    house::House house = two_branches();
    add_outlet(house, add_return(house, trunk_shape, 6, {"return drop into the cabinet"}));
    const DuctSystem system = system_of(house);
    loads::Air hot = reference_air();
    hot.viscosity = 1.2 * hot.viscosity;
    const FrictionRateBudget same =
        friction_rate(house, system, blower(0.5), reference_air(), reference_air());
    const FrictionRateBudget supply_hot = friction_rate(house, system, blower(0.5), hot, reference_air());
    EXPECT_EQ(supply_hot.return_side.total(), same.return_side.total());
    EXPECT_LT(supply_hot.supply.total(), same.supply.total());
}

TEST(FrictionRate, a_house_without_ducts_cannot_be_answered) {
    EXPECT_THROW(budget_of(house::House{}), house::CannotAnswer);
}

TEST(FrictionRate, sensible_rates_are_those_of_the_trade) {
    EXPECT_NEAR(least_sensible_rate / unit::inch_wc_per_100_ft, 0.06, 1e-15);
    EXPECT_NEAR(most_sensible_rate / unit::inch_wc_per_100_ft, 0.18, 1e-15);
    house::House house;
    add_outlet(house, add_root(house, six_inch, 100));
    house.return_length = 150 * unit::foot;
    EXPECT_NEAR(rate_in_wc(budget_of(house, blower(0.25))), 0.10, 1e-12);
}

}  // namespace
}  // namespace ducts
