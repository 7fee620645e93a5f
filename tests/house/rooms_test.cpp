#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;

TEST(Rooms, areas_of_a_plain_room_are_those_of_pencil_and_paper) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, house::WallSide::north, "outdoors");
    add_wall(survey.rooms[0], 111, house::WallSide::east, "outdoors");
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(area(built, 0, "north wall"), 4 * 2.5);
    EXPECT_DOUBLE_EQ(area(built, 0, "east wall"), 3 * 2.5);
    EXPECT_DOUBLE_EQ(area(built, 0, "ceiling"), 4 * 3);
    EXPECT_DOUBLE_EQ(area(built, 0, "floor"), 4 * 3);
    EXPECT_DOUBLE_EQ(built.house.rooms[0].floor_area().si(), 12);
}

TEST(Rooms, a_sheet_without_a_room_is_blamed) {
    EXPECT_THAT(mistakes(no_room()),
                ElementsAre("1: the sheet describes no room -> begin one with [[room]]"));
}

TEST(Rooms, name_and_size_have_to_be_given) {
    house::Survey survey = one_room();
    survey.rooms[0].name.reset();
    survey.rooms[0].size.reset();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("100: the name of this room is missing -> write name = \"bath\"",
                            "100: the size of the  is missing -> write size = [\"7 ft 6 in\", \"9 ft\"]: "
                            "west-east, then south-north"));
}

TEST(Rooms, a_room_without_floor_or_height_is_blamed) {
    house::Survey survey = one_room();
    survey.rooms[0].size->value.second = m(0);
    survey.rooms[0].ceiling->value = m(0);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("104: the bath has no floor -> both sizes must be above zero",
                            "105: the ceiling of the bath is on its floor -> give its height"));
}

TEST(Rooms, the_storey_is_asked_for_only_where_there_are_several) {
    house::Survey survey = one_room();
    survey.rooms[0].storey.reset();
    EXPECT_THAT(mistakes(survey), IsEmpty());
    EXPECT_EQ(planned(survey).house.rooms[0].storey, 1);
    survey.storeys->value = 2;
    EXPECT_THAT(mistakes(survey), ElementsAre("100: the storey of the bath is missing -> write storey = 2"));
}

TEST(Rooms, no_room_lies_above_the_top_storey) {
    house::Survey survey = one_room();
    survey.rooms[0].storey->value = 2;
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("102: the bath lies above the top storey -> the house has 1 (storeys, under [house])"));
}

TEST(Rooms, overlapping_rooms_are_blamed_at_the_later_one) {
    house::Survey survey = one_room();
    add_room(survey, "hall", {m(3.9), m(2)}, {m(2), m(2)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("203: the hall and the bath lie over each other -> corner is the room's south-west "
                    "corner, x east and y north, see 103"));
}

TEST(Rooms, within_a_centimetre_or_on_another_storey_rooms_do_not_overlap) {
    house::Survey survey = one_room();
    survey.storeys->value = 2;
    add_room(survey, "hall", {m(3.995), m(0)}, {m(2), m(3)});
    add_room(survey, "attic room", {m(0), m(0)}, {m(4), m(3)}).storey->value = 2;
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Rooms, a_room_not_drawn_overlaps_nothing) {
    house::Survey survey = one_room();
    add_room(survey, "hall", {m(0), m(0)}, {m(4), m(3)}).corner.reset();
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Rooms, a_room_takes_its_own_temperature_else_the_houses) {
    house::Survey survey = one_room();
    add_room(survey, "hall", {m(10), m(0)}, {m(2), m(2)}).winter_indoor = at(206, units::unit::celsius(23));
    const house::Built built = planned(survey);
    EXPECT_EQ(built.house.rooms[0].winter_indoor, units::unit::celsius(20));
    EXPECT_EQ(built.house.rooms[1].winter_indoor, units::unit::celsius(23));
}

TEST(Rooms, a_ceiling_height_not_measured_is_taken_once_for_all_such_rooms) {
    house::Survey survey = one_room();
    survey.rooms[0].ceiling.reset();
    add_room(survey, "hall", {m(10), m(0)}, {m(2), m(2)}).ceiling.reset();
    add_room(survey, "den", {m(20), m(0)}, {m(2), m(2)});
    const house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::ceiling_height), ElementsAre("the bath", "the hall"));
    EXPECT_DOUBLE_EQ(built.house.rooms[0].ceiling.si(), 8 * 0.3048);
    EXPECT_DOUBLE_EQ(built.house.rooms[2].ceiling.si(), 2.5);
}

TEST(Rooms, a_room_is_altered_where_something_of_it_becomes_something_else) {
    house::Survey survey = one_room();
    EXPECT_FALSE(planned(survey).house.rooms[0].altered);
    survey.rooms[0].below = house::SurveyHorizontal{on_line(130), {}, {}, at(130, "filled_floor")};
    EXPECT_TRUE(is_altered(survey.rooms[0]));
    survey.rooms[0].below.reset();
    add_wall(survey.rooms[0], 110, house::WallSide::north, "outdoors").becomes = at(111, "filled_wall");
    EXPECT_TRUE(is_altered(survey.rooms[0]));
}

TEST(Rooms, a_wall_that_moves_out_makes_the_planned_room_larger) {
    house::Survey survey = one_room();
    auto& wall = add_wall(survey.rooms[0], 110, house::WallSide::west, "outdoors");
    wall.room_grows = at(111, m(0.05));
    EXPECT_EQ(found(survey).house.rooms[0].width, m(4));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(built.house.rooms[0].width.si(), 4.05);
    EXPECT_EQ(built.house.rooms[0].depth, m(3));
    EXPECT_TRUE(house::is_altered(survey.rooms[0]));
}

TEST(Rooms, windows_keep_their_true_place_where_the_end_they_are_measured_from_moves) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, house::WallSide::north, "outdoors");
    add_wall(survey.rooms[0], 112, house::WallSide::west, "outdoors").room_grows = at(113, m(0.1));
    // Half a metre wide, its east edge 5 cm within the wall; furred in by 10 cm it would not fit.
    add_window(survey.rooms[0], 120, house::WallSide::north, m(3.7), {m(0.5), m(1)});
    EXPECT_THAT(mistakes(survey), IsEmpty());
    survey.rooms[0].walls[1].side = house::WallSide::east;
    survey.rooms[0].walls[1].room_grows->value = m(-0.1);
    EXPECT_EQ(mistakes(survey).size(), 1u);
}

TEST(Rooms, an_inside_wall_may_move_and_still_faces_what_is_drawn_beside_it) {
    house::Survey survey = one_room();
    add_room(survey, "hall", {m(4.2), m(0)}, {m(2), m(3)});
    house::SurveyWall wall;
    wall.side = house::WallSide::east;
    wall.place = on_line(110);
    wall.room_grows = at(111, m(0.05));
    survey.rooms[0].walls.push_back(wall);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(area(built, 0, "wall to the hall"), 7.5);
}

TEST(Rooms, growth_that_cannot_be) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, house::WallSide::north, "outdoors").room_grows = at(111, m(1));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("111: no finish makes the bath so much larger or smaller -> write how far the "
                            "inside face of the wall moves out: up to 2 ft"));
}

TEST(Rooms, a_room_outside_the_house) {
    house::Survey survey = one_room();
    survey.house_size = at(22, house::Two{m(4.2), m(3.2)});
    EXPECT_THAT(mistakes(survey), IsEmpty());
    survey.rooms[0].corner->value = {m(0.5), m(0)};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("103: the bath lies outside the house -> corner counts from the house's "
                            "south-west corner, x east and y north, see 22"));
}

}  // namespace
