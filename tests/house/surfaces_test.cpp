#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::Space;
using house::WallSide;

Space beyond(const house::Built& built, std::size_t room, const std::string& name) {
    return std::get<Space>(find_surface(built.house.rooms[room], name)->beyond);
}

TEST(Surfaces, what_a_named_wall_faces_has_to_be_said) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::west, "outdoors").faces.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("110: what the west wall of the bath faces is missing -> write faces = \"outdoors\""));
}

TEST(Surfaces, a_wall_that_faces_nothing_known_gets_the_nearest_space_or_room) {
    house::Survey survey = one_room();
    add_room(survey, "kitchen", {m(10), m(0)}, {m(4), m(3)});
    add_wall(survey.rooms[0], 110, WallSide::west, "outdoor");
    add_wall(survey.rooms[0], 111, WallSide::east, "kichen");
    add_wall(survey.rooms[0], 112, WallSide::north, "Mars");
    const std::string remedy =
        " -> write outdoors, attic, basement, crawl, garage, porch, ground, heated rooms, or a room's name";
    EXPECT_THAT(mistakes(survey),
                ElementsAre("110: nothing is called 'outdoor' (did you mean 'outdoors'?)" + remedy,
                            "111: nothing is called 'kichen' (did you mean 'kitchen'?)" + remedy,
                            "112: nothing is called 'Mars'" + remedy));
}

TEST(Surfaces, so_does_a_ceiling) {
    house::Survey survey = one_room();
    survey.rooms[0].above = house::SurveyHorizontal{on_line(120), at(121, "atic"), {}, {}};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("121: nothing is called 'atic' (did you mean 'attic'?) -> write outdoors, attic, "
                            "basement, crawl, garage, porch, ground, heated rooms, or a room's name"));
}

TEST(Surfaces, a_silent_sheet_has_the_attic_above_and_the_basement_below) {
    house::Survey survey = one_room();
    const house::Built built = planned(survey);
    EXPECT_EQ(beyond(built, 0, "ceiling"), Space::attic);
    EXPECT_EQ(beyond(built, 0, "floor"), Space::basement);
    EXPECT_THAT(taken_for(built, DefaultId::attic_ceiling),
                ElementsAre("ceiling of the bath, taken to be next to the attic"));
    EXPECT_THAT(taken_for(built, DefaultId::floor_over_unheated),
                ElementsAre("floor of the bath, taken to be next to the basement"));
    EXPECT_THAT(taken_for(built, DefaultId::attic_roof), ElementsAre("the attic"));
    EXPECT_THAT(taken_for(built, DefaultId::basement_temperature),
                ElementsAre("floor of the bath, taken to be next to the basement"));
}

TEST(Surfaces, between_storeys_nothing_flows_and_nothing_is_assumed) {
    house::Survey survey = one_room();
    survey.storeys->value = 3;
    survey.rooms[0].storey->value = 2;
    const house::Built built = planned(survey);
    EXPECT_THAT(built.house.rooms[0].surfaces, IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::partition), IsEmpty());
}

TEST(Surfaces, a_warm_room_between_storeys_gives_to_both_sides) {
    house::Survey survey = one_room();
    survey.storeys->value = 3;
    survey.rooms[0].storey->value = 2;
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(24));
    const house::Built built = planned(survey);
    EXPECT_EQ(beyond(built, 0, "ceiling"), Space::heated_rooms);
    EXPECT_EQ(beyond(built, 0, "floor"), Space::heated_rooms);
    EXPECT_THAT(taken_for(built, DefaultId::partition),
                ElementsAre("ceiling of the bath", "floor of the bath", "inside walls of the bath"));
}

TEST(Surfaces, a_space_has_the_temperature_the_sheet_gives) {
    house::Survey survey = one_room();
    survey.spaces[Space::attic].winter = at(60, units::unit::celsius(3));
    const house::Built built = planned(survey);
    EXPECT_EQ(built.house.winter(Space::attic), units::unit::celsius(3));
    EXPECT_TRUE(built.house.buffer_spaces.empty());
}

TEST(Surfaces, an_unheated_space_is_part_of_the_way_from_outdoors_to_indoors) {
    const std::pair<const char*, double> expected_c[] = {
        {"crawl", 5}, {"garage", -7}, {"porch", -7}, {"basement", (62 - 32) / 1.8}};
    for (const auto& [name, celsius] : expected_c) {
        house::Survey survey = one_room();
        add_wall(survey.rooms[0], 110, WallSide::north, name);
        const house::Built built = planned(survey);
        EXPECT_NEAR(units::unit::in_celsius(built.house.winter(beyond(built, 0, "north wall"))), celsius,
                    1e-9)
            << name;
    }
}

TEST(Surfaces, outdoors_and_heated_rooms_are_as_cold_and_as_warm_as_the_site) {
    const house::House house = planned(one_room()).house;
    EXPECT_EQ(house.winter(Space::outdoors), units::unit::celsius(-10));
    EXPECT_EQ(house.winter(Space::heated_rooms), units::unit::celsius(20));
}

}  // namespace
