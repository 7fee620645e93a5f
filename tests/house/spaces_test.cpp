#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::Space;
namespace unit = units::unit;

// A bath of 12 m2 over the space, under the attic.
house::Survey over(Space space) {
    house::Survey survey = one_room();
    survey.spaces[space].place = on_line(60);
    survey.rooms[0].below =
        house::SurveyHorizontal{on_line(120), at(121, std::string(house::word(space))), {}, {}};
    return survey;
}

house::BufferSpace space_of(const house::Built& built, Space space) {
    const house::BufferSpace* found = built.house.buffer_space(space);
    return found ? *found : house::BufferSpace{};
}

units::Transmittance u_of(const house::Surface& surface) {
    return std::get<units::Transmittance>(surface.assembly);
}

TEST(Spaces, an_attic_of_which_nothing_is_said_has_the_usual_roof_and_air) {
    const house::Built built = planned(one_room());
    ASSERT_EQ(built.house.buffer_spaces.size(), 1u);
    const house::BufferSpace& attic = built.house.buffer_spaces[0];
    EXPECT_EQ(attic.space, Space::attic);
    EXPECT_DOUBLE_EQ(attic.floor_area.si(), 12);
    ASSERT_EQ(attic.outer.size(), 1u);
    EXPECT_DOUBLE_EQ(attic.outer[0].area.si(), 1.2 * 12);
    EXPECT_DOUBLE_EQ(u_of(attic.outer[0]).si(), 3);
    EXPECT_NEAR(attic.outdoor_air.si(), 2 / 3600.0 * 12 * 1.5, 1e-12);
    EXPECT_THAT(taken_for(built, DefaultId::attic_roof), ElementsAre("the attic"));
    EXPECT_THAT(taken_for(built, DefaultId::attic_ventilation), IsEmpty());  // the roof's row holds it
}

TEST(Spaces, an_attic_with_a_known_roof_has_the_usual_air) {
    house::Survey survey = one_room();
    add_construction(survey, "slates", 4);
    survey.spaces[Space::attic].roof = at(61, "slates");
    const house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::attic_roof), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::attic_ventilation), ElementsAre("the attic"));
}

TEST(Spaces, the_attic_lies_over_the_rooms_not_described_too) {
    house::Survey survey = one_room();
    add_other_rooms(survey);  // 100 m2
    EXPECT_DOUBLE_EQ(planned(survey).house.buffer_spaces[0].floor_area.si(), 112);
}

TEST(Spaces, what_the_sheet_says_of_an_attic_is_taken) {
    house::Survey survey = one_room();
    house::SurveySpace& attic = survey.spaces[Space::attic];
    add_construction(survey, "slates", 4);
    attic.roof = at(61, "slates");
    attic.roof_area = at(62, units::Area(20));
    attic.outer_area = at(63, units::Area(5));
    attic.construction = at(64, "slates");
    attic.floor_area = at(65, units::Area(15));
    attic.height = at(66, m(2));
    attic.heat = at(67, units::Power(300));
    attic.ventilation = {units::AirChange(4 / 3600.0), on_line(68)};
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::BufferSpace made = space_of(built, Space::attic);
    EXPECT_DOUBLE_EQ(made.floor_area.si(), 15);
    ASSERT_EQ(made.outer.size(), 2u);
    EXPECT_DOUBLE_EQ(made.outer[0].area.si(), 20);
    EXPECT_DOUBLE_EQ(u_of(made.outer[0]).si(), 4);
    EXPECT_DOUBLE_EQ(made.outer[1].area.si(), 5);
    EXPECT_NEAR(made.outdoor_air.si(), 4 / 3600.0 * 15 * 1, 1e-12);
    EXPECT_DOUBLE_EQ(made.heat.si(), 300);
    EXPECT_THAT(taken_for(built, DefaultId::attic_ventilation), IsEmpty());
}

TEST(Spaces, a_given_temperature_ends_all_else) {
    house::Survey survey = over(Space::crawl);
    survey.spaces[Space::crawl].winter = at(61, unit::celsius(4));
    survey.spaces[Space::crawl].vented = at(62, true);
    const house::Built built = planned(survey);
    EXPECT_EQ(built.house.winter(Space::crawl), unit::celsius(4));
    EXPECT_EQ(built.house.buffer_space(Space::crawl), nullptr);
}

