// Words the sheet does not have, in every kind of table, and tables of the wrong kind.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;

TEST(UnknownWords, InADuct) {
    EXPECT_THAT(
        mistakes_after_first_line("[[duct]]\n"
                                  "name = \"main trunk\"\n"
                                  "fitings = [\"trunk start, square\"]\n"),
        ElementsAre("4:1-8 | unknown word 'fitings' in duct 'main trunk' | did you mean 'fittings'? | "));
}

TEST(UnknownWords, InADuctWithoutName) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "[[duct]]\n"
                                          "fitings = [\"trunk start, square\"]\n"),
                ElementsAre("4:1-8 | unknown word 'fitings' in duct number 2 | did you mean 'fittings'? | "));
}

TEST(UnknownWords, InTheSheet) {
    EXPECT_THAT(mistakes_after_first_line("[hause]\n"
                                          "name = \"x\"\n"
                                          "[[rooom]]\n"),
                ElementsAre("2:2-7 | unknown word 'hause' in the sheet | did you mean 'house'? | ",
                            "4:3-8 | unknown word 'rooom' in the sheet | did you mean 'room'? | "));
}

TEST(UnknownWords, NothingNear) {
    EXPECT_THAT(mistakes_after_first_line("[site]\n"
                                          "hottest = \"90 F\"\n"),
                ElementsAre("3:1-8 | unknown word 'hottest' in [site] |  | the words here are: elevation, "
                            "winter_outdoor, winter_indoor, ground, latitude, summer_outdoor, summer_indoor, "
                            "summer_wet_bulb, daily_range"));
}

TEST(UnknownWords, OtherCase) {
    EXPECT_THAT(mistakes_after_first_line("[site]\n"
                                          "Elevation = \"90 ft\"\n"),
                ElementsAre("3:1-10 | unknown word 'Elevation' in [site] | did you mean 'elevation'? | "));
}

TEST(UnknownWords, InAConstruction) {
    EXPECT_THAT(
        mistakes_after_first_line("[construction.bare_wall]\n"
                                  "layer = [\"x\"]\n"),
        ElementsAre("3:1-6 | unknown word 'layer' in construction 'bare_wall' | did you mean 'layers'? | "));
}

TEST(UnknownWords, Space) {
    EXPECT_THAT(mistakes_after_first_line("[space.attick]\n"
                                          "winter = \"3 F\"\n"
                                          "[space.attic]\n"
                                          "wintr = \"3 F\"\n"),
                ElementsAre("2:8-14 | unknown word 'attick' in [space] | did you mean 'attic'? | ",
                            "5:1-6 | unknown word 'wintr' in [space.attic] | did you mean 'winter'? | "));
}

TEST(UnknownWords, SpaceWithoutATemperatureOfItsOwn) {
    EXPECT_THAT(mistakes_after_first_line("[space.outdoors]\n"
                                          "winter = \"3 F\"\n"),
                ElementsAre("2:8-16 | unknown word 'outdoors' in [space] |  | the words here are: attic, "
                            "basement, crawl, garage, porch"));
}

TEST(UnknownWords, WallSide) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[room.wall.nort]\n"
                                  "faces = \"outdoors\"\n"),
        ElementsAre("4:12-16 | unknown word 'nort' in the walls of room 'bath' | did you mean 'north'? | "));
}

TEST(UnknownWords, InAWall) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[room.wall.north]\n"
                                  "face = \"outdoors\"\n"),
        ElementsAre(
            "5:1-5 | unknown word 'face' in the north wall of room 'bath' | did you mean 'faces'? | "));
}

TEST(UnknownWords, InAWindowAndADoor) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[[room.window]]\n"
                                  "name = \"big window\"\n"
                                  "center = \"2 ft\"\n"
                                  "[[room.window]]\n"
                                  "glas = \"single\"\n"
                                  "[[room.door]]\n"
                                  "threshold = \"1/2 in\"\n"),
        ElementsAre(
            "6:1-7 | unknown word 'center' in window 'big window' of room 'bath' | did you mean 'centre'? | ",
            "8:1-5 | unknown word 'glas' in window number 2 of room 'bath' | did you mean 'glass'? | ",
            "10:1-10 | unknown word 'threshold' in door number 1 of room 'bath' |  | the words here are: "
            "wall, centre, width, height, u, undercut, shut, swings"));
}

TEST(UnknownWords, AboveARoom) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "above = { spase = \"attic\" }\n"),
        ElementsAre("4:11-16 | unknown word 'spase' in 'above' of room 'bath' | did you mean 'space'? | "));
}

TEST(UnknownWords, InAPlaceAndAShape) {
    EXPECT_THAT(
        mistakes_after_first_line("[[outlet]]\n"
                                  "name = \"new register\"\n"
                                  "place = { undr = \"x\", wall = \"north\" }\n"
                                  "[[duct]]\n"
                                  "shape = { arund = \"19 in\" }\n"),
        ElementsAre(
            "4:11-15 | unknown word 'undr' in 'place' of outlet 'new register' | did you mean 'under'? | ",
            "6:11-16 | unknown word 'arund' in 'shape' of duct number 1 | did you mean 'around'? | "));
}

