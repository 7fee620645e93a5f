#include "loads/ventilation.hpp"

#include <gtest/gtest.h>

#include "loads/a_house.hpp"
#include "loads/room_heat_loss.hpp"
#include "loads/summer_leakage.hpp"

namespace loads {
namespace {

namespace unit = units::unit;
constexpr units::Airflow litres(double per_second) { return per_second * unit::litre_per_second; }

double to_heat(double leaks, const house::Ventilation& ventilation) {
    return outdoor_air(litres(leaks), ventilation).to_heat() / unit::litre_per_second;
}

// By hand from ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 11-14.
TEST(Ventilation, leaks_alone_are_as_they_are) { EXPECT_DOUBLE_EQ(to_heat(40, {}), 40); }

TEST(Ventilation, an_exhaust_draws_half_its_air_through_leaks_that_leaked_anyway) {
    EXPECT_DOUBLE_EQ(to_heat(40, {{}, litres(30), 0, 0}), 55);
    EXPECT_DOUBLE_EQ(to_heat(40, {litres(30), {}, 0, 0}), 55);
}

TEST(Ventilation, a_large_exhaust_draws_in_just_its_air) {
    EXPECT_DOUBLE_EQ(to_heat(10, {{}, litres(30), 0, 0}), 30);
}

TEST(Ventilation, the_balanced_part_adds_less_what_is_recovered) {
    EXPECT_DOUBLE_EQ(to_heat(40, {litres(30), litres(30), 0, 0}), 70);
    EXPECT_DOUBLE_EQ(to_heat(40, {litres(30), litres(50), 0.7, 0}), 40 + 10 + 0.3 * 30);
    const OutdoorAir air = outdoor_air(litres(40), {litres(30), litres(30), 0.7, 0});
    EXPECT_DOUBLE_EQ(air.entering() / unit::litre_per_second, 70);  // moisture is not recovered
}

TEST(Ventilation, is_heated_by_the_rooms) {
    house::House house = a_house::bare();
    house.air_leakage = 5.6;
    a_house::add_room(house, "a room").surfaces = {a_house::surface(20, a_house::u(1))};
    const HouseHeatLoss before = house_heat_loss(house);
    house.ventilation.exhaust = litres(1000);
    const HouseHeatLoss after = house_heat_loss(house);
    EXPECT_NEAR(after.rooms[0].leakage / unit::litre_per_second, 1000, 1e-9);
    EXPECT_NEAR(after.rooms[0].leakage_loss / before.rooms[0].leakage_loss,
                litres(1000) / before.infiltration.airflow, 1e-9);
}

}  // namespace
}  // namespace loads
