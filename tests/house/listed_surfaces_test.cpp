#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::Space;
using house::SurfaceKind;
using house::WallSide;

units::Area m2(double area) { return units::Area(area); }

house::SurveySurface& add_surface(house::SurveyRoom& to, int line, const char* name, const char* faces,
                                  double area) {
    house::SurveySurface surface;
    surface.place = on_line(line);
    surface.name = at(line, name);
    surface.faces = at(line, faces);
    if (area > 0) surface.area = at(line, m2(area));
    to.surfaces.push_back(surface);
    return to.surfaces.back();
}

house::SurveyRoom& add_listed_room(house::Survey& to, const char* name, double floor) {
    house::SurveyRoom& room = add_room(to, name, {m(0), m(0)}, {m(1), m(1)});
    room.corner.reset();
    room.size.reset();
    room.floor_area = at(room.place.line + 4, m2(floor));
    return room;
}

house::Survey loft() {
    house::Survey survey = no_room();
    add_listed_room(survey, "loft", 12);
    return survey;
}

const house::Surface& surface_of(const house::Built& built, const char* name) {
    static const house::Surface none{};
    const house::Surface* found = find_surface(built.house.rooms[0], name);
    EXPECT_NE(found, nullptr) << name;
    return found ? *found : none;
}

TEST(ListedSurfaces, a_room_of_any_shape_has_a_floor_area_and_a_list) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "gable", "outdoors", 8);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(built.house.rooms[0].floor_area().si(), 12);
    EXPECT_DOUBLE_EQ(area(built, 0, "gable"), 8);
    EXPECT_DOUBLE_EQ(area(built, 0, "ceiling"), 12);
    EXPECT_DOUBLE_EQ(area(built, 0, "floor"), 12);
}

TEST(ListedSurfaces, length_by_height_and_the_ceilings_height_where_a_wall_says_none) {
    house::Survey survey = loft();
    auto& low = add_surface(survey.rooms[0], 120, "knee wall", "attic", 0);
    low.length = at(121, m(4));
    low.height = at(122, m(1.2));
    add_surface(survey.rooms[0], 130, "gable", "outdoors", 0).length = at(131, m(3));
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(area(built, 0, "knee wall"), 4.8);
    EXPECT_DOUBLE_EQ(area(built, 0, "gable"), 7.5);
}

TEST(ListedSurfaces, what_nobody_knows_of_them_is_assumed_by_what_they_are) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "knee wall", "attic", 5);
    add_surface(survey.rooms[0], 130, "gable", "outdoors", 5).construction = at(131, "don't know");
    add_surface(survey.rooms[0], 140, "roof", "outdoors", 9).kind = at(141, SurfaceKind::slope);
    const house::Built built = planned(survey);
    EXPECT_THAT(taken_for(built, DefaultId::knee_wall), ElementsAre("knee wall of the loft"));
    EXPECT_THAT(taken_for(built, DefaultId::old_wall), ElementsAre("gable of the loft"));
    EXPECT_THAT(taken_for(built, DefaultId::roof_slope), ElementsAre("roof of the loft"));
    EXPECT_EQ(surface_of(built, "roof").kind, SurfaceKind::slope);
}

TEST(ListedSurfaces, becomes_holds_for_the_planned_house_alone) {
    house::Survey survey = loft();
    add_construction(survey, "bare", 2);
    add_construction(survey, "filled", 0.5);
    auto& wall = add_surface(survey.rooms[0], 120, "gable", "outdoors", 5);
    wall.construction = at(121, "bare");
    wall.becomes = at(122, "filled");
    EXPECT_DOUBLE_EQ(u(found(survey), 0, "gable"), 2);
    EXPECT_DOUBLE_EQ(u(planned(survey), 0, "gable"), 0.5);
    EXPECT_TRUE(house::is_altered(survey.rooms[0]));
}

