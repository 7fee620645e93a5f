#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::WallSide;

// A bath of 4 x 3 m at 24 C and a hall, its south-west corner and size in metres, at the house's 20 C.
house::Survey bath_and_hall(double x, double y, double width, double depth) {
    house::Survey survey = one_room();
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(24));
    add_room(survey, "hall", {m(x), m(y)}, {m(width), m(depth)});
    return survey;
}

double to_hall(const house::Built& built) { return area(built, 0, "wall to the hall"); }
double rest(const house::Built& built) { return area(built, 0, "other inside walls"); }

TEST(Partitions, a_room_drawn_beside_is_a_neighbour_over_the_shared_length) {
    const house::Built built = planned(bath_and_hall(4, 0, 2, 3));
    EXPECT_DOUBLE_EQ(to_hall(built), 3 * 2.5);
    EXPECT_DOUBLE_EQ(rest(built), (4 + 4 + 3) * 2.5);
}

TEST(Partitions, on_each_of_the_four_sides) {
    EXPECT_DOUBLE_EQ(to_hall(planned(bath_and_hall(4, 0, 2, 3))), 3 * 2.5);
    EXPECT_DOUBLE_EQ(to_hall(planned(bath_and_hall(-2, 0, 2, 3))), 3 * 2.5);
    EXPECT_DOUBLE_EQ(to_hall(planned(bath_and_hall(0, 3, 4, 2))), 4 * 2.5);
    EXPECT_DOUBLE_EQ(to_hall(planned(bath_and_hall(0, -2, 4, 2))), 4 * 2.5);
}

TEST(Partitions, as_far_as_the_rooms_overlap_along_the_wall) {
    EXPECT_NEAR(to_hall(planned(bath_and_hall(4, 2, 2, 5))), 1 * 2.5, 1e-12);
    EXPECT_NEAR(to_hall(planned(bath_and_hall(4, -1, 2, 3))), 2 * 2.5, 1e-12);
    EXPECT_NEAR(to_hall(planned(bath_and_hall(4, 1, 2, 1))), 1 * 2.5, 1e-12);
}

TEST(Partitions, rooms_that_only_touch_at_a_corner_are_none) {
    EXPECT_EQ(to_hall(planned(bath_and_hall(4, 3, 2, 2))), 0);
}

TEST(Partitions, a_walls_thickness_may_lie_between_but_not_more_than_a_foot) {
    EXPECT_DOUBLE_EQ(to_hall(planned(bath_and_hall(4.3, 0, 2, 3))), 3 * 2.5);
    EXPECT_EQ(to_hall(planned(bath_and_hall(4.31, 0, 2, 3))), 0);
}

TEST(Partitions, a_room_on_another_storey_is_none) {
    house::Survey survey = bath_and_hall(4, 0, 2, 3);
    survey.storeys->value = 2;
    survey.rooms[1].storey->value = 2;
    EXPECT_EQ(to_hall(planned(survey)), 0);
}

TEST(Partitions, a_room_not_drawn_is_none) {
    house::Survey survey = bath_and_hall(4, 0, 2, 3);
    survey.rooms[1].corner.reset();
    EXPECT_EQ(to_hall(planned(survey)), 0);
}

TEST(Partitions, a_wall_that_faces_outdoors_has_no_neighbour_from_either_side) {
    house::Survey survey = bath_and_hall(4, 0, 2, 3);
    add_wall(survey.rooms[1], 210, WallSide::west, "outdoors");
    const house::Built built = planned(survey);
    EXPECT_EQ(to_hall(built), 0);
    EXPECT_EQ(area(built, 1, "wall to the bath"), 0);
}

TEST(Partitions, the_lower_of_two_ceilings_counts) {
    house::Survey survey = bath_and_hall(4, 0, 2, 3);
    survey.rooms[1].ceiling->value = m(2.1);
    EXPECT_DOUBLE_EQ(to_hall(planned(survey)), 3 * 2.1);
}

