#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::WallSide;

// One room of 10 x 8 ft with its north wall outdoors, 8 ft high.
house::Survey cold_wall() {
    house::Survey survey = no_room();
    house::SurveyRoom& room = add_room(survey, "bath", {ft(0), ft(0)}, {ft(10), ft(8)});
    room.ceiling = at(105, ft(8));
    add_wall(room, 110, WallSide::north, "outdoors");
    return survey;
}

TEST(Openings, a_wall_is_net_of_its_windows_and_doors) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    add_window(survey.rooms[0], 120, WallSide::north, m(1), {m(0.8), m(1.5)});
    add_door(survey.rooms[0], 130, WallSide::north, m(0.9)).height = at(132, m(2));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(area(built, 0, "window"), 1.2);
    EXPECT_DOUBLE_EQ(area(built, 0, "north door"), 1.8);
    EXPECT_DOUBLE_EQ(area(built, 0, "north wall"), 10 - 1.2 - 1.8);
}

TEST(Openings, a_door_of_unknown_height_is_a_stock_one) {
    house::Survey survey = cold_wall();
    add_door(survey.rooms[0], 130, WallSide::north, ft(3));
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(area(built, 0, "north door"), ft(3).si() * 80 * 0.0254);
    EXPECT_THAT(taken_for(built, DefaultId::door), ElementsAre("north door of the bath"));
}

TEST(Openings, doors_in_inside_walls_are_left_out) {
    house::Survey survey = cold_wall();
    add_door(survey.rooms[0], 130, WallSide::south, ft(3));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_EQ(find_surface(built.house.rooms[0], "south door"), nullptr);
}

TEST(Openings, a_window_past_the_end_of_its_wall_does_not_fit) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(9), {ft(3), ft(4)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("120: the window of the bath does not fit its wall (3 ft wide, it ends at 10 ft 6 in; "
                    "the wall is 10 ft) -> measure from the wall's west or south end to the middle"));
}

TEST(Openings, a_window_before_the_start_of_its_wall_does_not_fit) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(1), {ft(3), ft(4)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("120: the window of the bath does not fit its wall (3 ft wide, it begins 6 in before "
                    "the wall) -> measure from the wall's west or south end to the middle"));
}

TEST(Openings, a_door_has_to_fit_too) {
    house::Survey survey = cold_wall();
    add_door(survey.rooms[0], 130, WallSide::north, ft(3)).centre = at(133, ft(9));
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("133: the north door of the bath does not fit its wall (3 ft wide, it ends at 10 ft 6 "
                    "in; the wall is 10 ft) -> measure from the wall's west or south end to the middle"));
}

TEST(Openings, a_window_higher_than_its_wall_is_blamed) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(3), ft(5)}).sill = at(121, ft(4));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("120: the window of the bath is larger than its wall -> the wall is "
                            "10 ft long and 8 ft high"));
}

TEST(Openings, a_door_higher_than_its_wall_is_blamed) {
    house::Survey survey = cold_wall();
    add_door(survey.rooms[0], 130, WallSide::north, ft(3)).height = at(134, ft(9));
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("134: the north door of the bath is higher than its wall -> the wall is 8 ft high"));
}

TEST(Openings, in_a_room_of_unknown_size_only_the_size_is_blamed) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(2), ft(3)});
    survey.rooms[0].size.reset();
    EXPECT_EQ(mistakes(survey).size(), 1u);
}

TEST(Openings, a_window_that_just_reaches_the_ceiling_fits) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(10), ft(5)}).sill = at(121, ft(3));
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Openings, windows_over_each_other_are_blamed) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(3), {ft(3), ft(4)});
    add_window(survey.rooms[0], 125, WallSide::north, ft(5), {ft(3), ft(4)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("125: two windows of the bath lie over each other -> measure each from the wall's west "
                    "or south end to its middle, see 120"));
}

