#include "registers/buoyant_jet.hpp"

#include <gtest/gtest.h>

#include "registers/an_outlet.hpp"

namespace registers {
namespace {

using an_outlet::floor_jet;
using an_outlet::warm;

TEST(BuoyantJet, as_warm_as_the_room_it_is_the_plain_jet) {
    const WarmJet plain = warm(floor_jet(), 0);
    EXPECT_EQ(archimedes(plain), 0);
    EXPECT_EQ(rise(plain, units::Length(2)), units::Length());
    for (const Blows direction : {Blows::up, Blows::across, Blows::down}) {
        EXPECT_EQ(speed_at(plain, direction, units::Length(2)), speed_at(plain.jet, units::Length(2)));
        EXPECT_FALSE(stops_at(plain, direction));
    }
}

TEST(BuoyantJet, stands_still_where_it_stops) {
    const WarmJet down = warm(floor_jet(), 25);
    const auto stop = stops_at(down, Blows::down);
    ASSERT_TRUE(stop);
    EXPECT_NEAR(speed_at(down, Blows::down, *stop).si(), 0, 1e-4);
    EXPECT_GT(speed_at(down, Blows::down, 0.9 * *stop), units::Velocity());
    EXPECT_EQ(speed_at(down, Blows::down, 1.1 * *stop), units::Velocity());
}

TEST(BuoyantJet, only_against_its_buoyancy_it_stops) {
    EXPECT_FALSE(stops_at(warm(floor_jet(), 25), Blows::up));
    EXPECT_FALSE(stops_at(warm(floor_jet(), 25), Blows::across));
    EXPECT_FALSE(stops_at(warm(floor_jet(), -10), Blows::down));
    EXPECT_TRUE(stops_at(warm(floor_jet(), -10), Blows::up));
}

TEST(BuoyantJet, no_air_no_jet) {
    const WarmJet none = warm(floor_jet(0), 25);
    EXPECT_EQ(archimedes(none), 0);
    EXPECT_EQ(rise(none, units::Length(2)), units::Length());
    EXPECT_EQ(speed_at(none, Blows::up, units::Length(2)), units::Velocity());
    EXPECT_EQ(stops_at(none, Blows::up), units::Length());
}

}  // namespace
}  // namespace registers
