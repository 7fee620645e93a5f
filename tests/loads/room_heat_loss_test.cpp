#include "loads/room_heat_loss.hpp"

#include <gtest/gtest.h>

#include "loads/a_house.hpp"
#include "loads/air.hpp"

namespace loads {
namespace {

using a_house::add_room;
using a_house::bare;
using a_house::surface;
using a_house::u;

TEST(RoomHeatLoss, surface_by_surface_in_the_houses_order) {
    house::House house = bare();
    house.space_winter[static_cast<std::size_t>(house::Space::attic)] = units::unit::celsius(-5);
    add_room(house, "bedroom").surfaces = {
        surface(10, u(1.5)), surface(12, u(0.5), house::Space::attic, house::SurfaceKind::ceiling)};
    const RoomHeatLoss lost = room_heat_loss(house, infiltration(house), {0});
    ASSERT_EQ(lost.surfaces.size(), 2u);
    EXPECT_EQ(lost.surfaces[0].beyond_name, "outdoors");
    EXPECT_DOUBLE_EQ(lost.surfaces[0].loss.si(), 450);
    EXPECT_EQ(lost.surfaces[1].beyond_name, "attic");
    EXPECT_EQ(lost.surfaces[1].kind, house::SurfaceKind::ceiling);
    EXPECT_DOUBLE_EQ(lost.surfaces[1].loss.si(), 150);
    EXPECT_DOUBLE_EQ(lost.total.si(), 600);
    EXPECT_DOUBLE_EQ(lost.conductance.si(), 21);
}

TEST(RoomHeatLoss, leakage_goes_by_exposed_surface) {
    house::House house = bare();
    house.air_leakage = 5.6;
    add_room(house, "bedroom").surfaces = {surface(10, u(0))};
    add_room(house, "bath").surfaces = {surface(30, u(0))};
    const Infiltration whole = infiltration(house);
    const RoomHeatLoss bath = room_heat_loss(house, whole, {1});
    EXPECT_NEAR(bath.leakage / whole.airflow, 0.75, 1e-15);
    const Air air = air_at(units::unit::celsius(20), units::Pressure(101325));
    EXPECT_NEAR(bath.leakage_loss.si(), (bath.leakage * air.density * air.specific_heat).si() * 30, 1e-9);
}

TEST(RoomHeatLoss, neighbours_are_named_and_counted) {
    house::House house = bare();
    add_room(house, "bath").winter_indoor = units::unit::celsius(23);
    add_room(house, "hall");
    a_house::add_partition(house, 0, 1, surface(7, u(2)));
    house.rooms[0].surfaces.push_back(surface(5, u(2), house::Space::heated_rooms));
    const RoomHeatLoss bath = room_heat_loss(house, infiltration(house), {0});
    EXPECT_TRUE(bath.surfaces[0].to_neighbour);
    EXPECT_EQ(bath.surfaces[0].beyond_name, "hall");
    EXPECT_DOUBLE_EQ(bath.surfaces[0].loss.si(), 42);
    EXPECT_TRUE(bath.surfaces[1].to_neighbour);
    EXPECT_EQ(bath.surfaces[1].beyond_name, "heated rooms");
    EXPECT_DOUBLE_EQ(bath.total.si(), 72);
}

TEST(RoomHeatLoss, at_its_balance_a_room_loses_nothing) {
    house::House house = a_house::old_house(2);
    const RoomHeatLoss lost = room_heat_loss(house, infiltration(house), {0});
    house.rooms[0].winter_indoor = lost.balance;
    EXPECT_NEAR(room_heat_loss(house, infiltration(house), {0}).total.si(), 0, 1e-7);
}

TEST(RoomHeatLoss, a_room_without_surfaces_loses_nothing_and_balances_where_it_is) {
    house::House house = bare();
    add_room(house, "closet");
    const RoomHeatLoss lost = room_heat_loss(house, infiltration(house), {0});
    EXPECT_EQ(lost.total, units::Power());
    EXPECT_EQ(lost.balance, lost.inside);
}

}  // namespace
}  // namespace loads
