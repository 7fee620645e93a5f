#include "questions/room_as_the_house.hpp"

#include <gtest/gtest.h>

#include "loads/a_house.hpp"

namespace {

using questions::with_room_as_the_house;

TEST(RoomAsTheHouse, takes_the_houses_temperature_and_leaves_all_else) {
    const house::House house = a_house::old_house(2);  // the first a bath at 74 F
    const auto changed = with_room_as_the_house(house, house.rooms[0].id);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->rooms[0].winter_indoor, house.site.winter_indoor);
    EXPECT_EQ(changed->rooms[1].winter_indoor, house.rooms[1].winter_indoor);
    EXPECT_EQ(changed->rooms[0].surfaces.size(), house.rooms[0].surfaces.size());
}

TEST(RoomAsTheHouse, is_nothing_where_the_room_is_no_warmer) {
    house::House house = a_house::old_house(2);
    EXPECT_FALSE(with_room_as_the_house(house, house.rooms[1].id));
    house.rooms[1].winter_indoor = house.site.winter_indoor - units::TemperatureDifference(3);
    EXPECT_FALSE(with_room_as_the_house(house, house.rooms[1].id));
}

}  // namespace
