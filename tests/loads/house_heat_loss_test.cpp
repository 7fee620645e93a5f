#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "loads/a_house.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

using a_house::add_room;
using a_house::surface;
using a_house::u;

// A bath at 23 C and a bedroom at 20 C; 30 m2 exposed lose 1,395 W at -10 C.
house::House bath_and_bedroom() {
    house::House house = a_house::bare();
    add_room(house, "bath").winter_indoor = units::unit::celsius(23);
    add_room(house, "bedroom");
    house.rooms[0].surfaces = {surface(10, u(1.5)), surface(5, u(2), house::Space::heated_rooms)};
    house.rooms[1].surfaces = {surface(20, u(1.5))};
    a_house::add_partition(house, 0, 1, surface(7, u(2)));
    return house;
}

TEST(HouseHeatLoss, flows_between_rooms_cancel) {
    const HouseHeatLoss loss = house_heat_loss(bath_and_bedroom());
    EXPECT_NEAR(loss.rooms[0].total.si(), 495 + 30 + 42, 1e-9);
    EXPECT_NEAR(loss.rooms[1].total.si(), 900 - 42, 1e-9);
    EXPECT_NEAR(loss.total.si(), 1395, 1e-9);
    EXPECT_EQ(loss.other_rooms, units::Power());
}

TEST(HouseHeatLoss, other_rooms_lose_as_the_described_ones_do) {
    house::House house = bath_and_bedroom();
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = units::Area(126);  // a box of 150 m2: 275 m2 exposed
    const HouseHeatLoss loss = house_heat_loss(house);
    // At the house's 20 C the bath would lose 495 x 30 / 33 W: 1,350 W from 30 m2.
    EXPECT_NEAR(loss.other_rooms.si(), 1350.0 / 30 * 245, 1e-9);
    EXPECT_NEAR(loss.total.si(), 1395 + 1350.0 / 30 * 245, 1e-9);
}

TEST(HouseHeatLoss, rooms_the_work_alters_do_not_change_the_others) {
    house::House before = bath_and_bedroom();
    before.other_rooms = house::OtherRooms{};
    before.other_rooms->floor_area = units::Area(126);
    before.rooms[0].altered = true;
    house::House after = before;
    after.rooms[0].surfaces[0].assembly = u(0.4);
    EXPECT_EQ(house_heat_loss(before).other_rooms, house_heat_loss(after).other_rooms);
    EXPECT_LT(house_heat_loss(after).total, house_heat_loss(before).total);
    EXPECT_NEAR(house_heat_loss(before).other_rooms.si(), 900.0 / 20 * 245, 1e-9);  // as the bedroom alone
    before.rooms[1].altered = true;  // nothing is left untouched: all have to tell
    EXPECT_NEAR(house_heat_loss(before).other_rooms.si(), 1350.0 / 30 * 245, 1e-9);
}

TEST(HouseHeatLoss, a_stated_loss_is_the_whole_of_it) {
    house::House house = bath_and_bedroom();
    house.air_leakage = 5.6;
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = units::Area(126);
    house.other_rooms->heat_loss = units::Power(9000);
    EXPECT_EQ(house_heat_loss(house).other_rooms, units::Power(9000));
}

TEST(HouseHeatLoss, other_rooms_need_a_room_to_be_judged_by) {
    house::House house = a_house::bare();
    add_room(house, "bath");
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = units::Area(100);
    EXPECT_THAT(
        [&] { house_heat_loss(house); },
        testing::ThrowsMessage<house::CannotAnswer>(
            "the other rooms' heat loss is judged by the described rooms that face outdoors, and there is "
            "none: describe one, or give heat_loss under [other_rooms]"));
}

}  // namespace
}  // namespace loads
