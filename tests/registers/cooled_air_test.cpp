#include "registers/cooled_air.hpp"

#include <gtest/gtest.h>

#include "registers/an_outlet.hpp"

namespace registers {
namespace {

using house::Mount;

constexpr units::Length ceiling{2.4};

CooledAirThere from(Mount mount, double litres, double colder) {
    return cooled_air(an_outlet::warm(an_outlet::floor_jet(litres, usual_pattern(mount).k), -colder),
                      usual_pattern(mount), ceiling);
}

TEST(CooledAir, blown_up_reaches_the_ceiling_or_falls_back) {
    const CooledAirThere strong = from(Mount::floor, 60, 3), weak = from(Mount::floor, 15, 12);
    EXPECT_EQ(strong.becomes, CooledAir::to_the_ceiling);
    EXPECT_EQ(strong.reaches, ceiling);
    EXPECT_EQ(weak.becomes, CooledAir::falls_back);
    EXPECT_LT(*weak.reaches, ceiling);
    EXPECT_FALSE(weak.drops);
}

// The stopping height of the buoyant jet itself: Ar = 9.80665 x 0.1275 x 12 / (0.923^2 x 294.15), K 4.7.
TEST(CooledAir, falls_back_where_its_jet_stops) {
    const double ar = 9.80665 * std::sqrt(0.01625) * 12 / (0.015 / 0.01625 * 0.015 / 0.01625 * 294.15);
    EXPECT_NEAR(from(Mount::floor, 15, 12).reaches->si(), std::sqrt(4.7 * 0.01625 / (1.83 * ar)), 1e-6);
}

TEST(CooledAir, from_high_up_spreads_and_from_a_toe_kick_lies_on_the_floor) {
    EXPECT_EQ(from(Mount::ceiling, 30, 11).becomes, CooledAir::spreads_above);
    EXPECT_EQ(from(Mount::high_wall, 30, 11).becomes, CooledAir::spreads_above);
    const CooledAirThere kick = from(Mount::toe_kick, 30, 11);
    EXPECT_EQ(kick.becomes, CooledAir::over_the_floor);
    EXPECT_GE(*kick.drops, units::Length());
    EXPECT_LE(*kick.drops, ceiling);
    EXPECT_FALSE(kick.reaches);
}

// --- laws

TEST(CooledAirLaws, colder_air_never_comes_higher_nor_drops_less) {
    for (const double litres : {5.0, 15.0, 30.0, 60.0}) {
        CooledAirThere last_up = from(Mount::floor, litres, 0.5),
                       last_out = from(Mount::toe_kick, litres, 0.5);
        for (double colder = 1; colder < 20; colder += 0.5) {
            const CooledAirThere up = from(Mount::floor, litres, colder),
                                 out = from(Mount::toe_kick, litres, colder);
            EXPECT_LE(*up.reaches, *last_up.reaches);
            EXPECT_GE(*out.drops, *last_out.drops);
            EXPECT_LE(up.becomes, last_up.becomes);
            last_up = up;
            last_out = out;
        }
    }
}

TEST(CooledAirLaws, no_air_reaches_nowhere) {
    EXPECT_EQ(*from(Mount::floor, 0, 10).reaches, units::Length());
    EXPECT_EQ(*from(Mount::toe_kick, 0, 10).drops, units::Length());
}

}  // namespace
}  // namespace registers
