// What is not TOML gives one mistake, where the parser stopped, in the sheet's own words and with its
// full text.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;

TEST(NotToml, BracesOverSeveralLines) {
    EXPECT_THAT(mistakes_after_first_line("above = { space = \"attic\",\n"
                                          "          construction = \"roof\" }\n"),
                ElementsAre("2:27-28 | what stands in { } goes on over the end of the line |  | write all of "
                            "it, from { to }, on one line"));
}

TEST(NotToml, BracesWithoutComma) {
    EXPECT_THAT(mistakes_after_first_line("above = { space = \"attic\" construction = \"roof\" }\n"),
                ElementsAre("2:27-28 | what stands in { } cannot be read from here on |  | write { word = "
                            "\"text\", word = \"text\" } with quotes and commas"));
}

TEST(NotToml, ListNeverClosed) {
    EXPECT_THAT(mistakes_after_first_line("layers = [\"siding\", \"plaster\"\n"
                                          "studs = \"16 in\"\n"),
                ElementsAre("2:10-11 | the list of 'layers' does not end, or a comma is missing in it |  | "
                            "put a comma between its parts and ] at its end | second 3:1-2"));
}

TEST(NotToml, ListNeverClosedAtTheEnd) {
    EXPECT_THAT(mistakes_after_first_line("layers = [\"siding\",\n"
                                          "  \"plaster\"\n"),
                ElementsAre("2:10-11 | the list of 'layers' does not end, or a comma is missing in it |  | "
                            "put a comma between its parts and ] at its end"));
}

TEST(NotToml, CommaMissingInAList) {
    EXPECT_THAT(mistakes_after_first_line("layers = [\"siding\" \"plaster\"]\n"),
                ElementsAre("2:20-21 | a comma is missing in the list of 'layers' | before this | write "
                            "[\"first\", \"second\"]"));
}

TEST(NotToml, HeadingNotClosed) {
    EXPECT_THAT(mistakes_after_first_line("[site\n"),
                ElementsAre("2:1-6 | this heading cannot be read |  | write [site] for what there is once, "
                            "[[room]] for each of several, alone on its line"));
}

TEST(NotToml, HeadingWithSpaceBetweenBrackets) {
    EXPECT_THAT(mistakes_after_first_line("[ [room] ]\n"),
                ElementsAre("2:1-11 | this heading cannot be read |  | write [site] for what there is once, "
                            "[[room]] for each of several, alone on its line"));
}

TEST(NotToml, HeadingWithoutName) {
    EXPECT_THAT(mistakes_after_first_line("[]\n"),
                ElementsAre("2:1-3 | this heading cannot be read |  | write [site] for what there is once, "
                            "[[room]] for each of several, alone on its line"));
}

TEST(NotToml, HeadingWithACommaFirst) {
    EXPECT_THAT(mistakes_after_first_line("[,a]\n"),
                ElementsAre("2:1-5 | this heading cannot be read |  | write [site] for what there is once, "
                            "[[room]] for each of several, alone on its line"));
}

TEST(NotToml, WordAfterAHeading) {
    EXPECT_THAT(mistakes_after_first_line("[site] elevation = \"1 ft\"\n"),
                ElementsAre("2:1-26 | this heading cannot be read |  | write [site] for what there is once, "
                            "[[room]] for each of several, alone on its line"));
}

TEST(NotToml, HeadingTwice) {
    EXPECT_THAT(
        mistakes_after_first_line("[site]\n"
                                  "[house]\n"
                                  "[site]\n"),
        ElementsAre("4:1-7 | [site] is written twice |  | put both parts under one heading | second 2:1-7"));
}

TEST(NotToml, WallTwiceInOneRoom) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "[room.wall.north]\n"
                                          "[[room]]\n"
                                          "[room.wall.north]\n"
                                          "[room.wall.north]\n"),
                ElementsAre("6:1-18 | [room.wall.north] is written twice |  | put both parts under one "
                            "heading | second 5:1-18"));
}

TEST(NotToml, OneAndSeveralBrackets) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "[room]\n"),
                ElementsAre("3:1-7 | 'room' is written in two ways |  | write [site] for what there is once, "
                            "[[room]] for each of several | second 2:1-9"));
}

TEST(NotToml, SeveralAndOneBracket) {
    EXPECT_THAT(mistakes_after_first_line("[duct]\n"
                                          "[[duct]]\n"),
                ElementsAre("3:1-9 | 'duct' is written in two ways |  | write [site] for what there is once, "
                            "[[room]] for each of several | second 2:1-7"));
}

TEST(NotToml, WordTwice) {
    EXPECT_THAT(
        mistakes_after_first_line("[site]\n"
                                  "elevation = \"1 ft\"\n"
                                  "winter_indoor = \"70 F\"\n"
                                  " elevation = \"2 ft\"\n"),
        ElementsAre("5:2-11 | 'elevation' is written twice |  | keep one of the two | second 3:1-10"));
}

TEST(NotToml, WordTwiceInBraces) {
    EXPECT_THAT(mistakes_after_first_line("above = { space = \"attic\", space = \"porch\" }\n"),
                ElementsAre("2:28-33 | 'space' is written twice |  | keep one of the two | second 2:11-16"));
}

TEST(NotToml, WordTwiceOnceDotted) {
    EXPECT_THAT(mistakes_after_first_line("house.name = \"x\"\n"
                                          "house = 3\n"),
                ElementsAre("3:1-6 | 'house' is written twice |  | keep one of the two | second 2:1-6"));
}

TEST(NotToml, LetterOutsideQuotes) {
    EXPECT_THAT(
        mistakes_after_first_line("\u00E9 = 1\n"),
        ElementsAre(
            "2:1-2 | '\u00E9' stands outside quotes |  | put the text it belongs to in straight quotes"));
}

TEST(NotToml, LetterAfterAText) {
    EXPECT_THAT(
        mistakes_after_first_line("name = \"bath\" \u00E9\n"),
        ElementsAre(
            "2:15-16 | '\u00E9' stands outside quotes |  | put the text it belongs to in straight quotes"));
}

TEST(NotToml, OddSpaceBeforeAText) {
    EXPECT_THAT(
        mistakes_after_first_line("name =\u00A0\"bath\"\n"),
        ElementsAre(
            "2:7-8 | a space here is not a plain space | pasted from a page? | delete it and type a space"));
}

TEST(NotToml, OddSpaceBeforeAWord) {
    EXPECT_THAT(
        mistakes_after_first_line("\u2003name = \"bath\"\n"),
        ElementsAre(
            "2:1-2 | a space here is not a plain space | pasted from a page? | delete it and type a space"));
}

TEST(NotToml, ControlCharacterInAText) {
    EXPECT_THAT(mistakes_after_first_line("name = \"a\001b\"\n"),
                ElementsAre("2:10-11 | an invisible control character stands here |  | delete it"));
}

TEST(NotToml, ControlCharacterInAComment) {
    EXPECT_THAT(mistakes_after_first_line("name = \"a\" # \002\n"),
                ElementsAre("2:14-15 | an invisible control character stands here |  | delete it"));
}

TEST(NotToml, ControlCharacterOutside) {
    EXPECT_THAT(mistakes_after_first_line("name\003 = \"a\"\n"),
                ElementsAre("2:5-6 | an invisible control character stands here |  | delete it"));
}

}  // namespace
