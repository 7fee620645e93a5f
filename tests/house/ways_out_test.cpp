#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::WallSide;
using units::unit::inch;
using units::unit::square_inch;

house::Built whole(const house::Survey& survey) {
    return build(survey, {}, Stage::planned, house::Extent::whole_system);
}
const std::optional<house::WayOut>& way(const house::Built& built) {
    return built.house.whole_system->ways_out.front();
}

// With a register, and a door on the east side, which the sheet does not name.
house::Survey with_a_door() {
    house::Survey survey = one_room();
    add_duct(survey, "run");
    add_outlet(survey, "register", "run");
    house::SurveyDoor door;
    door.place = on_line(110);
    door.wall = at(111, WallSide::east);
    door.width = at(112, 28 * inch);
    door.undercut = at(113, 0.75 * inch);
    survey.rooms[0].doors = {door};
    return survey;
}

TEST(WayOut, is_the_gap_under_the_inside_doors) {
    house::Survey survey = with_a_door();
    const house::Built built = whole(survey);
    ASSERT_TRUE(way(built));
    EXPECT_NEAR(way(built)->undercut / square_inch, 21, 1e-9);
    EXPECT_FALSE(way(built)->shut);
    EXPECT_EQ(way(built)->place, on_line(100));
    EXPECT_THAT(taken_for(built, DefaultId::undercut), IsEmpty());
    survey.rooms[0].doors.push_back(survey.rooms[0].doors[0]);
    EXPECT_NEAR(way(whole(survey))->undercut / square_inch, 42, 1e-9);
}

TEST(WayOut, a_room_without_a_door_in_the_sheet_has_a_usual_one) {
    house::Survey survey = with_a_door();
    survey.rooms[0].doors.clear();
    const house::Built built = whole(survey);
    EXPECT_NEAR(way(built)->undercut / square_inch, 15, 1e-9);
    EXPECT_THAT(taken_for(built, DefaultId::undercut), ElementsAre("the door of the bath"));
}

TEST(WayOut, is_asked_for_only_where_air_is_blown_in) {
    house::Survey survey = with_a_door();
    add_room(survey, "closet", {m(4), m(0)}, {m(1), m(1)});
    const house::Built built = whole(survey);
    ASSERT_EQ(built.house.whole_system->ways_out.size(), 2u);
    EXPECT_FALSE(built.house.whole_system->ways_out[1]);
    EXPECT_THAT(taken_for(built, DefaultId::undercut), IsEmpty());
}

TEST(WayOut, is_shut_when_every_door_is) {
    house::Survey survey = with_a_door();
    auto& doors = survey.rooms[0].doors;
    doors[0].shut = at(114, true);
    EXPECT_TRUE(way(whole(survey))->shut);
    doors.push_back(doors[0]);
    doors[1].shut = at(115, false);
    EXPECT_FALSE(way(whole(survey))->shut);
}

TEST(WayOut, may_be_an_opening_through_the_wall) {
    house::Survey survey = with_a_door();
    survey.rooms[0].transfer = at(120, house::Two(12 * inch, 6 * inch));
    EXPECT_NEAR(way(whole(survey))->transfer / square_inch, 72, 1e-9);
    EXPECT_FALSE(way(whole(survey))->transfer_free_area);
    survey.rooms[0].transfer_free_area = at(121, 50 * square_inch);
    EXPECT_EQ(way(whole(survey))->transfer_free_area, 50 * square_inch);
    survey.rooms[0].transfer_free_area = at(121, 80 * square_inch);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("121: the transfer opening of the bath has more free area than face -> its face is "
                    "72 in2; free is what is open between the bars"));
    survey.rooms[0].transfer.reset();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("121: the bath has a transfer_free_area but no transfer -> write "
                            "its face too, as transfer = \"12 x 6 in\""));
}

TEST(WayOut, leads_into_the_house_and_under_a_door) {
    house::Survey survey = with_a_door();
    add_wall(survey.rooms[0], 130, WallSide::east, "outdoors");
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("113: a door of the bath that leads out of the house lets no air back -> undercut "
                    "and shut belong to inside doors, in a wall that faces another room"));
    survey.rooms[0].walls[0].faces->value = "heated rooms";
    EXPECT_THAT(mistakes(survey), IsEmpty());
    survey.rooms[0].doors[0].undercut = at(113, 20 * inch);
    EXPECT_THAT(mistakes(survey), ElementsAre("113: no door of the bath hangs so high -> the undercut is the "
                                              "gap between door and floor: undercut = \"1/2 in\""));
}

}  // namespace
