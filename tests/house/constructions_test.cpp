#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::WallSide;

// One room whose north wall, outdoors, is of the construction "wall".
house::Survey built_of(const house::SurveyConstruction& construction) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors").construction = at(111, "wall");
    survey.constructions.push_back(construction);
    return survey;
}

house::SurveyConstruction wall() {
    house::SurveyConstruction construction;
    construction.name = "wall";
    construction.place = on_line(50);
    return construction;
}

house::SurveyConstruction layered_wall() {
    house::SurveyConstruction construction = wall();
    construction.layers = {at(51, "lap siding"), at(52, "empty stud bay, 3-5/8 in")};
    return construction;
}

house::Layers layers_of(const house::Built& built) {
    return std::get<house::Layers>(find_surface(built.house.rooms[0], "north wall")->assembly);
}

TEST(Constructions, a_u_factor_is_taken_as_it_stands) {
    house::SurveyConstruction construction = wall();
    construction.u = at(51, units::Transmittance(0.7));
    EXPECT_DOUBLE_EQ(u(planned(built_of(construction)), 0, "north wall"), 0.7);
}

TEST(Constructions, an_r_value_is_one_over_the_u_factor) {
    house::SurveyConstruction construction = wall();
    construction.r = at(51, units::Resistance(4));
    EXPECT_DOUBLE_EQ(u(planned(built_of(construction)), 0, "north wall"), 0.25);
}

TEST(Constructions, layers_keep_their_order_and_their_places) {
    const house::Layers layers = layers_of(planned(built_of(layered_wall())));
    ASSERT_EQ(layers.names.size(), 2u);
    EXPECT_EQ(layers.names[0].text, "lap siding");
    EXPECT_EQ(layers.names[1].text, "empty stud bay, 3-5/8 in");
    EXPECT_EQ(layers.names[1].place, on_line(52));
    EXPECT_EQ(layers.framing, 0);
}

TEST(Constructions, framing_goes_by_the_spacing_of_the_studs) {
    house::SurveyConstruction construction = layered_wall();
    construction.studs = at(53, 16 * units::unit::inch);
    house::Built built = planned(built_of(construction));
    EXPECT_DOUBLE_EQ(layers_of(built).framing, 0.25);
    EXPECT_THAT(taken_for(built, DefaultId::framing_at_16_in), ElementsAre("wall"));
    construction.studs->value = 24 * units::unit::inch;
    built = planned(built_of(construction));
    EXPECT_DOUBLE_EQ(layers_of(built).framing, 0.22);
    EXPECT_THAT(taken_for(built, DefaultId::framing_at_24_in), ElementsAre("wall"));
    EXPECT_THAT(taken_for(built, DefaultId::framing_at_16_in), IsEmpty());
}

TEST(Constructions, framing_that_was_measured_needs_no_default) {
    house::SurveyConstruction construction = layered_wall();
    construction.studs = at(53, 16 * units::unit::inch);
    construction.framing = at(54, 0.11);
    const house::Built built = planned(built_of(construction));
    EXPECT_DOUBLE_EQ(layers_of(built).framing, 0.11);
    EXPECT_THAT(taken_for(built, DefaultId::framing_at_16_in), IsEmpty());
}

TEST(Constructions, one_that_says_nothing_is_blamed) {
    EXPECT_THAT(
        mistakes(built_of(wall())),
        ElementsAre("50: the construction wall says nothing of its make -> write layers = [...] from outside "
                    "to inside, or u, or r"));
}

TEST(Constructions, an_unknown_name_gets_the_nearest) {
    house::Survey survey = built_of(layered_wall());
    survey.rooms[0].walls[0].construction = at(111, "wal");
    EXPECT_THAT(mistakes(survey), ElementsAre("111: no construction is called 'wal' (did you mean 'wall'?)"));
    survey.constructions.clear();
    EXPECT_THAT(mistakes(survey),
                ElementsAre("111: no construction is called 'wal' -> the sheet describes no construction"));
}

