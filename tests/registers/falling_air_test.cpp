#include "registers/falling_air.hpp"

#include <gtest/gtest.h>

#include "registers/an_outlet.hpp"
#include "registers/falling_sheet.hpp"

namespace registers {
namespace {

using an_outlet::glass;

units::Velocity speed(const ColdGlass& cold, double distance) {
    return falling_air_speed(cold, units::Length(distance));
}

TEST(FallingAir, by_hand) {
    const ColdGlass four_root = glass(1.6, 10);  // root of 16
    EXPECT_NEAR(speed(four_root, 0.2).si(), 0.22, 1e-12);
    EXPECT_NEAR(speed(four_root, 0.58).si(), 0.2, 1e-12);  // 0.095 x 4 / 1.9
    EXPECT_NEAR(speed(four_root, 3).si(), 0.112, 1e-12);
    EXPECT_NEAR(falling_air_colder(four_root, units::Length(1)).si(), 2.66, 1e-12);
}

TEST(FallingAir, the_pieces_meet_within_what_is_said) {
    const ColdGlass any = glass(1, 1);
    EXPECT_NEAR(speed(any, 0.4) / speed(any, 0.4 - 1e-9), 1.00423, 1e-4);
    EXPECT_NEAR(speed(any, 2.0) / speed(any, 2.0 - 1e-9), 0.97853, 1e-4);
}

TEST(FallingAir, none_from_glass_as_warm_as_the_room_or_warmer) {
    for (const ColdGlass& warm : {glass(1.2, 0), glass(1.2, -3), glass(0, 10)}) {
        EXPECT_EQ(speed(warm, 0.5), units::Velocity());
        EXPECT_EQ(falling_air_colder(warm, units::Length(0.5)), units::TemperatureDifference());
        const FallingSheet sheet = falling_sheet(warm, an_outlet::room, an_outlet::room_air);
        EXPECT_EQ(sheet.speed, units::Velocity());
        EXPECT_EQ(sheet.thickness, units::Length());
        EXPECT_EQ(sheet.momentum, MomentumPerWidth());
    }
}

TEST(FallingAir, as_warm_as_the_room_beyond_nine_metres) {
    EXPECT_EQ(falling_air_colder(glass(2, 20), units::Length(9)), units::TemperatureDifference());
}

TEST(FallingAir, glass_from_its_u) {
    const auto difference = units::TemperatureDifference(30);
    const units::Resistance film(0.12);
    const units::Length height(1.2);
    EXPECT_NEAR(cold_glass(height, units::Transmittance(2.5), film, difference).colder.si(), 9, 1e-12);
    // No glass is colder than outdoors.
    EXPECT_NEAR(cold_glass(height, units::Transmittance(20), film, difference).colder.si(), 30, 1e-12);
}

TEST(FallingAir, any_glass_will_do_where_it_is_not_colder_outdoors) {
    const units::TemperatureDifference colder(5);
    EXPECT_FALSE(glass_at_most(colder, units::Resistance(0.12), units::TemperatureDifference(0)));
    EXPECT_FALSE(glass_at_most(colder, units::Resistance(0.12), units::TemperatureDifference(-4)));
}

}  // namespace
}  // namespace registers
