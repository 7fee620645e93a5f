// What the readers say about a text they refuse, word for word, and where they point.
#include <gtest/gtest.h>

#include "reading.hpp"
#include "units/read.hpp"

namespace units {
namespace {

TEST(ReadProblem, AUnitIsMissing) {
    EXPECT_EQ(problem(read_length("12")),
              "a length needs a unit; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+2]");
    EXPECT_EQ(problem(read_airflow("120")),
              "an airflow needs a unit; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [0+3]");
    EXPECT_EQ(problem(read_length("12 ft 6")),
              "a length needs a unit; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [6+1]");
    EXPECT_EQ(problem(read_length("12 ft 2")),
              "a length needs a unit; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [6+1]");
    EXPECT_EQ(problem(read_two_lengths("8 x 16")),
              "a length needs a unit; write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm [0+1]");
    EXPECT_EQ(problem(read_two_lengths("8 in x 16")),
              "a length needs a unit; write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm [7+2]");
    EXPECT_EQ(problem(read_two_lengths("8 x 1 ft 4 in")),
              "a length needs a unit; write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm [0+1]");
    EXPECT_EQ(problem(read_angle("90")), "an angle needs a unit; write an angle, as 90 deg or -12 deg [0+2]");
}

TEST(ReadProblem, AUnitIsUnknown) {
    EXPECT_EQ(problem(read_airflow("120 cfms")),
              "\"cfms\" is not a unit of airflow; did you mean \"cfm\"? [4+4]");
    EXPECT_EQ(problem(read_length("12 fet")), "\"fet\" is not a unit of length; did you mean \"ft\"? [3+3]");
    EXPECT_EQ(problem(read_power("64000 Bth/h")),
              "\"Bth/h\" is not a unit of power; did you mean \"Btu/h\"? [6+5]");
    EXPECT_EQ(problem(read_pressure("0.08 in.wx")),
              "\"in.wx\" is not a unit of pressure; did you mean \"in.wc\"? [5+5]");
    EXPECT_EQ(problem(read_airflow("120 bushels")),
              "\"bushels\" is not a unit of airflow; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [4+7]");
    EXPECT_EQ(problem(read_length("12 q")),
              "\"q\" is not a unit of length; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [3+1]");
    EXPECT_EQ(problem(read_length("12½ naïve")),
              "\"naïve\" is not a unit of length; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [4+5]");
    EXPECT_EQ(problem(read_length("5² in")), "\"² in\" is not a unit of length; did you mean \"in\"? [1+4]");
    EXPECT_EQ(problem(read_length("½5 in")), "\"5 in\" is not a unit of length; did you mean \"in\"? [1+4]");
    EXPECT_EQ(problem(read_length("12 ft.6 in")),
              "\"ft.6 in\" is not a unit of length; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [3+7]");
}

TEST(ReadProblem, AUnitIsOfAnotherQuantity) {
    EXPECT_EQ(
        problem(read_airflow("120 Pa")),
        "\"120 Pa\" is a pressure, not an airflow; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [0+6]");
    EXPECT_EQ(problem(read_length("12 ft2")),
              "\"12 ft2\" is an area, not a length; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+6]");
    EXPECT_EQ(problem(read_length("-12 F")),
              "a length takes no sign; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+3]");
    EXPECT_EQ(problem(read_temperature("70 °")),
              "\"70 °\" is an angle, not a temperature; write a temperature, as 70 F or 21 C [0+4]");
    EXPECT_EQ(problem(read_friction_rate("0.08 in.wc")),
              "\"0.08 in.wc\" is a pressure, not a friction rate; write a friction rate, as 0.08 in.wc/100 "
              "ft or 0.65 Pa/m [0+10]");
    EXPECT_EQ(problem(read_velocity("600 cfm")),
              "\"600 cfm\" is an airflow, not a velocity; write a velocity, as 600 ft/min or 3 m/s [0+7]");
    EXPECT_EQ(problem(read_fraction("0.5 ft")),
              "\"0.5 ft\" is a length, not a fraction; write a fraction from 0 to 1 or a percentage, as 0.8 "
              "or 80 % [0+6]");
}

TEST(ReadProblem, SomethingIsLeftOver) {
    EXPECT_EQ(
        problem(read_airflow("120 cfm or so")),
        "\"or so\" is left over after \"120 cfm\"; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [8+5]");
    EXPECT_EQ(
        problem(read_airflow("120 cfm 130 cfm")),
        "\"130 cfm\" is left over after \"120 cfm\"; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [8+7]");
    EXPECT_EQ(
        problem(read_length("12 in 3 ft")),
        "\"3 ft\" is left over after \"12 in\"; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [6+4]");
    EXPECT_EQ(
        problem(read_length("2 ft .5 in")),
        "\".5 in\" is left over after \"2 ft\"; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [5+5]");
    EXPECT_EQ(problem(read_length("12 ft 6 in 3")),
              "\"3\" is left over after \"6 in\"; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [11+1]");
    EXPECT_EQ(problem(read_resistance("R-11 batts")),
              "\"batts\" is left over after \"R-11\"; write a thermal resistance, as R-11, 11 h.ft2.F/Btu or "
              "1.9 m2K/W [5+5]");
    EXPECT_EQ(problem(read_two_lengths("8 x 16 x 20 in")),
              "a size is two lengths with an x between them; write two lengths, as 8 x 16 in, 3-1/4 x 10 in "
              "or 80 x 250 mm [0+14]");
}

TEST(ReadProblem, NothingIsThere) {
    EXPECT_EQ(problem(read_length("")),
              "a length is missing; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+0]");
    EXPECT_EQ(problem(read_airflow("  \t")),
              "an airflow is missing; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [3+0]");
    EXPECT_EQ(problem(read_two_lengths("")),
              "a size is two lengths with an x between them; write two lengths, as 8 x 16 in, 3-1/4 x 10 in "
              "or 80 x 250 mm [0+0]");
    EXPECT_EQ(problem(read_two_lengths("x 8 in")),
              "a length is missing; write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm [0+0]");
    EXPECT_EQ(problem(read_two_lengths("8 in x")),
              "a length is missing; write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm [6+0]");
    EXPECT_EQ(problem(read_resistance("R-")),
              "a thermal resistance is missing; write a thermal resistance, as R-11, 11 h.ft2.F/Btu or 1.9 "
              "m2K/W [2+0]");
}

TEST(ReadProblem, TheNumberIsNone) {
    EXPECT_EQ(problem(read_length("ft")),
              "\"ft\" does not start with a number; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+2]");
    EXPECT_EQ(
        problem(read_length("nan")),
        "\"nan\" does not start with a number; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+3]");
    EXPECT_EQ(problem(read_temperature("-inf F")),
              "\"-inf F\" does not start with a number; write a temperature, as 70 F or 21 C [0+6]");
    EXPECT_EQ(
        problem(read_length(". ft")),
        "\". ft\" does not start with a number; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+4]");
    EXPECT_EQ(problem(read_length("3,8 m")),
              "\"3,8\" is not a number; write decimals with a point and thousands in groups of three, as 3.8 "
              "or 64,000 [0+3]");
    EXPECT_EQ(problem(read_length("1,0000 m")),
              "\"1,0000\" is not a number; write decimals with a point and thousands in groups of three, as "
              "3.8 or 64,000 [0+6]");
    EXPECT_EQ(problem(read_length("1000,000 mm")),
              "\"1000,000\" is not a number; write decimals with a point and thousands in groups of three, "
              "as 3.8 or 64,000 [0+8]");
    EXPECT_EQ(problem(read_length("1e400 m")),
              "\"1e400\" is too large or too small a number; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 "
              "mm [0+5]");
    EXPECT_EQ(problem(read_length("1e-400 m")),
              "\"1e-400\" is too large or too small a number; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 "
              "mm [0+6]");
    EXPECT_EQ(problem(read_length("1/0 in")),
              "\"1/0\" divides by zero; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+3]");
    EXPECT_EQ(problem(read_length("6-1/0 in")),
              "\"1/0\" divides by zero; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [2+3]");
    EXPECT_EQ(
        problem(read_length("\xff 3 \x01")),
        "\"? 3 ?\" does not start with a number; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+5]");
}

TEST(ReadProblem, TheSignIsWrong) {
    EXPECT_EQ(problem(read_temperature("--5 F")),
              "a number takes one sign; write a temperature, as 70 F or 21 C [0+2]");
    EXPECT_EQ(problem(read_length("-5 ft")),
              "a length takes no sign; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+2]");
    EXPECT_EQ(problem(read_length("+5 ft")),
              "a length takes no sign; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+2]");
    EXPECT_EQ(problem(read_airflow("-120 cfm")),
              "an airflow takes no sign; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [0+4]");
    EXPECT_EQ(problem(read_power("-400 W")),
              "a power takes no sign; write a power, as 64000 Btu/h, 18.8 kW or 400 W [0+4]");
    EXPECT_EQ(problem(read_area("-107 m2")),
              "an area takes no sign; write an area, as 1150 ft2 or 107 m2 [0+4]");
    EXPECT_EQ(problem(read_resistance("-1.9 m2K/W")),
              "a thermal resistance takes no sign; write a thermal resistance, as R-11, 11 h.ft2.F/Btu or "
              "1.9 m2K/W [0+4]");
    EXPECT_EQ(problem(read_resistance("R--11")),
              "a thermal resistance takes no sign; write a thermal resistance, as R-11, 11 h.ft2.F/Btu or "
              "1.9 m2K/W [2+3]");
    EXPECT_EQ(problem(read_velocity("-3 m/s")),
              "a velocity takes no sign; write a velocity, as 600 ft/min or 3 m/s [0+2]");
    EXPECT_EQ(problem(read_transmittance("-1.3 W/m2K")),
              "a transmittance takes no sign; write a transmittance, as 0.23 Btu/h.ft2.F or 1.3 W/m2K [0+4]");
    EXPECT_EQ(
        problem(read_friction_rate("-0.65 Pa/m")),
        "a friction rate takes no sign; write a friction rate, as 0.08 in.wc/100 ft or 0.65 Pa/m [0+5]");
    EXPECT_EQ(problem(read_leakage_test("-14 ACH50")),
              "a leakage test takes no sign; write a leakage test, as 14 ACH50 [0+3]");
    EXPECT_EQ(problem(read_air_change("-3 ACH")),
              "an air change takes no sign; write an air change, as 2 ACH [0+2]");
    EXPECT_EQ(problem(read_fraction("-0.8")),
              "a fraction takes no sign; write a fraction from 0 to 1 or a percentage, as 0.8 or 80 % [0+4]");
}

TEST(ReadProblem, TheValueIsAbsurd) {
    EXPECT_EQ(problem(read_length("10001 m")),
              "\"10001 m\" is more than 10 km; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+7]");
    EXPECT_EQ(
        problem(read_length("40000 ft 6 in")),
        "\"40000 ft 6 in\" is more than 10 km; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+13]");
    EXPECT_EQ(problem(read_area("1e7 m2")),
              "\"1e7 m2\" is more than 1 km2; write an area, as 1150 ft2 or 107 m2 [0+6]");
    EXPECT_EQ(problem(read_airflow("2000 m3/s")),
              "\"2000 m3/s\" is more than 1000 m3/s; write an airflow, as 120 cfm, 57 L/s or 200 m3/h [0+9]");
    EXPECT_EQ(problem(read_velocity("1001 m/s")),
              "\"1001 m/s\" is more than 1000 m/s; write a velocity, as 600 ft/min or 3 m/s [0+8]");
    EXPECT_EQ(problem(read_pressure("2000 kPa")),
              "\"2000 kPa\" is more than 1000 kPa; write a pressure, as 0.08 in.wc or 20 Pa [0+8]");
    EXPECT_EQ(problem(read_pressure("-2000 kPa")),
              "\"-2000 kPa\" is less than -1000 kPa; write a pressure, as 0.08 in.wc or 20 Pa [0+9]");
    EXPECT_EQ(problem(read_friction_rate("1e6 Pa/m")),
              "\"1e6 Pa/m\" is more than 100000 Pa/m; write a friction rate, as 0.08 in.wc/100 ft or 0.65 "
              "Pa/m [0+8]");
    EXPECT_EQ(problem(read_temperature("-300 C")),
              "\"-300 C\" is below absolute zero; write a temperature, as 70 F or 21 C [0+6]");
    EXPECT_EQ(problem(read_temperature("-1 K")),
              "\"-1 K\" is below absolute zero; write a temperature, as 70 F or 21 C [0+4]");
    EXPECT_EQ(problem(read_temperature("6000 F")),
              "\"6000 F\" is more than 5000 F; write a temperature, as 70 F or 21 C [0+6]");
    EXPECT_EQ(problem(read_temperature_difference("6000 K")),
              "\"6000 K\" is more than 5000 K; write a temperature difference, as 61 F or 34 K [0+6]");
    EXPECT_EQ(problem(read_temperature_difference("-6000 K")),
              "\"-6000 K\" is less than -5000 K; write a temperature difference, as 61 F or 34 K [0+7]");
    EXPECT_EQ(problem(read_power("1e7 kW")),
              "\"1e7 kW\" is more than 1000000 kW; write a power, as 64000 Btu/h, 18.8 kW or 400 W [0+6]");
    EXPECT_EQ(problem(read_resistance("501 m2K/W")),
              "\"501 m2K/W\" is more than 500 m2K/W; write a thermal resistance, as R-11, 11 h.ft2.F/Btu or "
              "1.9 m2K/W [0+9]");
    EXPECT_EQ(problem(read_resistance("R-3000")),
              "\"R-3000\" is more than 500 m2K/W; write a thermal resistance, as R-11, 11 h.ft2.F/Btu or 1.9 "
              "m2K/W [0+6]");
    EXPECT_EQ(problem(read_transmittance("1001 W/m2K")),
              "\"1001 W/m2K\" is more than 1000 W/m2K; write a transmittance, as 0.23 Btu/h.ft2.F or 1.3 "
              "W/m2K [0+10]");
    EXPECT_EQ(problem(read_air_change("101 ACH")),
              "\"101 ACH\" is more than 100 ACH; write an air change, as 2 ACH [0+7]");
    EXPECT_EQ(problem(read_leakage_test("1001 ACH50")),
              "\"1001 ACH50\" is more than 1000 ACH50; write a leakage test, as 14 ACH50 [0+10]");
    EXPECT_EQ(problem(read_volume("1e7 m3")),
              "\"1e7 m3\" is more than 1000000 m3; write a volume, as 30 gal, 4 ft3 or 110 L [0+6]");
    EXPECT_EQ(problem(read_duration("601 min")),
              "\"601 min\" is more than 600 min; write a time, as 3.1 s or 2 min [0+7]");
    EXPECT_EQ(problem(read_fraction("80")),
              "\"80\" is more than 1; write a fraction from 0 to 1 or a percentage, as 0.8 or 80 % [0+2]");
    EXPECT_EQ(problem(read_fraction("120 %")),
              "\"120 %\" is more than 1; write a fraction from 0 to 1 or a percentage, as 0.8 or 80 % [0+5]");
    EXPECT_EQ(problem(read_angle("361 deg")),
              "\"361 deg\" is more than 360 deg; write an angle, as 90 deg or -12 deg [0+7]");
    EXPECT_EQ(problem(read_angle("-361 deg")),
              "\"-361 deg\" is less than -360 deg; write an angle, as 90 deg or -12 deg [0+8]");
}

TEST(ReadProblem, FeetAndInchesDoNotGoTogether) {
    EXPECT_EQ(problem(read_length("12 ft 6 cm")),
              "\"6 cm\" cannot follow feet; write feet and inches, as 12 ft 6-1/2 in [6+4]");
    EXPECT_EQ(problem(read_length("12.5 ft 6 in")),
              "feet before inches are a whole number; write feet and inches, as 12 ft 6-1/2 in [0+4]");
    EXPECT_EQ(problem(read_length("12 ft 14 in")),
              "inches after feet are less than 12; write feet and inches, as 12 ft 6-1/2 in [6+5]");
}

TEST(ReadProblem, TheTextIsTooLong) {
    const std::string text(198, '1');
    EXPECT_EQ(problem(read_length(text + " ft")),
              "this is too long for a length; write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm [0+201]");
    EXPECT_EQ(problem(read_resistance(std::string(201, '1'))),
              "this is too long for a thermal resistance; write a thermal resistance, as R-11, 11 "
              "h.ft2.F/Btu or 1.9 m2K/W [0+201]");
    EXPECT_EQ(problem(read_two_lengths(std::string(201, '1'))),
              "this is too long for a length; write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm "
              "[0+201]");
}

}  // namespace
}  // namespace units