TEST(Constructions, a_wall_becomes_another_in_the_planned_house_alone) {
    house::Survey survey = one_room();
    add_construction(survey, "bare", 1.5);
    add_construction(survey, "filled", 0.4);
    house::SurveyWall& wall = add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    wall.construction = at(111, "bare");
    wall.becomes = at(112, "filled");
    EXPECT_DOUBLE_EQ(u(found(survey), 0, "north wall"), 1.5);
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "north wall"), 0.4);
}

TEST(Constructions, ceiling_and_floor_become_others_too) {
    house::Survey survey = one_room();
    add_construction(survey, "bare", 1.5);
    add_construction(survey, "filled", 0.4);
    const house::SurveyHorizontal work{on_line(120), at(121, "attic"), at(122, "bare"), at(123, "filled")};
    survey.rooms[0].above = survey.rooms[0].below = work;
    for (const char* name : {"ceiling", "floor"}) {
        EXPECT_DOUBLE_EQ(u(found(survey), 0, name), 1.5);
        EXPECT_DOUBLE_EQ(u(planned(survey), 0, name), 0.4);
    }
}

TEST(Constructions, a_wall_of_unknown_make_goes_by_the_year) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "north wall"), 1.30);
    survey.built = at(22, 1979);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::old_wall), ElementsAre("north wall of the bath"));
    survey.built = at(22, 1980);
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "north wall"), 0.45);
    EXPECT_THAT(taken_for(planned(survey), DefaultId::newer_wall), ElementsAre("north wall of the bath"));
}

TEST(Constructions, only_an_empty_bay_of_a_balloon_frame_is_open_at_both_ends) {
    house::Survey survey = built_of(layered_wall());
    EXPECT_DOUBLE_EQ(planned(survey).house.empty_bay.si(), 0.16);
    survey.frame = at(23, house::Frame::balloon);
    house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(built.house.empty_bay.si(), 0.10);
    EXPECT_THAT(taken_for(built, DefaultId::open_bay), ElementsAre("wall"));
    survey.constructions[0].layers.pop_back();
    built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::open_bay), IsEmpty());
}

TEST(Constructions, a_layer_nobody_knows_is_assumed) {
    house::SurveyConstruction construction = layered_wall();
    construction.layers.push_back(at(53, "don't know, 1/2 in"));
    const house::Built built = planned(built_of(construction));
    const house::Layers layers = layers_of(built);
    EXPECT_EQ(layers.names.size(), 2u);
    EXPECT_DOUBLE_EQ(layers.unknown.si(), 0.14);
    EXPECT_EQ(layers.bay_depth, units::Length());
    EXPECT_THAT(taken_for(built, DefaultId::unknown_layer), ElementsAre("wall"));
}

TEST(Constructions, a_thick_one_between_studs_is_a_bay_nobody_looked_into) {
    house::SurveyConstruction construction = wall();
    construction.layers = {at(51, "lap siding"), at(52, "don't know, 3-1/2 in")};
    construction.studs = at(53, 16 * units::unit::inch);
    const house::Built built = planned(built_of(construction));
    const house::Layers layers = layers_of(built);
    EXPECT_EQ(layers.names.size(), 1u);
    EXPECT_DOUBLE_EQ(layers.bay.si(), 0.16);
    EXPECT_EQ(layers.bay_depth, 3.5 * units::unit::inch);
    EXPECT_THAT(taken_for(built, DefaultId::unknown_bay), ElementsAre("wall"));
}

TEST(Constructions, an_open_bay_is_open_whatever_the_frame) {
    house::SurveyConstruction construction = wall();
    construction.layers = {at(51, "open stud bay, 3-1/2 in"), at(52, "empty stud bay, 3-1/2 in")};
    const house::Built built = planned(built_of(construction));
    EXPECT_DOUBLE_EQ(layers_of(built).bay.si(), 0.10);
    EXPECT_THAT(taken_for(built, DefaultId::open_bay), ElementsAre("wall"));
    EXPECT_DOUBLE_EQ(built.house.empty_bay.si(), 0.16);
}

TEST(Constructions, a_construction_nobody_knows_is_as_good_as_none) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors").construction = at(111, "don't know");
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::old_wall), ElementsAre("north wall of the bath"));
}

}  // namespace
