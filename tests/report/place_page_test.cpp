// The page about places: what it says of a bath filled in by hand (tests/report/a_place.cpp).
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "report/a_place.hpp"
#include "report/page_parts.hpp"
#include "report/pages.hpp"
#include "report/text.hpp"
#include "units/unit.hpp"

namespace {

using namespace report_test;
using questions::PlaceAnswer;
using questions::RuledOut;
using testing::Contains;
using testing::HasSubstr;

report::Page page(const PlaceAnswer& answer) { return report::place_page(answer, {}); }

std::string plain(const std::string& text) { return report::with_plain_spaces(text); }
std::string headline(const PlaceAnswer& answer) { return plain(page(answer).headline); }
std::string verdict(const PlaceAnswer& answer) { return plain(page(answer).verdict); }

std::vector<std::string> lines(const PlaceAnswer& answer, std::string_view label) {
    std::vector<std::string> lines;
    const report::Page drawn = page(answer);
    if (const report::Note* found = note(drawn, label))
        for (const std::string& line : found->lines) lines.push_back(plain(line));
    return lines;
}

std::vector<std::string> headings(const PlaceAnswer& answer) {
    std::vector<std::string> headings;
    const report::Page drawn = page(answer);
    for (const report::Column& column : drawn.tables.at(0).columns) headings.push_back(column.heading);
    return headings;
}

// All places alike in their figures.
PlaceAnswer alike() {
    PlaceAnswer answer = bath_places();
    const questions::PlaceFigures figures = *answer.places[5].figures;
    for (questions::Place& place : answer.places) {
        if (place.figures) place.figures = figures;
        if (place.figures) place.ruled_out = RuledOut::no;
    }
    return answer;
}

TEST(PlacePage, begins_with_where_the_register_goes_and_why_not_in_the_middle) {
    EXPECT_EQ(
        headline(bath_places()),
        "bath: put the register in the floor under the north window, 4 in east of its centre (joist 3 is "
        "in the way of the centre).");
    PlaceAnswer centred = bath_places();
    centred.places[0].location.off_centre = {};
    EXPECT_EQ(headline(centred), "bath: put the register in the floor under the north window.");
}

TEST(PlacePage, says_which_places_are_as_good) {
    PlaceAnswer answer = bath_places();
    answer.as_good = {5};
    EXPECT_THAT(headline(answer), HasSubstr("; by these figures 2 (toe kick, vanity) is as good."));
}

TEST(PlacePage, says_why_no_place_will_do) {
    PlaceAnswer answer = bath_places();
    answer.chosen.reset();
    for (questions::Place& place : answer.places)
        if (place.figures && place.ruled_out == RuledOut::no) place.ruled_out = RuledOut::too_little_air;
    EXPECT_THAT(headline(answer),
                HasSubstr("no place for a register will do. 1, 2 and 3: it brings too little air; "));
    EXPECT_TRUE(lines(answer, "to carry over").empty());
    for (questions::Place& place : answer.places) place.figures.reset();
    EXPECT_EQ(headline(answer), "bath: no place for a register can be built.");
    EXPECT_TRUE(page(answer).tables.empty());
}

TEST(PlacePage, says_what_the_falling_air_asks_for_and_that_it_is_lifted_only_part_of_the_time) {
    const std::string said = verdict(bath_places());
    EXPECT_THAT(said,
                HasSubstr("30 ft/min over the floor at the tub; 14 % of people would feel it: a register "
                          "at the glass is useful."));
    EXPECT_THAT(said, HasSubstr("Place 1 lifts that air while the heater is on, 82 % of the time"));
    EXPECT_THAT(said,
                HasSubstr("Place 3, low wall, east (inside), has a run 6 ft shorter, gives 3 cfm more"));
    EXPECT_THAT(said, HasSubstr("With walls and windows as they are now a register at the glass is needed."));
}

TEST(PlacePage, leaves_the_window_out_where_nothing_falls_off_it) {
    PlaceAnswer answer = bath_places();
    answer.falling.clear();
    answer.window_side = answer.window_side_before = questions::WindowSide::indifferent;
    EXPECT_EQ(verdict(answer), "No glass here sends cold air down: choose by splash, furniture and the run.");
}

TEST(PlacePage, says_where_another_place_would_be_chosen_as_the_room_is_now) {
    PlaceAnswer answer = bath_places();
    answer.chosen_before = 5;
    answer.window_side_before = answer.window_side;
    EXPECT_THAT(verdict(answer),
                HasSubstr("With walls and windows as they are now the answer is another: toe kick, vanity."));
}

TEST(PlacePage, numbers_what_can_be_built_and_marks_the_choice) {
    const report::Page drawn = page(bath_places());
    const report::Table& table = drawn.tables.at(0);
    ASSERT_EQ(table.rows.size(), 4u);
    for (std::size_t row = 0; row < 4; ++row) {
        EXPECT_EQ(table.rows[row].cells[0], std::to_string(row + 1));
        EXPECT_EQ(table.rows[row].cells.size(), table.columns.size());
        EXPECT_EQ(table.rows[row].recommended, row == 0);
    }
    EXPECT_THAT(table.rows[3].cells.back(), HasSubstr("stays up"));
    EXPECT_THAT(lines(bath_places(), "ruled out"),
                testing::ElementsAre(HasSubstr("its warm air stays under the ceiling")));
}

TEST(PlacePage, keeps_a_column_only_where_it_tells_places_apart) {
    EXPECT_THAT(headings(bath_places()),
                testing::ElementsAre("", "where", "supply air, cfm", "needs, cfm", "arrives at, F",
                                     "room reaches, F", "run", HasSubstr("at the tub"), "warm air"));
    EXPECT_THAT(headings(alike()), testing::ElementsAre("", "where", "warm air"));
    EXPECT_THAT(lines(alike(), "at every place"),
                testing::ElementsAre("64 cfm of supply air, 52 needed; it arrives at 121 F; the room reaches "
                                     "77 F; the run is 13 ft, 2 turns; sound of the register: quiet"));
}

TEST(PlacePage, tells_sound_only_beyond_its_accuracy) {
    PlaceAnswer answer = alike();
    answer.places[0].figures->sound = registers::Sound::soft_rush;
    answer.places[0].figures->face_speed = 1.1 * answer.places[5].figures->face_speed;
    EXPECT_THAT(headings(answer), testing::Not(Contains("sound")));
    answer.places[0].figures->face_speed = 1.5 * answer.places[5].figures->face_speed;
    EXPECT_THAT(headings(answer), Contains("sound"));
}

TEST(PlacePage, gives_each_place_that_cannot_be_its_reason) {
    EXPECT_THAT(
        lines(bath_places(), "not possible"),
        testing::ElementsAre("floor, west of the north window: under the tub",
                             "floor, east of the north window: joist 5 is in the way of the boot",
                             "floor, west wall (outside): joist 1 is in the way of the boot",
                             "low wall, west (outside): the wall has no stud bay deep enough for a stack",
                             "floor, south wall (inside): the door swings over it, or hides it when open"));
}

TEST(PlacePage, warns_of_wet_feet_and_not_of_water_far_off_or_far_below) {
    EXPECT_THAT(lines(bath_places(), "wet feet"),
                testing::ElementsAre("1 is 1 ft 2 in from the tub: wet feet step on it; the others are dry"));
    PlaceAnswer answer = bath_places();
    answer.places[0].figures->from_water = 8 * units::unit::inch;
    EXPECT_THAT(lines(answer, "wet feet").at(0), HasSubstr("splash"));
    answer.places[0].location.mount = house::Mount::ceiling;
    EXPECT_TRUE(lines(answer, "wet feet").empty());
}

TEST(PlacePage, tells_of_the_glass_as_planned_and_as_it_is) {
    const std::vector<std::string> glass = lines(bath_places(), "the glass");
    ASSERT_EQ(glass.size(), 2u);
    EXPECT_THAT(glass[0],
                HasSubstr("north window: 50 F inside, it sweats when the room's air is above 49 %"));
    EXPECT_THAT(glass[1], HasSubstr("north window as it is now: 38 F inside"));
    PlaceAnswer same = bath_places();
    same.falling_before = same.falling;
    EXPECT_EQ(lines(same, "the glass").size(), 1u);
}

TEST(PlacePage, writes_what_the_sheet_takes) {
    EXPECT_THAT(
        lines(bath_places(), "to carry over"),
        testing::ElementsAre("under the [[outlet]] \"new bath register\":",
                             "place = { wall = \"north\", centre = \"4 ft 1 in\" }", "mount = \"floor\"",
                             "under the [[duct]] \"new bath run\":", "length = \"17 ft\"",
                             "fittings = [\"side takeoff, straight\", \"round elbow 90, adjustable\", "
                             "\"floor boot, end entry\"]"));
    PlaceAnswer answer = bath_places();
    answer.places[0].location.off_centre = {};
    EXPECT_THAT(lines(answer, "to carry over"), Contains("place = { under = \"north window\" }"));
    answer.chosen = 5;
    EXPECT_THAT(lines(answer, "to carry over"),
                Contains("place = { point = [\"5 ft 10 in\", \"4 ft 4 in\"] }"));
    answer.run_of_the_sheet = false;
    EXPECT_THAT(lines(answer, "to carry over").at(3), HasSubstr("under a new [[duct]]"));
}

// The sheet's reader takes no text that runs over the end of a line.
TEST(PlacePage, breaks_no_line_within_quotes) {
    const std::string drawn = report::text(page(bath_places()), {80, false});
    const std::size_t start = drawn.find("to carry over"), end = drawn.find("how sure");
    ASSERT_LT(start, end);
    std::size_t quotes = 0;
    for (const char c : drawn.substr(start, end - start)) {
        quotes += c == '"' ? 1 : 0;
        EXPECT_TRUE(c != '\n' || quotes % 2 == 0);
    }
}

TEST(PlacePage, prints_same_where_a_figure_is_not_told_apart_from_the_choice) {
    const report::Page drawn = page(bath_places());
    std::vector<std::string> supply;
    for (const report::Row& row : drawn.tables.at(0).rows) supply.push_back(row.cells.at(2));
    EXPECT_THAT(supply, testing::ElementsAre("63", "same", "same", "55"));  // 64 and 66 within a tenth of 63
}

TEST(PlacePage, says_what_same_means_and_only_where_it_stands) {
    EXPECT_THAT(
        lines(bath_places(), "same"),
        testing::ElementsAre("as at the place chosen, as far as these figures are good: within 10 % of "
                             "its air and of what the air is warmer than the room, 2 F of the room"));
    EXPECT_TRUE(lines(alike(), "same").empty());
}

TEST(PlacePage, tells_what_the_way_loses) {
    PlaceAnswer answer = bath_places();
    for (questions::Place& place : answer.places)
        if (place.figures) place.figures->lost_on_the_way = 500 * units::unit::btu_per_hour;
    answer.places[8].figures->lost_on_the_way = 900 * units::unit::btu_per_hour;
    EXPECT_THAT(lines(answer, "on the way"),
                testing::ElementsAre("the air loses, from plenum to register, while the heater is on: 500 "
                                     "Btu/h to 1, the least; 900 Btu/h to 4, the most"));
}

TEST(PlacePage, says_between_which_joists_a_boot_stands) {
    PlaceAnswer answer = bath_places();
    answer.house.rooms[static_cast<std::size_t>(answer.room.index)].plan->floor.reset();
    EXPECT_TRUE(lines(answer, "framing").empty());
    ASSERT_EQ(lines(bath_places(), "framing").size(), 1u);
    EXPECT_THAT(lines(bath_places(), "framing").at(0), HasSubstr("their boots cut no joist and no stud"));
}

TEST(PlacePage, tells_of_a_stack_in_an_outside_wall_how_cold_it_gets) {
    EXPECT_TRUE(lines(bath_places(), "outside wall").empty());
    PlaceAnswer answer = bath_places();
    answer.places[6].figures->in_cold_wall = registers::StackInWall{
        {}, 2 * units::unit::r_value_us, units::unit::fahrenheit(38), 0.33, 60 * units::unit::btu_per_hour};
    answer.places[6].ruled_out = RuledOut::cold_wall;
    PlaceAnswer unknown = answer;
    unknown.places[6].figures->in_cold_wall->wall_assumed = true;
    EXPECT_THAT(lines(unknown, "outside wall").at(0),
                HasSubstr("What the wall is made of is not known: lap siding on boards is taken"));
    EXPECT_THAT(lines(answer, "outside wall"),
                testing::ElementsAre(
                    "3: nothing is left behind the stack for rigid board, R-2 in all between it and outdoors "
                    "(R-6 at least is asked for); while the blower rests its metal falls to 38 F and sweats "
                    "when the room's air is above 33 % of relative humidity; while it runs 60 Btu/h go out "
                    "through the wall there"));
    EXPECT_THAT(lines(answer, "ruled out"),
                Contains(HasSubstr("too little insulation is left behind its stack")));
}

TEST(PlacePage, tells_summer_apart_and_only_where_cooled_air_is_blown) {
    EXPECT_TRUE(lines(bath_places(), "in summer").empty());
    PlaceAnswer answer = bath_places();
    const auto cools = [&](std::size_t at, double cfm, registers::CooledAir becomes) {
        questions::CooledPlace cooled;
        cooled.gives = cfm * units::unit::cfm;
        cooled.air.becomes = becomes;
        if (becomes == registers::CooledAir::falls_back) cooled.air.reaches = 5 * units::unit::foot;
        answer.places[at].figures->cooled = cooled;
    };
    cools(0, 60, registers::CooledAir::falls_back);
    cools(5, 61, registers::CooledAir::over_the_floor);
    cools(6, 62, registers::CooledAir::falls_back);
    cools(8, 50, registers::CooledAir::spreads_above);
    answer.summer = questions::PlaceInSummer{40 * units::unit::cfm, 8};
    EXPECT_THAT(lines(answer, "in summer"),
                testing::ElementsAre(
                    "while the coil is on, the places bring 50 to 62 cfm of cooled air as it leaves the "
                    "coil; this outlet needs 40 cfm on the design day",
                    "the cooled air of 4 spreads under the ceiling and sinks: best",
                    "the cooled air of 1 and 3 falls back before it reaches the ceiling, 5 ft up",
                    "the cooled air of 2 lies cold on the floor",
                    "for cooling alone 4 would be the best, ceiling, middle; the choice above is winter's"));
    answer.summer->chosen = 0;
    EXPECT_EQ(lines(answer, "in summer").back(), "for cooling alone the same place is the best");
    answer.summer->chosen.reset();
    EXPECT_EQ(lines(answer, "in summer").back(), "no place brings enough cooled air");
}

TEST(PlacePage, weighs_what_was_assumed) {
    EXPECT_THAT(lines(bath_places(), "assumed"), Contains(HasSubstr("pressure lost in the filter")));
    EXPECT_THAT(lines(bath_places(), "assumed").at(0), HasSubstr("the place chosen gets 58-66 cfm"));
}

}  // namespace
