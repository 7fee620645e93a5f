#include "registers/stays_up.hpp"

#include <gtest/gtest.h>

#include "registers/an_outlet.hpp"
#include "registers/outlet_pattern.hpp"

namespace registers {
namespace {

using an_outlet::warm;

// Furnace air from a ceiling outlet with a neck of 6 in, 8 ft up, 2 m from the wall.
HighOutlet all_round(double kelvin = 30, double litres = 30) {
    const OutletPattern& pattern = usual_pattern(house::Mount::ceiling);
    const Jet jet{litres * units::unit::litre_per_second, units::Area(0.0176715), pattern.k};
    return {warm(jet, kelvin), pattern.blows, units::Length(2.4), units::Length(2)};
}
HighOutlet straight_down(double metres_per_second) {
    const units::Area area(0.0177);
    return {warm({units::Velocity(metres_per_second) * area, area, 5.7}, 20),
            Blows::down,
            units::Length(2.4),
            {}};
}

TEST(StaysUp, furnace_air_from_a_slack_ceiling_outlet) {
    const FromHighUp high = from_high_up(all_round());
    EXPECT_EQ(high.warm_air, WarmAir::stays_up);
    EXPECT_NEAR(high.needed.si(), 3.0, 1e-12);
    EXPECT_NEAR(high.carries.si(), 0.331, 0.001);
}

TEST(StaysUp, mild_air_mixes) {
    EXPECT_EQ(from_high_up(all_round(7.9)).warm_air, WarmAir::mixes);
    EXPECT_EQ(from_high_up(all_round(-10)).warm_air, WarmAir::mixes);
    EXPECT_EQ(from_high_up(all_round(8)).warm_air, WarmAir::stays_up);
}

TEST(StaysUp, a_strong_jet_comes_down) {
    HighOutlet strong = all_round(30, 60);
    strong.jet.jet.k = 5.7;
    EXPECT_EQ(from_high_up(strong).warm_air, WarmAir::comes_down);
}

TEST(StaysUp, straight_down_by_where_it_stops) {
    const FromHighUp fast = from_high_up(straight_down(1.7)), slow = from_high_up(straight_down(1.0));
    EXPECT_NEAR(fast.needed.si(), 1.0, 1e-12);
    EXPECT_NEAR(fast.carries.si(), 1.34, 0.001);
    EXPECT_EQ(fast.warm_air, WarmAir::comes_down);
    EXPECT_EQ(slow.warm_air, WarmAir::stays_up);
}

TEST(StaysUp, an_outlet_among_people_is_down_already) {
    HighOutlet low = all_round();
    low.height = units::Length(1.4);
    EXPECT_EQ(from_high_up(low).warm_air, WarmAir::comes_down);
}

}  // namespace
}  // namespace registers
