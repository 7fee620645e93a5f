#include "house/lone_windows.hpp"

#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::WallSide;

// A room of 4 x 3 m with windows nobody placed.
house::Survey with_windows(std::initializer_list<WallSide> walls) {
    house::Survey survey = one_room();
    int line = 140;
    for (const WallSide wall : walls)
        add_window(survey.rooms[0], line++, wall, m(0), {m(1), m(1)}).centre.reset();
    return survey;
}

TEST(LoneWindows, stand_in_the_middle_of_their_wall) {
    house::Survey survey = with_windows({WallSide::north, WallSide::east});
    EXPECT_EQ(house::centre_lone_windows(survey, "bath").size(), 2u);
    EXPECT_EQ(survey.rooms[0].windows[0].centre->value, m(2));
    EXPECT_EQ(survey.rooms[0].windows[1].centre->value, m(1.5));
}

TEST(LoneWindows, keep_a_centre_that_is_given) {
    house::Survey survey = with_windows({WallSide::north});
    survey.rooms[0].windows[0].centre = at(141, m(1));
    EXPECT_THAT(house::centre_lone_windows(survey, "bath"), IsEmpty());
    EXPECT_EQ(survey.rooms[0].windows[0].centre->value, m(1));
}

TEST(LoneWindows, of_two_in_a_wall_neither_is_taken_anywhere) {
    house::Survey survey = with_windows({WallSide::north, WallSide::north});
    EXPECT_THAT(house::centre_lone_windows(survey, "bath"), IsEmpty());
    EXPECT_FALSE(survey.rooms[0].windows[0].centre);
}

TEST(LoneWindows, of_another_room_stay_as_they_are) {
    house::Survey survey = with_windows({WallSide::north});
    EXPECT_THAT(house::centre_lone_windows(survey, "hall"), IsEmpty());
}

}  // namespace
