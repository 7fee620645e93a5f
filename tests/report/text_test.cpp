#include "report/text.hpp"

#include <gtest/gtest.h>

#include <string>

namespace {

using namespace report;

Page small_page() {
    Page page;
    page.headline = "bath: a 6 in round pipe gives 63 cfm of supply air; the bath needs 52 (41-67)";
    page.verdict = "Probably: the bath reaches 74 F on a 3 F night with the damper open.";
    page.tables.push_back(
        {"",
         {{"pipe", Align::left}, {"carries", Align::decimal}, {"rate", Align::decimal}, {"n", Align::right}},
         {{false, {"5 in", "51 cfm", "0.08", "1"}},
          {true, {"6 in", "163", "0.125", "10"}},
          {false, {"3-1/4 x 10 in", "not possible", "1", "2"}}}});
    page.notes = {
        {"why 52 cfm",
         {"at 74 F inside and 3 F outside the bath loses 1,570 Btu/h: windows 420, west wall 280"}},
        {"assumed", {"air leakage \"leaky\": needs 46-64 cfm, which is the largest of all", "two smaller"}}};
    page.cautions = {"local codes decide"};
    return page;
}

TEST(Text, draws_a_page_at_80_columns) {
    EXPECT_EQ(text(small_page(), {80, false}),
              "bath: a 6 in round pipe gives 63 cfm of supply air; the bath needs 52 (41-67)\n"
              "Probably: the bath reaches 74 F on a 3 F night with the damper open.\n"
              "\n"
              "  pipe            carries        rate     n\n"
              "  5 in             51 cfm        0.08     1\n"
              "> 6 in            163            0.125   10\n"
              "  3-1/4 x 10 in   not possible   1        2\n"
              "\n"
              "why 52 cfm    at 74 F inside and 3 F outside the bath loses 1,570 Btu/h: windows\n"
              "              420, west wall 280\n"
              "assumed       air leakage \"leaky\": needs 46-64 cfm, which is the largest of all\n"
              "              two smaller\n"
              "take care     local codes decide\n");
}

TEST(Text, wraps_at_60_columns_and_sets_in_the_second_line_of_a_list) {
    EXPECT_EQ(text(small_page(), {60, false}),
              "bath: a 6 in round pipe gives 63 cfm of supply air; the bath\n"
              "needs 52 (41-67)\n"
              "Probably: the bath reaches 74 F on a 3 F night with the\n"
              "damper open.\n"
              "\n"
              "  pipe            carries        rate     n\n"
              "  5 in             51 cfm        0.08     1\n"
              "> 6 in            163            0.125   10\n"
              "  3-1/4 x 10 in   not possible   1        2\n"
              "\n"
              "why 52 cfm    at 74 F inside and 3 F outside the bath loses\n"
              "              1,570 Btu/h: windows 420, west wall 280\n"
              "assumed       air leakage \"leaky\": needs 46-64 cfm, which is\n"
              "                the largest of all\n"
              "              two smaller\n"
              "take care     local codes decide\n");
}

TEST(Text, is_never_wider_than_100_columns) {
    EXPECT_EQ(text(small_page(), {100, false}), text(small_page(), {240, false}));
}

TEST(Text, marks_with_colour_only_where_the_paper_takes_it) {
    const std::string plain = text(small_page(), {80, false});
    std::string coloured = text(small_page(), {80, true});
    EXPECT_EQ(plain.find('\x1b'), std::string::npos);
    EXPECT_NE(coloured.find("\x1b[1m> 6 in"), std::string::npos);
    for (const std::string escape : {"\x1b[1m", "\x1b[2m", "\x1b[0m"})
        for (std::size_t at = coloured.find(escape); at != std::string::npos; at = coloured.find(escape))
            coloured.erase(at, escape.size());
    EXPECT_EQ(coloured, plain);
}

TEST(Text, breaks_headings_before_a_table_grows_too_wide) {
    Page page;
    page.tables.push_back(
        {"",
         {{"pipe"}, {"carries at the friction rate", Align::decimal}, {"needs", Align::decimal}},
         {{false, {"5 in", "51 cfm", "52 cfm"}}}});
    EXPECT_EQ(text(page, {30, false}),
              "\n"
              "  pipe   carries at     needs\n"
              "         the friction\n"
              "         rate\n"
              "  5 in   51 cfm         52 cfm\n");
}

TEST(Text, breaks_long_names_where_nothing_else_gives) {
    Page page;
    page.tables.push_back(
        {"",
         {{"surface"}, {"loses", Align::right}},
         {{false, {"wall to the large room in the north", "1,240"}}, {true, {"door", "80"}}}});
    EXPECT_EQ(text(page, {30, false}),
              "\n"
              "  surface                loses\n"
              "  wall to the large      1,240\n"
              "  room in the north\n"
              "> door                      80\n");
}

TEST(Text, draws_a_no_break_space_as_a_space_and_does_not_break_there) {
    Page page;
    page.headline = "the pipe in the wall is 6\u00a0in";
    EXPECT_EQ(text(page, {26, false}), "the pipe in the wall is\n6 in\n");
}

TEST(Text, leaves_out_what_a_page_has_not) {
    EXPECT_EQ(text({}, {80, false}), "");
    Page page;
    page.headline = "all is well";
    EXPECT_EQ(text(page, {80, false}), "all is well\n");
}

}  // namespace