TEST(UnknownWords, WordOfARoomBelowItsWall) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[room.wall.north]\n"
                                  "faces = \"outdoors\"\n"
                                  "ceiling = \"8 ft\"\n"),
        ElementsAre("6:1-8 | unknown word 'ceiling' in the north wall of room 'bath' | this belongs to room "
                    "'bath' | move it above line 4, where the north wall of room 'bath' begins"));
}

TEST(UnknownWords, LongWordIsCut) {
    EXPECT_THAT(
        mistakes_after_first_line("[site]\n"
                                  "long_long_long_long_long_long_long_long_long_long_long_long_word = 1\n"),
        ElementsAre(
            "3:1-65 | unknown word 'long_long_long_long_long_long_long_long_...' in [site] |  | the "
            "words here are: elevation, winter_outdoor, winter_indoor, ground, latitude, summer_outdoor, "
            "summer_indoor, summer_wet_bulb, daily_range"));
}

TEST(UnknownWords, ControlCharacterInAWordIsNotPrinted) {
    EXPECT_THAT(mistakes_after_first_line("[site]\n"
                                          "\"\\u001b[31m\" = 1\n"),
                ElementsAre("3:1-13 | unknown word '?[31m' in [site] |  | the words here are: elevation, "
                            "winter_outdoor, winter_indoor, ground, latitude, summer_outdoor, summer_indoor, "
                            "summer_wet_bulb, daily_range"));
}

TEST(UnknownWords, NonAsciiWord) {
    EXPECT_THAT(
        mistakes_after_first_line("[site]\n"
                                  "\"\u00E9_\u00E9levation\" = 1\n"),
        ElementsAre("3:1-14 | unknown word '\u00E9_\u00E9levation' in [site] |  | the words here "
                    "are: elevation, winter_outdoor, winter_indoor, ground, latitude, summer_outdoor, "
                    "summer_indoor, summer_wet_bulb, daily_range"));
}

TEST(UnknownWords, OneBracketForSeveral) {
    EXPECT_THAT(
        mistakes_after_first_line("[room]\n"
                                  "storey = 9\n"),
        ElementsAre("2:1-7 | 'room' in the sheet needs two brackets | there can be several | write [[room]]",
                    "3:10-11 | 'storey' in room number 1 is 9 | it must be from 1 to 4 | "));
}

TEST(UnknownWords, OneBracketForAWindow) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "name = \"bath\"\n"
                                          "[room.window]\n"
                                          "glass = \"single\"\n"),
                ElementsAre("4:1-14 | 'window' in room 'bath' needs two brackets | there can be several | "
                            "write [[room.window]]"));
}

TEST(UnknownWords, TwoBracketsForOne) {
    EXPECT_THAT(mistakes_after_first_line("[[site]]\n"
                                          "elevation = \"1 ft\"\n"),
                ElementsAre("2:1-9 | 'site' in the sheet is a list, not one table |  | write site = { "
                            "elevation = \"620 ft\" }, or a heading [site]"));
}

TEST(UnknownWords, TextForATable) {
    EXPECT_THAT(mistakes_after_first_line("site = \"hill\"\n"
                                          "[[room]]\n"
                                          "above = \"attic\"\n"),
                ElementsAre("2:8-14 | 'site' in the sheet is text, not one table |  | write site = { "
                            "elevation = \"620 ft\" }, or a heading [site]",
                            "4:9-16 | 'above' in room number 1 is text, not one table |  | write above = { "
                            "space = \"attic\" }"));
}

TEST(UnknownWords, TextForTables) {
    EXPECT_THAT(mistakes_after_first_line("room = \"bath\"\n"),
                ElementsAre("2:8-14 | 'room' in the sheet is text, not a list |  | write room = [{ ... }], "
                            "or a heading [[room]]"));
}

TEST(UnknownWords, ListOfTextsForTables) {
    EXPECT_THAT(mistakes_after_first_line("room = [\"bath\", { name = \"hall\" }]\n"),
                ElementsAre("2:9-15 | a part of 'room' in the sheet is text, not a table |  | write { ... }, "
                            "or a heading [[room]]"));
}

TEST(UnknownWords, TextForAConstruction) {
    EXPECT_THAT(mistakes_after_first_line("construction.bare_wall = \"siding\"\n"),
                ElementsAre("2:26-34 | 'bare_wall' in [construction] is text, not a table |  | write "
                            "bare_wall = { layers = [\"...\"] }"));
}

TEST(UnknownWords, TextForAPlace) {
    EXPECT_THAT(
        mistakes_after_first_line("[[outlet]]\n"
                                  "place = \"under the window\"\n"),
        ElementsAre("3:9-27 | 'place' in outlet number 1 is text, not a table in braces |  | write place = { "
                    "under = \"north window\" }, or { wall = \"north\", centre = \"3 ft\" }"));
}

TEST(UnknownWords, EmptyBraces) {
    EXPECT_THAT(
        mistakes_after_first_line("[[outlet]]\n"
                                  "place = {}\n"
                                  "[[duct]]\n"
                                  "shape = {}\n"),
        ElementsAre(
            "3:9-11 | 'place' in outlet number 1 says nothing |  | write place = { under = \"north window\" "
            "}, or { wall = \"north\", centre = \"3 ft\" }",
            "5:9-11 | 'shape' in duct number 1 says nothing |  | write shape = { around = \"19 in\" }"));
}

}  // namespace
