// Networks whose answer can be written down.
#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <limits>
#include <vector>

#include "ducts/friction.hpp"
#include "network/a_network.hpp"
#include "network/solve.hpp"

namespace network {
namespace {

namespace unit = units::unit;

TEST(ClosedForms, parts_in_a_row_add_up) {
    const Network net{2, {fan(100), {0, 1, quadratic(300)}, {1, house_air, FixedLoss{50, 100}}}, {}};
    const Solution solution = solved(net);
    const double m = (-50 + std::sqrt(50.0 * 50 + 4 * 400 * 100)) / (2 * 400);  // 50 m + 400 m^2 = 100
    for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(flow(solution, i) / m, 1, 1e-9);
    EXPECT_NEAR(solution.pressures[1].si(), 50 * m + 100 * m * m, 1e-9 * 100);
}

TEST(ClosedForms, parts_side_by_side_share_by_one_over_the_root) {
    const Network net{
        1, {{0, house_air, quadratic(4)}, {0, house_air, quadratic(16)}}, {units::MassFlow(0.3)}};
    const Solution solution = solved(net);
    EXPECT_NEAR(flow(solution, 0), 0.2, 1e-9 * 0.2);
    EXPECT_NEAR(flow(solution, 1), 0.1, 1e-9 * 0.1);
    EXPECT_NEAR(solution.pressures[0].si(), 4 * 0.04, 1e-9);
}

TEST(ClosedForms, a_square_root_leak) {
    const Network net{1, {{0, house_air, LeakLaw{0.01, 0.5}}}, {units::MassFlow(0.05)}};
    EXPECT_NEAR(solved(net).pressures[0].si(), 25, 25e-9);
}

TEST(ClosedForms, a_duct_in_laminar_flow_on_a_straight_fan) {
    const loads::Air air = reference_air();
    const ducts::Section section = round_section(8);
    const double per_flow = 32 * air.viscosity.si() * 40 /
                            (std::pow(section.hydraulic_diameter.si(), 2) * section.area.si()) /
                            air.density.si();
    const FanPoint points[] = {{units::MassFlow(0), units::Pressure(0.02)},
                               {units::MassFlow(0.01), units::Pressure(0.005)}};
    const Network net{
        1, {{house_air, 0, FanCurve(points)}, {0, house_air, DuctLoss{section, units::Length(40), air}}}, {}};
    const Solution solution = solved(net);
    const double m = 0.02 / (1.5 + per_flow);
    EXPECT_LT(ducts::reynolds(section, units::MassFlow(m) / air.density, air), 2000);
    EXPECT_NEAR(flow(solution, 0) / m, 1, 1e-9);
}

TEST(ClosedForms, a_blower_that_holds_its_airflow_finds_its_pressure) {
    const Network net{2,
                      {{0, house_air, quadratic(500)}, {house_air, 1, quadratic(200)}},
                      {units::MassFlow(0.4), units::MassFlow(-0.4)}};
    const Solution solution = solved(net);
    EXPECT_NEAR(solution.pressures[0].si(), 80, 80e-9);
    EXPECT_NEAR(solution.pressures[1].si(), -32, 32e-9);
}

TEST(ClosedForms, a_head_drives_air_as_a_fan_does) {
    Link link{house_air, 0, quadratic(100)};
    link.head = units::Pressure(4);
    const Network net{1, {link, {0, house_air, quadratic(300)}}, {}};
    EXPECT_NEAR(flow(solved(net), 1), 0.1, 1e-10);
}

// --- What is ordinary in a house
// -----------------------------------------------------------------------------

TEST(Ordinary, nothing_drives_and_nothing_flows) {
    const Network net{2, {{0, 1, quadratic(300)}, {1, house_air, LeakLaw{0.01, 0.65}}}, {}};
    const std::vector<units::MassFlow> start(2, units::MassFlow(0.1));
    const Solution still = solved(net, start);
    for (std::size_t i = 0; i < 2; ++i) EXPECT_NEAR(flow(still, i), 0, 1e-9);
    EXPECT_EQ(flow(solved(net), 0), 0);
}

TEST(Ordinary, a_branch_without_a_way_out_carries_nothing) {
    const Network net{
        3, {fan(100), {0, house_air, quadratic(400)}, {0, 1, quadratic(10)}, {1, 2, FixedLoss{}}}, {}};
    const Solution solution = solved(net);
    EXPECT_NEAR(flow(solution, 1), 0.5, 1e-9);
    EXPECT_NEAR(flow(solution, 2), 0, 1e-9);
    EXPECT_NEAR(solution.pressures[2].si(), 100, 1e-7);
}

TEST(Ordinary, a_shut_damper_stops_its_branch_only) {
    for (const double shut : {1e9, 1e12, 1e18, 1e24}) {
        const Network net{2,
                          {fan(100),
                           {0, house_air, quadratic(400)},
                           {0, 1, quadratic(shut)},
                           {1, house_air, quadratic(90)}},
                          {}};
        const Solution solution = solved(net);
        EXPECT_NEAR(flow(solution, 1), 0.5, 1e-9);
        EXPECT_NEAR(flow(solution, 2), 10 / std::sqrt(shut + 90), 1e-9);
    }
}

TEST(Ordinary, legs_without_length_lose_nothing) {
    const ducts::Section section = round_section(6);
    const DuctLoss none{section, units::Length(0), reference_air()};
    const Network net{
        4, {fan(100), {0, 1, none}, {1, 2, FixedLoss{}}, {2, 3, none}, {3, house_air, quadratic(400)}}, {}};
    const Solution solution = solved(net);
    EXPECT_NEAR(flow(solution, 2), 0.5, 1e-9);
    EXPECT_NEAR(solution.pressures[3].si(), 100, 1e-7);
}

TEST(Ordinary, legs_without_loss_side_by_side_share_somehow) {
    const Network net{
        2, {fan(100), {0, 1, FixedLoss{}}, {0, 1, FixedLoss{}}, {1, house_air, quadratic(400)}}, {}};
    const Solution solution = solved(net);
    EXPECT_NEAR(flow(solution, 1) + flow(solution, 2), 0.5, 1e-9);
}

TEST(Ordinary, an_exhaust_fan_turns_the_air_around) {
    const Network net{
        2,
        {fan(10), {0, house_air, quadratic(400)}, {0, 1, quadratic(100)}, {1, house_air, quadratic(9)}},
        {units::MassFlow(0), units::MassFlow(-0.9)}};
    const Solution solution = solved(net);
    EXPECT_LT(flow(solution, 3), 0);
    EXPECT_NEAR(flow(solution, 2) - flow(solution, 3), 0.9, 1e-10);
}

TEST(Ordinary, a_tight_duct_has_a_leak_of_nothing) {
    const Network net{1, {fan(100), {0, house_air, quadratic(400)}, {0, house_air, LeakLaw{0, 0.65}}}, {}};
    EXPECT_NEAR(flow(solved(net), 2), 0, 1e-12);
}

TEST(Ordinary, a_link_to_where_it_comes_from_is_its_own_circle) {
    Link ring{0, 0, quadratic(25)};
    ring.head = units::Pressure(1);
    const Network net{1, {ring, {0, house_air, quadratic(1)}}, {}};
    EXPECT_NEAR(flow(solved(net), 0), 0.2, 1e-9);
}

TEST(Ordinary, any_start_comes_to_the_same) {
    const Network net{2,
                      {fan(100),
                       {0, 1, quadratic(300)},
                       {1, house_air, FixedLoss{0, 500}},
                       {1, house_air, LeakLaw{0.01, 0.6}}},
                      {}};
    const double expected = flow(solved(net), 0);
    for (const double guess : {-1e3, -1.0, -1e-6, 1e-12, 1e-3, 0.3, 7.0, 1e6}) {
        const std::vector<units::MassFlow> start(4, units::MassFlow(guess));
        EXPECT_NEAR(flow(solved(net, start), 0) / expected, 1, 1e-9) << guess;
    }
}

TEST(Ordinary, a_network_of_nothing) { EXPECT_TRUE(Solver(Network{}).solve(Network{}).converged); }

TEST(Ordinary, a_solver_takes_another_shape) {
    const Network one{1, {fan(100), {0, house_air, quadratic(400)}}, {}};
    const Network two{2, {fan(100), {0, 1, quadratic(300)}, {1, house_air, quadratic(100)}}, {}};
    Solver solver(one);
    EXPECT_NEAR(solver.solve(one).flows[1].si(), 0.5, 1e-9);
    EXPECT_NEAR(solver.solve(two).flows[2].si(), 0.5, 1e-9);
}

// --- What has no answer
// --------------------------------------------------------------------------------------

void expect_no_answer(const Network& net) {
    const Solution solution = Solver(net).solve(net);
    EXPECT_FALSE(solution.converged);
    for (const auto& each : solution.flows) EXPECT_FALSE(std::isnan(each.si()));
    for (const auto& each : solution.pressures) EXPECT_FALSE(std::isnan(each.si()));
    EXPECT_FALSE(std::isnan(solution.residual));
}

TEST(NoAnswer, a_node_nothing_leads_to) {
    expect_no_answer({2, {fan(100), {0, house_air, quadratic(400)}}, {}});
}

TEST(NoAnswer, air_blown_into_a_part_without_a_way_out) {
    expect_no_answer({3,
                      {fan(100), {0, house_air, quadratic(400)}, {1, 2, quadratic(1)}},
                      {units::MassFlow(0), units::MassFlow(0.1), units::MassFlow(0)}});
}

TEST(NoAnswer, numbers_that_are_none) {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    expect_no_answer({1, {fan(100), {0, house_air, quadratic(nan)}}, {}});
    expect_no_answer({1, {fan(nan), {0, house_air, quadratic(100)}}, {}});
    expect_no_answer({1, {{0, house_air, quadratic(100)}}, {units::MassFlow(nan)}});
    expect_no_answer({1, {{0, house_air, quadratic(100)}}, {units::MassFlow(1e300)}});
}

TEST(NoAnswer, a_link_to_a_node_that_is_not_there_is_a_slip_of_the_program) {
    EXPECT_THROW(Solver({1, {{0, 1, quadratic(1)}}, {}}), std::invalid_argument);
}

}  // namespace
}  // namespace network
