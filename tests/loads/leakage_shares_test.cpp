#include "loads/leakage_shares.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "loads/a_house.hpp"
#include "loads/infiltration.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

using a_house::add_room;
using a_house::bare;
using a_house::surface;
using a_house::u;

// A leaky house of two storeys, a like room on each.
house::House two_storeys() {
    house::House house = bare();
    house.storeys = 2;
    house.air_leakage = 5.6;
    for (int storey : {1, 2}) {
        house::Room& room = add_room(house, storey == 1 ? "kitchen" : "bath");
        room.storey = storey;
        room.surfaces = {surface(20, u(1.5))};
    }
    return house;
}

TEST(LeakageShares, inflow_of_a_storey_is_that_below_the_neutral_level) {
    EXPECT_NEAR(stack_inflow(1)[0], std::pow(0.5, 1.65) / 1.65, 1e-12);
    EXPECT_NEAR(stack_inflow(2)[0], 1 / 1.65, 1e-12);
    EXPECT_EQ(stack_inflow(2)[1], 0);
    const ByStorey three = stack_inflow(3);
    EXPECT_NEAR(three[0], (std::pow(1.5, 1.65) - std::pow(0.5, 1.65)) / 1.65, 1e-12);
    EXPECT_NEAR(three[1], std::pow(0.5, 1.65) / 1.65, 1e-12);
    EXPECT_EQ(three[2], 0);
}

TEST(LeakageShares, upstairs_of_a_leaky_house_has_only_what_the_wind_brings) {
    const house::House house = two_storeys();
    const Infiltration leaks = infiltration(house);
    EXPECT_TRUE(leaks.shares.less_upstairs);
    const double wind = 51 / (51 + 5 * 30 * 0.35);
    EXPECT_NEAR(share_of(leaks.shares, house.rooms[1]), wind / 2, 1e-12);
    EXPECT_NEAR(share_of(leaks.shares, house.rooms[0]), 1 - wind / 2, 1e-12);
}

TEST(LeakageShares, one_storey_shares_by_surface) {
    house::House house = two_storeys();
    house.storeys = 1;
    house.rooms[1].storey = 1;
    const Infiltration leaks = infiltration(house);
    EXPECT_FALSE(leaks.shares.less_upstairs);
    EXPECT_DOUBLE_EQ(share_of(leaks.shares, house.rooms[1]), 0.5);
}

TEST(LeakageShares, a_house_described_upstairs_only_shares_by_surface) {
    house::House house = two_storeys();
    house.rooms[0].storey = 2;
    const Infiltration leaks = infiltration(house);
    EXPECT_FALSE(leaks.shares.less_upstairs);
    EXPECT_DOUBLE_EQ(share_of(leaks.shares, house.rooms[0]), 0.5);
}

TEST(LeakageShares, a_tight_house_has_the_same_air_changes_everywhere) {
    house::House house = two_storeys();
    house.leakage_sharing = house::LeakageSharing::by_volume;
    house.rooms[0].depth = units::Length(9);
    const Infiltration leaks = infiltration(house);
    EXPECT_DOUBLE_EQ(share_of(leaks.shares, house.rooms[0]), 0.75);
    EXPECT_DOUBLE_EQ(share_of(leaks.shares, house.rooms[1]), 0.25);
}

TEST(LeakageShares, the_rooms_not_described_stand_on_the_storeys_of_the_box) {
    house::House house = two_storeys();
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = units::Area(126);  // 75 m2 a storey
    const LeakageShares shares = infiltration(house).shares;
    const double wall = 5 * std::sqrt(50) * 2.5;
    EXPECT_NEAR(shares.surface[0], wall, 1e-9);
    EXPECT_NEAR(shares.surface[1], wall + 75, 1e-9);
    EXPECT_NEAR(shares.surface_inflow, wall / 1.65, 1e-9);
}

TEST(LeakageShares, what_the_described_rooms_leave_is_the_others) {
    house::House house = two_storeys();
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = units::Area(126);
    const HouseHeatLoss loss = house_heat_loss(house);
    const units::Airflow described = loss.rooms[0].leakage + loss.rooms[1].leakage;
    EXPECT_NEAR((described + loss.other_leakage) / loss.infiltration.airflow, 1, 1e-12);
}

}  // namespace
}  // namespace loads
