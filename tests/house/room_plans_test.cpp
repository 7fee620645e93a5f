#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DoorHanging;
using house::Space;
using house::WallSide;

const house::Plan& plan_of(const house::Built& built) { return built.house.rooms.at(0).plan.value(); }

house::SurveyDoor& add_swinging_door(house::SurveyRoom& to, WallSide side, WallSide hinged) {
    house::SurveyDoor& door = add_door(to, 130, side, m(0.8));
    door.centre = at(132, m(1));
    door.swings = at(133, house::SurveySwing{DoorHanging::in, hinged});
    return door;
}

TEST(RoomPlans, show_the_walls_and_what_they_face) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    add_wall(survey.rooms[0], 111, WallSide::east, "garage").area = at(111, units::Area(5));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::Plan& plan = plan_of(built);
    EXPECT_EQ(plan.width, m(4));
    EXPECT_EQ(plan.depth, m(3));
    EXPECT_EQ(plan.wall(WallSide::north).beyond, Space::outdoors);
    EXPECT_EQ(plan.wall(WallSide::north).length, m(4));
    EXPECT_EQ(plan.wall(WallSide::north).faces_it, m(4));
    EXPECT_EQ(plan.wall(WallSide::east).beyond, Space::garage);
    EXPECT_EQ(plan.wall(WallSide::east).faces_it, m(2));
    EXPECT_EQ(plan.wall(WallSide::south).beyond, Space::heated_rooms);
}

TEST(RoomPlans, an_area_worked_out_by_hand_is_the_whole_wall) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors").area = at(111, units::Area(9.995));
    EXPECT_EQ(plan_of(planned(survey)).wall(WallSide::north).faces_it, m(4));
}

TEST(RoomPlans, show_the_windows_along_their_walls) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    add_window(survey.rooms[0], 120, WallSide::north, m(1), {m(0.8), m(1.5)}).sill = at(121, m(0.6));
    add_window(survey.rooms[0], 125, WallSide::north, m(3), {m(0.8), m(1.5)}).centre.reset();
    const house::Built built = planned(survey);
    const auto& windows = plan_of(built).windows;
    ASSERT_EQ(windows.size(), 2u);
    EXPECT_EQ(windows[0].name, "window");
    EXPECT_NEAR(windows[0].stretch->from.si(), 0.6, 1e-12);
    EXPECT_NEAR(windows[0].stretch->to.si(), 1.4, 1e-12);
    EXPECT_EQ(windows[0].height, m(1.5));
    EXPECT_EQ(windows[0].sill, m(0.6));
    EXPECT_FALSE(windows[1].stretch);
    EXPECT_FALSE(windows[1].sill);
    EXPECT_EQ(windows[1].width, m(0.8));
}

struct Turn {
    WallSide wall, hinged;
    double east, north;  // its hinge
    bool towards_east, towards_north;
};

TEST(RoomPlans, a_door_sweeps_from_its_hinge_into_the_room) {
    const Turn turns[] = {{WallSide::north, WallSide::west, 0.6, 3, true, false},
                          {WallSide::north, WallSide::east, 1.4, 3, false, false},
                          {WallSide::south, WallSide::west, 0.6, 0, true, true},
                          {WallSide::west, WallSide::south, 0, 0.6, true, true},
                          {WallSide::west, WallSide::north, 0, 1.4, true, false},
                          {WallSide::east, WallSide::south, 4, 0.6, false, true}};
    for (const Turn& turn : turns) {
        house::Survey survey = one_room();
        add_swinging_door(survey.rooms[0], turn.wall, turn.hinged);
        const house::Built built = planned(survey);
        EXPECT_THAT(mistakes(built), IsEmpty());
        const house::DoorSwing swing = plan_of(built).doors.at(0).swing.value();
        EXPECT_NEAR(swing.hinge_east.si(), turn.east, 1e-12);
        EXPECT_NEAR(swing.hinge_north.si(), turn.north, 1e-12);
        EXPECT_NEAR(swing.leaf.si(), 0.8, 1e-12);
        EXPECT_EQ(swing.towards_east, turn.towards_east);
        EXPECT_EQ(swing.towards_north, turn.towards_north);
    }
}

