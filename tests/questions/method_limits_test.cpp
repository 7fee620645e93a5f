#include "questions/method_limits.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "house/build.hpp"
#include "questions/sheets.hpp"

namespace {

using questions::BeyondLimit;
using questions::Limit;

std::vector<BeyondLimit> limits_of(const std::string& sheet) {
    const house::Survey survey = sheets::survey(sheet);
    return questions::beyond_limits(survey, house::build(survey, {}, house::Stage::planned).house);
}

std::vector<Limit> kinds_of(const std::string& sheet) {
    std::vector<Limit> kinds;
    for (const BeyondLimit& beyond : limits_of(sheet)) kinds.push_back(beyond.limit);
    return kinds;
}

std::string den(double window_width) {
    sheets::OneRoom den;
    den.width = 5, den.depth = 3, den.window_width = window_width;  // 15 m2 of floor
    return den.sheet();
}

TEST(MethodLimits, an_ordinary_house_is_within_all) {
    EXPECT_THAT(kinds_of(den(1)), testing::IsEmpty());
    EXPECT_THAT(kinds_of(sheets::a_case("upstairs-bath")), testing::IsEmpty());
}

TEST(MethodLimits, much_glass_on_one_side) {
    const auto limits = limits_of(den(2.5));  // 3 m2 of 15 m2
    ASSERT_EQ(limits.size(), 1u);
    EXPECT_EQ(limits[0].limit, Limit::glass_on_a_side);
    EXPECT_NEAR(limits[0].glass, 0.2, 1e-9);
    EXPECT_EQ(limits[0].room.index, 0);
}

TEST(MethodLimits, too_much_in_all_is_said_once) {
    const auto limits = limits_of(den(4.5));  // 5.4 m2 of 15 m2
    ASSERT_EQ(limits.size(), 1u);
    EXPECT_EQ(limits[0].limit, Limit::glass_in_all);
    EXPECT_NEAR(limits[0].glass, 0.36, 1e-9);
}

std::string top(const char* layers, bool studs) {
    return std::string(R"(sheet = 1
[house]
storeys = 1
[site]
elevation = "100 m"
winter_outdoor = "-12 C"
[construction.wall]
layers = [)") +
           layers + "]\n" + (studs ? "studs = \"16 in\"\n" : "") + R"([heater]
output = "9 kW"
[[room]]
name = "den"
corner = ["0 m", "0 m"]
size = ["4 m", "4 m"]
ceiling = "2.5 m"
[room.wall.north]
faces = "outdoors"
construction = "wall"
)";
}

TEST(MethodLimits, masonry_that_carries_but_no_veneer) {
    EXPECT_THAT(kinds_of(top(R"("brick, 8 in", "plaster, 3/4 in")", false)),
                testing::ElementsAre(Limit::masonry));
    EXPECT_THAT(
        kinds_of(top(R"("brick, 4 in", "board sheathing, 3/4 in", "empty stud bay, 3-1/2 in")", true)),
        testing::IsEmpty());
    EXPECT_THAT(kinds_of(top(R"("lap siding", "board sheathing, 3/4 in")", false)), testing::IsEmpty());
}

TEST(MethodLimits, a_room_that_touches_nothing_unheated) {
    const std::string sheet = sheets::with(top("\"lap siding\"", false), "storeys = 1", "storeys = 3");
    const std::string inner =
        sheets::with(sheet, "faces = \"outdoors\"\nconstruction = \"wall\"\n", "faces = \"heated rooms\"\n") +
        "[other_rooms]\nheat_loss = \"3 kW\"\noutlets = 4\n";
    EXPECT_THAT(kinds_of(sheets::with(inner, "ceiling =", "storey = 2\nceiling =")),
                testing::ElementsAre(Limit::no_outside_surface));
}

TEST(MethodLimits, a_concrete_wall_in_the_ground_is_within_the_method_and_an_outside_of_its_room) {
    const std::string sheet = sheets::with(top("\"concrete, 8 in\"", false), "faces = \"outdoors\"",
                                           "faces = \"ground\"\ndepth = \"5 ft\"");
    const std::string cellar = sheets::with(
        sheet, "ceiling =",
        "above = { space = \"heated rooms\" }\nbelow = { space = \"ground\", depth = \"5 ft\" }\nceiling =");
    EXPECT_THAT(kinds_of(cellar), testing::IsEmpty());
}

TEST(MethodLimits, glass_in_listed_surfaces_counts) {
    const std::string sheet =
        top("\"lap siding\"", false) +
        "[[room.surface]]\nname = \"bay\"\nfaces = \"outdoors\"\narea = \"200 ft2\"\n"
        "[[room.window]]\nname = \"all of it\"\nwall = \"bay\"\nsize = [\"18 ft\", \"8 ft\"]\n";
    EXPECT_THAT(kinds_of(sheet), testing::ElementsAre(Limit::glass_in_all));
}

TEST(MethodLimits, of_the_whole_house_come_last) {
    std::string sheet = sheets::with(top("\"brick, 8 in\"", false), "ceiling =", "storey = 4\nceiling =");
    sheet = sheets::with(sheets::with(sheet, "storeys = 1", "storeys = 4"), "\"100 m\"", "\"2400 m\"");
    EXPECT_THAT(kinds_of(sheet), testing::ElementsAre(Limit::masonry, Limit::elevation, Limit::storeys));
    EXPECT_TRUE(questions::is_of_a_room(Limit::masonry));
    EXPECT_FALSE(questions::is_of_a_room(Limit::storeys));
    EXPECT_EQ(questions::word_of(Limit::glass_on_a_side), "glass on a side");
    EXPECT_EQ(questions::word_of(Limit::storeys), "storeys");
}

}  // namespace
