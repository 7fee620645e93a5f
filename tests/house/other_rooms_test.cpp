#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;

TEST(OtherRooms, a_house_without_them_has_none) { EXPECT_FALSE(planned(one_room()).house.other_rooms); }

TEST(OtherRooms, what_is_not_given_is_assumed_and_listed) {
    house::Survey survey = one_room();
    add_other_rooms(survey);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    for (DefaultId id : {DefaultId::other_rooms_exposure, DefaultId::other_rooms_pipe,
                         DefaultId::other_rooms_reach, DefaultId::other_rooms_turns})
        EXPECT_THAT(taken_for(built, id), ElementsAre("the rooms not described"));
    const house::OtherRooms& rooms = *built.house.other_rooms;
    EXPECT_EQ(rooms.outlets, 8);
    EXPECT_DOUBLE_EQ(rooms.pipe.si(), 6 * 0.0254);
    EXPECT_DOUBLE_EQ(rooms.longest_reach.si(), ft(20).si());
    EXPECT_DOUBLE_EQ(rooms.shortest_reach.si(), ft(4).si());
    EXPECT_EQ(rooms.turns.count, 3);
    EXPECT_TRUE(rooms.turns.square);
    EXPECT_EQ(rooms.exposure, 1);
}

TEST(OtherRooms, what_is_given_is_not_assumed) {
    house::Survey survey = one_room();
    house::SurveyOtherRooms& written = add_other_rooms(survey);
    written.heat_loss = at(703, units::Power(9000));
    written.pipe = at(704, m(0.15));
    written.reach = at(705, house::Two{m(2), m(7)});
    written.turns = at(706, house::Turns{2, false});
    const house::Built built = planned(survey);
    for (DefaultId id : {DefaultId::other_rooms_exposure, DefaultId::other_rooms_pipe,
                         DefaultId::other_rooms_reach, DefaultId::other_rooms_turns})
        EXPECT_THAT(taken_for(built, id), IsEmpty());
    const house::OtherRooms& rooms = *built.house.other_rooms;
    EXPECT_EQ(rooms.heat_loss, units::Power(9000));
    EXPECT_EQ(rooms.pipe, m(0.15));
    EXPECT_EQ(rooms.shortest_reach, m(2));
    EXPECT_EQ(rooms.longest_reach, m(7));
    EXPECT_FALSE(rooms.turns.square);
}

TEST(OtherRooms, their_runs_leave_the_trunks_the_plenum_or_one_duct) {
    house::Survey survey = one_room();
    add_other_rooms(survey);
    EXPECT_EQ(planned(survey).house.other_rooms->leave, house::OthersLeave(house::UsualStart::trunks));
    survey.other_rooms->from = at(706, std::string("plenum"));
    EXPECT_EQ(planned(survey).house.other_rooms->leave, house::OthersLeave(house::UsualStart::plenum));
    add_duct(survey, "trunk", "plenum");
    survey.other_rooms->from = at(706, std::string("trunk"));
    EXPECT_EQ(planned(survey).house.other_rooms->leave, house::OthersLeave(house::DuctId{0}));
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(OtherRooms, what_their_runs_leave_is_a_supply_duct_that_is_there) {
    house::Survey survey = one_room();
    add_other_rooms(survey).from = at(706, std::string("no such duct"));
    EXPECT_THAT(mistakes(survey), ElementsAre(testing::StartsWith("706: no duct is called 'no such duct'")));
    house::SurveyDuct& duct = add_duct(survey, "trunk", "plenum");
    survey.other_rooms->from = at(706, std::string("trunk"));
    duct.state = at(707, house::State::removed);
    EXPECT_THAT(mistakes(survey), testing::Contains(testing::HasSubstr("which is not there any more")));
}

TEST(OtherRooms, their_size_and_their_outlets_have_to_be_given) {
    house::Survey survey = one_room();
    add_other_rooms(survey).floor_area.reset();
    survey.other_rooms->outlets.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre(
            "700: the floor area of the rooms not described is missing -> write floor_area = \"1150 "
            "ft2\", or heat_loss = \"31000 Btu/h\"",
            "700: the number of supply outlets of the rooms not described is missing -> write outlets "
            "= 8"));
}

TEST(OtherRooms, a_heat_loss_stands_for_the_floor_area) {
    house::Survey survey = one_room();
    add_other_rooms(survey).floor_area.reset();
    survey.other_rooms->heat_loss = at(703, units::Power(9000));
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(OtherRooms, the_shortest_run_is_not_the_longest_and_a_pipe_has_a_diameter) {
    house::Survey survey = one_room();
    add_other_rooms(survey).reach = at(705, house::Two{m(7), m(2)});
    survey.other_rooms->pipe = at(704, m(0));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("704: a pipe has a diameter above zero",
                            "705: the shortest run is longer than the longest -> write reach = "
                            "[shortest, longest]"));
}

}  // namespace
