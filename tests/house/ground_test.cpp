#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::Space;
using house::WallSide;

house::SurveyHorizontal on_the_ground() { return {on_line(120), at(121, "ground"), {}, {}}; }

const house::Surface& surface_of(const house::Built& built, const char* name) {
    static const house::Surface none{};
    const house::Surface* found = find_surface(built.house.rooms[0], name);
    EXPECT_NE(found, nullptr) << name;
    return found ? *found : none;
}

TEST(Ground, a_wall_in_it_says_how_deep_it_reaches) {
    house::Survey survey = one_room();
    auto& wall = add_wall(survey.rooms[0], 110, WallSide::north, "ground");
    EXPECT_THAT(mistakes(survey), ElementsAre("110: how deep the north wall of the bath reaches below the "
                                              "ground outside is missing -> write depth = \"5 ft\""));
    wall.ground.depth = at(111, m(2));
    wall.ground.depth_from = at(112, m(0.5));
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const auto& buried = surface_of(built, "north wall").buried;
    ASSERT_TRUE(buried);
    EXPECT_EQ(buried->top, m(0.5));
    EXPECT_EQ(buried->bottom, m(2));
    EXPECT_EQ(buried->shortest_width, m(0));
    EXPECT_DOUBLE_EQ(buried->soil.si(), 1.4);
    EXPECT_DOUBLE_EQ(u(built, 0, "north wall"), 1 / 0.259);
    EXPECT_THAT(taken_for(built, DefaultId::buried_make), ElementsAre("north wall of the bath"));
    EXPECT_THAT(taken_for(built, DefaultId::soil), ElementsAre("north wall of the bath"));
    EXPECT_THAT(taken_for(built, DefaultId::ground_temperature), ElementsAre("north wall of the bath"));
}

TEST(Ground, a_floor_below_it_goes_by_the_houses_narrow_side) {
    house::Survey survey = one_room();
    survey.rooms[0].below = on_the_ground();
    survey.rooms[0].below->ground.depth = at(122, m(1.8));
    EXPECT_EQ(surface_of(planned(survey), "floor").buried->shortest_width, m(3));
    survey.house_size = at(22, house::Two{m(8), m(11)});
    const auto buried = surface_of(planned(survey), "floor").buried;
    EXPECT_EQ(buried->shortest_width, m(8));
    EXPECT_EQ(buried->bottom, m(1.8));
}

TEST(Ground, a_floor_on_it_is_a_slab_whose_edge_lies_under_the_cold_walls) {
    house::Survey survey = one_room();
    survey.rooms[0].below = on_the_ground();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    add_wall(survey.rooms[0], 112, WallSide::west, "garage");
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::Surface& floor = surface_of(built, "floor");
    ASSERT_TRUE(floor.slab);
    EXPECT_EQ(floor.slab->edge, m(7));
    EXPECT_EQ(std::get<Space>(floor.beyond), Space::outdoors);
    EXPECT_DOUBLE_EQ(std::get<units::Conductivity>(floor.slab->edge_loss).si(), 1.263);
    EXPECT_THAT(taken_for(built, DefaultId::slab_edge), ElementsAre("floor of the bath"));
    EXPECT_THAT(taken_for(built, DefaultId::ground_temperature), IsEmpty());
    EXPECT_THAT(taken_for(built, DefaultId::buried_make), IsEmpty());
    // What lies on it matters in summer alone.
    EXPECT_THAT(taken_for(built, DefaultId::slab_covering), IsEmpty());
}

TEST(Ground, an_edge_that_is_given) {
    house::Survey survey = one_room();
    cool(survey);
    survey.rooms[0].below = on_the_ground();
    survey.rooms[0].below->ground.exposed_edge = at(122, m(5));
    survey.rooms[0].below->ground.edge = at(123, "R-10, 2 ft down");
    survey.rooms[0].below->ground.covering = at(124, "carpet");
    const house::Built built = planned(survey);
    const auto& slab = surface_of(built, "floor").slab;
    EXPECT_EQ(slab->edge, m(5));
    EXPECT_EQ(std::get<house::CatalogueName>(slab->edge_loss).text, "R-10, 2 ft down");
    EXPECT_EQ(std::get<house::CatalogueName>(slab->covering).text, "carpet");
}

TEST(Ground, is_as_cold_as_the_sheet_says_and_never_colder_than_the_night) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "ground").ground.depth = at(111, m(2));
    EXPECT_EQ(planned(survey).house.winter(Space::ground), units::unit::fahrenheit(34));
    survey.site.ground = at(16, units::unit::celsius(7));
    EXPECT_EQ(planned(survey).house.winter(Space::ground), units::unit::celsius(7));
    survey.site.ground.reset();
    survey.site.winter_outdoor = at(11, units::unit::celsius(10));
    EXPECT_EQ(planned(survey).house.winter(Space::ground), units::unit::celsius(10));
}

TEST(Ground, its_words_where_nothing_lies_in_it) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors").ground.depth = at(111, m(2));
    EXPECT_THAT(mistakes(survey), ElementsAre("111: the north wall of the bath does not lie in the ground -> "
                                              "leave this out, or let it face the ground"));
}

TEST(Ground, depths_that_cannot_be) {
    house::Survey survey = one_room();
    auto& wall = add_wall(survey.rooms[0], 110, WallSide::north, "ground");
    wall.ground.depth = at(111, m(1));
    wall.ground.depth_from = at(112, m(1));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("111: the north wall of the bath has no height below the ground -> depth is that "
                            "of its bottom, depth_from that of its top, see 112"));
    wall.ground.depth = at(111, m(8));
    EXPECT_THAT(mistakes(survey),
                ElementsAre("111: the north wall of the bath lies deeper than any cellar -> give its depth "
                            "below the ground outside, up to 20 ft"));
}

TEST(Ground, a_floor_is_below_it_or_on_it) {
    house::Survey survey = one_room();
    survey.rooms[0].below = on_the_ground();
    survey.rooms[0].below->ground.depth = at(122, m(1));
    survey.rooms[0].below->ground.exposed_edge = at(123, m(4));
    survey.rooms[0].below->ground.edge = at(124, "bare");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("123: the floor of the bath lies in the ground and has no exposed edge -> give "
                            "its depth, or the exposed edge of a slab, not both, see 122",
                            "124: the floor of the bath is no slab on the ground -> leave this out, or leave "
                            "out the depth"));
}

TEST(Ground, how_a_slab_is_made_plays_no_part) {
    house::Survey survey = one_room();
    survey.rooms[0].below = on_the_ground();
    survey.rooms[0].below->construction = at(122, "concrete");
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("122: the floor of the bath is a slab on the ground and loses by its edge, however "
                    "it is made -> say how its edge is insulated, edge = \"bare\", and what lies on "
                    "it, covering = \"carpet\""));
}

TEST(Ground, no_window_lies_in_it) {
    house::Survey survey = one_room();
    add_wall(survey.rooms[0], 110, WallSide::north, "ground").ground.depth = at(111, m(2));
    add_window(survey.rooms[0], 130, WallSide::north, m(1), {m(1), m(1)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("110: the north wall of the bath lies in the ground and has a window or a door -> "
                    "describe the part above the ground as a [[room.surface]] of its own"));
}

}  // namespace