TEST(ListedSurfaces, windows_and_doors_are_cut_out_of_the_surface_they_name) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "gable", "outdoors", 8);
    auto& window = add_window(survey.rooms[0], 140, WallSide::north, m(1), {m(1), m(1.5)});
    window.wall.reset();
    window.surface = at(141, "gable");
    house::SurveyDoor door;
    door.place = on_line(150);
    door.surface = at(151, "gable");
    door.width = at(152, m(0.8));
    door.height = at(153, m(2));
    survey.rooms[0].doors.push_back(door);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(area(built, 0, "gable"), 8 - 1.5 - 1.6);
    EXPECT_DOUBLE_EQ(area(built, 0, "window"), 1.5);
    EXPECT_DOUBLE_EQ(area(built, 0, "gable door"), 1.6);
}

TEST(ListedSurfaces, in_summer_a_window_has_to_look_somewhere) {
    house::Survey survey = loft();
    cool(survey);
    survey.north = at(22, units::Angle{10});
    auto& gable = add_surface(survey.rooms[0], 120, "gable", "outdoors", 8);
    auto& window = add_window(survey.rooms[0], 140, WallSide::north, m(1), {m(1), m(1.5)});
    window.wall.reset();
    window.surface = at(141, "gable");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("120: which way the gable of the loft looks, which cooling needs, is missing -> "
                            "write looks = \"southwest\" or looks = \"225 deg\""));
    gable.looks = at(122, units::Angle{225});
    const house::Built built = planned(survey);
    ASSERT_TRUE(surface_of(built, "window").sun);
    EXPECT_DOUBLE_EQ(surface_of(built, "window").sun->azimuth, 235);
    EXPECT_FALSE(surface_of(built, "window").sun->flat);
    gable.kind = at(123, SurfaceKind::slope);
    gable.looks.reset();
    EXPECT_TRUE(surface_of(planned(survey), "window").sun->flat);
}

TEST(ListedSurfaces, above_and_below_get_what_the_list_leaves) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "lower ceiling", "attic", 5).kind = at(121, SurfaceKind::ceiling);
    add_surface(survey.rooms[0], 130, "floor over the porch", "porch", 2).kind = at(131, SurfaceKind::floor);
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(area(built, 0, "ceiling"), 7);
    EXPECT_DOUBLE_EQ(area(built, 0, "floor"), 10);
}

TEST(ListedSurfaces, under_slopes_nothing_is_taken_for_granted) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "west slope", "outdoors", 8).kind = at(121, SurfaceKind::slope);
    EXPECT_EQ(area(planned(survey), 0, "ceiling"), 0);
    survey.rooms[0].above = house::SurveyHorizontal{on_line(110), at(111, "attic"), {}, {}};
    EXPECT_THAT(mistakes(survey),
                ElementsAre("110: the ceiling of the loft is partly sloped -> describe its flat part as a "
                            "[[room.surface]] with kind = \"ceiling\""));
}

TEST(ListedSurfaces, more_floor_than_there_is) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "floor over the porch", "porch", 13).kind = at(121, SurfaceKind::floor);
    EXPECT_THAT(mistakes(survey),
                ElementsAre("100: the loft has more floor in its list than it has floor area"));
}

TEST(ListedSurfaces, a_partition_is_one_thing_seen_from_both_rooms) {
    house::Survey survey = loft();
    add_listed_room(survey, "stairs", 6);
    add_surface(survey.rooms[0], 120, "east wall", "stairs", 9);
    add_surface(survey.rooms[1], 220, "west wall", "loft", 8);
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(area(built, 0, "wall to the stairs"), 8);
    EXPECT_DOUBLE_EQ(area(built, 1, "wall to the loft"), 8);
    EXPECT_EQ(area(built, 0, "east wall"), 0);
}

