// One line of a sheet taken apart, and lines and columns as an editor counts them.
#include "sheet/sheet_line.hpp"

#include <gtest/gtest.h>

#include "printed.hpp"
#include "sheet/source_lines.hpp"

namespace {

using namespace sheet;
using house::Place;

SheetLine only_line(std::string_view text) { return sheet_line(SourceLines(text), 1); }

TEST(SheetLine, WordMarkAndValue) {
    const SheetLine line = only_line("  length = 12 ft  # by the tape");
    EXPECT_EQ(line.word, "length");
    EXPECT_EQ(line.mark, '=');
    EXPECT_EQ(line.value, "12 ft");
    EXPECT_EQ(line.heading, "");
    EXPECT_EQ(place_in(line, line.value), (Place{1, 12, 17}));
}

TEST(SheetLine, NumberSignInsideQuotesIsNoComment) {
    EXPECT_EQ(only_line("name = \"bay #2\" # here").value, "\"bay #2\"");
}

TEST(SheetLine, Colon) {
    EXPECT_EQ(only_line("name: bath").mark, ':');
    EXPECT_EQ(only_line("name: bath").value, "bath");
    EXPECT_EQ(only_line("name bath").mark, 0);
}

TEST(SheetLine, Heading) {
    EXPECT_EQ(only_line(" [[room]] # upstairs").heading, "[[room]]");
    EXPECT_EQ(only_line("[site").heading, "[site");
    EXPECT_EQ(only_line("x = [1]").heading, "");
}

TEST(SheetLine, UnclosedQuote) {
    EXPECT_EQ(unclosed_quote(only_line("name = \"bath")), "\"bath");
    EXPECT_EQ(unclosed_quote(only_line("a = [\"x\", 'y]")), "'y]");
    EXPECT_EQ(unclosed_quote(only_line("a = \"12' 6\\\"\" # \"")), "");
}

TEST(SheetLine, PutsQuotesAround) {
    EXPECT_EQ(with_quotes("12 ft"), "\"12 ft\"");
    EXPECT_EQ(with_quotes("[ 2 ft,3 ft ]"), "[\"2 ft\", \"3 ft\"]");
    EXPECT_EQ(with_quotes("12' 6\""), "");
    EXPECT_EQ(with_quotes("[[2 ft], 3 ft]"), "");
    EXPECT_EQ(with_quotes("[2 ft"), "");
    EXPECT_EQ(with_quotes("["), "");
}

TEST(SourceLines, CountsLinesOfAnyEnding) {
    const SourceLines lines(
        "\xEF\xBB\xBF"
        "one\r\ntwo\n\nfour");
    EXPECT_EQ(lines.line(1), "one");
    EXPECT_EQ(lines.line(2), "two");
    EXPECT_EQ(lines.line(3), "");
    EXPECT_EQ(lines.line(4), "four");
    EXPECT_EQ(lines.line(5), "");
    EXPECT_EQ(lines.line(0), "");
}

TEST(SourceLines, ColumnsCountCodePoints) {
    EXPECT_EQ(from_column("\u00E9\u20ACx", 3), "x");
    EXPECT_EQ(from_column("ab", 3), "");
    EXPECT_EQ(from_column("ab", 9), "");
    const std::string_view line = "\u00E9 = \u00BD";
    EXPECT_EQ(place_of_part(7, line, line.substr(5)), (Place{7, 5, 6}));
}

TEST(SourceLines, Trims) {
    EXPECT_EQ(trimmed("\t a b \t"), "a b");
    EXPECT_EQ(trimmed(" \t"), "");
    EXPECT_EQ(trimmed(""), "");
}

}  // namespace
