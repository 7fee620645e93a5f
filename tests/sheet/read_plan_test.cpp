// What the plan of a room shows, floors of joists and the bays between them: read from a sheet with every
// word in it, and what is wrong in them.
#include "expect_given.hpp"

namespace {

using namespace units::unit;
using house::WallSide;
using testing::ElementsAre;

TEST(ReadPlan, AFixture) {
    ASSERT_EQ(survey().rooms[0].fixtures.size(), 1u);
    const auto& tub = survey().rooms[0].fixtures[0];
    EXPECT_EQ(tub.place, at("[[room.fixture]]"));
    expect_given(tub.name, "claw-foot tub");
    expect_given(tub.kind, house::FixtureKind::tub, "\"tub\"");
    expect_two(tub.corner, two(23 * inch, 35 * inch), "[\"1 ft 11 in\", \"2 ft 11 in\"]");
    expect_two(tub.size, two(29 * inch, 55 * inch), "[\"2 ft 5 in\", \"4 ft 7 in\"]");
}

TEST(ReadPlan, HowADoorOpens) {
    const auto& door = survey().rooms[0].doors[0];
    ASSERT_TRUE(door.swings);
    EXPECT_EQ(door.swings->value.hanging, house::DoorHanging::in);
    EXPECT_EQ(door.swings->value.hinged, WallSide::south);
    EXPECT_EQ(door.swings->place, at("\"in, hinged south\""));
}

TEST(ReadPlan, ADoorThatSlidesHasNoHinge) {
    const auto read = sheet::read(
        "sheet = 1\n[[room]]\n[[room.door]]\nswings = \"slides\"\n[[room.door]]\nswings = \"none\"\n"
        "[[room.door]]\nswings = \"out, hinged east\"\n");
    EXPECT_THAT(read.mistakes, testing::IsEmpty());
    const auto& doors = read.survey.rooms[0].doors;
    EXPECT_EQ(doors[0].swings->value.hanging, house::DoorHanging::slides);
    EXPECT_FALSE(doors[0].swings->value.hinged);
    EXPECT_EQ(doors[1].swings->value.hanging, house::DoorHanging::none);
    EXPECT_EQ(doors[2].swings->value.hanging, house::DoorHanging::out);
    EXPECT_EQ(doors[2].swings->value.hinged, WallSide::east);
}

TEST(ReadPlan, AFloorOfJoists) {
    ASSERT_EQ(survey().floors.size(), 1u);
    const auto& floor = survey().floors[0];
    EXPECT_EQ(floor.place, at("[[floor]]"));
    expect_given(floor.name, std::string("ground floor"), "\"ground floor\"");
    expect_given(floor.under, 1, "\"storey 1\"");
    expect_given(floor.joists_run, house::JoistsRun::east_west, "\"east-west\"");
    expect_quantity(floor.first, 8.5 * inch, "\"8-1/2 in\"");
    expect_quantity(floor.spacing, 16.25 * inch, "\"16-1/4 in\"");
    expect_two(floor.joist, two(1.75 * inch, 9.25 * inch), "[\"1-3/4 in\", \"9-1/4 in\"]");
    ASSERT_EQ(floor.sisters.size(), 1u);
    EXPECT_EQ(floor.sisters[0].joist->value, 3);
    EXPECT_EQ(floor.sisters[0].side->value, WallSide::north);
    expect_quantity(floor.sisters[0].add, 1.625 * inch, "\"1-5/8 in\"");
}

TEST(ReadPlan, ABayAndItsPipes) {
    ASSERT_EQ(survey().bays.size(), 1u);
    const auto& bay = survey().bays[0];
    EXPECT_EQ(bay.place, at("[[bay]]"));
    expect_given(bay.name, "drain bay");
    expect_given(bay.framing, house::Framing::joists, "\"joists\"");
    expect_two(bay.clear, two(14.125 * inch, 9.375 * inch), "[\"14-1/8 in\", \"9-3/8 in\"]");
    expect_given(bay.floor, "ground floor of joists");
    EXPECT_EQ(bay.between->value, std::pair(2, 3));
    expect_quantity(bay.clearance, 0.375 * inch, "\"3/8 in\"");
    ASSERT_EQ(bay.pipes.size(), 2u);
    const auto &drain = bay.pipes[0], &crossing = bay.pipes[1];
    expect_given(drain.name, "3 in drain");
    expect_quantity(drain.outside, 3.9375 * inch, "\"3-15/16 in\"");
    EXPECT_EQ(drain.from->value, WallSide::west);
    expect_quantity(drain.distance, 1.125 * inch, "\"1-1/8 in\"");
    expect_two(drain.top, two(2.125 * inch, 2.375 * inch), "[\"2-1/8 in\", \"2-3/8 in\"]");
    expect_given(crossing.size, "2 in PVC");
    EXPECT_EQ(crossing.bottom->value.first, crossing.bottom->value.second);
    EXPECT_TRUE(crossing.across->value);
}

TEST(ReadPlan, ADoorNeedsItsHingeToSwing) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n[[room.door]]\nswings = \"in\"\n"
                                  "[[room.door]]\nswings = \"slides, hinged west\"\n"
                                  "[[room.door]]\nswings = \"inn, hinged west\"\n"
                                  "[[room.door]]\nswings = \"out, hinged wset\"\n"),
        ElementsAre(
            "4:10-14 | 'swings' in door number 1 of room number 1 does not say where the door is "
            "hinged |  | write swings = \"in, hinged west\", or \"slides\"",
            "6:10-31 | 'swings' in door number 2 of room number 1 gives a hinge to a door that has none |  "
            "| write swings = \"in, hinged west\", or \"slides\"",
            "8:10-28 | 'swings' in door number 3 of room number 1 cannot be 'inn' | did you mean "
            "'in'? | write one of: in, out, slides, none",
            "10:10-28 | 'swings' in door number 4 of room number 1 cannot be 'wset' | did you mean "
            "'west'? | write one of: north, east, south, west"));
}

TEST(ReadPlan, AFloorLiesUnderAStorey) {
    for (const char* wrong : {"storey", "storey 0", "storey 9", "storey 2nd", "upstairs", "2"})
        EXPECT_THAT(mistakes_after_first_line("[[floor]]\nunder = \"" + std::string(wrong) + "\"\n"),
                    ElementsAre(testing::HasSubstr(
                        "'under' in floor number 1 is not a storey |  | write under = \"storey 2\"")))
            << wrong;
}

TEST(ReadPlan, AFixtureOfNoKnownKind) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\nname = \"bath\"\n[[room.fixture]]\nkind = \"tubb\"\n"),
        ElementsAre(testing::StartsWith("5:8-14 | 'kind' in fixture number 1 of room 'bath' cannot be "
                                        "'tubb' | did you mean 'tub'? | write one of: tub, shower, ")));
}

}  // namespace
