#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::FixtureKind;
using house::WallSide;

const house::Fixture& only_fixture(const house::Built& built) {
    return built.house.rooms.at(0).plan.value().fixtures.at(0);
}

// The bath of 4 x 3 m with a tub in its north-east corner.
house::Survey tub_in_the_corner() {
    house::Survey survey = one_room();
    add_fixture(survey.rooms[0], 120, FixtureKind::tub, {m(2.4), m(2.2)}, {m(1.6), m(0.8)});
    return survey;
}

TEST(Fixtures, stand_where_they_were_measured) {
    const house::Built built = planned(tub_in_the_corner());
    EXPECT_THAT(mistakes(built), IsEmpty());
    const house::Fixture& tub = only_fixture(built);
    EXPECT_EQ(tub.kind, FixtureKind::tub);
    EXPECT_EQ(tub.name, "tub");
    EXPECT_EQ(tub.box.west, m(2.4));
    EXPECT_EQ(tub.box.south, m(2.2));
    EXPECT_NEAR(tub.box.east.si(), 4, 1e-12);
    EXPECT_NEAR(tub.box.north.si(), 3, 1e-12);
}

TEST(Fixtures, a_name_stands_for_the_kind) {
    house::Survey survey = tub_in_the_corner();
    survey.rooms[0].fixtures[0].name = at(123, "claw-foot tub");
    EXPECT_EQ(only_fixture(planned(survey)).name, "claw-foot tub");
}

TEST(Fixtures, one_outside_its_room_is_blamed) {
    house::Survey survey = tub_in_the_corner();
    survey.rooms[0].fixtures[0].corner->value.first = m(2.6);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("121: the tub does not lie within the bath (it ends 13 ft 9-3/8 in from the west "
                            "wall; the room is 13 ft 1-1/2 in) -> corner is its south-west corner, from that "
                            "of the room; size is west-east, then south-north"));
    survey.rooms[0].fixtures[0].corner->value = {m(2.4), m(2.4)};
    EXPECT_THAT(mistakes(survey), ElementsAre(testing::HasSubstr("from the south wall")));
}

TEST(Fixtures, two_in_one_place_are_blamed) {
    house::Survey survey = tub_in_the_corner();
    add_fixture(survey.rooms[0], 130, FixtureKind::vanity, {m(2), m(2)}, {m(0.5), m(0.5)});
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("131: the vanity and the tub of the bath stand in one place -> corner counts from "
                    "the room's south-west corner; write a basin in a vanity as the vanity, see 121"));
    survey.rooms[0].fixtures[1].corner->value.first = m(1.9);
    EXPECT_THAT(mistakes(survey), IsEmpty());
}

TEST(Fixtures, what_one_lacks_is_asked_for) {
    house::Survey survey = tub_in_the_corner();
    house::SurveyFixture& tub = survey.rooms[0].fixtures[0];
    tub.kind.reset(), tub.corner.reset(), tub.size.reset();
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("120: the kind of the fixture of the bath is missing -> write kind = \"tub\"",
                    "120: the corner of the fixture of the bath is missing -> write corner = [\"0 ft\", \"2 "
                    "ft 6 in\"]: from the room's south-west corner",
                    "120: the size of the fixture of the bath is missing -> write size = [\"2 ft 6 in\", \"5 "
                    "ft\"]: west-east, then south-north"));
}

// The north and the west wall move by so much.
house::Survey moving_walls(double grow) {
    house::Survey survey = tub_in_the_corner();
    for (const WallSide side : {WallSide::north, WallSide::west}) {
        house::SurveyWall& wall = add_wall(survey.rooms[0], 110, side, "outdoors");
        wall.room_grows = at(111, m(grow));
    }
    return survey;
}

TEST(Fixtures, stay_where_they_are_when_a_wall_moves_out) {
    const house::Built built = planned(moving_walls(0.1));
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_NEAR(only_fixture(built).box.west.si(), 2.5, 1e-12);
    EXPECT_NEAR(only_fixture(built).box.north.si(), 3, 1e-12);
    EXPECT_NEAR(only_fixture(found(moving_walls(0.1))).box.west.si(), 2.4, 1e-12);
}

TEST(Fixtures, a_wall_that_moves_in_pushes_what_stands_at_it) {
    const house::Built built = planned(moving_walls(-0.1));
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_NEAR(only_fixture(built).box.north.si(), 2.9, 1e-12);
    EXPECT_NEAR(only_fixture(built).box.south.si(), 2.1, 1e-12);
}

TEST(Fixtures, one_too_large_for_the_planned_room_is_blamed) {
    house::Survey survey = moving_walls(-0.1);
    survey.rooms[0].fixtures[0].corner->value.first = m(0);
    survey.rooms[0].fixtures[0].size->value.first = m(4);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("122: the tub does not fit the bath as planned (the room is then 12 ft 9-1/2 in "
                            "from west to east) -> see how far its walls move in: room_grows"));
    EXPECT_THAT(mistakes(found(survey)), IsEmpty());
}

}  // namespace
