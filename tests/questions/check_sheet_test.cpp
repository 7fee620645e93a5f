#include "questions/check_sheet.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "questions/sheets.hpp"
#include "sheet/read.hpp"

namespace {

using questions::check_sheet;
using questions::CheckAnswer;
using testing::ElementsAre;
using testing::IsEmpty;

CheckAnswer check(const std::string& sheet) {
    const sheet::Read read = sheet::read(sheet);
    return check_sheet(read.survey, read.mistakes);
}

// "12: text (under the mark)"
std::vector<std::string> texts(const CheckAnswer& answer) {
    std::vector<std::string> texts;
    for (const house::Mistake& mistake : answer.mistakes)
        texts.push_back(std::to_string(mistake.place.line) + ": " + mistake.text +
                        (mistake.under.empty() ? "" : " (" + mistake.under + ")"));
    return texts;
}

int line_of(const std::string& sheet, std::string_view text) {
    const auto end = sheet.begin() + static_cast<std::ptrdiff_t>(sheet.find(text));
    return 1 + static_cast<int>(std::count(sheet.begin(), end, '\n'));
}

TEST(CheckSheet, a_sheet_without_mistakes_tells_what_it_assumes_and_plans) {
    const CheckAnswer answer = check(sheets::bath());
    EXPECT_THAT(texts(answer), IsEmpty());
    EXPECT_TRUE(answer.changes);
    EXPECT_EQ(answer.new_outlets, 1);
    EXPECT_EQ(answer.planned.outlets.size(), 3u);
    EXPECT_FALSE(answer.assumptions.empty());
}

TEST(CheckSheet, every_case_is_without_mistakes) {
    for (const char* name : {"least-sheet", "si-flat-at-1650-m", "upstairs-bath", "hot-corner-room"})
        EXPECT_THAT(texts(check(sheets::a_case(name))), IsEmpty()) << name;
}

TEST(CheckSheet, names_only_their_owners_know_get_the_nearest) {
    std::string sheet = sheets::with(sheets::bath(), "\"single + storm\"", "\"single + strom\"");
    sheet = sheets::with(sheet, "\"dense cellulose, 3-5/8 in\"", "\"dense celulose, 3-5/8 in\"");
    sheet = sheets::with(sheet, "\"top takeoff\"", "\"top takeof\"");
    EXPECT_THAT(texts(check(sheet)),
                ElementsAre(std::to_string(line_of(sheet, "celulose")) +
                                ": no material is called 'dense celulose' (did you mean 'dense cellulose'?)",
                            std::to_string(line_of(sheet, "strom")) +
                                ": no glass is called 'single + strom' (did you mean 'single + storm'?)",
                            std::to_string(line_of(sheet, "takeof\"")) +
                                ": unknown fitting 'top takeof' (did you mean 'top takeoff'?)"));
}

TEST(CheckSheet, shades_and_roofs_are_looked_up_with_or_without_cooling) {
    std::string sheet = sheets::with(sheets::bath(), "glass = \"single + storm\"",
                                     "glass = \"single + storm\"\nshade = \"roller, wite\"");
    sheet = sheets::with(sheet, "[house]\n", "[house]\nroof = \"asphalt, medum\"\n");
    EXPECT_THAT(texts(check(sheet)),
                ElementsAre(std::to_string(line_of(sheet, "medum")) +
                                ": no roof is called 'asphalt, medum' (did you mean 'asphalt, medium'?)",
                            std::to_string(line_of(sheet, "wite")) +
                                ": no shade is called 'roller, wite' (did you mean 'roller, white'?)"));
}

TEST(CheckSheet, what_a_window_becomes_is_looked_up_too) {
    const std::string sheet = sheets::with(sheets::bath(), "glass = \"single + storm\"",
                                           "glass = \"single + storm\"\nbecomes = \"tripel\"");
    EXPECT_THAT(texts(check(sheet)), ElementsAre(std::to_string(line_of(sheet, "tripel")) +
                                                 ": no glass is called 'tripel' (did you mean 'triple'?)"));
}

TEST(CheckSheet, a_name_used_in_many_places_is_blamed_once) {
    const std::string sheet = sheets::with(
        sheets::bath(), "layers = [\"lap siding\", \"board sheathing, 3/4 in\", \"empty stud bay, 3-5/8 in\"",
        "layers = [\"lap sidings\", \"board sheathing, 3/4 in\", \"empty stud bay, 3-5/8 in\"");
    EXPECT_EQ(texts(check(sheet)).size(), 1u);
}

TEST(CheckSheet, mistakes_of_either_stage_are_found_and_those_of_both_named_once) {
    std::string sheet =
        sheets::with(sheets::bath(), "from = \"trunk\"\nat = \"18 ft\"", "from = \"trunk\"\nat = \"30 ft\"");
    sheet = sheets::with(sheet, "length = \"12 ft\"", "length = \"12 ft\"\nstate = \"removed\"");
    sheet = sheets::with(sheet, "room = \"bedroom\"\n[[duct]]",
                         "room = \"bedrom\"\nstate = \"removed\"\n[[duct]]");
    sheet = sheets::with(sheet, "room = \"bath\"", "room = \"bat\"");
    sheet = sheets::with(sheet, "faces = \"outdoors\"\nconstruction = \"wall\"\n[[room.window]]",
                         "faces = \"outdoors\"\nconstruction = \"wal\"\n[[room.window]]");
    EXPECT_THAT(texts(check(sheet)),
                ElementsAre(std::to_string(line_of(sheet, "\"wal\"")) +
                                ": no construction is called 'wal' (did you mean 'wall'?)",
                            std::to_string(line_of(sheet, "30 ft")) +
                                ": the duct bedroom run leaves the trunk beyond its end",
                            std::to_string(line_of(sheet, "\"bedrom\"")) +
                                ": no room is called 'bedrom' (did you mean 'bedroom'?)",
                            std::to_string(line_of(sheet, "\"bat\"")) +
                                ": no room is called 'bat' (did you mean 'bath'?)"));
}

TEST(CheckSheet, the_readers_mistakes_come_with_those_of_the_house_in_the_sheets_order) {
    std::string sheet = sheets::with(sheets::bath(), "length = \"22 ft\"", "length = \"22 feets\"");
    sheet = sheets::with(sheet, "glass = \"single + storm\"", "glass = \"singel\"");
    const std::vector<std::string> found = texts(check(sheet));
    ASSERT_EQ(found.size(), 2u);
    EXPECT_THAT(found[0], testing::StartsWith(std::to_string(line_of(sheet, "singel")) + ": no glass"));
    EXPECT_THAT(found[1], testing::StartsWith(std::to_string(line_of(sheet, "22 feets")) + ":"));
}

// One slip of the pen gives one mistake, not a tail of those that only follow from it.
TEST(CheckSheet, what_only_follows_from_an_unreadable_value_is_left_out) {
    const std::pair<const char*, const char*> slips[] = {
        {"storeys = 2", "storeys = \"two\""},
        {"winter_outdoor = \"3 F\"", "winter_outdoor = \"3 feet\""},
        {"size = [\"7 ft 6 in\", \"9 ft\"]", "size = [\"7 ft 6 in\", \"9 pt\"]"},
        {"from = \"plenum\"", "from = 3"},
        {"shape = \"8 x 16 in\"", "shape = \"8 by 16\""},
        {"name = \"bath\"", "name = 5"},
        {"name = \"trunk\"", "name = 5"},
        {"duct = \"new run\"", "duct = 5"},
        {"floor_area = \"1150 ft2\"", "floor_area = 1150"},
        {"layers = [\"lap siding\", \"board sheathing, 3/4 in\", \"empty stud bay, 3-5/8 in\", \"plaster on "
         "wood lath\"]",
         "layers = 7"}};
    for (const auto& [right, wrong] : slips)
        EXPECT_EQ(texts(check(sheets::with(sheets::bath(), right, wrong))).size(), 1u) << wrong;
}

TEST(CheckSheet, what_is_not_toml_gives_one_mistake) {
    EXPECT_EQ(texts(check("sheet = 1\n[house\n")).size(), 1u);
    EXPECT_EQ(texts(check("sheet = = 1")).size(), 1u);
}

TEST(CheckSheet, a_sheet_that_only_describes_plans_no_change) {
    const std::string sheet = sheets::without_the_new(sheets::bath());
    const CheckAnswer answer = check(sheet);
    EXPECT_THAT(texts(answer), IsEmpty());
    EXPECT_FALSE(answer.changes);
    EXPECT_EQ(answer.new_outlets, 0);
    EXPECT_TRUE(check(sheets::with(sheet, "glass = \"single + storm\"",
                                   "glass = \"single + storm\"\nbecomes = \"triple\""))
                    .changes);
}

TEST(CheckSheet, only_outlets_of_the_supply_side_count_as_new) {
    const std::string sheet = sheets::with(
        sheets::bath(), "face = \"30 x 12 in\"",
        "face = \"30 x 12 in\"\n" +
            std::string(
                "[[duct]]\nname = \"jumper\"\nside = \"return\"\nto = \"return\"\nshape = \"8 in\"\nlength = "
                "\"4 ft\"\n"
                "state = \"new\"\n[[outlet]]\nname = \"new grille\"\nduct = \"jumper\"\nroom = \"bath\"\n"
                "state = \"new\"\n"));
    const CheckAnswer answer = check(sheet);
    EXPECT_THAT(texts(answer), IsEmpty());
    EXPECT_EQ(answer.new_outlets, 1);
}

}  // namespace
