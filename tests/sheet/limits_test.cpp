// What is too big, too deep, too long or no text at all is refused with one mistake that says so.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::string repeated(std::string_view piece, int times) {
    std::string text;
    for (int i = 0; i < times; ++i) text += piece;
    return text;
}

TEST(Limits, LargerThanOneMebibyte) {
    const std::string first = "sheet = 1\n#";
    EXPECT_THAT(mistakes_in(first + std::string(1024 * 1024 - first.size(), ' ')), IsEmpty());
    EXPECT_THAT(mistakes_in(first + std::string(1024 * 1024 - first.size() + 1, ' ')),
                ElementsAre("1:1-2 | the sheet is larger than 1 MiB |  | one sheet describes one house"));
}

TEST(Limits, DotsOnOneLine) {
    EXPECT_THAT(mistakes_after_first_line("# " + std::string(64, '.')), IsEmpty());
    EXPECT_THAT(mistakes_after_first_line("# " + std::string(65, '.')),
                ElementsAre("2:67-68 | more than 64 dots on one line |  | break the line in two"));
    EXPECT_THAT(mistakes_after_first_line(repeated("# ...............................\n", 9)), IsEmpty());
}

TEST(Limits, DottedKeyOfManyParts) {
    EXPECT_THAT(mistakes_after_first_line(repeated("a.", 50000) + "a = 1\n"),
                ElementsAre("2:130-131 | more than 64 dots on one line |  | break the line in two"));
}

TEST(Limits, DottedKeyJustBelowTheLimit) {
    EXPECT_THAT(
        mistakes_after_first_line(repeated("a.", 64) + "a = 1\n"),
        ElementsAre("2:65-66 | lists or tables stand inside each other more than 32 deep |  | a sheet needs "
                    "no more than four"));
}

TEST(Limits, ListsInLists) {
    EXPECT_THAT(
        mistakes_after_first_line("a = " + std::string(100000, '[') + "\n"),
        ElementsAre("2:37-38 | lists or tables stand inside each other more than 32 deep |  | a sheet needs "
                    "no more than four"));
}

TEST(Limits, NamesAndOtherTexts) {
    EXPECT_THAT(mistakes_after_first_line("[house]\nname = \"" + repeated("\u00E9", 120) + "\"\n"),
                IsEmpty());
    EXPECT_THAT(
        mistakes_after_first_line("[house]\nname = \"" + repeated("\u00E9", 121) + "\"\n"),
        ElementsAre("3:8-131 | 'name' in [house] is longer than 120 characters |  | write it shorter"));
    EXPECT_THAT(
        mistakes_after_first_line("[construction." + std::string(121, 'x') + "]\n"),
        ElementsAre(
            "2:15-136 | 'name' in a construction is longer than 120 characters |  | write it shorter"));
}

TEST(Limits, LongLists) {
    const std::string fittings = "[[duct]]\nfittings = [" + repeated("\"x\",", 500);
    EXPECT_THAT(mistakes_after_first_line(fittings + "]\n"), IsEmpty());
    EXPECT_THAT(mistakes_after_first_line(fittings + "\"x\"]\n"),
                ElementsAre("3:2013-2016 | 'fittings' in duct number 1 has more than 500 parts |  | a house "
                            "needs fewer"));
}

TEST(Limits, ManyTables) {
    EXPECT_THAT(mistakes_after_first_line(repeated("[[duct]]\n", 500)), IsEmpty());
    EXPECT_THAT(
        mistakes_after_first_line(repeated("[[duct]]\n", 501)),
        ElementsAre("502:1-9 | 'duct' in the sheet has more than 500 parts |  | a house needs fewer"));
}

TEST(Limits, ControlCharactersInTexts) {
    EXPECT_THAT(
        mistakes_after_first_line("[house]\nname = \"a\\u0007b\"\n[thermostat]\nroom = \"\\u0085\"\n"),
        ElementsAre("3:8-18 | 'name' in [house] holds an invisible control character |  | write it "
                    "again without \\ and on one line",
                    "5:8-16 | 'room' in [thermostat] holds an invisible control character |  | "
                    "write it again without \\ and on one line"));
}

TEST(Limits, TextOfSeveralLines) {
    EXPECT_THAT(mistakes_after_first_line("[house]\nname = \"\"\"a\nb\"\"\"\n"),
                ElementsAre("3:8-9 | 'name' in [house] holds an invisible control character |  | write it "
                            "again without \\ and on one line"));
}

TEST(Limits, NotUtf8) {
    EXPECT_THAT(mistakes_after_first_line("[house]\nname = \"\u00FC\xFC\"\n"),
                ElementsAre("3:10-11 | the sheet is not UTF-8 text from here on |  | save it as UTF-8 in the "
                            "editor, or write this line again"));
}

TEST(Limits, CharactersAboveTheOnesThatHaveANameAreRefused) {
    EXPECT_THAT(mistakes_after_first_line("# \U00100080\n"),
                ElementsAre("2:3-4 | a character here is none that a sheet can hold |  | leave it out"));
}

TEST(Limits, ZeroByte) {
    EXPECT_THAT(mistakes_after_first_line(std::string("a\0b = 1\n", 8)),
                ElementsAre("2:2-3 | an invisible control character stands here |  | delete it"));
}

}  // namespace
