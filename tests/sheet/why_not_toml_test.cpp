// What is not TOML gives one mistake, where the parser stopped, in the sheet's own words and with its
// full text.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "printed.hpp"

namespace {

using testing::ElementsAre;

TEST(NotToml, NumberWithUnitWithoutQuotes) {
    EXPECT_THAT(mistakes_after_first_line("[[duct]]\n"
                                          "length = 12 ft # as the tape says\n"),
                ElementsAre("3:10-15 | 'length' has no quotes | a number with a unit needs quotes | write "
                            "length = \"12 ft\""));
}

TEST(NotToml, WordWithoutQuotes) {
    EXPECT_THAT(
        mistakes_after_first_line("[room.wall.north]\n"
                                  "faces = north\n"),
        ElementsAre("3:9-14 | 'faces' has no quotes | a text needs quotes | write faces = \"north\""));
}

TEST(NotToml, FeetAndInchMarksWithoutQuotes) {
    EXPECT_THAT(mistakes_after_first_line("size = 12' 6\"\n"),
                ElementsAre("2:8-14 | 'size' has no quotes | a number with a unit needs quotes | write feet "
                            "and inches as words, in quotes: size = \"12 ft 6-1/2 in\""));
}

TEST(NotToml, NonAsciiValueWithoutQuotes) {
    EXPECT_THAT(mistakes_after_first_line("winter_indoor = 70 \u00B0F\n"),
                ElementsAre("2:17-22 | 'winter_indoor' has no quotes | a number with a unit needs quotes | "
                            "write winter_indoor = \"70 \u00B0F\""));
}

TEST(NotToml, ListWithoutQuotes) {
    EXPECT_THAT(mistakes_after_first_line("size = [2 ft, 3 ft]\n"),
                ElementsAre("2:8-20 | 'size' has no quotes | every text in a list needs quotes | write size "
                            "= [\"2 ft\", \"3 ft\"]"));
}

TEST(NotToml, PartOfAListOfSeveralLinesWithoutQuotes) {
    EXPECT_THAT(mistakes_after_first_line("layers = [\n"
                                          "  \"siding\",\n"
                                          "  plaster,\n"
                                          "]\n"),
                ElementsAre("4:3-10 | 'plaster' has no quotes | a text needs quotes | write \"plaster\""));
}

TEST(NotToml, PartOfBracesWithoutQuotes) {
    EXPECT_THAT(mistakes_after_first_line("above = { space = attic }\n"),
                ElementsAre("2:19-24 | 'attic' has no quotes | a text needs quotes | write \"attic\""));
}

TEST(NotToml, TrueInCapitals) {
    EXPECT_THAT(mistakes_after_first_line("hidden = True\n"),
                ElementsAre("2:10-14 | 'hidden' cannot be 'True' | is it true or false? | write hidden = "
                            "true or hidden = false"));
}

TEST(NotToml, YesForTrue) {
    EXPECT_THAT(mistakes_after_first_line("hidden = yes\n"),
                ElementsAre("2:10-13 | 'hidden' cannot be 'yes' | is it true or false? | write hidden = true "
                            "or hidden = false"));
}

TEST(NotToml, NumberWithLeadingZero) {
    EXPECT_THAT(
        mistakes_after_first_line("built = 0192\n"),
        ElementsAre(
            "2:9-13 | 'built' is not a number a sheet can hold |  | write a plain number, as 1924 or 0.8"));
}

TEST(NotToml, NumberTooLong) {
    EXPECT_THAT(
        mistakes_after_first_line("built = 99999999999999999999\n"),
        ElementsAre(
            "2:9-29 | 'built' is not a number a sheet can hold |  | write a plain number, as 1924 or 0.8"));
}

TEST(NotToml, ColonForEqualsSign) {
    EXPECT_THAT(
        mistakes_after_first_line("name: bath\n"),
        ElementsAre(
            "2:5-6 | 'name' is followed by a colon | an equals sign belongs here | write name = \"bath\""));
}

TEST(NotToml, ColonBeforeQuotes) {
    EXPECT_THAT(
        mistakes_after_first_line("name : \"bath\"\n"),
        ElementsAre(
            "2:6-7 | 'name' is followed by a colon | an equals sign belongs here | write name = \"bath\""));
}

TEST(NotToml, WordAlone) {
    EXPECT_THAT(mistakes_after_first_line("name\n"),
                ElementsAre("2:1-5 | 'name' has no value |  | write name = \"...\", or leave the line out"));
}

TEST(NotToml, EqualsSignAlone) {
    EXPECT_THAT(mistakes_after_first_line("name = # nothing yet\n"),
                ElementsAre("2:1-5 | 'name' has no value |  | write name = \"...\", or leave the line out"));
}

TEST(NotToml, EqualsSignMissing) {
    EXPECT_THAT(mistakes_after_first_line("name \"bath\"\n"),
                ElementsAre("2:1-5 | an equals sign is missing after 'name' |  | write a word, an equals "
                            "sign and a value: length = \"12 ft\""));
}

TEST(NotToml, TwoEqualsSigns) {
    EXPECT_THAT(mistakes_after_first_line("name == \"bath\"\n"),
                ElementsAre("2:7-8 | this is not written as a sheet needs it |  | each line is a word, an "
                            "equals sign and a value: length = \"12 ft\""));
}

TEST(NotToml, NoWord) {
    EXPECT_THAT(mistakes_after_first_line("= 3\n"),
                ElementsAre("2:1-2 | this is not written as a sheet needs it |  | each line is a word, an "
                            "equals sign and a value: length = \"12 ft\""));
}

TEST(NotToml, CurlyQuotes) {
    EXPECT_THAT(mistakes_after_first_line("name = \u201Cbath\u201D\n"),
                ElementsAre("2:8-9 | a curly quote \u201C stands where a straight one is needed | pasted "
                            "from a word processor? | write the straight quote \" at both ends"));
}

TEST(NotToml, CurlyQuotesAroundAWord) {
    EXPECT_THAT(mistakes_after_first_line("\u201Cname\u201D = \"bath\"\n"),
                ElementsAre("2:1-2 | a curly quote \u201C stands where a straight one is needed | pasted "
                            "from a word processor? | write the straight quote \" at both ends"));
}

TEST(NotToml, CurlyQuotesInAList) {
    EXPECT_THAT(mistakes_after_first_line("layers = [\u201Csiding\u201D]\n"),
                ElementsAre("2:11-12 | a curly quote \u201C stands where a straight one is needed | pasted "
                            "from a word processor? | write the straight quote \" at both ends"));
}

TEST(NotToml, ClosingQuoteMissing) {
    EXPECT_THAT(mistakes_after_first_line("name = \"bath\n"
                                          "storey = 2\n"),
                ElementsAre("2:8-13 | a text does not end | it begins here | end it with \""));
}

TEST(NotToml, ClosingSingleQuoteMissing) {
    EXPECT_THAT(mistakes_after_first_line("name = 'bath\n"),
                ElementsAre("2:8-13 | a text does not end | it begins here | end it with '"));
}

TEST(NotToml, ClosingQuoteMissingAtTheEnd) {
    EXPECT_THAT(mistakes_after_first_line("name = \"bath"),
                ElementsAre("2:8-13 | a text does not end | it begins here | end it with \""));
}

TEST(NotToml, ClosingQuoteMissingInAList) {
    EXPECT_THAT(mistakes_after_first_line("layers = [\"siding\", \"plaster]\n"),
                ElementsAre("2:21-30 | a text does not end | it begins here | end it with \""));
}

TEST(NotToml, ThreeQuotesNeverClosed) {
    EXPECT_THAT(mistakes_after_first_line("name = \"\"\"bath\n"
                                          "storey = 2\n"),
                ElementsAre("2:8-11 | a text does not end | it begins here | end it with \"\"\""));
}

TEST(NotToml, QuoteMarkInsideAText) {
    EXPECT_THAT(mistakes_after_first_line("length = \"12' 6\" wide\"\n"),
                ElementsAre("2:18-19 | the text ends before this | a quote mark inside a text ends it | "
                            "write \\\" for a quote mark; for inches write in: \"12 ft 6 in\""));
}

TEST(NotToml, BackslashInAText) {
    EXPECT_THAT(mistakes_after_first_line("name = \"attic\\bath\\west\"\n"),
                ElementsAre("2:20-21 | a backslash in a text has a meaning of its own |  | write \\\\ for a "
                            "backslash, or put the text in single quotes"));
}

}  // namespace
