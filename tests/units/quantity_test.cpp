#include "units/quantity.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <type_traits>

#include "units/unit.hpp"

namespace units {
namespace {

TEST(Quantity, DimensionsMultiplyAndDivide) {
    static_assert(std::is_same_v<decltype(Airflow() / Area()), Velocity>);
    static_assert(std::is_same_v<decltype(Velocity() * Area()), Airflow>);
    static_assert(std::is_same_v<decltype(Airflow() * Density()), MassFlow>);
    static_assert(std::is_same_v<decltype(FrictionRate() * Length()), Pressure>);
    static_assert(std::is_same_v<decltype(Pressure() / Length()), FrictionRate>);
    static_assert(std::is_same_v<decltype(Transmittance() * Area()), HeatLossPerKelvin>);
    static_assert(std::is_same_v<decltype(HeatLossPerKelvin() * TemperatureDifference()), Power>);
    static_assert(std::is_same_v<decltype(MassFlow() * SpecificHeat() * TemperatureDifference()), Power>);
    static_assert(std::is_same_v<decltype(Conductivity() / Length()), Transmittance>);
    static_assert(std::is_same_v<decltype(1.0 / Resistance()), Transmittance>);
    static_assert(std::is_same_v<decltype(Volume() * AirChange()), Airflow>);
    static_assert(std::is_same_v<decltype(Density() * Velocity() * Velocity()), Pressure>);
    EXPECT_DOUBLE_EQ((Airflow(6.0) / Area(2.0)).si(), 3.0);
}

TEST(Quantity, WhatHasNoDimensionIsAPlainDouble) {
    static_assert(std::is_same_v<decltype(Length() / Length()), double>);
    static_assert(std::is_same_v<decltype(Duration() * AirChange()), double>);
    static_assert(std::is_same_v<decltype(Density() * Velocity() * Length() / Viscosity()), double>);
    EXPECT_DOUBLE_EQ(unit::foot / unit::inch, 12.0);
}

TEST(Quantity, LikeQuantitiesAddCompareAndScale) {
    Length length = Length(3.0) + Length(2.0) - Length(1.0);
    EXPECT_EQ(length, Length(4.0));
    EXPECT_LT(length, Length(4.5));
    length += Length(1.0);
    length -= Length(2.0);
    length *= 2.0;
    EXPECT_EQ(length, Length(6.0));
    EXPECT_EQ(2.0 * length, length * 2.0);
    EXPECT_EQ(length / 2.0, Length(3.0));
    EXPECT_EQ(abs(-length), length);
    EXPECT_EQ(Length(), Length(0.0));
}

TEST(Quantity, KnowsWhetherItIsFinite) {
    EXPECT_TRUE(is_finite(Length(1e300)));
    EXPECT_FALSE(is_finite(Length(std::numeric_limits<double>::infinity())));
    EXPECT_FALSE(is_finite(Temperature(std::numeric_limits<double>::quiet_NaN())));
}

TEST(Temperature, TwoPointsSubtractToADifference) {
    EXPECT_NEAR((unit::fahrenheit(70) - unit::fahrenheit(9)) / unit::fahrenheit_degree, 61.0, 1e-12);
    EXPECT_NEAR(unit::in_celsius(unit::celsius(20) + 5.0 * unit::kelvin), 25.0, 1e-12);
    EXPECT_NEAR(unit::in_celsius(unit::celsius(20) - 5.0 * unit::kelvin), 15.0, 1e-12);
}

// Fixed points of the scales: ice 0 C = 32 F, both scales meet at -40, absolute zero -273.15 C (BIPM, SI
// brochure).
TEST(Temperature, ScalesMeetAtTheirFixedPoints) {
    EXPECT_NEAR(unit::fahrenheit(32).si(), 273.15, 1e-12);
    EXPECT_NEAR(unit::fahrenheit(-40).si(), unit::celsius(-40).si(), 1e-12);
    EXPECT_NEAR(unit::in_fahrenheit(unit::celsius(100)), 212.0, 1e-12);
    EXPECT_NEAR(unit::in_celsius(Temperature(0)), -273.15, 1e-12);
}

TEST(Units, LengthsFollowTheYardAgreement) {
    EXPECT_DOUBLE_EQ(unit::foot.si(), 0.3048);  // international yard and pound agreement 1959: yard 0.9144 m
    EXPECT_DOUBLE_EQ(unit::inch.si(), 0.0254);  // the same
    EXPECT_DOUBLE_EQ(unit::square_foot.si(), 0.09290304);  // from the foot; NIST SP 811 appendix B, memory
    EXPECT_DOUBLE_EQ(unit::square_inch.si(), 6.4516e-4);   // the same
    EXPECT_DOUBLE_EQ(unit::cubic_foot.si(), 0.028316846592);
}

TEST(Units, FlowAndSpeed) {
    EXPECT_NEAR(unit::cfm / unit::litre_per_second, 0.4719474432, 1e-12);            // from the foot
    EXPECT_NEAR(unit::cfm / unit::cubic_metre_per_hour, 1.69901079552, 1e-12);       // from the foot
    EXPECT_DOUBLE_EQ(unit::foot_per_minute.si(), 0.00508);                           // from the foot
    EXPECT_DOUBLE_EQ(unit::cubic_metre_per_hour / unit::litre_per_second, 1 / 3.6);  // BIPM: hour is 3600 s
}

TEST(Units, PressureIsTheConventionalInchOfWater) {
    EXPECT_DOUBLE_EQ(unit::inch_wc.si(), 1000 * 9.80665 * 0.0254);  // standard gravity: 3rd CGPM 1901, BIPM
    EXPECT_NEAR(unit::inch_wc.si(), 249.0889, 5e-5);  // NIST SP 811, conventional inch of water, memory
    EXPECT_DOUBLE_EQ(unit::inch_wc_per_100_ft.si(), unit::inch_wc.si() / (100 * 0.3048));
}

TEST(Units, Heat) {
    // International table Btu: 4.1868 J/g per kelvin of the calorie, a pound of 453.59237 g, 1.8 F to the
    // kelvin (Fifth International Conference on the Properties of Steam 1956; pound agreement 1959; memory).
    EXPECT_NEAR(unit::btu_per_hour.si() * 3600, 4.1868 * 453.59237 / 1.8, 1e-9);
    EXPECT_NEAR(unit::btu_per_hour.si(), 0.2930711, 5e-8);                        // NIST SP 811, memory
    EXPECT_NEAR(unit::btu_per_hour_square_foot_fahrenheit.si(), 5.678263, 5e-7);  // NIST SP 811, memory
    EXPECT_NEAR(unit::r_value_us.si(), 0.1761102, 5e-8);                          // NIST SP 811, memory
    EXPECT_NEAR(unit::btu_per_hour_fahrenheit.si(), 0.5275279, 5e-8);             // from the two definitions
    EXPECT_NEAR(unit::r_value_us * unit::btu_per_hour_square_foot_fahrenheit, 1.0, 1e-15);
}

}  // namespace
}  // namespace units
