// A sheet with every word in it arrives whole in the survey, each value with its place: house and rooms.
#include "expect_given.hpp"

namespace {

using namespace units::unit;
using house::Place;
using testing::ElementsAre;

TEST(Read, FindsNoMistakeInTheFullSheet) { EXPECT_THAT(mistakes_in(full_sheet), ElementsAre()); }

TEST(Read, House) {
    EXPECT_EQ(survey().house_place, at("[house]"));
    expect_given(survey().house_name, "Quarry Cottage");
    expect_given(survey().built, 1908, "1908");
    ASSERT_TRUE(survey().storeys);
    EXPECT_EQ(survey().storeys->value, 2);
    EXPECT_EQ(survey().storeys->place, (Place{6, 11, 12}));
    expect_given(survey().frame, house::Frame::balloon, "\"balloon\"");
    ASSERT_TRUE(survey().air_leakage);
    EXPECT_EQ(std::get<house::LeakageClass>(survey().air_leakage->value), house::LeakageClass::very_leaky);
    EXPECT_EQ(survey().air_leakage->place, at("\"very leaky\""));
    expect_given(survey().thermostat_room, std::string("landing"), "\"landing\"\n[construction");
}

TEST(Read, AirLeakageByTest) {
    const auto read = sheet::read("sheet = 1\nhouse.air_leakage = \"14 ACH50\"\n");
    ASSERT_TRUE(read.survey.air_leakage);
    const auto& test = std::get<units::LeakageTest>(read.survey.air_leakage->value);
    EXPECT_NEAR(test.at_50_pascal / per_hour, 14, tolerance);
    EXPECT_EQ(read.survey.air_leakage->place, (Place{2, 21, 31}));
}

TEST(Read, Site) {
    EXPECT_EQ(survey().site.place, at("[site]"));
    expect_quantity(survey().site.elevation, 1000 * foot, "\"1000 ft\"");
    expect_quantity(survey().site.winter_outdoor, fahrenheit(-4), "\"-4 F\"");
    expect_quantity(survey().site.winter_indoor, fahrenheit(68), "\"68 F\"");
}

TEST(Read, ConstructionsInTheSheetsOrder) {
    ASSERT_EQ(survey().constructions.size(), 2u);
    const auto& wall = survey().constructions[0];
    EXPECT_EQ(wall.name, "outer_wall");
    EXPECT_EQ(wall.place, (Place{23, 15, 25}));
    ASSERT_EQ(wall.layers.size(), 2u);
    expect_given(wall.layers[0], "clapboard");
    expect_given(wall.layers[1], "board sheathing, 3/4 in");
    expect_quantity(wall.studs, 24 * inch, "\"24 in\"");
    ASSERT_TRUE(wall.framing);
    EXPECT_NEAR(wall.framing->value, 0.25, tolerance);
    EXPECT_EQ(wall.framing->place, at("\"25 %\""));
    expect_quantity(wall.u, 0.25 * btu_per_hour_square_foot_fahrenheit, "\"0.25 Btu/h.ft2.F\"");
    expect_quantity(wall.r, 13 * r_value_us, "\"R-13\"");
    EXPECT_EQ(survey().constructions[1].name, "attic_floor");
    EXPECT_FALSE(survey().constructions[1].studs);
}

TEST(Read, Spaces) {
    ASSERT_EQ(survey().spaces.size(), 2u);
    expect_quantity(survey().spaces.at(house::Space::porch).winter, fahrenheit(40), "\"40 F\"");
    expect_quantity(survey().spaces.at(house::Space::attic).winter, fahrenheit(20), "\"20 F\"");
}

TEST(Read, WhatSpacesAreLike) {
    const auto read = sheet::read(
        "sheet = 1\n[space.crawl]\nvented = false\nventilation = \"60 cfm\"\nperimeter = \"30 m\"\n"
        "height = \"1 m\"\nabove_ground = \"0 m\"\nconstruction = \"stone\"\nheat = \"500 W\"\n"
        "[space.porch]\nventilation = \"2 ACH\"\nouter_area = \"20 m2\"\nroof = \"boards\"\n"
        "roof_area = \"9 m2\"\nfloor_area = \"8 m2\"\n");
    EXPECT_TRUE(read.mistakes.empty());
    const auto& crawl = read.survey.spaces.at(house::Space::crawl);
    ASSERT_TRUE(crawl.ventilation && crawl.vented && crawl.height && crawl.perimeter && crawl.above_ground);
    EXPECT_EQ(std::get<units::Airflow>(crawl.ventilation->value), 60 * cfm);
    EXPECT_FALSE(crawl.vented->value);
    EXPECT_EQ(crawl.perimeter->value, units::Length(30));
    EXPECT_EQ(crawl.heat->value, units::Power(500));
    EXPECT_EQ(crawl.construction->value, "stone");
    const auto& porch = read.survey.spaces.at(house::Space::porch);
    EXPECT_EQ(std::get<units::AirChange>(porch.ventilation->value), 2 * per_hour);
    EXPECT_EQ(porch.outer_area->value, units::Area(20));
    EXPECT_EQ(porch.roof_area->value, units::Area(9));
    EXPECT_EQ(porch.roof->value, "boards");
}

TEST(Read, Ventilation) {
    const auto read = sheet::read(
        "sheet = 1\n[ventilation]\nsupply = \"60 cfm\"\nexhaust = \"70 cfm\"\nrecovery = \"70 %\"\n"
        "[[room]]\n[[room.exhaust_fan]]\nflow = \"50 cfm\"\nruns = \"always\"\n");
    EXPECT_TRUE(read.mistakes.empty());
    ASSERT_TRUE(read.survey.ventilation);
    EXPECT_EQ(read.survey.ventilation->supply->value, 60 * cfm);
    EXPECT_EQ(read.survey.ventilation->exhaust->value, 70 * cfm);
    EXPECT_DOUBLE_EQ(read.survey.ventilation->recovery->value, 0.7);
    ASSERT_EQ(read.survey.rooms[0].exhaust_fans.size(), 1u);
    EXPECT_EQ(read.survey.rooms[0].exhaust_fans[0].runs->value, house::FanRuns::always);
}

TEST(Read, RoomItself) {
    ASSERT_EQ(survey().rooms.size(), 2u);
    const auto& room = survey().rooms[0];
    EXPECT_EQ(room.place, (Place{35, 1, 9}));
    expect_given(room.name, "washroom");
    ASSERT_TRUE(room.storey);
    EXPECT_EQ(room.storey->value, 1);
    EXPECT_EQ(room.storey->place, (Place{38, 10, 11}));
    expect_two(room.corner, two(1 * foot, 0 * foot), "[\"1 ft\", \"0 ft\"]");
    expect_two(room.size, two(6 * foot, 8 * foot), "[\"6 ft\", \"8 ft\"]");
    expect_quantity(room.ceiling, 94 * inch, "\"7 ft 10 in\"");
    expect_quantity(room.winter_indoor, fahrenheit(75), "\"75 F\"");
    EXPECT_FALSE(survey().rooms[1].ceiling);
    EXPECT_FALSE(survey().rooms[1].above);
}

TEST(Read, WhatLiesAboveAndBelowARoom) {
    const auto& room = survey().rooms[0];
    ASSERT_TRUE(room.above && room.below);
    EXPECT_EQ(room.above->place.line, 43);
    EXPECT_EQ(room.above->place.column, 9);
    expect_given(room.above->space, "attic");
    expect_given(room.above->construction, "attic_floor");
    expect_given(room.above->becomes, "thick_floor");
    expect_given(room.below->space, "crawl");
    expect_given(room.below->construction, "plank_floor");
    EXPECT_FALSE(room.below->becomes);
}

TEST(Read, WallsInTheSheetsOrder) {
    const auto& walls = survey().rooms[0].walls;
    ASSERT_EQ(walls.size(), 2u);
    EXPECT_EQ(walls[0].side, house::WallSide::west);
    EXPECT_EQ(walls[0].place, at("[room.wall.west]"));
    expect_given(walls[0].faces, "outdoors");
    expect_given(walls[0].construction, "outer_wall");
    expect_given(walls[0].becomes, "warm_wall");
    EXPECT_EQ(walls[1].side, house::WallSide::north);
    EXPECT_EQ(walls[1].place, at("[room.wall.north]"));
    expect_given(walls[1].faces, "landing room");
}

TEST(Read, WindowsAndDoors) {
    const auto& room = survey().rooms[0];
    ASSERT_EQ(room.windows.size(), 1u);
    const auto& window = room.windows[0];
    EXPECT_EQ(window.place, at("[[room.window]]"));
    expect_given(window.name, "west window");
    expect_given(window.wall, house::WallSide::west, "\"west\"");
    expect_quantity(window.centre, 39 * inch, "\"3 ft 3 in\"");
    expect_two(window.size, two(2 * foot, 3 * foot), "[\"2 ft\", \"3 ft\"]");
    expect_quantity(window.sill, 34 * inch, "\"2 ft 10 in\"");
    expect_given(window.glass, "single");
    expect_given(window.becomes, "double, low-e");
    expect_quantity(window.u, 0.9 * btu_per_hour_square_foot_fahrenheit, "\"0.9 Btu/h.ft2.F\"");
    ASSERT_EQ(room.doors.size(), 1u);
    const auto& door = room.doors[0];
    EXPECT_EQ(door.place, at("[[room.door]]"));
    expect_given(door.wall, house::WallSide::east, "\"east\"");
    expect_quantity(door.centre, 65 * inch, "\"5 ft 5 in\"");
    expect_quantity(door.width, 30 * inch, "\"2 ft 6 in\"");
    expect_quantity(door.height, 78 * inch, "\"6 ft 6 in\"");
    expect_quantity(door.u, 0.4 * btu_per_hour_square_foot_fahrenheit, "\"0.4 Btu/h.ft2.F\"");
}

TEST(Read, Summer) {
    const auto& site = survey().site;
    ASSERT_TRUE(site.latitude && survey().north);
    EXPECT_EQ(site.latitude->value.degrees, 44.5);
    EXPECT_EQ(site.latitude->place, at("\"44.5 deg\""));
    EXPECT_EQ(survey().north->value.degrees, -14);
    expect_quantity(site.summer_outdoor, units::unit::fahrenheit(91), "\"91 F\"");
    expect_quantity(site.summer_indoor, units::unit::fahrenheit(76), "\"76 F\"");
    expect_quantity(site.summer_wet_bulb, units::unit::fahrenheit(73), "\"73 F\"");
    expect_quantity(site.daily_range, 22 * units::unit::fahrenheit_degree, "\"22 F\"");
    ASSERT_TRUE(survey().bedrooms);
    EXPECT_EQ(survey().bedrooms->value, 5);
    expect_given(survey().roof, "tile, dark");
    expect_given(survey().rooms[0].use, house::RoomUse::bath, "\"bath\"");
    const auto& window = survey().rooms[0].windows[0];
    ASSERT_TRUE(window.shgc && window.screen && window.shade_closed);
    EXPECT_DOUBLE_EQ(window.shgc->value, 0.55);
    EXPECT_FALSE(window.screen->value);
    expect_given(window.shade, "blind, white");
    EXPECT_DOUBLE_EQ(window.shade_closed->value, 0.7);
    expect_quantity(window.overhang, 21.5 * inch, "\"1 ft 9-1/2 in\"");
    expect_quantity(window.overhang_above, 7 * inch, "\"7 in\"");
}

TEST(Read, KeepsCodePointsAndEscapesOfTexts) {
    const auto read =
        sheet::read("sheet = 1\n[house]\nname = \"K\u00FCche \u65E5\u672C \\u00bd\" # \u00B0\n");
    ASSERT_TRUE(read.survey.house_name);
    EXPECT_EQ(read.survey.house_name->value, "K\u00FCche \u65E5\u672C \u00BD");
    EXPECT_EQ(read.survey.house_name->place, (Place{3, 8, 25}));
    EXPECT_THAT(read.mistakes, testing::IsEmpty());
}

TEST(Read, SameWithWindowsLineEndingsAndByteOrderMark) {
    std::string text = "\xEF\xBB\xBF";
    for (const char c : full_sheet) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
    const auto read = sheet::read(text);
    EXPECT_THAT(read.mistakes, testing::IsEmpty());
    ASSERT_EQ(read.survey.outlets.size(), 3u);
    EXPECT_EQ(read.survey.outlets[1].centre->place, survey().outlets[1].centre->place);
}

TEST(Read, LeavesOutWhatTheSheetLeavesOut) {
    const auto read = sheet::read("sheet = 1\n");
    EXPECT_THAT(read.mistakes, testing::IsEmpty());
    EXPECT_FALSE(read.survey.house_name || read.survey.built || read.survey.air_leakage ||
                 read.survey.cooling);
    EXPECT_FALSE(read.survey.heater || read.survey.blower || read.survey.other_rooms);
    EXPECT_EQ(read.survey.house_place, Place{});
    EXPECT_TRUE(read.survey.rooms.empty() && read.survey.ducts.empty() && read.survey.outlets.empty());
}

}  // namespace
