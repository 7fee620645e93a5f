#include "network/blower_law.hpp"

#include <gtest/gtest.h>

#include <array>

#include "ducts/blower.hpp"
#include "units/unit.hpp"

namespace network {
namespace {

const std::array<house::BlowerPoint, 3> points{{{units::Pressure(50), units::Airflow(0.55)},
                                                {units::Pressure(100), units::Airflow(0.50)},
                                                {units::Pressure(150), units::Airflow(0.40)}}};
// Air in which a table holds as it is written, and air a fifth lighter.
const loads::Air tables_air{units::Density(1.2041), units::SpecificHeat(1006), units::Viscosity(1.8e-5)};
const loads::Air lighter{units::Density(0.8 * 1.2041), units::SpecificHeat(1006), units::Viscosity(1.8e-5)};

TEST(BlowerLaw, a_table_is_met_at_its_points_and_between_as_it_is_read_elsewhere) {
    const FanCurve curve = table_curve(points, tables_air);
    for (const double airflow : {0.55, 0.53, 0.50, 0.44, 0.40})
        EXPECT_NEAR(curve.gain(units::Airflow(airflow) * tables_air.density).si(),
                    ducts::static_pressure_at(points, units::Airflow(airflow)).si(), 1e-9);
}

TEST(BlowerLaw, thin_air_is_pushed_less_hard_at_the_same_airflow) {
    EXPECT_NEAR(table_curve(points, lighter).gain(units::Airflow(0.5) * lighter.density).si(), 80, 1e-9);
}

TEST(BlowerLaw, a_stretched_table_passes_through_what_was_measured) {
    for (const loads::Air& air : {tables_air, lighter})
        for (const double gain : {30.0, 77.0, 100.0, 160.0}) {
            const units::MassFlow measured(0.47);
            const double stretch = stretch_through(points, air, measured, units::Pressure(gain));
            EXPECT_NEAR(table_curve(points, air, stretch).gain(measured).si(), gain, 1e-9) << gain;
        }
}

TEST(BlowerLaw, a_table_that_moves_no_air_at_a_pressure_cannot_be_stretched_there) {
    EXPECT_EQ(stretch_through(points, tables_air, units::MassFlow(0.5), units::Pressure(2000)), 0);
}

TEST(BlowerLaw, a_falling_blower_loses_its_share_for_each_pascal) {
    const FanCurve curve = falling_curve(units::MassFlow(0.6), units::Pressure(120), 1e-3);
    EXPECT_NEAR(curve.gain(units::MassFlow(0.6)).si(), 120, 1e-9);
    EXPECT_NEAR(curve.gain(units::MassFlow(0.6 * (1 - 1e-3 * 25))).si(), 145, 1e-9);
    EXPECT_NEAR(curve.gain(units::MassFlow(0.6 * (1 + 1e-3 * 40))).si(), 80, 1e-9);
}

TEST(BlowerLaw, beyond_its_limit_a_held_airflow_keeps_the_pressure) {
    const FanCurve curve = limit_curve({units::MassFlow(0.5), units::Pressure(200)});
    EXPECT_NEAR(curve.gain(units::MassFlow(0.5)).si(), 200, 1e-9);
    EXPECT_NEAR(curve.gain(units::MassFlow(0.1)).si(), 200, 0.2);
}

}  // namespace
}  // namespace network
