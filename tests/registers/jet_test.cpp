#include "registers/jet.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "registers/an_outlet.hpp"
#include "registers/outlet_pattern.hpp"

namespace registers {
namespace {

using an_outlet::floor_jet;

TEST(Jet, no_faster_than_it_leaves) {
    const Jet jet = floor_jet();
    EXPECT_EQ(speed_at(jet, units::Length()), outlet_speed(jet));
    EXPECT_EQ(speed_at(jet, units::Length(0.1)), outlet_speed(jet));
    EXPECT_LT(speed_at(jet, units::Length(1)), outlet_speed(jet));
}

TEST(Jet, a_speed_it_never_has_is_nowhere) {
    EXPECT_EQ(distance_to(floor_jet(), units::Velocity(2)), units::Length());
    EXPECT_GT(distance_to(floor_jet(), units::Velocity(1.8)), units::Length());
}

TEST(Jet, no_air_no_jet) {
    for (const Jet& none : {floor_jet(0), floor_jet(30, 0), Jet{floor_jet().flow, {}, 4.7}, Jet{}}) {
        EXPECT_FALSE(blows(none));
        EXPECT_EQ(outlet_speed(none), units::Velocity());
        EXPECT_EQ(speed_at(none, units::Length(1)), units::Velocity());
        EXPECT_EQ(throw_of(none), units::Length());
        EXPECT_EQ(momentum_of(none), Momentum());
    }
}

TEST(Jet, width) {
    const units::Length outlet(0.25);
    EXPECT_NEAR(width_at(units::Length(1.5), outlet, 22).si(), 0.83, 0.005);
    EXPECT_NEAR(width_at(units::Length(1.5), outlet, 360).si(), 3.25, 1e-12);
    EXPECT_EQ(width_at(units::Length(0), outlet, 60), outlet);
}

TEST(OutletPatterns, have_each_their_own_name_and_serve_every_mount) {
    std::set<std::string_view> names;
    std::set<house::Mount> mounts;
    for (const OutletPattern& pattern : outlet_patterns()) {
        EXPECT_TRUE(names.insert(pattern.name).second) << pattern.name;
        mounts.insert(pattern.mount);
        EXPECT_GT(pattern.k, 0) << pattern.name;
        EXPECT_GT(pattern.spread, 0) << pattern.name;
        EXPECT_FALSE(pattern.mark.empty()) << pattern.name;
    }
    EXPECT_EQ(mounts.size(), 5u);
    for (const house::Mount mount : mounts) EXPECT_EQ(usual_pattern(mount).mount, mount);
}

TEST(OutletPatterns, the_usual_floor_grille_blows_straight_up) {
    const OutletPattern& usual = usual_pattern(house::Mount::floor);
    EXPECT_EQ(usual.name, "floor grille, straight blades");
    EXPECT_EQ(usual.blows, Blows::up);
}

// A surface beside the jet keeps it from mixing on that side: the handbook's root of 2.
TEST(OutletPatterns, along_the_ceiling_is_the_root_of_two_farther) {
    double along = 0, free_jet = 0;
    for (const OutletPattern& pattern : outlet_patterns()) {
        if (pattern.name == "ceiling slot, along the ceiling") along = pattern.k;
        if (pattern.name == "ceiling slot, straight down") free_jet = pattern.k;
    }
    EXPECT_NEAR(along / free_jet, std::sqrt(2.0), 0.003 * std::sqrt(2.0));
}

}  // namespace
}  // namespace registers