TEST(RoomPlans, a_door_that_opens_out_or_slides_sweeps_nothing_here) {
    house::Survey survey = one_room();
    add_swinging_door(survey.rooms[0], WallSide::south, WallSide::west).swings->value.hanging =
        DoorHanging::out;
    EXPECT_FALSE(plan_of(planned(survey)).doors.at(0).swing);
    survey.rooms[0].doors[0].swings = at(133, house::SurveySwing{DoorHanging::slides, {}});
    const house::Built sliding = planned(survey);
    EXPECT_FALSE(plan_of(sliding).doors.at(0).swing);
    EXPECT_EQ(plan_of(sliding).doors.at(0).hanging, DoorHanging::slides);
    survey.rooms[0].doors[0].swings.reset();
    EXPECT_FALSE(plan_of(planned(survey)).doors.at(0).hanging);
}

TEST(RoomPlans, a_hinge_has_to_be_at_an_end_of_the_doors_wall) {
    house::Survey survey = one_room();
    add_swinging_door(survey.rooms[0], WallSide::south, WallSide::south);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("133: the south door of the bath cannot be hinged on its south side -> a door in "
                            "the south wall is hinged west or east"));
    survey.rooms[0].doors[0].wall->value = WallSide::east;
    survey.rooms[0].doors[0].swings->value.hinged = WallSide::west;
    EXPECT_THAT(mistakes(survey), ElementsAre(testing::HasSubstr("is hinged south or north")));
}

TEST(RoomPlans, a_door_in_an_inside_wall_has_to_fit_it) {
    house::Survey survey = one_room();
    add_swinging_door(survey.rooms[0], WallSide::west, WallSide::south).centre->value = m(2.9);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("132: the west door of the bath does not fit its wall (2 ft 7-1/2 in wide, it ends "
                    "at 10 ft 9-7/8 in; the wall is 9 ft 10-1/8 in) -> measure from the wall's west or "
                    "south end to the middle"));
}

TEST(RoomPlans, windows_and_doors_stay_where_they_are_when_a_wall_moves) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::west, "outdoors").room_grows = at(111, m(0.1));
    add_swinging_door(survey.rooms[0], WallSide::south, WallSide::west);
    const house::Built as_planned = planned(survey), as_found = found(survey);
    EXPECT_NEAR(plan_of(as_planned).doors.at(0).stretch->from.si(), 0.7, 1e-12);
    EXPECT_NEAR(plan_of(as_found).doors.at(0).stretch->from.si(), 0.6, 1e-12);
    EXPECT_NEAR(plan_of(as_planned).width.si(), 4.1, 1e-12);
}

TEST(RoomPlans, a_room_without_four_sides_has_none) {
    house::Survey survey = one_room();
    house::SurveySurface wall;
    wall.place = on_line(140);
    wall.name = at(141, "bay window");
    wall.faces = at(142, "outdoors");
    wall.length = at(143, m(2));
    survey.rooms[0].surfaces.push_back(wall);
    EXPECT_FALSE(planned(survey).house.rooms[0].plan);
    survey.rooms[0].surfaces.clear();
    survey.rooms[0].size.reset();
    survey.rooms[0].floor_area = at(144, units::Area(12));
    EXPECT_FALSE(planned(survey).house.rooms[0].plan);
}

TEST(RoomPlans, a_fixture_needs_one) {
    house::Survey survey = one_room();
    survey.rooms[0].size.reset();
    survey.rooms[0].floor_area = at(144, units::Area(12));
    add_fixture(survey.rooms[0], 120, house::FixtureKind::bed, {m(0), m(0)}, {m(2), m(2)});
    EXPECT_THAT(mistakes(survey),
                ElementsAre("120: the bath has a fixture, but its four sides are not known -> give the "
                            "room its size, and its walls as [room.wall.north]; or leave the fixture out"));
}

}  // namespace
