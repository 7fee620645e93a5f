#include "units/write.hpp"

#include <gtest/gtest.h>

#include <limits>

#include "units/unit.hpp"

namespace units {
namespace {

template <class Q>
std::string us(Q value) {
    return write(value, System::us).text();
}
template <class Q>
std::string si(Q value) {
    return write(value, System::si).text();
}

TEST(Decimal, HasSoManyDigits) {
    EXPECT_EQ(decimal(0.075, 3), "0.075");
    EXPECT_EQ(decimal(2, 2), "2.00");
    EXPECT_EQ(decimal(1234567, 0), "1234567");
    EXPECT_EQ(decimal(-1.25, 2), "-1.25");
}

TEST(Decimal, HalvesGoAwayFromZero) {
    EXPECT_EQ(decimal(0.5, 0), "1");
    EXPECT_EQ(decimal(2.5, 0), "3");
    EXPECT_EQ(decimal(-2.5, 0), "-3");
    EXPECT_EQ(decimal(0.125, 2), "0.13");
    EXPECT_EQ(decimal(1.005, 2), "1.01");  // in binary a hair below the half
    EXPECT_EQ(decimal(2.4999, 0), "2");
}

TEST(Decimal, ZeroHasNoSign) {
    EXPECT_EQ(decimal(-0.0, 0), "0");
    EXPECT_EQ(decimal(-0.0004, 3), "0.000");
    EXPECT_EQ(si(-0.01 * unit::pascal), "0.0 Pa");
    EXPECT_EQ(us(-0.01 * unit::inch), "0 in");
    EXPECT_EQ(us(unit::fahrenheit(-0.3)), "0 F");
}

TEST(Decimal, BeyondMeasure) {
    EXPECT_EQ(decimal(std::numeric_limits<double>::quiet_NaN(), 1), "?");
    EXPECT_EQ(decimal(std::numeric_limits<double>::infinity(), 1), "?");
    EXPECT_EQ(decimal(1e308, 3).size(), 309U + 4U);
    EXPECT_EQ(us(Length(std::numeric_limits<double>::infinity())), "?");
}

TEST(WriteLength, FeetAndInchesToAnEighth) {
    EXPECT_EQ(us(150.5 * unit::inch), "12 ft 6-1/2 in");
    EXPECT_EQ(us(24 * unit::inch), "2 ft");
    EXPECT_EQ(us(12.5 * unit::inch), "1 ft 1/2 in");
    EXPECT_EQ(us(6.5 * unit::inch), "6-1/2 in");
    EXPECT_EQ(us(0.5 * unit::inch), "1/2 in");
    EXPECT_EQ(us(0.05 * unit::inch), "0 in");
    EXPECT_EQ(us(0.0625 * unit::inch), "1/8 in");
    EXPECT_EQ(us(11.95 * unit::inch), "1 ft");
    EXPECT_EQ(us(-6.5 * unit::inch), "-6-1/2 in");
    EXPECT_EQ(us(Length(10000)), "32808 ft 4-3/4 in");
    EXPECT_EQ(write(unit::foot, System::us).unit, "");
}

TEST(WriteLength, EveryEighth) {
    const char* parts[] = {"6 in",     "6-1/8 in", "6-1/4 in", "6-3/8 in",
                           "6-1/2 in", "6-5/8 in", "6-3/4 in", "6-7/8 in"};
    for (int eighths = 0; eighths < 8; ++eighths)
        EXPECT_EQ(us((6 + eighths / 8.0) * unit::inch), parts[eighths]);
}

TEST(WriteLength, MillimetresBelowAMetre) {
    EXPECT_EQ(si(Length(3.81)), "3.81 m");
    EXPECT_EQ(si(Length(0.095)), "95 mm");
    EXPECT_EQ(si(Length(0.0974)), "95 mm");
    EXPECT_EQ(si(Length(0.0975)), "100 mm");
    EXPECT_EQ(si(Length(0.997)), "995 mm");
    EXPECT_EQ(si(Length(0.998)), "1.00 m");
    EXPECT_EQ(si(Length(0)), "0 mm");
}

TEST(Write, AreasAndFlows) {
    EXPECT_EQ(us(1150 * unit::square_foot), "1150.0 ft2");
    EXPECT_EQ(si(Area(106.838)), "106.84 m2");
    EXPECT_EQ(us(63.4 * unit::cfm), "63 cfm");
    EXPECT_EQ(us(6.5 * unit::cfm), "7 cfm");
    EXPECT_EQ(si(57.2 * unit::litre_per_second), "57 L/s");
    EXPECT_EQ(us(604 * unit::foot_per_minute), "600 ft/min");
    EXPECT_EQ(us(605 * unit::foot_per_minute), "610 ft/min");
    EXPECT_EQ(si(Velocity(3.04)), "3.0 m/s");
}

TEST(Write, Pressures) {
    EXPECT_EQ(us(0.08 * unit::inch_wc), "0.080 in.wc");
    EXPECT_EQ(si(Pressure(9.94)), "9.9 Pa");
    EXPECT_EQ(si(Pressure(9.96)), "10 Pa");
    EXPECT_EQ(si(Pressure(19.6)), "20 Pa");
    EXPECT_EQ(si(Pressure(-2.5)), "-2.5 Pa");
    EXPECT_EQ(us(0.08 * unit::inch_wc_per_100_ft), "0.080 in.wc/100 ft");
    EXPECT_EQ(si(FrictionRate(0.654)), "0.65 Pa/m");
    EXPECT_EQ(si(HeatFlux(98.34)), "98.3 W/m2");
    EXPECT_EQ(us(56.6 * unit::btu_per_hour_square_foot), "56.6 Btu/h.ft2");
}

TEST(Write, Temperatures) {
    EXPECT_EQ(us(unit::fahrenheit(70.4)), "70 F");
    EXPECT_EQ(us(unit::fahrenheit(-3.5)), "-4 F");
    EXPECT_EQ(si(unit::celsius(21)), "21 C");
    EXPECT_EQ(si(unit::celsius(-3.3)), "-3.5 C");
    EXPECT_EQ(us(61 * unit::fahrenheit_degree), "61 F");
    EXPECT_EQ(si(33.9 * unit::kelvin), "34 K");
}

TEST(Write, AbsoluteZeroStaysReadable) {
    EXPECT_EQ(us(Temperature(0)), "-459 F");
    EXPECT_EQ(si(Temperature(0)), "-273 C");
}

TEST(Write, Heat) {
    EXPECT_EQ(us(64004 * unit::btu_per_hour), "64000 Btu/h");
    EXPECT_EQ(si(402 * unit::watt), "400 W");
    EXPECT_EQ(us(11 * unit::r_value_us), "R-11");
    EXPECT_EQ(us(7.46 * unit::r_value_us), "R-7.5");
    EXPECT_EQ(us(10.0 * unit::r_value_us), "R-10");
    EXPECT_EQ(si(Resistance(1.937)), "1.94 m2K/W");
    EXPECT_EQ(us(0.23 * unit::btu_per_hour_square_foot_fahrenheit), "0.230 Btu/h.ft2.F");
    EXPECT_EQ(si(Transmittance(1.3)), "1.30 W/m2K");
    EXPECT_EQ(us(Conductivity(1.263)), "0.73 Btu/h.ft.F");
    EXPECT_EQ(si(Conductivity(1.4)), "1.40 W/mK");
    EXPECT_EQ(write(LeakageTest{14 * unit::per_hour}).text(), "14 ACH50");
    EXPECT_EQ(write(LeakageTest{6.75 * unit::per_hour}).text(), "6.8 ACH50");
}

TEST(Write, KeepsNumberAndUnitApart) {
    const Written written = write(63 * unit::cfm, System::us);
    EXPECT_EQ(written.number, "63");
    EXPECT_EQ(written.unit, "cfm");
}

}  // namespace
}  // namespace units
