// The surfaces of a room by a list, and how walls and floors lie in the ground.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "printed.hpp"
#include "sheet/read.hpp"

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr const char* cellar = R"(sheet = 1
[house]
size = ["28 ft", "36 ft"]
[site]
ground = "45 F"
[[room]]
name = "cellar"
floor_area = "150 ft2"
below = { space = "ground", depth = "6 ft", exposed_edge = "24 ft", edge = "bare", covering = "carpet" }
[room.wall.west]
faces = "ground"
area = "40 ft2"
room_grows = "-1-3/4 in"
depth = "5 ft"
depth_from = "1 ft"
[[room.surface]]
name = "east part"
kind = "slope"
faces = "attic"
length = "8 ft"
height = "5 ft"
looks = "southwest"
construction = "thin"
becomes = "thick"
[[room.surface]]
name = "back"
area = "52 ft2"
looks = "35 deg"
[[room.window]]
wall = "back"
[[room.door]]
wall = "north"
)";

double feet(const house::Maybe<units::Length>& length) { return length ? length->value.si() / 0.3048 : -1; }

TEST(ReadSurfaces, EveryWord) {
    const auto read = sheet::read(cellar);
    EXPECT_THAT(mistakes_in(cellar), IsEmpty());
    const house::Survey& survey = read.survey;
    EXPECT_NEAR(survey.house_size->value.second.si(), 36 * 0.3048, 1e-12);
    EXPECT_NEAR(survey.site.ground->value.si(), (45 + 459.67) / 1.8, 1e-9);
    const house::SurveyRoom& room = survey.rooms.at(0);
    EXPECT_NEAR(room.floor_area->value.si(), 150 * 0.3048 * 0.3048, 1e-9);
    EXPECT_NEAR(feet(room.below->ground.depth), 6, 1e-9);
    EXPECT_NEAR(feet(room.below->ground.exposed_edge), 24, 1e-9);
    EXPECT_EQ(room.below->ground.edge->value, "bare");
    EXPECT_EQ(room.below->ground.covering->value, "carpet");
    const house::SurveyWall& wall = room.walls.at(0);
    EXPECT_NEAR(wall.area->value.si(), 40 * 0.3048 * 0.3048, 1e-9);
    EXPECT_NEAR(feet(wall.room_grows), -1.75 / 12, 1e-9);
    EXPECT_NEAR(feet(wall.ground.depth), 5, 1e-9);
    EXPECT_NEAR(feet(wall.ground.depth_from), 1, 1e-9);
    const house::SurveySurface& slope = room.surfaces.at(0);
    EXPECT_EQ(slope.name->value, "east part");
    EXPECT_EQ(slope.kind->value, house::SurfaceKind::slope);
    EXPECT_EQ(slope.faces->value, "attic");
    EXPECT_NEAR(feet(slope.length), 8, 1e-9);
    EXPECT_NEAR(feet(slope.height), 5, 1e-9);
    EXPECT_EQ(slope.looks->value.degrees, 225);
    EXPECT_EQ(slope.construction->value, "thin");
    EXPECT_EQ(slope.becomes->value, "thick");
    EXPECT_EQ(room.surfaces.at(1).looks->value.degrees, 35);
    EXPECT_EQ(room.windows.at(0).surface->value, "back");
    EXPECT_FALSE(room.windows.at(0).wall);
    EXPECT_EQ(room.doors.at(0).wall->value, house::WallSide::north);
}

TEST(ReadSurfaces, AWallFacesOneThing) {
    EXPECT_THAT(
        mistakes_after_first_line("[[room]]\n"
                                  "name = \"bath\"\n"
                                  "[room.wall.west]\n"
                                  "faces = [\"outdoors\", \"porch\"]\n"),
        ElementsAre("5:9-30 | 'faces' in the west wall of room 'bath' is a list: a wall faces one "
                    "thing |  | describe the wall's parts as [[room.surface]], each with what it faces"));
}

TEST(ReadSurfaces, AWindowIsInASideOrInASurfaceOfItsRoom) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "name = \"loft\"\n"
                                          "[[room.surface]]\n"
                                          "name = \"gable\"\n"
                                          "[[room.window]]\n"
                                          "wall = \"gabel\"\n"),
                ElementsAre("7:8-15 | 'wall' in window number 1 of room 'loft' cannot be 'gabel' | did you "
                            "mean 'gable'? | write one of: north, east, south, west, gable"));
}

TEST(ReadSurfaces, NamesThatMeanSomethingElse) {
    EXPECT_THAT(
        mistakes_after_first_line("[construction.\"don't know\"]\n"
                                  "u = \"1 W/m2K\"\n"
                                  "[[room]]\n"
                                  "name = \"loft\"\n"
                                  "[[room.surface]]\n"
                                  "name = \"north\"\n"),
        ElementsAre("2:15-27 | no construction can be called \"don't know\" |  | that stands for a "
                    "make nobody knows; give this one another name",
                    "7:8-15 | a surface cannot be called 'north' |  | that is a side of the room; call "
                    "it 'north knee wall'"));
}

TEST(ReadSurfaces, LooksTowardsAWordOfTheCompassOrAnAngle) {
    EXPECT_THAT(mistakes_after_first_line("[[room]]\n"
                                          "name = \"loft\"\n"
                                          "[[room.surface]]\n"
                                          "name = \"gable\"\n"
                                          "looks = \"sout\"\n"
                                          "[[room.surface]]\n"
                                          "name = \"back\"\n"
                                          "looks = \"35\"\n"),
                ElementsAre("6:9-15 | 'looks' in surface 'gable' of room 'loft' cannot be 'sout' | did you "
                            "mean 'south'? | write one of: north, northeast, east, southeast, south, "
                            "southwest, west, northwest, or an angle from north: \"35 deg\"",
                            "9:10-12 | 'looks' in surface 'back' of room 'loft': an angle needs a unit |  | "
                            "write an angle, as 90 deg or -12 deg"));
}

}  // namespace
