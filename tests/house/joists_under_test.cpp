#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::JoistsRun;
using house::WallSide;

const house::JoistFloor& floor_of(const house::Built& built, std::size_t room = 0) {
    return built.house.rooms.at(room).plan.value().floor.value();
}

// Two rooms side by side, of 1 m and of 2 x 3 m.
house::Survey two_rooms(JoistsRun run) {
    house::Survey survey = no_room();
    add_room(survey, "hall", {m(5), m(2)}, {m(1), m(3)});
    add_room(survey, "bath", {m(6.1), m(2)}, {m(2), m(3)});
    add_floor(survey, run);
    return survey;
}

TEST(JoistsUnder, are_counted_from_the_storeys_west_wall) {
    const house::Built built = planned(two_rooms(JoistsRun::north_south));
    EXPECT_THAT(mistakes(built), IsEmpty());
    const auto& hall = floor_of(built).joists;
    ASSERT_EQ(hall.size(), 3u);
    EXPECT_EQ(hall[0].number, 1);
    EXPECT_NEAR(hall[0].from.si(), 0.175, 1e-12);
    EXPECT_NEAR(hall[0].to.si(), 0.225, 1e-12);
    const auto& bath = floor_of(built, 1).joists;  // from 1.1 to 3.1 m of the storey
    ASSERT_EQ(bath.size(), 5u);
    EXPECT_EQ(bath[0].number, 4);
    EXPECT_NEAR(bath[0].from.si(), 1.4 - 1.1 - 0.025, 1e-12);
    EXPECT_EQ(bath[4].number, 8);
    EXPECT_EQ(floor_of(built).run, JoistsRun::north_south);
    EXPECT_EQ(floor_of(built).depth, m(0.2));
}

TEST(JoistsUnder, that_run_east_west_are_counted_from_the_south) {
    const house::Built built = planned(two_rooms(JoistsRun::east_west));
    ASSERT_EQ(floor_of(built, 1).joists.size(), 8u);  // 0.2 to 3.0 m
    EXPECT_NEAR(floor_of(built, 1).joists[7].to.si(), 3.025, 1e-12);
}

TEST(JoistsUnder, a_sister_makes_its_joist_wider_on_one_side) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    add_sister(survey.floors[0], 2, WallSide::east, m(0.04));
    add_sister(survey.floors[0], 2, WallSide::west, m(0.03));
    add_sister(survey.floors[0], 2, WallSide::west, m(0.01));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::Joist& joist = floor_of(built).joists.at(1);
    EXPECT_NEAR(joist.from.si(), 0.575 - 0.04, 1e-12);
    EXPECT_NEAR(joist.to.si(), 0.625 + 0.04, 1e-12);
}

TEST(JoistsUnder, stay_where_they_are_when_a_wall_moves) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    add_wall(survey.rooms[0], 110, WallSide::west, "outdoors").room_grows = at(111, m(0.1));
    EXPECT_NEAR(floor_of(planned(survey)).joists.at(0).from.si(), 0.275, 1e-12);
    EXPECT_NEAR(floor_of(found(survey)).joists.at(0).from.si(), 0.175, 1e-12);
}

TEST(JoistsUnder, a_floor_that_does_not_say_where_its_first_joist_is_places_none) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    survey.floors[0].first.reset();
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_THAT(floor_of(built).joists, IsEmpty());
    survey.floors[0].joists_run.reset();
    EXPECT_FALSE(planned(survey).house.rooms[0].plan->floor);
}

TEST(JoistsUnder, a_room_nobody_drew_has_no_place_over_them) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    survey.rooms[1].corner.reset();
    EXPECT_THAT(floor_of(planned(survey), 1).joists, IsEmpty());
}

TEST(JoistsUnder, belong_to_the_rooms_of_their_storey) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    survey.storeys->value = 2;
    survey.rooms[1].storey->value = 2;
    const house::Built built = planned(survey);
    EXPECT_TRUE(built.house.rooms[0].plan->floor);
    EXPECT_FALSE(built.house.rooms[1].plan->floor);
}

TEST(JoistsUnder, the_first_needs_the_rest_of_its_floor) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    house::SurveyFloor& floor = survey.floors[0];
    floor.joists_run.reset(), floor.under.reset(), floor.spacing.reset(), floor.joist.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("800: the direction of the joists of this floor is missing -> write joists_run = "
                    "\"north-south\", or \"east-west\"",
                    "800: the spacing of the joists is missing -> write spacing = \"16 in\"",
                    "800: the thickness and depth of the joists is missing -> write joist = [\"1-3/4 in\", "
                    "\"9-1/2 in\"]",
                    "800: the storey that this floor lies under is missing -> write under = \"storey 2\""));
}

TEST(JoistsUnder, what_a_bay_asks_for_is_not_asked_for_twice) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    survey.floors[0].name = at(806, "hall floor");
    survey.floors[0].spacing.reset();
    house::SurveyBay bay;
    bay.place = on_line(850);
    bay.name = at(851, "bay 2");
    bay.floor = at(852, "hall floor");
    bay.between = at(853, std::pair(2, 3));
    survey.bays.push_back(bay);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("800: the spacing of the joists is missing -> write spacing = \"16 in\""));
}

TEST(JoistsUnder, the_first_lies_within_a_spacing) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    survey.floors[0].first->value = m(0.5);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("803: the first joist of this floor lies beyond a spacing -> first is the centre "
                            "of the joist nearest the west or south wall; the spacing is 1 ft 3-3/4 in"));
}

TEST(JoistsUnder, a_storey_has_one_floor_and_the_house_has_the_storey) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    add_floor(survey, JoistsRun::east_west);
    EXPECT_THAT(mistakes(survey), ElementsAre("811: two floors lie under storey 1 -> leave under out of "
                                              "one of them, see 801"));
    survey.floors[1].under->value = 3;
    EXPECT_THAT(mistakes(survey), ElementsAre("811: this floor lies under a storey the house has not -> the "
                                              "house has 1 (storeys, under [house])"));
}

TEST(JoistsUnder, a_sister_stands_on_a_face_of_its_joist) {
    house::Survey survey = two_rooms(JoistsRun::north_south);
    add_sister(survey.floors[0], 2, WallSide::north, m(0.04));
    EXPECT_THAT(mistakes(survey), ElementsAre("806: a joist that runs north-south has no north face for a "
                                              "sister -> its faces are west and east"));
}

}  // namespace
