// The page of `branch` in its corners: nothing drives the air, the room needs none, the bay is too small.
#include <gmock/gmock.h>

#include <algorithm>

#include "report/houses.hpp"
#include "report/page_parts.hpp"
#include "report/pages.hpp"
#include "report/text.hpp"

namespace {

using namespace report_test;
using report::Page;

std::string sheet_named(const std::string& name) {
    for (const NamedSheet& house : sheets())
        if (house.name == name) return house.sheet;
    ADD_FAILURE() << name;
    return {};
}

TEST(LoadsPage, remarks_on_a_storey_without_rooms) {
    const auto about_rooms = [](const Page& page) {
        const report::Note* whole = note(page, "whole house");
        return whole && whole->lines.back().find("describes no room on one of them") != std::string::npos;
    };
    EXPECT_FALSE(about_rooms(report::loads_page(loads_of(bath_sheet()), {})));
    const std::string sheet = bath_sheet();
    const std::size_t others = sheet.find("[other_rooms]"), next = sheet.find("\n[", others + 1);
    const std::string alone = sheet.substr(0, others) + sheet.substr(next + 1);
    EXPECT_TRUE(about_rooms(report::loads_page(loads_of(alone), {})));
    EXPECT_TRUE(about_rooms(report::branch_page(branch_of(alone), {})));
}

// A hall between a warm bath and the rest of the house, with an outlet it does not need.
std::string hall_that_gains() {
    return R"(sheet = 1
[house]
built = 1924
storeys = 2
[site]
winter_outdoor = "3 F"
winter_indoor = "70 F"
[[room]]
name = "bath"
storey = 2
corner = ["0 ft", "0 ft"]
size = ["8 ft", "9 ft"]
winter_indoor = "76 F"
[room.wall.north]
faces = "outdoors"
[[room]]
name = "hall"
storey = 2
corner = ["8 ft", "0 ft"]
size = ["4 ft", "9 ft"]
above = { space = "heated rooms" }
[other_rooms]
floor_area = "1200 ft2"
[[duct]]
name = "hall run"
side = "supply"
from = "plenum"
length = "10 ft"
state = "new"
[[outlet]]
name = "hall register"
duct = "hall run"
room = "hall"
state = "new"
)";
}

TEST(BranchPage, of_a_room_that_gains_says_that_it_needs_no_air) {
    const Page page = report::branch_page(branch_of(hall_that_gains()), {});
    EXPECT_THAT(report::with_plain_spaces(page.headline),
                testing::HasSubstr("; the hall needs none on a 3 F night"));
    EXPECT_THAT(page.verdict, testing::StartsWith("Not needed: "));
    ASSERT_NE(note(page, "why none"), nullptr);
    EXPECT_THAT(
        report::with_plain_spaces(note(page, "why none")->lines[0]),
        testing::MatchesRegex("at 70 F inside and 3 F outside the hall gains ([0-9]+) Btu/h: from the 76 F "
                              "bath [0-9]+"));
    EXPECT_EQ(note(page, "before work"), nullptr);
}

TEST(LoadsPage, of_a_room_that_gains_speaks_of_no_negative_loss) {
    const Page page = report::loads_page(loads_of(hall_that_gains()), {});
    EXPECT_THAT(
        report::with_plain_spaces(page.tables[1].title),
        testing::MatchesRegex("The hall loses nothing at 70 F: the warmer rooms around it bring it [0-9]+ "
                              "Btu/h more than it gives away. It needs no supply air.*"));
}

TEST(BranchPage, of_a_bay_that_is_too_crowded_says_what_has_to_move) {
    const auto answer = branch_of(sheet_named("a crowded bay"));
    const Page page = report::branch_page(answer, {});
    ASSERT_TRUE(answer.passage);
    EXPECT_EQ(page.tables[0].columns.back().heading, "room left in bay 4");
    EXPECT_EQ(page.tables[0].rows[answer.sizing.chosen].cells.back(), "does not pass");
    EXPECT_THAT(report::with_plain_spaces(page.verdict),
                testing::MatchesRegex("No, not as bay 4 is: .* does not pass; .*"));
    ASSERT_NE(note(page, "through"), nullptr);
    EXPECT_EQ(note(page, "to buy"), nullptr);
    for (const report::Row& row : page.tables[0].rows) EXPECT_FALSE(row.recommended);
}

std::string joined(const report::Note& note) {
    std::string all;
    for (const std::string& line : note.lines) all += report::with_plain_spaces(line) + '\n';
    return all;
}

