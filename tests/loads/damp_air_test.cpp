#include "loads/damp_air.hpp"

#include <gtest/gtest.h>

#include "loads/surface_temperature.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;
using house::Space;

house::House summer_house(std::variant<units::Temperature, double> moisture) {
    house::House house;
    house.summer.emplace();
    house.summer->indoor = unit::celsius(24);
    house.summer->outdoor = unit::celsius(32);
    house.summer->moisture = moisture;
    return house;
}

// 32 C at a wet bulb of 24 C holds 0.0155 kg/kg, dew point 20.8 C (ASHRAE psychrometric chart no. 1, read to
// 0.2 C: general reference; the state itself is checked in psychro).
TEST(DampAir, outdoors_by_the_wet_bulb) {
    const house::House house = summer_house(unit::celsius(24));
    EXPECT_NEAR(summer_moisture(house).outdoors, 0.0155, 0.0002);
    const DampAir outdoors = summer_air_in(house, Space::outdoors);
    EXPECT_EQ(outdoors.temperature, unit::celsius(32));
    EXPECT_NEAR(unit::in_celsius(outdoors.dew_point), 20.8, 0.2);
    EXPECT_NEAR(unit::in_celsius(summer_air_in(house, Space::attic).dew_point), 20.8, 0.2);
}

// 24 C and 50 %: 0.0093 kg/kg, dew point 12.94 C (the same source as tests/published/ducts_sweat.csv).
TEST(DampAir, indoors_half_saturated) {
    const house::House house = summer_house(0.004);
    const SummerMoisture moisture = summer_moisture(house);
    EXPECT_NEAR(moisture.indoors, 0.0093, 0.0001);
    EXPECT_DOUBLE_EQ(moisture.outdoors, moisture.indoors + 0.004);
    EXPECT_NEAR(unit::in_celsius(summer_air_in(house, Space::heated_rooms).dew_point), 12.94, 0.02);
}

TEST(DampAir, a_cool_space_is_never_damper_than_80_percent) {
    const house::House house = summer_house(unit::celsius(27));
    for (Space space : {Space::basement, Space::crawl}) {
        const DampAir air = summer_air_in(house, space);
        EXPECT_LT(air.dew_point, air.temperature);
        EXPECT_NEAR(sweating_humidity(air.dew_point, air.temperature), 0.8, 0.001);
    }
}

}  // namespace
}  // namespace loads
