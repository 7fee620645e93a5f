#include "report/wrap.hpp"

#include <gmock/gmock.h>

using report::wrap;
using report::wrapped;
using testing::ElementsAre;

TEST(Wrap, breaks_at_spaces_and_fills_each_line) {
    EXPECT_THAT(wrap("a bc def ghij", 8), ElementsAre("a bc def", "ghij"));
    EXPECT_THAT(wrap("", 8), ElementsAre(""));
    EXPECT_THAT(wrap("one  two", 8), ElementsAre("one  two"));
}

TEST(Wrap, cuts_a_word_that_is_longer_than_a_line) {
    EXPECT_THAT(wrap("ab cdefghijk lm", 4), ElementsAre("ab", "cdef", "ghij", "k lm"));
}

TEST(Wrap, counts_code_points_not_bytes) {
    EXPECT_EQ(report::columns("m² · 1"), 6u);
    EXPECT_THAT(wrap("ää öö üü", 5), ElementsAre("ää öö", "üü"));
}

TEST(Wrap, sets_a_paragraph_under_its_label) {
    EXPECT_EQ(wrapped({"why   ", 6}, "it is a cold and windy night out there", 30),
              "why   it is a cold and windy\n"
              "      night out there\n");
}
