#include <gtest/gtest.h>

#include <string>

#include "report/text.hpp"

namespace {

using house::Mistake;
using house::Place;
using report::mistakes_text;

constexpr const char* sheet =
    "[[room]]\n"
    "name = \"bath\"\n"
    "\tcentre = \"6 ft 9 in\"   # tab\n"
    "größe = 3\r\n"
    "fitings = [\"trunk start, square\"]\n";

TEST(MistakesText, shows_each_mistake_over_the_sheets_own_line) {
    const Mistake wall{"the north window does not fit its wall",
                       "2 ft 4 in wide, it ends at 7 ft 11 in",
                       "measure from the wall's west end to the middle of the window",
                       {3, 11, 22},
                       {}};
    const Mistake word{
        "unknown word 'fitings' in duct 'main trunk'", "did you mean 'fittings'?", "", {5, 1, 8}, {}};
    EXPECT_EQ(mistakes_text("broken.toml", sheet, {wall, word}, {100, false}),
              "broken.toml:3:11: the north window does not fit its wall\n"
              "   3 | \tcentre = \"6 ft 9 in\"   # tab\n"
              "     | \t         ^^^^^^^^^^^ 2 ft 4 in wide, it ends at 7 ft 11 in\n"
              "   measure from the wall's west end to the middle of the window\n"
              "broken.toml:5:1: unknown word 'fitings' in duct 'main trunk'\n"
              "   5 | fitings = [\"trunk start, square\"]\n"
              "     | ^^^^^^^ did you mean 'fittings'?\n"
              "2 mistakes; nothing was computed.\n");
}

TEST(MistakesText, counts_code_points_and_names_the_second_place) {
    const Mistake twice{"'größe' is written twice", "", "keep one of the two", {4, 1, 6}, Place{2, 1, 5}};
    EXPECT_EQ(mistakes_text("a.toml", sheet, {twice}, {80, false}),
              "a.toml:4:1: 'größe' is written twice\n"
              "   4 | größe = 3\n"
              "     | ^^^^^\n"
              "   first written here (line 2)\n"
              "   keep one of the two\n"
              "1 mistake; nothing was computed.\n");
    const Mistake gone{"the duct hangs on the trunk, which is not there", "", "", {4, 1, 6}, Place{2, 1, 5}};
    EXPECT_NE(mistakes_text("a.toml", sheet, {gone}, {80, false}).find("   the other place (line 2)\n"),
              std::string::npos);
}

TEST(MistakesText, cuts_a_long_line_around_its_mark) {
    const std::string line = std::string(100, 'a') + " wrong " + std::string(100, 'b');
    const std::string text =
        mistakes_text("a.toml", line, {{"it is wrong", "here", "", {1, 102, 107}, {}}}, {60, false});
    EXPECT_EQ(text,
              "a.toml:1:102: it is wrong\n"
              "   1 | ...aaaaaaaaaaaaaaaaaaaa wrong bbbbbbbbbbbbbbbbbbbb...\n"
              "     |                         ^^^^^ here\n"
              "1 mistake; nothing was computed.\n");
}

TEST(MistakesText, puts_long_words_beside_the_mark_under_it) {
    const std::string under(60, 'x');
    const std::string text =
        mistakes_text("a.toml", "word = 1", {{"it is wrong", "x " + under, "", {1, 1, 5}, {}}}, {60, false});
    EXPECT_NE(text.find("     | ^^^^\n     | x\n"), std::string::npos) << text;
}

TEST(MistakesText, stands_without_a_place_and_outside_the_sheet) {
    EXPECT_EQ(
        mistakes_text("a.toml", "", {{"there is no [house]", "", "write [house]", {}, {}}}, {80, false}),
        "a.toml: there is no [house]\n"
        "   write [house]\n"
        "1 mistake; nothing was computed.\n");
    EXPECT_NE(mistakes_text("a.toml", "x", {{"text ends", "", "", {9, 4, 4}, {}}}, {80, false})
                  .find("   9 | \n     | ^\n"),
              std::string::npos);
}

TEST(MistakesText, lets_no_control_character_of_a_sheet_out) {
    const std::string text =
        mistakes_text("a.toml", "a\x1b[2Jb", {{"bad", "", "", {1, 2, 3}, {}}}, {80, false});
    EXPECT_EQ(text.find('\x1b'), std::string::npos);
    EXPECT_NE(text.find("   1 | a?[2Jb\n     |  ^\n"), std::string::npos) << text;
}

TEST(MistakesText, colours_only_where_the_paper_takes_it) {
    const std::string text = mistakes_text("a.toml", "ab", {{"bad", "", "", {1, 1, 3}, {}}}, {80, true});
    EXPECT_NE(text.find("\x1b[1m^^\x1b[0m"), std::string::npos);
}

}  // namespace
