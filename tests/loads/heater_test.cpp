#include "loads/heater.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "loads/a_house.hpp"

namespace loads {
namespace {

using house::CannotAnswer;
using testing::ThrowsMessage;
namespace unit = units::unit;

house::Heater furnace(units::Power output) {
    house::Heater heater;
    heater.capacity = output;
    heater.output_lost_per_metre = 0.04 / 304.8;
    return heater;
}

units::Power output_at(double feet) {
    house::Site site;
    site.elevation = feet * unit::foot;
    return heater_output(furnace(units::Power(10'000)), site, {});
}

HouseHeatLoss losing(double watts) {
    HouseHeatLoss loss;
    loss.total = units::Power(watts);
    return loss;
}

TEST(Heater, keeps_its_output_up_to_2000_ft_and_then_loses_from_the_sea_up) {
    EXPECT_EQ(output_at(2000), units::Power(10'000));
    EXPECT_NEAR(output_at(2001).si(), 10'000 * (1 - 0.04 * 2.001), 1e-9);
    EXPECT_NEAR(output_at(5000).si(), 8000, 1e-9);
    EXPECT_EQ(output_at(30'000), units::Power());
}

TEST(Heater, output_from_its_on_time_where_nothing_else_is_known) {
    house::Heater heater;
    heater.capacity = 0.6;
    heater.duct_loss = 0.2;
    EXPECT_NEAR(heater_output(heater, {}, units::Power(6000)).si(), 12'000, 1e-9);
}

TEST(Heater, a_heat_pump_loses_output_below_47_F_but_keeps_a_quarter) {
    house::Heater heater;
    heater.capacity = units::Power(10'000);
    heater.output_lost_per_kelvin = 0.024;
    house::Site site;
    const auto at_F = [&](double outdoor) {
        site.winter_outdoor = unit::fahrenheit(outdoor);
        return heater_output(heater, site, {}).si();
    };
    EXPECT_NEAR(at_F(60), 10'000, 1e-9);
    EXPECT_NEAR(at_F(47), 10'000, 1e-9);
    EXPECT_NEAR(at_F(17), 6'000, 1);  // 60 % at 17 F: makers' usual second rating, common practice
    EXPECT_NEAR(at_F(-60), 2'500, 1e-9);
    EXPECT_NEAR(rated_output(heater, site, {}).si(), 10'000, 1e-9);
    EXPECT_NEAR(share_of_plate(heater, site), 0.25, 1e-12);
}

TEST(Heater, on_time) {
    house::House house = a_house::bare();
    house.heater.duct_loss = 0.2;
    const OnTime half = on_time(house, losing(5000));
    EXPECT_DOUBLE_EQ(half.wanted, 0.6);
    EXPECT_DOUBLE_EQ(half.share, 0.6);
    EXPECT_TRUE(half.holds());
    const OnTime all = on_time(house, losing(10'000));
    EXPECT_DOUBLE_EQ(all.wanted, 1.2);
    EXPECT_DOUBLE_EQ(all.share, 1);
    EXPECT_FALSE(all.holds());
    EXPECT_DOUBLE_EQ(on_time(house, losing(-500)).share, 0);
}

TEST(Heater, an_assumed_on_time_comes_back) {
    house::House house = a_house::bare();
    house.heater.capacity = 0.6;
    house.heater.duct_loss = 0.15;
    EXPECT_DOUBLE_EQ(on_time(house, losing(7000)).share, 0.6);
}

TEST(Heater, supply_temperature_by_hand) {
    const units::Temperature supply = supply_temperature(units::Power(10'060), units::MassFlow(0.5),
                                                         units::SpecificHeat(1006), unit::celsius(20));
    EXPECT_NEAR(unit::in_celsius(supply), 40, 1e-9);
}

TEST(Heater, airflow_for_a_load_by_hand) {
    const units::MassFlow flow =
        airflow_for(units::Power(503), 0.5, units::SpecificHeat(1006), units::TemperatureDifference(20));
    EXPECT_NEAR(flow.si(), 0.05, 1e-12);
}

TEST(Heater, a_room_that_gains_needs_no_air) {
    EXPECT_EQ(airflow_for(units::Power(-5), 0.5, units::SpecificHeat(1006), units::TemperatureDifference(-1)),
              units::MassFlow());
}

TEST(Heater, what_the_air_leaves_for_another_heater) {
    const auto left = [](double load) {  // 0.5 x 0.02 kg/s x 1000 J/kgK x 30 K = 300 W
        return left_to_heat(units::Power(load), 0.5, units::MassFlow(0.02), units::SpecificHeat(1000),
                            units::TemperatureDifference(30))
            .si();
    };
    EXPECT_NEAR(left(500), 200, 1e-9);
    EXPECT_EQ(left(250), 0);
}

TEST(Heater, what_cannot_be_answered) {
    const units::SpecificHeat cp{1006};
    const units::Power load{500};
    const units::TemperatureDifference warm{20};
    house::House house = a_house::bare();
    EXPECT_THAT([&] { supply_temperature(load, {}, cp, {}); },
                ThrowsMessage<CannotAnswer>("no air passes the heater"));
    EXPECT_THAT([&] { airflow_for(load, 0, cp, warm); },
                ThrowsMessage<CannotAnswer>("the heater is never on, so no air is warm"));
    EXPECT_THAT([&] { airflow_for(load, 0.5, cp, {}); },
                ThrowsMessage<CannotAnswer>(
                    "the air arrives no warmer than the room, so no amount of it heats the room"));
    house.heater.capacity = 0.0;
    EXPECT_THAT([&] { on_time(house, losing(500)); },
                ThrowsMessage<CannotAnswer>("a heater that is never on heats nothing"));
    house.heater.capacity = units::Power(0);
    EXPECT_THAT([&] { on_time(house, losing(500)); },
                ThrowsMessage<CannotAnswer>("the heater gives no heat"));
}

}  // namespace
}  // namespace loads
