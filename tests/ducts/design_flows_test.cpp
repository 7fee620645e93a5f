// The blower's air shared by the rooms' heat losses.
#include <gtest/gtest.h>

#include <vector>

#include "ducts/a_duct_house.hpp"
#include "ducts/duct_system.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;

constexpr units::MassFlow total{0.5};

loads::HouseHeatLoss losses(const std::vector<double>& watts, double others = 0) {
    loads::HouseHeatLoss loss;
    for (double w : watts) {
        loads::RoomHeatLoss room;
        room.total = units::Power(w);
        loss.rooms.push_back(room);
    }
    loss.other_rooms = units::Power(others);
    return loss;
}

// One duct with one outlet for each of these rooms.
house::House outlets_in(const std::vector<int>& rooms) {
    house::House house;
    for (int room : rooms) add_outlet(house, add_root(house, six_inch, 10), room);
    return house;
}

double sum_of(const DesignFlows& flows, int others) {
    double sum = others * flows.each_other_outlet.si();
    for (units::MassFlow flow : flows.outlets) sum += flow.si();
    return sum;
}

TEST(DesignFlows, rooms_share_by_their_heat_loss) {
    const DesignFlows flows = design_flows(outlets_in({0, 1}), losses({1000, 3000}), total);
    ASSERT_EQ(flows.outlets.size(), 2u);
    EXPECT_NEAR(flows.outlets[0].si(), 0.125, 1e-15);
    EXPECT_NEAR(flows.outlets[1].si(), 0.375, 1e-15);
    EXPECT_EQ(flows.each_other_outlet.si(), 0);
}

TEST(DesignFlows, the_shares_add_up_to_the_blower) {
    house::House house = outlets_in({0, 1, 1, 2});
    add_other_rooms(house, 7, 5, 15);
    const DesignFlows flows = design_flows(house, losses({431, 1277, 96}, 8123), total);
    EXPECT_NEAR(sum_of(flows, 7), total.si(), 1e-12 * total.si());
}

TEST(DesignFlows, outlets_of_one_room_share_its_air) {
    const DesignFlows flows = design_flows(outlets_in({0, 1, 0}), losses({2000, 2000}), total);
    EXPECT_NEAR(flows.outlets[0].si(), 0.125, 1e-15);
    EXPECT_NEAR(flows.outlets[1].si(), 0.25, 1e-15);
    EXPECT_NEAR(flows.outlets[2].si(), 0.125, 1e-15);
}

TEST(DesignFlows, a_room_that_gains_heat_gets_none_and_takes_none) {
    const DesignFlows flows = design_flows(outlets_in({0, 1}), losses({-500, 3000}), total);
    EXPECT_EQ(flows.outlets[0].si(), 0);
    EXPECT_NEAR(flows.outlets[1].si(), 0.5, 1e-15);
}

TEST(DesignFlows, a_room_without_outlets_leaves_its_share_to_the_others) {
    const DesignFlows flows = design_flows(outlets_in({1}), losses({5000, 100}), total);
    EXPECT_NEAR(flows.outlets[0].si(), 0.5, 1e-15);
}

TEST(DesignFlows, rooms_not_described_share_theirs_equally) {
    house::House house = outlets_in({0});
    add_other_rooms(house, 4, 5, 15);
    const DesignFlows flows = design_flows(house, losses({1000}, 9000), total);
    EXPECT_NEAR(flows.outlets[0].si(), 0.05, 1e-15);
    EXPECT_NEAR(flows.each_other_outlet.si(), 0.45 / 4, 1e-15);
}

TEST(DesignFlows, rooms_not_described_that_gain_heat_get_none_and_take_none) {
    house::House house = outlets_in({0});
    add_other_rooms(house, 2, 5, 15);
    const DesignFlows flows = design_flows(house, losses({1000}, -400), total);
    EXPECT_NEAR(flows.outlets[0].si(), 0.5, 1e-15);
    EXPECT_EQ(flows.each_other_outlet.si(), 0);
}

TEST(DesignFlows, return_grilles_share_the_whole_equally) {
    house::House house = outlets_in({0, 1});
    add_outlet(house, add_return(house, trunk_shape, 5), 0);
    add_outlet(house, add_return(house, trunk_shape, 5), 1);
    const DesignFlows flows = design_flows(house, losses({1000, 3000}), total);
    EXPECT_NEAR(flows.outlets[1].si(), 0.375, 1e-15);
    EXPECT_NEAR(flows.outlets[2].si(), 0.25, 1e-15);
    EXPECT_NEAR(flows.outlets[3].si(), 0.25, 1e-15);
}

TEST(DesignFlows, a_grille_does_not_take_from_its_rooms_register) {
    house::House house = outlets_in({0, 1});
    add_outlet(house, add_return(house, trunk_shape, 5), 0);
    const DesignFlows flows = design_flows(house, losses({2000, 2000}), total);
    EXPECT_NEAR(flows.outlets[0].si(), 0.25, 1e-15);
}

TEST(DesignFlows, where_nothing_loses_heat_no_air_is_planned) {
    house::House house = outlets_in({0});
    add_other_rooms(house, 2, 5, 15);
    const DesignFlows flows = design_flows(house, losses({0}, -10), total);
    EXPECT_EQ(sum_of(flows, 2), 0);
}

}  // namespace
}  // namespace ducts
