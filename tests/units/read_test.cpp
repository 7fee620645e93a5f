#include "units/read.hpp"

#include <gtest/gtest.h>

#include "reading.hpp"
#include "units/unit.hpp"

namespace units {
namespace {

double inches(std::string_view text) { return si(read_length(text)) / unit::inch.si(); }

TEST(ReadLength, FeetAndInches) {
    for (const char* text :
         {"12 ft 6-1/2 in", "12' 6-1/2\"", "12ft 6 1/2in", "12'-6 1/2\"", "12' - 6-1/2\"", "12 ft. 6-1/2 in.",
          "12′ 6½″", "12’ 6-½”", "  12 FT 6.5 Inches ", "12 feet 6 1/2 ''"}) {
        EXPECT_DOUBLE_EQ(inches(text), 150.5) << text;
    }
    EXPECT_DOUBLE_EQ(inches("12'6\""), 150.0);
    EXPECT_DOUBLE_EQ(inches("2 ft"), 24.0);
    EXPECT_DOUBLE_EQ(inches("2-1/2 ft"), 30.0);
    EXPECT_DOUBLE_EQ(inches("0 ft 0 in"), 0.0);
}

TEST(ReadLength, InchesAlone) {
    for (const char* text :
         {"6 1/2 in", "6-1/2\"", "6.5 in", "6½ in", "6–1/2 in", "13/2 in", "6\u00a01⁄2 in"}) {
        EXPECT_DOUBLE_EQ(inches(text), 6.5) << text;
    }
    EXPECT_DOUBLE_EQ(inches("1/2 in"), 0.5);
    EXPECT_DOUBLE_EQ(inches("½ in"), 0.5);
    EXPECT_DOUBLE_EQ(inches(".5 in"), 0.5);
    EXPECT_DOUBLE_EQ(inches("¼\""), 0.25);
    EXPECT_DOUBLE_EQ(inches("¾\""), 0.75);
    EXPECT_DOUBLE_EQ(inches("⅛\""), 0.125);
    EXPECT_DOUBLE_EQ(inches("⅜\""), 0.375);
    EXPECT_DOUBLE_EQ(inches("⅝\""), 0.625);
    EXPECT_DOUBLE_EQ(inches("⅞\""), 0.875);
}

TEST(ReadLength, Metric) {
    EXPECT_DOUBLE_EQ(si(read_length("3.8 m")), 3.8);
    EXPECT_DOUBLE_EQ(si(read_length("95 mm")), 0.095);
    EXPECT_DOUBLE_EQ(si(read_length("38 cm")), 0.38);
    EXPECT_DOUBLE_EQ(si(read_length("1,250 mm")), 1.25);
    EXPECT_DOUBLE_EQ(si(read_length("1.2e3mm")), 1.2);
}

TEST(ReadTwoLengths, OneUnitForBothOrOneEach) {
    const auto expect = [](std::string_view text, double first, double second) {
        const auto reading = read_two_lengths(text);
        const auto* both = std::get_if<std::pair<Length, Length>>(&reading);
        ASSERT_TRUE(both) << text << ": " << problem(reading);
        EXPECT_DOUBLE_EQ(both->first.si(), first) << text;
        EXPECT_DOUBLE_EQ(both->second.si(), second) << text;
    };
    expect("8 x 16 in", 8 * 0.0254, 16 * 0.0254);
    expect("8x16 in", 8 * 0.0254, 16 * 0.0254);
    expect("8\" X 16\"", 8 * 0.0254, 16 * 0.0254);
    expect("3-1/4 x 10 in", 3.25 * 0.0254, 10 * 0.0254);
    expect("3¼×10″", 3.25 * 0.0254, 10 * 0.0254);
    expect("80 x 250 mm", 0.08, 0.25);
    expect("80 mm x 25 cm", 0.08, 0.25);
    expect("1 ft 2 in x 2 ft", 14 * 0.0254, 0.6096);
    expect("8 in x 1 ft 2 in", 8 * 0.0254, 14 * 0.0254);
}

TEST(ReadArea, InItsUnits) {
    for (const char* text :
         {"1150 ft2", "1,150 sq ft", "1150 ft²", "1150 sq. ft.", "1150 ft^2", "1150 square feet"}) {
        EXPECT_DOUBLE_EQ(si(read_area(text)), 1150 * 0.09290304) << text;
    }
    EXPECT_DOUBLE_EQ(si(read_area("107 m2")), 107);
    EXPECT_DOUBLE_EQ(si(read_area("107 m²")), 107);
    EXPECT_DOUBLE_EQ(si(read_area("128 in2")), 128 * 0.00064516);
    EXPECT_DOUBLE_EQ(si(read_area("128 sq in")), 128 * 0.00064516);
    EXPECT_DOUBLE_EQ(si(read_area("200 cm²")), 0.02);
}

TEST(ReadAirflow, InItsUnits) {
    for (const char* text :
         {"120 cfm", "120 CFM", "120cfm", "120 ft³/min", "120 ft3 / min", "120 cu ft/min"}) {
        EXPECT_DOUBLE_EQ(si(read_airflow(text)), 120 * unit::cfm.si()) << text;
    }
    for (const char* text : {"57 L/s", "57 l/s", "57 lps"})
        EXPECT_DOUBLE_EQ(si(read_airflow(text)), 0.057) << text;
    EXPECT_DOUBLE_EQ(si(read_airflow("200 m3/h")), 200 / 3600.0);
    EXPECT_DOUBLE_EQ(si(read_airflow("200 m³/h")), 200 / 3600.0);
    EXPECT_DOUBLE_EQ(si(read_airflow("0.1 m3/s")), 0.1);
}

TEST(ReadVelocity, InItsUnits) {
    EXPECT_DOUBLE_EQ(si(read_velocity("600 ft/min")), 3.048);
    EXPECT_DOUBLE_EQ(si(read_velocity("600 fpm")), 3.048);
    EXPECT_DOUBLE_EQ(si(read_velocity("3 m/s")), 3.0);
}

TEST(ReadPressure, InItsUnits) {
    for (const char* text : {"0.08 in.wc", "0.08 in.wg", "0.08 in. wc", "0.08 in.w.c.", "0.08 \"wc",
                             "0.08\" W.C.", "0.08 inH2O", "0.08 iwc", "0.08″wg"}) {
        EXPECT_DOUBLE_EQ(si(read_pressure(text)), 0.08 * 249.08891) << text;
    }
    EXPECT_DOUBLE_EQ(si(read_pressure("20 Pa")), 20);
    EXPECT_DOUBLE_EQ(si(read_pressure("-20 Pa")), -20);
    EXPECT_DOUBLE_EQ(si(read_pressure("+0.02 kPa")), 20);
}

TEST(ReadFrictionRate, InItsUnits) {
    for (const char* text : {"0.08 in.wc/100 ft", "0.08 in. w.c. / 100 ft", "0.08 in.wc/100ft",
                             "0.08 in.wg/100 ft", "0.08 in.wc per 100 ft", "0.08\"wc/100'"}) {
        EXPECT_DOUBLE_EQ(si(read_friction_rate(text)), 0.08 * 249.08891 / 30.48) << text;
    }
    EXPECT_DOUBLE_EQ(si(read_friction_rate("0.65 Pa/m")), 0.65);
}

TEST(ReadTemperature, OnItsScales) {
    for (const char* text : {"70 F", "70 °F", "70°F", "70 degF", "70 deg F", "70 degrees F", "70 ℉"}) {
        EXPECT_NEAR(si(read_temperature(text)), unit::fahrenheit(70).si(), 1e-12) << text;
    }
    EXPECT_DOUBLE_EQ(si(read_temperature("21 C")), 294.15);
    EXPECT_DOUBLE_EQ(si(read_temperature("-3.5 °C")), 269.65);
    EXPECT_DOUBLE_EQ(si(read_temperature("−3.5 °C")), 269.65);
    EXPECT_DOUBLE_EQ(si(read_temperature("294 K")), 294);
    EXPECT_DOUBLE_EQ(si(read_temperature("0 K")), 0);
    EXPECT_NEAR(si(read_temperature("-459.67 F")), 0, 1e-12);
}

TEST(ReadTemperatureDifference, InItsUnits) {
    EXPECT_DOUBLE_EQ(si(read_temperature_difference("61 F")), 61 / 1.8);
    EXPECT_DOUBLE_EQ(si(read_temperature_difference("34 K")), 34);
    EXPECT_DOUBLE_EQ(si(read_temperature_difference("34 C")), 34);
    EXPECT_DOUBLE_EQ(si(read_temperature_difference("-9 °F")), -5);
}

TEST(ReadPower, InItsUnits) {
    for (const char* text :
         {"64000 Btu/h", "64,000 BTU/h", "64000 Btuh", "64000 btu/hr", "64 kBtu/h", "64 MBH"}) {
        EXPECT_DOUBLE_EQ(si(read_power(text)), 64000 * unit::btu_per_hour.si()) << text;
    }
    EXPECT_DOUBLE_EQ(si(read_power("18.8 kW")), 18800);
    EXPECT_DOUBLE_EQ(si(read_power("400 W")), 400);
}

TEST(ReadResistance, AsRValueOrInItsUnits) {
    for (const char* text : {"R-11", "R11", "r-11", "R 11", "11 h.ft2.F/Btu", "11 h·ft²·°F/Btu",
                             "11 h ft2 F/Btu", "11 ft2.h.F/Btu", "11 (h ft^2 F)/Btu"}) {
        EXPECT_DOUBLE_EQ(si(read_resistance(text)), 11 * unit::r_value_us.si()) << text;
    }
    EXPECT_DOUBLE_EQ(si(read_resistance("R-7.5")), 7.5 * unit::r_value_us.si());
    EXPECT_DOUBLE_EQ(si(read_resistance("1.9 m2K/W")), 1.9);
    EXPECT_DOUBLE_EQ(si(read_resistance("1.9 m²·K/W")), 1.9);
}

TEST(ReadTransmittance, InItsUnits) {
    for (const char* text : {"0.23 Btu/h.ft2.F", "0.23 Btu/(h·ft²·°F)", "0.23 BTU/hr ft2 F"}) {
        EXPECT_DOUBLE_EQ(si(read_transmittance(text)), 0.23 * unit::btu_per_hour_square_foot_fahrenheit.si())
            << text;
    }
    for (const char* text : {"1.3 W/m2K", "1.3 W/(m2 K)", "1.3 W/m2.K", "1.3 W/(m²·K)", "1.3 W/m²°C"}) {
        EXPECT_DOUBLE_EQ(si(read_transmittance(text)), 1.3) << text;
    }
}

TEST(ReadLeakageTest, AsAirChangesAt50Pascal) {
    EXPECT_DOUBLE_EQ(si(read_leakage_test("14 ACH50")), 14 / 3600.0);
    EXPECT_DOUBLE_EQ(si(read_leakage_test("14 ach 50")), 14 / 3600.0);
    EXPECT_DOUBLE_EQ(si(read_leakage_test("14 ACH @ 50 Pa")), 14 / 3600.0);
}

TEST(ReadAirChange, AsTimesAnHour) {
    EXPECT_DOUBLE_EQ(si(read_air_change("2 ACH")), 2 / 3600.0);
    EXPECT_DOUBLE_EQ(si(read_air_change("0.5 ach")), 0.5 / 3600.0);
    EXPECT_DOUBLE_EQ(si(read_air_change("2/h")), 2 / 3600.0);
}

TEST(ReadVolume, InItsUnits) {
    EXPECT_DOUBLE_EQ(si(read_volume("30 gal")), 30 * 0.003785411784);
    EXPECT_DOUBLE_EQ(si(read_volume("4 ft3")), 4 * 0.028316846592);
    EXPECT_DOUBLE_EQ(si(read_volume("110 L")), 0.11);
    EXPECT_DOUBLE_EQ(si(read_volume("0.1 m3")), 0.1);
}

TEST(ReadDuration, InItsUnits) {
    EXPECT_DOUBLE_EQ(si(read_duration("3.1 s")), 3.1);
    EXPECT_DOUBLE_EQ(si(read_duration("4 sec")), 4);
    EXPECT_DOUBLE_EQ(si(read_duration("2 min")), 120);
}

TEST(ReadFraction, PlainOrPercent) {
    EXPECT_DOUBLE_EQ(si(read_fraction("80 %")), 0.8);
    EXPECT_DOUBLE_EQ(si(read_fraction("80%")), 0.8);
    EXPECT_DOUBLE_EQ(si(read_fraction("0.8")), 0.8);
    EXPECT_DOUBLE_EQ(si(read_fraction("4/5")), 0.8);
    EXPECT_DOUBLE_EQ(si(read_fraction(" 0 ")), 0);
    EXPECT_DOUBLE_EQ(si(read_fraction("100 percent")), 1);
}

TEST(ReadAngle, InDegrees) {
    EXPECT_DOUBLE_EQ(si(read_angle("90 deg")), 90);
    EXPECT_DOUBLE_EQ(si(read_angle("-12 deg")), -12);
    EXPECT_DOUBLE_EQ(si(read_angle("22-1/2°")), 22.5);
}

}  // namespace
}  // namespace units