TEST(BranchPage, of_two_bays_tells_what_passes_each_and_which_stop_it) {
    const std::string riser =
        "name = \"riser\"\nside = \"supply\"\nfrom = \"main trunk\"\nat = \"20 ft\"\nlength = \"4 ft\"\n"
        "fittings = [\"top takeoff\"]\nthrough = \"bay 5\"\nstate = \"new\"\n";
    const std::string two =
        with(sheet_named("a crowded bay"),
             "name = \"new bath run\"\nside = \"supply\"\nfrom = \"main trunk\"\nat = \"20 ft\"",
             riser + "[[duct]]\nname = \"new bath run\"\nside = \"supply\"\nfrom = \"riser\"") +
        "\n[[bay]]\nname = \"bay 5\"\nclear = [\"5-3/4 in\", \"5-3/4 in\"]\n";
    const Page page = report::branch_page(branch_of(two), {});
    EXPECT_THAT(
        report::with_plain_spaces(page.verdict),
        testing::MatchesRegex("No, not as bay [45] is: .* does not pass; .*. Bay [45] stops it too.*"));
    EXPECT_THAT(joined(*note(page, "through")),
                testing::AllOf(testing::HasSubstr("bay 5 is 5-3/4 in wide and 5-3/4 in deep, nothing in it"),
                               testing::HasSubstr("bay 4 is 11-3/8 in wide")));
}

// With 1/2 in kept beside the drain the pipe just passes.
TEST(BranchPage, says_where_the_choice_hangs_on_a_guessed_clearance) {
    const std::string close =
        with(with(sheet_named("a crowded bay"), "from_west = \"1-1/2 in\"", "from_west = \"5/8 in\""),
             "11-3/8 in", "12-3/8 in");
    EXPECT_THAT(
        joined(*note(report::branch_page(branch_of(close), {}), "through")),
        testing::HasSubstr("the 1/2 in kept between duct and pipe is a guess, and the choice hangs on "
                           "it: with 1 in none that holds the bath passes"));
}

// The plan comes to nothing, but air flows: what flows is told, and what is wrong with the plan.
TEST(BranchPage, says_so_where_the_plan_leaves_nothing_for_the_ducts) {
    const auto answer = branch_of(sheet_named("no pressure for the ducts"));
    const Page page = report::branch_page(answer, {});
    EXPECT_THAT(joined(*note(page, "friction rate")),
                testing::HasSubstr("the blower has nothing left for the ducts"));
    EXPECT_EQ(page.tables.size(), 1u);
    EXPECT_EQ(note(page, "ducts there"), nullptr);
}

TEST(BranchPage, without_a_bay_speaks_of_none) {
    const Page page = report::branch_page(branch_of(bath_sheet()), {});
    EXPECT_EQ(note(page, "through"), nullptr);
    EXPECT_EQ(page.tables[0].columns.back().heading.find("room left"), std::string::npos);
}

TEST(BranchPage, judges_the_ducts_that_are_there_and_the_way_back) {
    const auto answer = branch_of(with(bath_sheet(), "8 x 16 in", "8 x 8 in"));
    const Page page = report::branch_page(answer, {});
    ASSERT_NE(note(page, "ducts there"), nullptr);
    EXPECT_THAT(
        report::with_plain_spaces(note(page, "ducts there")->lines[0]),
        testing::MatchesRegex("the main trunk is too small: [0-9,]+ ft/min in it, 900 is the usual limit.*"));
    ASSERT_NE(note(page, "way back"), nullptr);
    EXPECT_THAT(report::with_plain_spaces(note(page, "way back")->lines[0]),
                testing::MatchesRegex(
                    "with its door shut and no return in it, the bath must let [0-9]+ cfm out again "
                    "at no more than 0.012 in.wc: a gap of .* under a door 2 ft 8 in wide, or a pair "
                    "of transfer grilles of [0-9]+ in2 each"));
    EXPECT_THAT(report::with_plain_spaces(note(page, "way back")->lines.at(1)),
                testing::MatchesRegex("or over the ceiling: an? [0-9]+ in flexible duct, 8 ft of it .*"));
    ASSERT_NE(note(page, "return side"), nullptr);
    EXPECT_THAT(report::with_plain_spaces(note(page, "return side")->lines[0]),
                testing::HasSubstr("of grille face in all, at 400 ft/min over it"));
}

}  // namespace