TEST(Partitions, a_wall_that_names_a_room_faces_it_over_its_whole_face) {
    house::Survey survey = bath_and_hall(10, 0, 2, 2);
    add_wall(survey.rooms[0], 110, WallSide::north, "hall");
    EXPECT_DOUBLE_EQ(to_hall(planned(survey)), 4 * 2.5);
}

TEST(Partitions, two_walls_that_name_one_room_add_up) {
    house::Survey survey = bath_and_hall(10, 0, 2, 2);
    add_wall(survey.rooms[0], 110, WallSide::north, "hall");
    add_wall(survey.rooms[0], 111, WallSide::east, "hall");
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(to_hall(built), (4 + 3) * 2.5);
    EXPECT_DOUBLE_EQ(rest(built), (4 + 3) * 2.5);
}

TEST(Partitions, where_both_name_each_other_the_smaller_wall_is_shared) {
    house::Survey survey = bath_and_hall(10, 0, 2, 2);
    add_wall(survey.rooms[0], 110, WallSide::north, "hall");
    add_wall(survey.rooms[1], 210, WallSide::south, "bath");
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(to_hall(built), 2 * 2.5);
    EXPECT_DOUBLE_EQ(rest(built), (4 + 3 + 4 + 3 - 2) * 2.5);
}

TEST(Partitions, the_construction_of_whichever_names_one_counts) {
    house::Survey survey = bath_and_hall(10, 0, 4, 2);
    add_construction(survey, "brick", 2.5);
    add_wall(survey.rooms[0], 110, WallSide::north, "hall").construction = at(111, "brick");
    add_wall(survey.rooms[1], 210, WallSide::south, "bath");
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "wall to the hall"), 2.5);
    std::swap(survey.rooms[0].walls[0].construction, survey.rooms[1].walls[0].construction);
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "wall to the hall"), 2.5);
}

TEST(Partitions, what_a_partition_becomes_counts_in_the_planned_house_alone) {
    house::Survey survey = bath_and_hall(10, 0, 4, 2);
    add_construction(survey, "brick", 2.5);
    add_construction(survey, "lined", 0.9);
    house::SurveyWall& wall = add_wall(survey.rooms[0], 110, WallSide::north, "hall");
    wall.construction = at(111, "brick");
    wall.becomes = at(112, "lined");
    EXPECT_DOUBLE_EQ(u(found(survey), 1, "wall to the bath"), 2.5);
    EXPECT_DOUBLE_EQ(u(planned(survey), 1, "wall to the bath"), 0.9);
}

TEST(Partitions, a_wall_cannot_face_its_own_room) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "bath");
    EXPECT_THAT(mistakes(survey), ElementsAre("110: a wall of the bath faces its own room"));
}

TEST(Partitions, a_partition_is_assumed_only_where_heat_flows) {
    house::Survey survey = bath_and_hall(4, 0, 2, 3);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::partition),
                ElementsAre("wall between the bath and the hall", "inside walls of the bath"));
    survey.rooms[0].winter_indoor.reset();
    const house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::partition), IsEmpty());
    EXPECT_DOUBLE_EQ(to_hall(built), 3 * 2.5);
    EXPECT_EQ(rest(built), 0);
}

TEST(Partitions, inside_walls_named_so_face_the_rooms_not_described) {
    house::Survey survey = one_room();
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(24));
    int line = 110;
    for (WallSide side : {WallSide::north, WallSide::east, WallSide::south})
        add_wall(survey.rooms[0], line++, side, "outdoors");
    EXPECT_DOUBLE_EQ(rest(planned(survey)), 3 * 2.5);
    add_wall(survey.rooms[0], line++, WallSide::west, "heated rooms");
    EXPECT_DOUBLE_EQ(rest(planned(survey)), 3 * 2.5);
}

TEST(Partitions, three_rooms_in_a_row_share_two_walls) {
    house::Survey survey = bath_and_hall(4, 0, 2, 3);
    add_room(survey, "den", {m(6), m(0)}, {m(2), m(3)});
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(area(built, 1, "wall to the bath"), 7.5);
    EXPECT_DOUBLE_EQ(area(built, 1, "wall to the den"), 7.5);
    EXPECT_EQ(area(built, 0, "wall to the den"), 0);
}

}  // namespace
