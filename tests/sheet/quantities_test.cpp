// Quantities: without unit, in the wrong unit, zero where nothing can be zero, too few or too many.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;

TEST(Quantities, NumberWithoutUnit) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "name = \"main trunk\"\n"
                                          "length = 12\n"),
                ElementsAre("4:10-12 | 'length' in duct 'main trunk' has no unit | a number needs a unit and "
                            "quotes | write length = \"12 ft\""));
}

TEST(Quantities, NumberWithoutUnitInEveryKind) {
    EXPECT_THAT(mistakes_after_first_line("[site]\n"
                                          "elevation = 620.5\n"
                                          "winter_indoor = 70\n"
                                          "[construction.wall]\n"
                                          "framing = 0.2\n"
                                          "u = 0.25\n"
                                          "r = 11\n"
                                          "[heater]\n"
                                          "input = 80000\n"
                                          "efficiency = 80\n"
                                          "max_static = 0.5\n"
                                          "[blower]\n"
                                          "measured = 1000\n"
                                          "[other_rooms]\n"
                                          "floor_area = 1150\n"
                                          "pipe = 6\n"
                                          "[house]\n"
                                          "air_leakage = 14\n"),
                ElementsAre("3:13-18 | 'elevation' in [site] has no unit | a number needs a unit and quotes "
                            "| write elevation = \"620.5 ft\"",
                            "4:17-19 | 'winter_indoor' in [site] has no unit | a number needs a unit and "
                            "quotes | write winter_indoor = \"70 F\"",
                            "6:11-14 | 'framing' in construction 'wall' has no unit | a number needs a unit "
                            "and quotes | write framing = \"20 %\"",
                            "7:5-9 | 'u' in construction 'wall' has no unit | a number needs a unit and "
                            "quotes | write u = \"0.25 Btu/h.ft2.F\"",
                            "8:5-7 | 'r' in construction 'wall' has no unit | a number needs a unit and "
                            "quotes | write r = \"R-11\"",
                            "10:9-14 | 'input' in [heater] has no unit | a number needs a unit and quotes | "
                            "write input = \"80000 Btu/h\"",
                            "11:14-16 | 'efficiency' in [heater] has no unit | a number needs a unit and "
                            "quotes | write efficiency = \"80 %\"",
                            "12:14-17 | 'max_static' in [heater] has no unit | a number needs a unit and "
                            "quotes | write max_static = \"0.5 in.wc\"",
                            "14:12-16 | 'measured' in [blower] has no unit | a number needs a unit and "
                            "quotes | write measured = \"1000 cfm\"",
                            "16:14-18 | 'floor_area' in [other_rooms] has no unit | a number needs a unit "
                            "and quotes | write floor_area = \"1150 ft2\"",
                            "17:8-9 | 'pipe' in [other_rooms] has no unit | a number needs a unit and quotes "
                            "| write pipe = \"6 in\"",
                            "19:15-17 | 'air_leakage' in [house] has no unit | a number needs a unit and "
                            "quotes | write air_leakage = \"14 ACH50\""));
}

TEST(Quantities, NumberWithoutUnitInAList) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "name = \"bath\"\n"
                                          "corner = [0, \"19 ft\"]\n"),
                ElementsAre("4:11-12 | a part of 'corner' in room 'bath' has no unit | a number needs a unit "
                            "and quotes | write \"0 ft\""));
}

TEST(Quantities, NumberThatIsNotFinite) {
    EXPECT_THAT(
        mistakes_after_first_line("[site]\n"
                                  "winter_outdoor = nan\n"
                                  "winter_indoor = -inf\n"
                                  "elevation = +inf\n"),
        ElementsAre(
            "3:18-21 | 'winter_outdoor' in [site] is not a finite number |  | write winter_outdoor = \"70 "
            "F\"",
            "4:17-21 | 'winter_indoor' in [site] is not a finite number |  | write winter_indoor = \"70 F\"",
            "5:13-17 | 'elevation' in [site] is not a finite number |  | write elevation = \"12 ft 6-1/2 "
            "in\""));
}

TEST(Quantities, UnitOfAnotherQuantity) {
    EXPECT_THAT(mistakes_after_first_line("[blower]\n"
                                          "measured = \"120 cfms\"\n"),
                ElementsAre("3:17-21 | 'measured' in [blower]: \"cfms\" is not a unit of airflow | did you "
                            "mean \"cfm\"? | "));
}

TEST(Quantities, UnitUnknownInsideAnEscapedText) {
    EXPECT_THAT(mistakes_after_first_line("[blower]\n"
                                          "measured = \"120 cf\\u006ds\"\n"),
                ElementsAre("3:12-27 | 'measured' in [blower]: \"cfms\" is not a unit of airflow | did you "
                            "mean \"cfm\"? | "));
}

