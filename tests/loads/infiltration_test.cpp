#include "loads/infiltration.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "loads/a_house.hpp"
#include "loads/air.hpp"

namespace loads {
namespace {

using a_house::add_room;
using a_house::bare;
using a_house::surface;
using a_house::u;
using house::Space;

// One room 4 x 3 x 2.5 m with 20 m2 of outside wall.
house::House one_room() {
    house::House one = bare();
    add_room(one, "bedroom").surfaces = {surface(20, u(1.5))};
    return one;
}

house::OtherRooms with_floor(double square_metres) {
    house::OtherRooms others;
    others.floor_area = units::Area(square_metres);
    return others;
}

TEST(ExposedSurface, all_but_basement_and_heated_rooms) {
    house::House house = bare();
    house::Room& room = add_room(house, "bedroom");
    for (const Space space : {Space::outdoors, Space::attic, Space::crawl, Space::garage, Space::porch})
        room.surfaces.push_back(surface(1, u(1), space));
    for (const Space space : {Space::basement, Space::heated_rooms})
        room.surfaces.push_back(surface(100, u(1), space));
    room.surfaces.push_back(surface(100, u(1), house::RoomId{0}));
    EXPECT_DOUBLE_EQ(exposed_surface(room).si(), 5);
}

TEST(ExposedSurface, of_a_house_all_described_is_that_of_its_rooms) {
    EXPECT_DOUBLE_EQ(exposed_surface(one_room()).si(), 20);
}

TEST(ExposedSurface, of_other_rooms_is_the_rest_of_a_box) {
    house::House house = one_room();
    house.other_rooms = with_floor(138);  // 150 m2 in all, 10 x 15 m: walls 50 x 2.5, ceiling 150
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), 275);
    house.storeys = 2;  // 75 m2, a perimeter of 5 sqrt(50): walls two high
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), 2 * 5 * std::sqrt(50) * 2.5 + 75);
}

// A house over a crawl space or on posts: the ground floor of the box counts as far as the described one
// does.
TEST(ExposedSurface, of_a_box_has_its_floor_where_air_moves_below) {
    house::House house = one_room();
    house.other_rooms = with_floor(138);
    const double without = exposed_surface(house).si();
    house::Surface floor = surface(house.rooms[0].floor_area().si(), u(1), house::Space::crawl);
    floor.kind = house::SurfaceKind::floor;
    house.rooms[0].surfaces.push_back(floor);
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), without + 150);
    house.rooms[0].storey = 2;  // a floor over a porch upstairs tells nothing of the ground floor
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), without);
}

TEST(ExposedSurface, exposure_corrects_the_other_rooms_only) {
    house::House house = one_room();
    house.other_rooms = with_floor(138);
    house.other_rooms->exposure = 0.8;
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), 20 + 0.8 * 255);
}

TEST(ExposedSurface, never_less_than_that_of_the_described_rooms) {
    house::House house = one_room();
    house.rooms[0].surfaces[0].area = units::Area(500);
    house.other_rooms = with_floor(1);
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), 500);
}

TEST(ExposedSurface, goes_with_a_stated_heat_loss) {
    house::House house = one_room();  // loses 20 x 1.5 x 30 = 900 W
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->heat_loss = units::Power(4500);
    EXPECT_NEAR(exposed_surface(house).si(), 20 + 100, 1e-9);
}

TEST(ExposedSurface, goes_with_a_stated_heat_loss_that_holds_leakage) {
    house::House house = one_room();
    house.air_leakage = 5.6;
    const units::Airflow alone = infiltration(house).airflow;
    const Air air = air_at(house.site.winter_indoor, site_pressure(house.site));
    const double described = 900 + (alone * air.density * air.specific_heat).si() * 30;
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->heat_loss = units::Power(2 * described);
    EXPECT_NEAR(exposed_surface(house).si(), 60, 1e-9);
    EXPECT_NEAR(infiltration(house).airflow / alone, 3, 1e-12);
}

TEST(ExposedSurface, is_not_added_where_nothing_is_lost) {
    house::House house = one_room();
    house.site.winter_outdoor = house.site.winter_indoor;
    house.space_winter.fill(house.site.winter_indoor);
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->heat_loss = units::Power(4500);
    EXPECT_DOUBLE_EQ(exposed_surface(house).si(), 20);
}

TEST(Infiltration, by_class) {
    house::House house = one_room();
    house.air_leakage = 5.6;
    const Infiltration leaks = infiltration(house);
    EXPECT_DOUBLE_EQ(leaks.leakage_area / units::unit::square_centimetre, 112);
    EXPECT_DOUBLE_EQ(leaks.stack_height.si(), 2.5);
    EXPECT_DOUBLE_EQ(leaks.difference.si(), 30);
    EXPECT_NEAR(leaks.airflow / units::unit::litre_per_second, 112 * (51 + 2.5 * 30 * 0.35) / 1000, 1e-9);
}

TEST(Infiltration, by_test_of_a_house_all_described) {
    house::House house = one_room();
    house.air_leakage = units::LeakageTest{14 * units::unit::per_hour};
    const double density = air_at(house.site.winter_indoor, site_pressure(house.site)).density.si();
    const double at_4_pascal = 14 * 30.0 / 3600 * std::pow(4.0 / 50, 0.65);
    EXPECT_NEAR(infiltration(house).leakage_area.si(), at_4_pascal * std::sqrt(density / 8), 1e-12);
}

TEST(Infiltration, by_test_takes_the_other_rooms_volume) {
    house::House house = one_room();
    house.air_leakage = units::LeakageTest{14 * units::unit::per_hour};
    const units::Area alone = infiltration(house).leakage_area;
    house.other_rooms = with_floor(108);
    EXPECT_NEAR(infiltration(house).leakage_area / alone, 10, 1e-12);
}

TEST(Infiltration, by_test_takes_the_volume_that_goes_with_the_surface) {
    house::House house = one_room();
    house.air_leakage = units::LeakageTest{14 * units::unit::per_hour};
    const Infiltration alone = infiltration(house);
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->heat_loss = units::Power(9000);
    const Infiltration whole = infiltration(house);
    EXPECT_GT(whole.exposed, alone.exposed);
    EXPECT_NEAR(whole.leakage_area / alone.leakage_area, whole.exposed / alone.exposed, 1e-12);
}

TEST(Infiltration, warmer_outdoors_drives_as_much) {
    const units::Length height{5};
    EXPECT_EQ(infiltration_driving_force(height, units::TemperatureDifference(-20)),
              infiltration_driving_force(height, units::TemperatureDifference(20)));
}

TEST(Infiltration, a_house_that_faces_nothing_does_not_leak) {
    house::House house = bare();
    house.air_leakage = 5.6;
    add_room(house, "bath");
    EXPECT_EQ(infiltration(house).airflow, units::Airflow());
}

TEST(Infiltration, a_leak_without_a_surface_cannot_be_shared) {
    house::House house = bare();
    house.air_leakage = units::LeakageTest{14 * units::unit::per_hour};
    add_room(house, "bath");
    EXPECT_THAT(
        [&] { infiltration(house); },
        testing::ThrowsMessage<house::CannotAnswer>(
            "air leaks into the house, but no described room faces outdoors: describe one that does"));
}

}  // namespace
}  // namespace loads
