#include "ducts/blower.hpp"

#include <gtest/gtest.h>

#include <vector>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

constexpr units::Power output{20'000};

house::BlowerPoint point(double in_wc, double cfm) { return {in_wc * unit::inch_wc, cfm * unit::cfm}; }

const std::vector<house::BlowerPoint> table{point(0.2, 1400), point(0.4, 1300), point(0.5, 1200),
                                            point(0.8, 1080)};

double cfm_at(double in_wc) { return airflow_at_static(table, in_wc * unit::inch_wc) / unit::cfm; }
double in_wc_at(const std::vector<house::BlowerPoint>& points, double cfm) {
    return static_pressure_at(points, cfm * unit::cfm) / unit::inch_wc;
}

// The reference air at so much of its density.
loads::Air thinner(double factor) {
    loads::Air air = reference_air();
    air.density *= factor;
    return air;
}

house::Blower blower(decltype(house::Blower::known_by) known_by,
                     const std::vector<house::BlowerPoint>& points = {}) {
    house::Blower made;
    made.points = points;
    made.known_by = known_by;
    made.external_static = 0.5 * unit::inch_wc;
    return made;
}

TEST(Blower, is_exact_at_its_points) {
    for (const house::BlowerPoint& p : table) {
        EXPECT_NEAR(airflow_at_static(table, p.external_static) / p.airflow, 1, 1e-12);
        EXPECT_NEAR(static_pressure_at(table, p.airflow) / p.external_static, 1, 1e-12);
    }
}

TEST(Blower, is_linear_between_its_points) {
    EXPECT_NEAR(cfm_at(0.3), 1350, 1e-9);
    EXPECT_NEAR(cfm_at(0.45), 1250, 1e-9);
    EXPECT_NEAR(cfm_at(0.6), 1160, 1e-9);
    EXPECT_NEAR(in_wc_at(table, 1350), 0.3, 1e-12);
    EXPECT_NEAR(in_wc_at(table, 1160), 0.6, 1e-12);
}

TEST(Blower, goes_on_with_its_end_slopes) {
    EXPECT_NEAR(cfm_at(0), 1500, 1e-9);
    EXPECT_NEAR(cfm_at(1.3), 880, 1e-9);
    EXPECT_NEAR(in_wc_at(table, 1450), 0.1, 1e-12);
    EXPECT_NEAR(in_wc_at(table, 1000), 1.0, 1e-12);
}

TEST(Blower, never_goes_below_zero) {
    EXPECT_EQ(cfm_at(10), 0);
    EXPECT_EQ(in_wc_at(table, 5000), 0);
}

TEST(Blower, one_point_holds_everywhere) {
    const std::vector<house::BlowerPoint> one{point(0.5, 1200)};
    EXPECT_NEAR(airflow_at_static(one, 0.9 * unit::inch_wc) / unit::cfm, 1200, 1e-9);
    EXPECT_NEAR(in_wc_at(one, 700), 0.5, 1e-12);
}

// A motor that holds its airflow: at that airflow the table goes up to its highest pressure.
TEST(Blower, of_constant_airflow_reaches_its_highest_pressure) {
    const std::vector<house::BlowerPoint> constant{point(0.1, 1000), point(0.5, 1000), point(0.8, 1000)};
    EXPECT_NEAR(in_wc_at(constant, 1000), 0.8, 1e-12);
    EXPECT_NEAR(in_wc_at(constant, 900), 0.8, 1e-12);
    EXPECT_NEAR(in_wc_at(constant, 1100), 0.1, 1e-12);
    EXPECT_NEAR(airflow_at_static(constant, 0.3 * unit::inch_wc) / unit::cfm, 1000, 1e-9);
    const std::vector<house::BlowerPoint> at_first{point(0.1, 1000), point(0.5, 1000), point(0.8, 900)};
    EXPECT_NEAR(in_wc_at(at_first, 1000), 0.5, 1e-12);
}

TEST(DesignBlower, a_measured_airflow_wins_over_the_table) {
    const DesignBlower design = design_blower(blower(1160 * unit::cfm, table), output, reference_air());
    EXPECT_EQ(design.basis, AirflowBasis::measured);
    EXPECT_EQ(design.airflow, 1160 * unit::cfm);
    EXPECT_NEAR(design.external_static / unit::inch_wc, 0.6, 1e-4);  // 20 C is 1.2040973, tables 1.2041
}

TEST(DesignBlower, a_measured_airflow_without_a_table_keeps_the_static_given) {
    const DesignBlower design = design_blower(blower(1160 * unit::cfm), output, reference_air());
    EXPECT_EQ(design.external_static, 0.5 * unit::inch_wc);
}

TEST(DesignBlower, the_table_gives_the_airflow_at_a_static_pressure) {
    const DesignBlower design = design_blower(blower(0.5 * unit::inch_wc, table), output, reference_air());
    EXPECT_EQ(design.basis, AirflowBasis::makers_table);
    EXPECT_NEAR(design.airflow / unit::cfm, 1200, 1e-2);
    EXPECT_EQ(design.external_static, 0.5 * unit::inch_wc);
}

// 0.4 in.wc in air of 0.8 the density is what 0.5 in.wc is at sea level.
TEST(DesignBlower, static_pressure_falls_with_the_density) {
    const DesignBlower read = design_blower(blower(0.4 * unit::inch_wc, table), output, thinner(0.8));
    EXPECT_NEAR(read.airflow / unit::cfm, 1200, 1e-2);
    const DesignBlower measured = design_blower(blower(1200 * unit::cfm, table), output, thinner(0.8));
    EXPECT_NEAR(measured.external_static / unit::inch_wc, 0.4, 1e-5);
}

TEST(DesignBlower, the_rise_gives_the_airflow) {
    const units::TemperatureDifference rise{25};
    const DesignBlower design = design_blower(blower(rise), output, reference_air());
    EXPECT_EQ(design.basis, AirflowBasis::temperature_rise);
    EXPECT_NEAR(design.airflow.si(), 20'000 / (reference_air().density.si() * 1006 * 25), 1e-12);
    EXPECT_NEAR(design.rise.si(), 25, 1e-12);
    EXPECT_EQ(design.external_static, 0.5 * unit::inch_wc);
}

TEST(DesignBlower, mass_flow_and_rise_go_with_the_airflow) {
    const DesignBlower design = design_blower(blower(1000 * unit::cfm, table), output, thinner(0.8));
    EXPECT_EQ(design.mass_flow, 1000 * unit::cfm * thinner(0.8).density);
    EXPECT_NEAR(design.rise.si() * design.mass_flow.si() * 1006, 20'000, 1e-8);
}

TEST(DesignBlower, that_moves_no_air_has_no_rise) {
    const DesignBlower design = design_blower(blower(5.0 * unit::inch_wc, table), output, reference_air());
    EXPECT_EQ(design.airflow.si(), 0);
    EXPECT_EQ(design.rise.si(), 0);
}

}  // namespace
}  // namespace ducts
