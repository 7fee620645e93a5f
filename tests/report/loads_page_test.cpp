// The page of `loads`: its rooms, before and after, cold surfaces, a warm bath, one room alone.
#include <gmock/gmock.h>

#include "report/houses.hpp"
#include "report/page_parts.hpp"
#include "report/pages.hpp"

namespace {

using namespace report_test;
using report::Page;
using report::Table;
using units::System;

// Where the work alters a room: the column before the last.
TEST(LoadsPage, the_parts_of_a_rooms_loss_before_the_work_add_up) {
    std::size_t altered = 0;
    for (const System system : {System::us, System::si})
        for (const NamedSheet& house : sheets())
            for (const Table& table : report::loads_page(loads_of(house.sheet), {system, false}).tables) {
                if (table.columns.back().heading.find("after") != 0) continue;
                ++altered;
                const std::size_t before = table.columns.size() - 2;
                EXPECT_EQ(table.columns[before].heading.find("before"), 0u);
                double parts = 0;
                for (std::size_t i = 0; i + 1 < table.rows.size(); ++i)
                    parts += printed_number(table.rows[i].cells[before]);
                const double half = system == System::us ? 5 : 2.5;
                EXPECT_NEAR(parts, printed_number(table.rows.back().cells[before]),
                            half * static_cast<double>(table.rows.size() + 2))
                    << table.title;
            }
    EXPECT_GT(altered, 0u);
}

TEST(LoadsPage, tells_the_coldest_surface_of_every_room_that_has_one) {
    for (const NamedSheet& house : sheets()) {
        const auto answer = loads_of(house.sheet);
        const Page page = report::loads_page(answer, {});
        for (std::size_t i = 0; i < answer.planned.coldest.size(); ++i)
            EXPECT_EQ(
                report::with_plain_spaces(page.tables[i].title).find("Its coldest inside surface is the ") !=
                    std::string::npos,
                answer.planned.coldest[i].has_value())
                << page.tables[i].title;
    }
}

std::vector<std::string> outdoor_air(const std::string& sheet) {
    std::vector<std::string> lines = note(report::loads_page(loads_of(sheet), {}), "outdoor air")->lines;
    for (std::string& line : lines) line = report::with_plain_spaces(line);
    return lines;
}

TEST(LoadsPage, says_how_warm_an_unheated_space_is_and_why) {
    const auto lines = note(report::loads_page(loads_of(bath_sheet()), {}), "unheated")->lines;
    EXPECT_THAT(lines, testing::ElementsAre(
                           testing::MatchesRegex("attic [0-9]+.*F, worked out from its own heat balance")));
}

TEST(LoadsPage, says_how_the_air_leakage_is_shared) {
    EXPECT_THAT(outdoor_air(bath_sheet()),
                testing::ElementsAre("air leakage is shared by outside surface, less upstairs: warm air "
                                     "leaves there"));
    EXPECT_THAT(outdoor_air(with(bath_sheet(), "air_leakage = \"leaky\"", "air_leakage = \"good\"")),
                testing::ElementsAre("air leakage is shared by the rooms' volume, the same air changes "
                                     "everywhere"));
}

TEST(LoadsPage, says_what_ventilation_adds_and_which_fans_are_left_out) {
    const std::string sheet = with(
        with(bath_sheet(), "[heater]\n",
             "[ventilation]\nsupply = \"50 cfm\"\nexhaust = \"70 cfm\"\nrecovery = \"65 %\"\n[heater]\n"),
        "name = \"bath\"\n", "name = \"bath\"\nexhaust_fan = [{ flow = \"80 cfm\" }]\n");
    const auto lines = outdoor_air(sheet);
    ASSERT_EQ(lines.size(), 3u);
    EXPECT_THAT(lines[0], testing::MatchesRegex("with leaks of [0-9]+ cfm, supply of 50 cfm and exhaust of "
                                                "70 cfm the house heats [0-9]+ cfm of outdoor air: .*, of "
                                                "which 65 % is recovered"));
    EXPECT_EQ(lines[2], "exhaust fans that run at times are in no load");
}

TEST(LoadsPage, says_what_fits_badly_only_where_it_does) {
    for (const NamedSheet& house : sheets()) {
        const auto answer = loads_of(house.sheet);
        const Page page = report::loads_page(answer, {});
        EXPECT_EQ(note(page, "fits badly") == nullptr, answer.beyond_limits.empty()) << house.name;
    }
    const Page high = report::loads_page(loads_of(with(bath_sheet(), "620 ft", "7000 ft")), {});
    ASSERT_NE(note(high, "fits badly"), nullptr);
    EXPECT_EQ(
        report::with_plain_spaces(note(high, "fits badly")->lines.back()),
        "the site is above 6,560 ft, where the method was not tried; the thinner air itself is counted");
}

TEST(LoadsPage, tells_each_room_in_a_sentence) {
    const Page page = report::loads_page(loads_of(bath_sheet()), {});
    ASSERT_EQ(page.tables.size(), 3u);
    EXPECT_THAT(report::with_plain_spaces(page.tables[0].title),
                testing::MatchesRegex(
                    "The bath loses [0-9,]+ Btu/h .* at 74 F; before the work [0-9,]+. It needs at least "
                    "[0-9]+ cfm of supply air at the plenum's [0-9]+ F, more by what the way loses. "
                    "Its coldest inside surface is the north window, about [0-9]+ F on that night: it sweats "
                    "once the air is above [0-9]+ % humidity."));
}

TEST(LoadsPage, says_how_much_warmer_the_work_makes_the_coldest_surface) {
    const Page page = report::loads_page(
        loads_of(with(bath_sheet(), "sill = \"3 ft\"\n", "sill = \"3 ft\"\nbecomes = \"triple\"\n")), {});
    EXPECT_THAT(
        report::with_plain_spaces(page.tables[0].title),
        testing::ContainsRegex("humidity; before the work it was at [0-9]+ F and sweated above [0-9]+ %."));
}

TEST(LoadsPage, sets_a_warm_bath_beside_the_same_at_the_houses_temperature) {
    const Page page = report::loads_page(loads_of(bath_sheet()), {});
    ASSERT_NE(note(page, "at 70 F"), nullptr);
    EXPECT_THAT(report::with_plain_spaces(note(page, "at 70 F")->lines[0]),
                testing::MatchesRegex(
                    "the bath loses [0-9,]+ Btu/h and needs at least [0-9]+ cfm of supply air; at 74 F, as "
                    "wanted, it loses [0-9,]+ Btu/h and needs at least [0-9]+ cfm. With the air for 70 F, "
                    "an? [0-9]+ W electric heater makes up the rest"));
    const Page two =
        report::loads_page(loads_of(with(bath_sheet(), "name = \"north bedroom\"\n",
                                         "name = \"north bedroom\"\nwinter_indoor = \"72 F\"\n")),
                           {});
    EXPECT_EQ(note(two, "at 70 F")->lines.size(), 2u);
    const Page cool = report::loads_page(loads_of(with(bath_sheet(), "74 F", "70 F")), {});
    EXPECT_EQ(note(cool, "at 70 F"), nullptr);
}

TEST(LoadsPage, of_one_room_tells_that_room) {
    const auto answer = questions::answer_loads(survey_of(bath_sheet()), "north bedroom");
    const Page page = report::loads_page(answer, {});
    ASSERT_EQ(page.tables.size(), 1u);
    EXPECT_THAT(
        report::with_plain_spaces(page.headline),
        testing::MatchesRegex("the north bedroom loses [0-9,]+ Btu/h .* at 70 F on a [0-9]+ F night.*"));
    EXPECT_THAT(report::with_plain_spaces(page.verdict), testing::StartsWith("It needs at least "));
    EXPECT_EQ(note(page, "at 70 F"), nullptr);  // the bath's
    EXPECT_EQ(note(page, "other rooms"), nullptr);
    EXPECT_THAT(report::with_plain_spaces(note(page, "assumed")->lines[0]),
                testing::HasSubstr("the north bedroom loses "));
}

TEST(LoadsPage, speaks_of_cooling_only_where_there_is_some) {
    EXPECT_FALSE(note(report::loads_page(loads_of(bath_sheet()), {}), "in summer"));
    const Page cooled = report::loads_page(loads_of(cooled_bath_sheet()), {});
    EXPECT_TRUE(note(cooled, "in summer"));
    ASSERT_EQ(cooled.tables.size(), 6u);
    EXPECT_THAT(
        report::with_plain_spaces(cooled.tables[3].title),
        testing::MatchesRegex("The bath gains [0-9,]+ Btu/h .* at 75 F on a 88 F day. Cooling needs at "
                              "least [0-9]+ cfm of supply air at the coil's 58 F; .*"));
}

TEST(LoadsPage, sets_the_cooling_speed_beside_what_the_house_asks_for) {
    const auto line = [](const std::string& sheet) {
        const Page page = report::loads_page(loads_of(sheet), {});
        return report::with_plain_spaces(note(page, "in summer")->lines.back());
    };
    EXPECT_THAT(line(cooled_bath_sheet()), testing::HasSubstr("does not say what the blower moves"));
    const std::string coil = "kind = \"coil\"\n";
    EXPECT_THAT(line(with(cooled_bath_sheet(), coil, coil + "airflow = \"5000 cfm\"\n")),
                testing::EndsWith("moves 5,000 cfm, which is enough"));
    EXPECT_THAT(line(with(cooled_bath_sheet(), coil, coil + "airflow = \"100 cfm\"\n")),
                testing::EndsWith("moves 100 cfm, which is too little on such a day"));
}

}  // namespace