TEST(Openings, windows_side_by_side_share_a_mullion_without_blame) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(2.1), {ft(2.2), ft(4)});
    add_window(survey.rooms[0], 125, WallSide::north, ft(4.3), {ft(2.2), ft(4)});
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Openings, a_transom_over_its_window_is_no_overlap) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(3), {ft(3), ft(4)}).sill = at(121, ft(2));
    add_window(survey.rooms[0], 125, WallSide::north, ft(3), {ft(3), ft(1)}).sill = at(126, ft(6));
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Openings, windows_of_two_walls_do_not_overlap) {
    house::Survey survey = cold_wall();
    add_wall(survey.rooms[0], 111, WallSide::east, "outdoors");
    add_window(survey.rooms[0], 120, WallSide::north, ft(3), {ft(3), ft(4)});
    add_window(survey.rooms[0], 125, WallSide::east, ft(3), {ft(3), ft(4)});
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Openings, a_window_in_an_inside_wall_is_blamed) {
    house::Survey survey = cold_wall();
    add_room(survey, "hall", {ft(20), ft(0)}, {ft(5), ft(5)});
    add_wall(survey.rooms[0], 111, WallSide::east, "heated rooms");
    add_wall(survey.rooms[0], 112, WallSide::west, "hall");
    int line = 120;
    for (WallSide side : {WallSide::south, WallSide::east, WallSide::west})
        add_window(survey.rooms[0], line++, side, ft(4), {ft(2), ft(3)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("120: the south wall of the bath has a window but does not face outdoors -> write "
                    "[room.wall.south] with faces = \"outdoors\"",
                    "121: the east wall of the bath has a window but does not face outdoors -> write "
                    "[room.wall.east] with faces = \"outdoors\"",
                    "122: the west wall of the bath has a window but does not face outdoors -> write "
                    "[room.wall.west] with faces = \"outdoors\""));
}

TEST(Openings, a_wall_that_is_wrong_itself_is_blamed_and_its_window_is_not) {
    house::Survey survey = cold_wall();
    survey.rooms[0].walls[0].faces = at(110, "outdoor");
    add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(2), ft(3)});
    EXPECT_EQ(mistakes(survey).size(), 1u);
}

TEST(Openings, wall_and_size_of_a_window_have_to_be_given) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(2), ft(3)}).wall.reset();
    add_window(survey.rooms[0], 125, WallSide::north, ft(5), {ft(2), ft(3)}).size.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("120: the wall of this window of the bath is missing -> write wall = \"north\"",
                    "125: the size of the window of the bath is missing -> write size = [\"2 ft 4 in\", "
                    "\"3 ft 6 in\"]: width, then height"));
}

TEST(Openings, wall_and_width_of_a_door_have_to_be_given) {
    house::Survey survey = cold_wall();
    add_door(survey.rooms[0], 130, WallSide::north, ft(3)).wall.reset();
    add_door(survey.rooms[0], 135, WallSide::north, ft(3)).width.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("130: the wall of this door of the bath is missing -> write wall = \"south\"",
                    "135: the width of the north door of the bath is missing -> write width = \"2 ft 8 "
                    "in\""));
}

TEST(Openings, more_opening_than_wall_is_blamed) {
    house::Survey survey = cold_wall();
    for (int line : {120, 125}) {
        house::SurveyWindow& window =
            add_window(survey.rooms[0], line, WallSide::north, ft(5), {ft(9), ft(8)});
        window.centre.reset();
    }
    EXPECT_THAT(mistakes(survey),
                ElementsAre("110: the openings of the north wall are larger than the wall"));
}

TEST(Openings, a_u_factor_counts_before_the_glass_and_the_glass_before_the_default) {
    house::Survey survey = cold_wall();
    house::SurveyWindow& window = add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(2), ft(3)});
    EXPECT_THAT(taken_for(planned(survey), DefaultId::window), ElementsAre("window of the bath"));
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "window"), 2.87);
    window.glass = at(122, "triple");
    const house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::window), IsEmpty());
    const auto& glass =
        std::get<house::CatalogueName>(find_surface(built.house.rooms[0], "window")->assembly);
    EXPECT_EQ(glass.text, "triple");
    EXPECT_EQ(glass.place, on_line(122));
    window.u = at(123, units::Transmittance(1.5));
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "window"), 1.5);
}

TEST(Openings, what_a_window_becomes_counts_in_the_planned_house_alone) {
    house::Survey survey = cold_wall();
    house::SurveyWindow& window = add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(2), ft(3)});
    window.u = at(122, units::Transmittance(5));
    window.becomes = at(123, "double");
    EXPECT_DOUBLE_EQ(u(found(survey), 0, "window"), 5);
    const house::Built after = planned(survey);
    EXPECT_EQ(std::get<house::CatalogueName>(find_surface(after.house.rooms[0], "window")->assembly).text,
              "double");
}

TEST(Openings, a_window_without_a_name_is_called_by_its_wall) {
    house::Survey survey = cold_wall();
    add_window(survey.rooms[0], 120, WallSide::north, ft(5), {ft(2), ft(3)}).name.reset();
    EXPECT_GT(area(planned(survey), 0, "north window"), 0);
}

}  // namespace
