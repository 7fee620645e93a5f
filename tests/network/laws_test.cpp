// The laws one by one: their slopes, how they join, and blowers between and beyond their points.
#include "network/laws.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

#include "ducts/friction.hpp"
#include "network/a_network.hpp"

namespace network {
namespace {

double loss_at(const Law& law, double m) { return loss(law, units::MassFlow(m)).pressure.si(); }
double slope_at(const Law& law, double m) { return loss(law, units::MassFlow(m)).slope.si(); }

FanCurve curve(Between between) {
    const FanPoint points[] = {{units::MassFlow(0.1), units::Pressure(200)},
                               {units::MassFlow(0.3), units::Pressure(180)},
                               {units::MassFlow(0.4), units::Pressure(120)},
                               {units::MassFlow(0.5), units::Pressure(20)}};
    return FanCurve(points, between);
}

TEST(Laws, slope_is_the_derivative_and_the_other_way_loses_the_other_way) {
    const std::vector<Law> laws{FixedLoss{30, 400},
                                DuctLoss{round_section(6), units::Length(9), reference_air(), 2, 50},
                                LeakLaw{0.01, 0.6}, LeakLaw{0.01, 0.5}, LeakLaw{0.01, 1}};
    for (const Law& law : laws) {
        for (const double m : {3e-6, 2e-4, 2e-3, 0.05, 0.4}) {
            const double h = 1e-5 * m;
            const double slope = (loss_at(law, m + h) - loss_at(law, m - h)) / (2 * h);
            EXPECT_NEAR(slope_at(law, m) / slope, 1, 1e-6) << "law " << law.index() << " at " << m;
            EXPECT_EQ(loss_at(law, -m), -loss_at(law, m));
        }
        EXPECT_EQ(loss_at(law, 0), 0);
    }
}

TEST(Laws, a_duct_loses_friction_and_fittings) {
    const DuctLoss duct{round_section(6), units::Length(9), reference_air(), 2, 50};
    const units::MassFlow m(0.06);
    const auto rate = ducts::friction(duct.section, m / duct.air.density, duct.air);
    EXPECT_NEAR(loss_at(duct, 0.06), 18 * rate.si() + 50 * 0.06 * 0.06, 1e-12);
}

TEST(Laws, a_leak_is_its_power_law_and_joins_the_cubic_smoothly) {
    for (const double n : {0.5, 0.65, 0.8, 1.0}) {
        const LeakLaw leak{0.002, n};
        EXPECT_NEAR(loss_at(leak, 0.002 * std::pow(25, n)), 25, 1e-12);
        const double end = 0.002 * std::pow(1e-4, n);
        EXPECT_NEAR(loss_at(leak, end * (1 - 1e-9)) / loss_at(leak, end * (1 + 1e-9)), 1, 1e-8);
        EXPECT_NEAR(slope_at(leak, end * (1 - 1e-9)) / slope_at(leak, end * (1 + 1e-9)), 1, 1e-7);
        EXPECT_GT(slope_at(leak, 0), 0);
    }
}

TEST(FanCurve, goes_through_its_points_and_straight_beyond) {
    for (const Between between : {Between::smooth, Between::straight_lines}) {
        const FanCurve fan = curve(between);
        EXPECT_NEAR(fan.gain(units::MassFlow(0.3)).si(), 180, 1e-9);
        EXPECT_NEAR(fan.gain(units::MassFlow(0.5)).si(), 20, 1e-9);
        const double slope = slope_at(fan, 0.6);
        EXPECT_NEAR(fan.gain(units::MassFlow(0.7)).si(), 20 - 0.2 * slope, 1e-9);
    }
    EXPECT_NEAR(curve(Between::straight_lines).gain(units::MassFlow(0.35)).si(), 150, 1e-9);
}

TEST(FanCurve, never_rises_and_has_no_step_or_kink) {
    const FanCurve fan = curve(Between::smooth);
    for (int i = 0; i < 7000; ++i) {
        const double m = 1e-4 * i;
        EXPECT_GE(loss_at(fan, m + 1e-4), loss_at(fan, m));
        EXPECT_GE(slope_at(fan, m), 0);
        EXPECT_NEAR(slope_at(fan, m + 1e-4), slope_at(fan, m), 4) << m;
    }
}

TEST(FanCurve, points_at_one_airflow_are_a_steep_fall) {
    const FanPoint points[] = {{units::MassFlow(0.5), units::Pressure(200)},
                               {units::MassFlow(0.5), units::Pressure(20)}};
    const Network net{1, {{house_air, 0, FanCurve(points)}, {0, house_air, quadratic(400)}}, {}};
    EXPECT_NEAR(flow(solved(net), 1), 0.5, 1e-6);
}

TEST(FanCurve, points_that_rise_or_are_none_are_a_slip_of_the_program) {
    EXPECT_THROW(FanCurve({}), std::invalid_argument);
    const FanPoint rising[] = {{units::MassFlow(0.1), units::Pressure(20)},
                               {units::MassFlow(0.5), units::Pressure(21)}};
    EXPECT_THROW(FanCurve{rising}, std::invalid_argument);
    const FanPoint backwards[] = {{units::MassFlow(0.5), units::Pressure(20)},
                                  {units::MassFlow(0.1), units::Pressure(9)}};
    EXPECT_THROW(FanCurve{backwards}, std::invalid_argument);
    const FanPoint nothing[] = {
        {units::MassFlow(0.5), units::Pressure(20)},
        {units::MassFlow(0.6), units::Pressure(std::numeric_limits<double>::quiet_NaN())}};
    EXPECT_THROW(FanCurve{nothing}, std::invalid_argument);
}

}  // namespace
}  // namespace network