TEST(Quantities, UnitUnknownAfterNonAsciiCharacters) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "length = \"\u00BD fut\"\n"),
                ElementsAre("3:13-16 | 'length' in duct number 1: \"fut\" is not a unit of length | did you "
                            "mean \"ft\"? | "));
}

TEST(Quantities, TwoLengthsOfThree) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "name = \"bath\"\n"
                                          "size = [\"7 ft\", \"9 ft\", \"8 ft\"]\n"),
                ElementsAre("4:8-32 | 'size' in room 'bath' needs two lengths, and has 3 |  | write size = "
                            "[\"12 ft 6-1/2 in\", \"12 ft 6-1/2 in\"]"));
}

TEST(Quantities, TwoLengthsAsText) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "size = \"7 x 9 ft\"\n"),
                ElementsAre("3:8-18 | 'size' in room number 1 is text, not a list |  | write size = [\"12 ft "
                            "6-1/2 in\", \"12 ft 6-1/2 in\"]"));
}

TEST(Quantities, RangeTheWrongWayRound) {
    EXPECT_THAT(
        mistakes_after_first_line("[heater]\n"
                                  "rise = [\"70 F\", \"40 F\"]\n"
                                  "[other_rooms]\n"
                                  "reach = [\"20 ft\", \"4 ft\"]\n"),
        ElementsAre(
            "3:8-24 | 'rise' in [heater] runs from more to less |  | write the smaller of the two first",
            "5:9-26 | 'reach' in [other_rooms] runs from more to less |  | write the smaller of the two "
            "first"));
}

TEST(Quantities, ZeroWhereNothingCanBeZero) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "shape = \"0 in\"\n"
                                          "[[outlet]]\n"
                                          "face = \"0 x 6 in\"\n"
                                          "[[room]]\n"
                                          "ceiling = \"0 ft\"\n"),
                ElementsAre("3:9-15 | 'shape' in duct number 1 must be more than zero |  | ",
                            "5:8-18 | 'face' in outlet number 1 must be more than zero |  | ",
                            "7:11-17 | 'ceiling' in room number 1 must be more than zero |  | "));
}

TEST(Quantities, Shapes) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "shape = \"8 x in\"\n"
                                          "[[duct]]\n"
                                          "shape = 6\n"
                                          "[[duct]]\n"
                                          "shape = \"6\"\n"),
                ElementsAre("3:10-11 | 'shape' in duct number 1: a length needs a unit |  | write two "
                            "lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm",
                            "5:9-10 | 'shape' in duct number 2 has no unit | a number needs a unit and "
                            "quotes | write shape = \"6 in\"",
                            "7:10-11 | 'shape' in duct number 3: a length needs a unit |  | write a length, "
                            "as 12 ft 6-1/2 in, 3.8 m or 95 mm"));
}

TEST(Quantities, Face) {
    EXPECT_THAT(mistakes_after_first_line("[[outlet]]\n"
                                          "face = 10\n"),
                ElementsAre("3:8-10 | 'face' in outlet number 1 is a number, not text in quotes |  | write "
                            "face = \"8 x 16 in\""));
}

TEST(Quantities, BlowerPoints) {
    EXPECT_THAT(mistakes_after_first_line("[blower]\n"
                                          "points = [[\"0.2 in.wc\", \"1180 cfms\"], [\"0.4 in.wc\"], 3]\n"),
                ElementsAre("3:31-35 | a part of 'points' in [blower]: \"cfms\" is not a unit of airflow | "
                            "did you mean \"cfm\"? | ",
                            "3:39-52 | a part of 'points' in [blower] needs a pressure and an airflow, and "
                            "has 1 |  | write [\"0.2 in.wc\", \"1180 cfm\"]",
                            "3:54-55 | a part of 'points' in [blower] is a number, not a list |  | write "
                            "[\"0.2 in.wc\", \"1180 cfm\"]"));
}

TEST(Quantities, AirLeakage) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\n"
                                  "air_leakage = \"leeky\"\n"
                                  "[site]\n"),
        ElementsAre("3:15-22 | 'air_leakage' in [house] cannot be 'leeky' | did you mean 'leaky'? | write "
                    "one of: tight, good, average, leaky, very leaky, or a blower-door test: \"14 ACH50\""));
}

TEST(Quantities, AirLeakageTest) {
    EXPECT_THAT(mistakes_after_first_line("[house]\n"
                                          "air_leakage = \"14 ACH5\"\n"),
                ElementsAre("3:19-23 | 'air_leakage' in [house]: \"ACH5\" is not a unit of leakage test | "
                            "did you mean \"ACH50\"? | "));
}

}  // namespace
