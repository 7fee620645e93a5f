// Values of the wrong kind, and words of a closed list that it does not hold.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;

TEST(Values, TextIsEmpty) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\n"
                                  "name = \"\"\n"
                                  "[[duct]]\n"
                                  "from = \"  \"\n"
                                  "length = \"\"\n"),
        ElementsAre("3:8-10 | 'name' in [house] is empty |  | write name = \"...\", or leave it out",
                    "5:8-12 | 'from' in duct number 1 is empty |  | write from = \"plenum\", or leave it out",
                    "6:10-12 | 'length' in duct number 1 is empty |  | write length = \"12 ft 6-1/2 in\", or "
                    "leave it out"));
}

TEST(Values, NumberForText) {
    EXPECT_THAT(
        mistakes_after_first_line("[thermostat]\n"
                                  "room = 2\n"),
        ElementsAre("3:8-9 | 'room' in [thermostat] is a number, not text |  | write room = \"hall\""));
}

TEST(Values, TrueForText) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = true\n"),
        ElementsAre(
            "3:8-12 | 'name' in room number 1 is true or false, not text |  | write name = \"bath\""));
}

TEST(Values, ListForText) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = [\"bath\"]\n"),
        ElementsAre("3:8-16 | 'name' in room number 1 is a list, not text |  | write name = \"bath\""));
}

TEST(Values, DateForText) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\n"
                                  "name = 1924-01-02\n"
                                  "built = 1924-01-02\n"),
        ElementsAre("3:8-18 | 'name' in [house] is a date, not text |  | write name = \"...\"",
                    "4:9-19 | 'built' in [house] is a date, not a whole number |  | write built = 1600"));
}

TEST(Values, TextForAList) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "fittings = \"stackhead\"\n"),
                ElementsAre("3:12-23 | 'fittings' in duct number 1 is text, not a list |  | write fittings = "
                            "[\"stackhead\"]"));
}

TEST(Values, PartsOfAListOfTexts) {
    EXPECT_THAT(
        mistakes_after_first_line("[[duct]]\n"
                                  "fittings = [\"stackhead\", 3, \"\", [\"x\"]]\n"),
        ElementsAre(
            "3:26-27 | a part of 'fittings' in duct number 1 is a number, not text |  | write \"...\"",
            "3:29-31 | a part of 'fittings' in duct number 1 is empty |  | write \"...\", or leave it out",
            "3:33-38 | a part of 'fittings' in duct number 1 is a list, not text |  | write \"...\""));
}

TEST(Values, TextForTrue) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "hidden = \"yes\"\n"
                                          "[heater]\n"
                                          "adjusted_for_elevation = 1\n"),
                ElementsAre("3:10-15 | 'hidden' in duct number 1 is text, not true or false |  | write "
                            "hidden = true, or false",
                            "5:26-27 | 'adjusted_for_elevation' in [heater] is a number, not true or false | "
                            " | write adjusted_for_elevation = true, or false"));
}

TEST(Values, TextForAWholeNumber) {
    EXPECT_THAT(mistakes_after_first_line("[house]\n"
                                          "storeys = \"2\"\n"),
                ElementsAre("3:11-14 | 'storeys' in [house] is text, not a whole number |  | write storeys = "
                            "2, without quotes"));
}

TEST(Values, FractionForAWholeNumber) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\n"
                                  "storeys = 2.5\n"),
        ElementsAre(
            "3:11-14 | 'storeys' in [house] is not a whole number |  | write storeys = 1, without a point"));
}

TEST(Values, WholeNumberOutsideItsRange) {
    EXPECT_THAT(mistakes_after_first_line("[house]\n"
                                          "built = 192\n"
                                          "storeys = 5\n"
                                          "[[room]]\n"
                                          "storey = 0\n"
                                          "[other_rooms]\n"
                                          "outlets = 61\n"),
                ElementsAre("3:9-12 | 'built' in [house] is 192 | it must be from 1600 to 2100 | ",
                            "4:11-12 | 'storeys' in [house] is 5 | it must be from 1 to 4 | ",
                            "6:10-11 | 'storey' in room number 1 is 0 | it must be from 1 to 4 | ",
                            "8:11-13 | 'outlets' in [other_rooms] is 61 | it must be from 1 to 60 | "));
}

