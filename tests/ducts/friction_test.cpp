#include "ducts/friction.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;
using units::Airflow;
using units::FrictionRate;

units::FrictionRate friction_in_six_inch(Airflow flow) {
    return friction(section_of(round_of(6)), flow, reference_air());
}

// How far x is from solving Colebrook's equation.
double colebrook_residual(double Re, double e_D) {
    const double x = 1 / std::sqrt(friction_factor(Re, e_D));
    return x + 2 * std::log10(e_D / 3.7 + 2.51 / Re * x);
}

TEST(Friction, still_air_loses_nothing) { EXPECT_EQ(friction_in_six_inch(Airflow(0)), FrictionRate(0)); }

TEST(Friction, six_inch_pipe_at_100_cfm) { EXPECT_NEAR(friction_of(round_of(6), 100), 0.08315090953, 1e-10); }

// 128 viscosity flow / (pi D^4)
TEST(Friction, laminar_flow_is_linear) {
    const Airflow one = 1e-3 * unit::cfm;
    const double D = 6 * 0.0254;
    const double expected =
        128 * reference_air().viscosity.si() * one.si() / (std::acos(-1) * std::pow(D, 4));
    EXPECT_NEAR(friction_in_six_inch(one).si() / expected, 1, 1e-14);
    EXPECT_NEAR(friction_in_six_inch(3 * one) / friction_in_six_inch(one), 3, 1e-14);
    EXPECT_GT(friction_in_six_inch(Airflow(1e-300)), FrictionRate(0));
}

TEST(Friction, reversed_flow_loses_the_other_way) {
    for (const double cfm : {1.0, 12.0, 100.0}) {
        EXPECT_EQ(friction_in_six_inch(-cfm * unit::cfm), -friction_in_six_inch(cfm * unit::cfm));
    }
}

TEST(Friction, solves_the_equation_over_its_whole_range) {
    for (const double e_D : {0.0, 1e-6, 1e-4, 6e-4, 0.006, 0.06}) {
        for (const double Re : {4e3, 1e4, 1e5, 1e6, 1e7, 1e8}) {
            EXPECT_NEAR(colebrook_residual(Re, e_D), 0, 1e-12) << "Re " << Re << ", e/D " << e_D;
        }
    }
}

TEST(Friction, joins_the_regimes_without_a_step) {
    for (const double e_D : {0.0, 6e-4, 0.06}) {
        for (const double Re : {2000.0, 4000.0}) {
            const double below = friction_factor(Re * (1 - 1e-13), e_D);
            EXPECT_NEAR(below / friction_factor(Re * (1 + 1e-13), e_D), 1, 1e-11) << "Re " << Re;
        }
    }
}

TEST(Friction, roughness_over_a_sixteenth_of_the_duct_counts_as_that) {
    const Airflow flow = 100 * unit::cfm;
    const auto with_roughness = [flow](double share) {
        const units::Length D = 6 * unit::inch;
        return friction(section_of(house::Round{D}, share * D), flow, reference_air());
    };
    EXPECT_LT(with_roughness(0.05), with_roughness(0.06));
    EXPECT_EQ(with_roughness(0.06), with_roughness(0.5));
}

TEST(Friction, a_hurricane_stays_finite) {
    EXPECT_TRUE(is_finite(friction_in_six_inch(1e6 * unit::cfm)));
    EXPECT_TRUE(is_finite(airflow_at(section_of(round_of(6)), FrictionRate(1e9), reference_air())));
}

TEST(FrictionSlope, of_still_air_is_that_of_laminar_flow) {
    const Section section = section_of(round_of(6));
    const FrictionAndSlope still = friction_and_slope(section, Airflow(0), reference_air());
    const Airflow creeping = 1e-3 * unit::cfm;
    EXPECT_EQ(still.rate, FrictionRate(0));
    EXPECT_GT(still.slope.si(), 0);
    EXPECT_NEAR(still.slope * creeping / friction_in_six_inch(creeping), 1, 1e-14);
}

TEST(FrictionSlope, is_the_same_either_way) {
    const Section section = section_of(round_of(6));
    for (const double cfm : {1.0, 12.0, 100.0}) {
        EXPECT_EQ(friction_and_slope(section, cfm * unit::cfm, reference_air()).slope,
                  friction_and_slope(section, -cfm * unit::cfm, reference_air()).slope);
    }
}

TEST(FrictionSlope, has_no_step_where_the_regimes_meet) {
    const Section section = section_of(round_of(6));
    const Airflow at_one = unit::cfm / reynolds(section, unit::cfm, reference_air());
    const auto slope = [&](double Re) {
        return friction_and_slope(section, Re * at_one, reference_air()).slope.si();
    };
    for (const double Re : {2000.0, 4000.0})
        EXPECT_NEAR(slope(Re * (1 + 1e-11)) / slope(Re * (1 - 1e-11)), 1, 1e-9) << "Re " << Re;
}

TEST(AirflowAt, no_pressure_moves_no_air) {
    const Section section = section_of(round_of(6));
    EXPECT_EQ(airflow_at(section, FrictionRate(0), reference_air()), Airflow(0));
    EXPECT_EQ(airflow_at(section, FrictionRate(-1), reference_air()), Airflow(0));
}

TEST(AirflowAt, is_exact_where_the_regimes_meet) {
    const Section section = section_of(round_of(6));
    const Airflow at_one = 1 * unit::cfm;
    const double cfm_per_reynolds = 1 / reynolds(section, at_one, reference_air());
    for (const double Re : {1e-6, 1.0, 1999.999, 2000.0, 2000.001, 3000.0, 3999.999, 4000.0, 4000.001, 1e8}) {
        const Airflow flow = Re * cfm_per_reynolds * unit::cfm;
        const FrictionRate rate = friction(section, flow, reference_air());
        EXPECT_NEAR(airflow_at(section, rate, reference_air()) / flow, 1, 1e-12) << "Re " << Re;
    }
}

TEST(Reynolds, of_100_cfm_in_six_inch) {
    const double Re = reynolds(section_of(round_of(6)), 100 * unit::cfm, reference_air());
    EXPECT_NEAR(Re, 26180.94794, 1e-5);
}

}  // namespace
}  // namespace ducts
