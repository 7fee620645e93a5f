#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::DuctSide;
using house::State;

house::Survey run_and_register() {
    house::Survey survey = one_room();
    add_duct(survey, "run");
    add_outlet(survey, "register", "run");
    return survey;
}

house::Spot spot(const house::Survey& survey) { return planned(survey).house.outlets.front().spot; }

TEST(Outlets, an_outlet_keeps_what_the_sheet_says) {
    house::Survey survey = run_and_register();
    survey.outlets[0].face = at(2004, house::Two{m(0.25), m(0.15)});
    survey.outlets[0].mount = at(2005, house::Mount::low_wall);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::Outlet& outlet = built.house.outlets.front();
    EXPECT_EQ(outlet.name, "register");
    EXPECT_EQ(outlet.duct, house::DuctId{0});
    EXPECT_EQ(outlet.room, house::RoomId{0});
    EXPECT_EQ(outlet.face, (house::Rectangular{m(0.25), m(0.15)}));
    EXPECT_EQ(outlet.mount, house::Mount::low_wall);
    EXPECT_EQ(outlet.state, State::found);
    EXPECT_TRUE(std::holds_alternative<house::Nowhere>(outlet.spot));
}

TEST(Outlets, name_duct_and_room_have_to_be_given) {
    house::Survey survey = run_and_register();
    add_outlet(survey, "other", "run").name.reset();
    survey.outlets[1].duct.reset();
    survey.outlets[1].room.reset();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("2100: the name of this outlet is missing -> write name = \"bath register\"",
                            "2100: the duct of the outlet  is missing -> write duct = \"main trunk\"",
                            "2100: the room of the outlet  is missing -> write room = \"bath\""));
}

TEST(Outlets, an_unknown_duct_or_room_gets_the_nearest_and_no_second_blame) {
    house::Survey survey = run_and_register();
    add_outlet(survey, "other", "rum").room = at(2103, "bat");
    survey.outlets[1].under = at(2106, "window");
    EXPECT_THAT(mistakes(survey), ElementsAre("2102: no duct is called 'rum' (did you mean 'run'?)",
                                              "2103: no room is called 'bat' (did you mean 'bath'?)"));
}

TEST(Outlets, a_grille_may_sit_in_a_room_nobody_described) {
    house::Survey survey = run_and_register();
    add_duct(survey, "drop", nullptr, DuctSide::return_side);
    add_outlet(survey, "grille", "drop").room.reset();
    EXPECT_THAT(mistakes(survey), IsEmpty());
    survey.outlets[1].room = at(2103, "heated rooms");
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Outlets, a_face_has_an_area) {
    house::Survey survey = run_and_register();
    survey.outlets[0].face = at(2004, house::Two{m(0.25), m(0)});
    EXPECT_THAT(mistakes(survey), ElementsAre("2004: the outlet register has no face"));
}

TEST(Outlets, no_more_of_a_face_is_free_than_there_is) {
    house::Survey survey = run_and_register();
    survey.outlets[0].free_area = at(2005, units::Area(0.02));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("2005: the outlet register has a free area but no face -> write "
                            "its face too, as face = \"14 x 8 in\""));
    survey.outlets[0].face = at(2004, house::Two{m(0.25), m(0.1)});
    EXPECT_THAT(mistakes(survey), IsEmpty());
    EXPECT_EQ(planned(survey).house.outlets.front().free_area, units::Area(0.02));
    survey.outlets[0].free_area = at(2005, units::Area(0.03));
    EXPECT_THAT(mistakes(survey), ElementsAre("2005: the outlet register has more free area than face -> its "
                                              "face is 39 in2; free is what is open between the bars"));
    survey.outlets[0].free_area = at(2005, units::Area(0));
    EXPECT_THAT(mistakes(survey), ElementsAre("2005: the outlet register has no free area -> leave it out "
                                              "where it is not known"));
}