TEST(ListedSurfaces, one_rooms_floor_is_the_others_ceiling) {
    house::Survey survey = loft();
    survey.storeys = at(21, 2);
    survey.rooms[0].storey = at(102, 2);
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(24));
    add_listed_room(survey, "parlour", 20);
    add_surface(survey.rooms[0], 120, "floor", "parlour", 10).kind = at(121, SurfaceKind::floor);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(area(built, 0, "floor to the parlour"), 10);
    EXPECT_DOUBLE_EQ(area(built, 1, "ceiling to the loft"), 10);
    EXPECT_DOUBLE_EQ(area(built, 0, "floor"), 2);
    // The parlour is as warm as the rooms not described: nothing flows through the rest of its ceiling.
    EXPECT_EQ(area(built, 1, "ceiling"), 0);
}

TEST(ListedSurfaces, towards_rooms_not_described_heat_flows_where_temperatures_differ) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "inside wall", "heated rooms", 9);
    EXPECT_EQ(area(planned(survey), 0, "inside wall"), 0);
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(24));
    const house::Built built = planned(survey);
    EXPECT_DOUBLE_EQ(area(built, 0, "inside wall"), 9);
    EXPECT_EQ(surface_of(built, "inside wall").kind, SurfaceKind::partition);
}

TEST(ListedSurfaces, a_side_may_say_how_much_of_it_faces_so) {
    house::Survey survey = one_room();
    survey.rooms[0].winter_indoor = at(106, units::unit::celsius(24));
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors").area = at(111, m2(6));
    add_surface(survey.rooms[0], 120, "wall to the porch", "porch", 4);
    const house::Built built = planned(survey);
    EXPECT_THAT(mistakes(built), IsEmpty());
    EXPECT_DOUBLE_EQ(area(built, 0, "north wall"), 6);
    EXPECT_DOUBLE_EQ(area(built, 0, "wall to the porch"), 4);
    // Three sides of 3, 3 and 4 m by 2.5 m lie inside, less what the list has of them.
    EXPECT_DOUBLE_EQ(area(built, 0, "other inside walls"), 25 - 4);
}

TEST(ListedSurfaces, what_is_missing_is_asked_for) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "gable", "outdoors", 0);
    add_surface(survey.rooms[0], 130, "roof", "outdoors", 0).kind = at(131, SurfaceKind::slope);
    add_surface(survey.rooms[0], 140, "back", "outdoors", 4).faces.reset();
    add_surface(survey.rooms[0], 150, "side", "atic", 4);
    EXPECT_THAT(
        mistakes(survey),
        ElementsAre("120: the area of the gable of the loft is missing -> write length = \"8 ft\", or "
                    "area = \"52 ft2\"",
                    "130: the area of the roof of the loft is missing -> write area = \"52 ft2\", or "
                    "its length and its height",
                    "140: what the back of the loft faces is missing -> write faces = \"outdoors\", "
                    "or faces = \"attic\"",
                    "150: nothing is called 'atic' (did you mean 'attic'?) -> write outdoors, attic, "
                    "basement, crawl, garage, porch, ground, heated rooms, or a room's name"));
}

TEST(ListedSurfaces, a_window_in_an_inside_wall) {
    house::Survey survey = loft();
    add_surface(survey.rooms[0], 120, "back", "heated rooms", 4);
    auto& window = add_window(survey.rooms[0], 140, WallSide::north, m(1), {m(1), m(1)});
    window.wall.reset();
    window.surface = at(141, "back");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("141: the back of the loft has a window but does not face outdoors -> give the "
                            "[[room.surface]] faces = \"outdoors\""));
}

TEST(ListedSurfaces, a_named_side_of_a_room_without_a_size_says_its_area) {
    house::Survey survey = loft();
    add_wall(survey.rooms[0], 110, WallSide::north, "outdoors");
    EXPECT_THAT(mistakes(survey),
                ElementsAre("110: the area of the north wall of the loft is missing -> write area = \"52 "
                            "ft2\", as the room has no size"));
}

}  // namespace