TEST(Spaces, a_crawl_space_of_which_something_is_said_is_in_balance) {
    house::Survey survey = over(Space::crawl);
    survey.spaces[Space::crawl].vented = at(61, true);
    const house::Built built = planned(survey);
    const house::BufferSpace crawl = space_of(built, Space::crawl);
    const double perimeter = 5 * std::sqrt(12 / 1.5), height = 2 * 0.3048;
    ASSERT_TRUE(crawl.on_the_ground);
    EXPECT_NEAR(crawl.outer[0].area.si(), perimeter * height, 1e-12);
    EXPECT_EQ(crawl.on_the_ground->depth, units::Length());
    EXPECT_DOUBLE_EQ(crawl.on_the_ground->floor.si(), 12);
    EXPECT_NEAR(crawl.outdoor_air.si(), 4.6 / 3600 * 12 * height, 1e-12);
    EXPECT_THAT(taken_for(built, DefaultId::crawl_ventilation), ElementsAre("the crawl space"));
    EXPECT_THAT(taken_for(built, DefaultId::ground_temperature), ElementsAre("the crawl space"));
    survey.spaces[Space::crawl].vented = at(61, false);
    EXPECT_NEAR(space_of(planned(survey), Space::crawl).outdoor_air.si(), 0.67 / 3600 * 12 * height, 1e-12);
}

TEST(Spaces, a_basement_of_which_nothing_is_said_has_an_assumed_temperature) {
    const house::Built built = planned(one_room());
    EXPECT_EQ(built.house.buffer_space(Space::basement), nullptr);
    EXPECT_NEAR(unit::in_fahrenheit(built.house.winter(Space::basement)), 62, 1e-9);
}

TEST(Spaces, a_basement_whose_walls_are_described_stands_in_the_ground) {
    house::Survey survey = over(Space::basement);
    house::SurveySpace& basement = survey.spaces[Space::basement];
    basement.height = at(61, m(2.2));
    basement.above_ground = at(62, m(0.4));
    basement.perimeter = at(63, m(20));
    survey.site.ground = at(64, unit::celsius(9));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::BufferSpace made = space_of(built, Space::basement);
    EXPECT_NEAR(made.outer[0].area.si(), 8, 1e-12);
    EXPECT_NEAR(made.on_the_ground->depth.si(), 1.8, 1e-12);
    EXPECT_NEAR(made.on_the_ground->wall.area.si(), 36, 1e-12);
    EXPECT_EQ(made.on_the_ground->ground, unit::celsius(9));
    EXPECT_THAT(taken_for(built, DefaultId::ground_temperature), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::foundation_wall), ElementsAre("the basement"));
    EXPECT_THAT(taken_for(built, DefaultId::above_ground), IsEmpty());
}

TEST(Spaces, nothing_is_assumed_of_a_space_beside_which_nothing_lies) {
    house::Survey survey = one_room();
    survey.spaces[Space::crawl].vented = at(61, true);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::crawl_ventilation), IsEmpty());
}

TEST(Spaces, a_garage_has_to_say_what_of_it_faces_outdoors_and_how_large_it_is) {
    house::Survey survey = over(Space::garage);
    survey.spaces[Space::garage].heat = at(61, units::Power(100));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("60: how much of the garage faces outdoors is missing -> write outer_area = "
                            "\"600 ft2\"",
                            "60: the size of the garage is missing -> write floor_area = \"400 ft2\" and "
                            "height = \"9 ft\", or ventilation = \"60 cfm\""));
    survey.spaces[Space::garage].outer_area = at(62, units::Area(50));
    survey.spaces[Space::garage].ventilation = {60 * unit::cfm, on_line(63)};
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_EQ(space_of(built, Space::garage).outdoor_air, 60 * unit::cfm);
    EXPECT_THAT(taken_for(built, DefaultId::porch_shell), ElementsAre("the garage"));
}

TEST(Spaces, what_cannot_be_is_a_mistake_whether_the_space_is_used_or_not) {
    house::Survey survey = one_room();
    house::SurveySpace& basement = survey.spaces[Space::basement];
    basement.height = at(61, m(2));
    basement.above_ground = at(62, m(3));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("62: the walls of the basement stand higher out of the ground than they are "
                            "(6 ft 6-3/4 in high in all) -> above_ground is the part of the height above "
                            "the ground outside, see 61"));
    basement = {};
    house::SurveySpace& crawl = survey.spaces[Space::crawl];
    crawl.vented = at(61, true);
    crawl.ventilation = {units::AirChange(1), on_line(62)};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("61: the crawl space says twice how much air moves through it -> "
                            "write one of the two, see 62"));
}

TEST(Spaces, an_attic_is_not_smaller_than_its_ceilings_nor_its_roof_than_its_floor) {
    house::Survey survey = one_room();
    survey.spaces[Space::attic].floor_area = at(61, units::Area(6));
    survey.spaces[Space::attic].roof_area = at(62, units::Area(7));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("61: the attic is smaller than what the rooms have next to it -> the rooms "
                            "described have 129.2 ft2 there",
                            "62: the roof of the attic is smaller than its floor -> measure along the "
                            "slope"));
}

}  // namespace