TEST(Outlets, an_outlet_and_its_duct_are_there_together) {
    house::Survey survey = run_and_register();
    add_duct(survey, "old run").state = at(1107, State::removed);
    add_outlet(survey, "old register", "old run");
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("2102: the outlet old register sits on the old run, which is not there -> give both the "
                    "same state: found, new or removed, see 1107"));
    survey.outlets[1].state = at(2107, State::removed);
    EXPECT_THAT(mistakes(survey), IsEmpty());
    EXPECT_THAT(mistakes(found(survey)), IsEmpty());
}

TEST(Outlets, a_duct_that_ends_nowhere_is_blamed) {
    house::Survey survey = run_and_register();
    add_duct(survey, "spur", "run");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1100: the duct spur ends nowhere -> give it an [[outlet]], or leave it out"));
}

TEST(Outlets, a_trunk_may_end_in_the_rooms_not_described_but_a_return_may_not) {
    house::Survey survey = run_and_register();
    add_duct(survey, "trunk");
    add_duct(survey, "drop", nullptr, DuctSide::return_side);
    EXPECT_EQ(mistakes(survey).size(), 2u);
    add_other_rooms(survey);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("1200: the duct drop ends nowhere -> give it an [[outlet]], or leave it out"));
}

TEST(Outlets, a_duct_left_without_its_outlet_has_to_go_with_it) {
    house::Survey survey = run_and_register();
    add_duct(survey, "old run");
    add_outlet(survey, "old register", "old run").state = at(2107, State::removed);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("1100: the duct old run ends nowhere in the house as planned -> all that hangs on it is "
                    "removed: give it state = \"removed\" too"));
    survey.outlets[1].state->value = State::added;
    EXPECT_THAT(
        mistakes(found(survey)),
        ElementsAre(
            "1100: the duct old run ends nowhere in the house as found -> all that hangs on it is new: "
            "give it state = \"new\" too"));
}

TEST(Outlets, under_a_window_of_its_room) {
    house::Survey survey = run_and_register();
    add_wall(survey.rooms[0], 110, house::WallSide::north, "outdoors");
    add_window(survey.rooms[0], 120, house::WallSide::north, m(2), {m(1), m(1)}).name = at(121, "big window");
    survey.outlets[0].under = at(2006, "big window");
    EXPECT_THAT(mistakes(survey), IsEmpty());
    EXPECT_EQ(std::get<house::UnderWindow>(spot(survey)).window, "big window");
    survey.outlets[0].under = at(2006, "big widow");
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("2006: no window of that room is called 'big widow' (did you mean 'big window'?)"));
    survey.rooms[0].windows[0].name.reset();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("2006: no window of that room is called 'big widow' -> give it a name = "
                            "\"...\" first"));
    survey.rooms[0].windows.clear();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("2006: no window of that room is called 'big widow' -> the sheet describes "
                            "no window of that room"));
}

TEST(Outlets, on_a_wall_or_at_a_point) {
    house::Survey survey = run_and_register();
    survey.outlets[0].wall = at(2006, house::WallSide::south);
    survey.outlets[0].centre = at(2007, m(1.5));
    EXPECT_EQ(std::get<house::OnWall>(spot(survey)).wall, house::WallSide::south);
    EXPECT_EQ(std::get<house::OnWall>(spot(survey)).centre, m(1.5));
    survey.outlets[0].wall.reset();
    survey.outlets[0].point = at(2008, house::Two{m(1), m(2)});
    EXPECT_EQ(std::get<house::AtPoint>(spot(survey)).from_west, m(1));
    EXPECT_EQ(std::get<house::AtPoint>(spot(survey)).from_south, m(2));
}

TEST(Outlets, registers_are_assumed_together_and_a_grille_only_where_none_is_described) {
    house::Survey survey = run_and_register();
    add_duct(survey, "drop", nullptr, DuctSide::return_side);
    add_outlet(survey, "grille", "drop");
    house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::register_drop), ElementsAre("every supply register"));
    EXPECT_THAT(taken_for(built, DefaultId::grille_drop), ElementsAre("the return grille"));
    EXPECT_NEAR(built.house.register_drop / units::unit::inch_wc, 0.03, 1e-9);
    survey.outlets[1].face = at(2104, house::Two{m(0.7), m(0.3)});
    built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::grille_drop), IsEmpty());
}

}  // namespace