TEST(Values, WholeNumberFarOutside) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\n"
                                  "built = -9223372036854775808\n"),
        ElementsAre("3:9-29 | 'built' in [house] is -9223372036854775808 | it must be from 1600 to 2100 | "));
}

TEST(Values, Turns) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "turns = \"many\"\n"
                                          "[[duct]]\n"
                                          "turns = \"3 sqare\"\n"
                                          "[[duct]]\n"
                                          "turns = 3\n"
                                          "[[duct]]\n"
                                          "turns = \"51 square\"\n"
                                          "[[duct]]\n"
                                          "turns = \"-1 square\"\n"),
                ElementsAre("3:9-15 | 'turns' in duct number 1 is not a number of turns and their kind |  | "
                            "write turns = \"3 square\", or \"2 rounded\"",
                            "5:9-18 | 'turns' in duct number 2 cannot be 'sqare' | did you mean 'square'? | "
                            "write one of: square, rounded",
                            "7:9-10 | 'turns' in duct number 3 is a number, not text |  | write turns = \"3 "
                            "square\", or \"2 rounded\"",
                            "9:9-20 | 'turns' in duct number 4 must be from 0 to 50 turns |  | write turns = "
                            "\"3 square\", or \"2 rounded\"",
                            "11:9-20 | 'turns' in duct number 5 must be from 0 to 50 turns |  | write turns "
                            "= \"3 square\", or \"2 rounded\""));
}

TEST(Values, BlowerIncludes) {
    EXPECT_THAT(mistakes_after_first_line("[blower]\n"
                                          "includes = [\"filtre\", \"coil\"]\n"),
                ElementsAre("3:13-21 | a part of 'includes' in [blower] cannot be 'filtre' | did you mean "
                            "'filter'? | write one of: filter, coil, other, zone damper, bypass"));
}

TEST(Values, ClosedLists) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\n"
                                  "frame = \"baloon\"\n"
                                  "[heater]\n"
                                  "kind = \"heatpump\"\n"
                                  "[cooling]\n"
                                  "kind = \"fan\"\n"
                                  "[[device]]\n"
                                  "kind = \"filtre\"\n"
                                  "[[duct]]\n"
                                  "side = \"suply\"\n"
                                  "runs_in = \"heated room\"\n"
                                  "state = \"old\"\n"
                                  "[[outlet]]\n"
                                  "mount = \"flor\"\n"
                                  "[[room]]\n"
                                  "[[room.door]]\n"
                                  "wall = \"norht\"\n"),
        ElementsAre(
            "3:9-17 | 'frame' in [house] cannot be 'baloon' | did you mean 'balloon'? | write one of: "
            "balloon, platform",
            "5:8-18 | 'kind' in [heater] cannot be 'heatpump' | did you mean 'heat pump'? | write one of: "
            "furnace, heat pump, electric",
            "7:8-13 | 'kind' in [cooling] cannot be 'fan' |  | write one of: none, coil",
            "9:8-16 | 'kind' in device number 1 cannot be 'filtre' | did you mean 'filter'? | write one of: "
            "filter, coil, other, zone damper, bypass",
            "11:8-15 | 'side' in duct number 1 cannot be 'suply' | did you mean 'supply'? | write one of: "
            "supply, return",
            "12:11-24 | 'runs_in' in duct number 1 cannot be 'heated room' | did you mean 'heated rooms'? | "
            "write one of: outdoors, heated rooms, attic, basement, crawl, garage, porch, ground",
            "13:9-14 | 'state' in duct number 1 cannot be 'old' |  | write one of: found, new, removed",
            "15:9-15 | 'mount' in outlet number 1 cannot be 'flor' | did you mean 'floor'? | write one of: "
            "floor, low wall, toe kick, high wall, ceiling",
            "18:8-15 | 'wall' in door number 1 of room number 1 cannot be 'norht' | did you mean 'north'? | "
            "write one of: north, east, south, west"));
}

TEST(Values, PlaceInMoreThanOneWay) {
    EXPECT_THAT(mistakes_after_first_line("[[outlet]]\n"
                                          "place = { under = \"x\", point = [\"1 ft\", \"2 ft\"] }\n"),
                ElementsAre("3:9-50 | 'place' in outlet number 1 says where in more than one way |  | keep "
                            "one of: under, wall with centre, point"));
}

}  // namespace
