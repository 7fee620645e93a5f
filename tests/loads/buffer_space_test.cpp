#include "loads/buffer_space.hpp"

#include <gtest/gtest.h>

#include "loads/a_house.hpp"
#include "loads/air.hpp"
#include "loads/below_grade.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

using a_house::add_room;
using a_house::bare;
using a_house::surface;
using a_house::u;
using house::Space;
using house::SurfaceKind;
namespace unit = units::unit;

// A room of 12 m2 under an attic whose roof is 14.4 m2.
house::House under_an_attic(double ceiling_u) {
    house::House house = bare(20, -15);
    add_room(house, "bath").surfaces = {surface(12, u(ceiling_u), Space::attic, SurfaceKind::ceiling)};
    house::BufferSpace attic;
    attic.floor_area = units::Area(12);
    attic.outer = {surface(14.4, u(3), Space::outdoors, SurfaceKind::ceiling)};
    attic.outdoor_air = 10 * unit::litre_per_second;
    house.buffer_spaces = {attic};
    return house;
}

double celsius(const house::House& house, Space space = Space::attic) {
    return unit::in_celsius(spaces_in_winter(house).of(space));
}

double air_w_per_k(const house::House& house) {
    const Air air = air_at(house.site.winter_indoor, site_pressure(house.site));
    return (house.buffer_spaces[0].outdoor_air * air.density * air.specific_heat).si();
}

TEST(BufferSpace, takes_what_the_rooms_lose_and_gives_it_outdoors) {
    const house::House house = under_an_attic(1.8);
    const double rooms = 12 * 1.8, out = 14.4 * 3 + air_w_per_k(house);
    EXPECT_NEAR(celsius(house), (rooms * 20 + out * -15) / (rooms + out), 1e-9);
}

TEST(BufferSpace, is_warm_over_bare_plaster_and_near_outdoors_over_insulation) {
    EXPECT_GT(celsius(under_an_attic(1.8)), -6);
    EXPECT_LT(celsius(under_an_attic(0.18)), -13);
}

TEST(BufferSpace, counts_each_room_at_its_own_temperature) {
    house::House house = under_an_attic(1.8);
    const double before = celsius(house);
    house.rooms[0].winter_indoor = unit::celsius(24);
    EXPECT_GT(celsius(house), before);
}

TEST(BufferSpace, has_rooms_not_described_over_or_under_the_rest_of_its_floor) {
    house::House house = under_an_attic(1.8);
    house.other_rooms = house::OtherRooms{};
    house.buffer_spaces[0].floor_area = units::Area(36);
    const double rooms = 36 * 1.8, out = 14.4 * 3 + air_w_per_k(house);
    EXPECT_NEAR(celsius(house), (rooms * 20 + out * -15) / (rooms + out), 1e-9);
    house.other_rooms.reset();  // where all is described the rest lies over nothing heated
    EXPECT_NEAR(celsius(house), celsius(under_an_attic(1.8)), 1e-9);
}

TEST(BufferSpace, judges_them_by_the_rooms_the_work_leaves_alone) {
    house::House house = under_an_attic(1.8);
    house.other_rooms = house::OtherRooms{};
    add_room(house, "hall").surfaces = {surface(12, u(0.2), Space::attic, SurfaceKind::ceiling)};
    house.rooms[1].altered = true;
    house.buffer_spaces[0].floor_area = units::Area(36);
    const double rooms = 12 * 1.8 + 12 * 0.2 + 12 * 1.8, out = 14.4 * 3 + air_w_per_k(house);
    EXPECT_NEAR(celsius(house), (rooms * 20 + out * -15) / (rooms + out), 1e-9);
}

TEST(BufferSpace, a_knee_wall_counts_but_does_not_tell_what_other_ceilings_are_like) {
    house::House house = under_an_attic(1.8);
    house.other_rooms = house::OtherRooms{};
    house.rooms[0].surfaces.push_back(surface(5, u(1), Space::attic));
    house.buffer_spaces[0].floor_area = units::Area(24);
    const double rooms = 24 * 1.8 + 5, out = 14.4 * 3 + air_w_per_k(house);
    EXPECT_NEAR(celsius(house), (rooms * 20 + out * -15) / (rooms + out), 1e-9);
}

TEST(BufferSpace, is_warmed_by_what_is_given_off_in_it) {
    house::House house = under_an_attic(1.8);
    const double before = celsius(house), sum = 12 * 1.8 + 14.4 * 3 + air_w_per_k(house);
    house.buffer_spaces[0].heat = units::Power(500);
    EXPECT_NEAR(celsius(house), before + 500 / sum, 1e-9);
}

house::BufferSpace in_the_ground(Space space) {
    house::BufferSpace below;
    below.space = space;
    below.floor_area = units::Area(60);
    below.outer = {surface(9.6, u(3.4), Space::outdoors)};
    below.on_the_ground = house::OnTheGround{unit::celsius(8), units::Area(60), units::Length(6),
                                             units::Length(1.8), surface(57.6, u(3.4), Space::outdoors)};
    return below;
}

TEST(BufferSpace, a_basement_meets_the_ground_by_wall_and_floor) {
    house::House house = bare(20, -15);
    house.buffer_spaces = {in_the_ground(Space::basement)};
    const SpaceBalance balance = spaces_in_winter(house).balances[0];
    ASSERT_EQ(balance.parts.size(), 3u);
    EXPECT_EQ(balance.parts[1].name, "ground under it");
    EXPECT_NEAR(balance.parts[1].conductance.si(),
                60 * below_grade_floor(units::Length(6), units::Length(1.8), bare_concrete, usual_soil).si(),
                1e-9);
    const units::Resistance wall{1 / 3.4 - 0.030};
    EXPECT_NEAR(balance.parts[2].conductance.si(),
                57.6 * below_grade_wall({}, units::Length(1.8), wall, usual_soil).si(), 1e-9);
    EXPECT_EQ(balance.parts[2].beyond, unit::celsius(8));
}

TEST(BufferSpace, the_floor_of_a_crawl_space_is_bare_ground) {
    house::House house = bare(20, -15);
    house.buffer_spaces = {in_the_ground(Space::crawl)};
    EXPECT_NEAR(spaces_in_winter(house).balances[0].parts[1].conductance.si(), 60 * 0.30, 1e-9);
}

TEST(BufferSpace, that_nothing_touches_is_as_cold_as_outdoors) {
    house::House house = bare(20, -15);
    house.buffer_spaces = {house::BufferSpace{}};
    EXPECT_DOUBLE_EQ(celsius(house), -15);
    EXPECT_FALSE(balance_temperature({}, units::Power(100)));
}

TEST(BufferSpace, is_what_the_rooms_surfaces_lose_to) {
    const house::House house = under_an_attic(1.8);
    const HouseHeatLoss loss = house_heat_loss(house);
    EXPECT_NEAR(loss.total.si(), 12 * 1.8 * (20 - celsius(house)), 1e-9);
    EXPECT_EQ(loss.rooms[0].surfaces[0].beyond, loss.spaces.of(Space::attic));
}

}  // namespace
}  // namespace loads
