#include "registers/against_the_sheet.hpp"

#include <gtest/gtest.h>

#include "registers/an_outlet.hpp"

namespace registers {
namespace {

using an_outlet::floor_jet;
using an_outlet::warm;

// A window 0.9 m wide and 1.2 m high, 0.9 m above a floor outlet 250 mm long.
WindowAbove window(double off_centre = 0) {
    return {units::Length(0.9), units::Length(1.2), units::Length(0.9), units::Length(off_centre)};
}
WashingJet straight(double litres = 30) { return {warm(floor_jet(litres), 0), units::Length(0.25), 22}; }
FallingSheet sheet(double colder = 11.4) {
    return falling_sheet(an_outlet::glass(1.2, colder), an_outlet::room, an_outlet::room_air);
}

TEST(AgainstTheSheet, a_strong_jet_in_the_middle_washes_the_window) {
    const AgainstTheSheet result = against_the_sheet(straight(), window(), sheet());
    EXPECT_TRUE(result.washes);
    EXPECT_GT(result.jet, result.sheet);
    EXPECT_GT(result.jet_momentum, result.sheet_momentum);
}

TEST(AgainstTheSheet, a_starved_jet_does_not) {
    const AgainstTheSheet result = against_the_sheet(straight(10), window(), sheet());
    EXPECT_FALSE(result.washes);
    EXPECT_GT(result.covered, half_covered);
}

TEST(AgainstTheSheet, off_centre_it_covers_less_and_beyond_the_window_nothing) {
    const AgainstTheSheet beside = against_the_sheet(straight(), window(0.45), sheet());
    EXPECT_NEAR(beside.covered, 0.833 / 2 / 0.9, 0.001);  // half of the jet is over the wall
    EXPECT_FALSE(beside.washes);
    EXPECT_EQ(against_the_sheet(straight(), window(2), sheet()).covered, 0);
    EXPECT_EQ(against_the_sheet(straight(), window(-0.45), sheet()).covered, beside.covered);
}

TEST(AgainstTheSheet, no_air_washes_nothing) {
    const AgainstTheSheet result = against_the_sheet(straight(0), window(), sheet());
    EXPECT_EQ(result.covered, 0);
    EXPECT_FALSE(result.washes);
    EXPECT_FALSE(against_the_sheet(straight(0), window(), sheet(0)).washes);
}

TEST(AgainstTheSheet, glass_that_sends_no_air_down_is_washed_by_any_jet) {
    EXPECT_TRUE(against_the_sheet(straight(1), window(), sheet(-1)).washes);
}

TEST(AgainstTheSheet, no_window_is_not_washed) {
    WindowAbove none = window();
    none.width = units::Length();
    EXPECT_FALSE(against_the_sheet(straight(), none, sheet()).washes);
}

}  // namespace
}  // namespace registers
