#include "ducts/leakage.hpp"

#include <gtest/gtest.h>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

// The reference: 400 ft2 of CL 24 duct at 0.25 in.wc leaks 39 cfm, of CL 48 duct 78.
TEST(Leakage, of_a_house_of_ducts) {
    const units::Area walls = 400 * unit::square_foot;
    EXPECT_NEAR(leakage(leakage_class(24.0), walls, 0.25 * unit::inch_wc) / unit::cfm, 39, 0.5);
    EXPECT_NEAR(leakage(leakage_class(48.0), walls, 0.25 * unit::inch_wc) / unit::cfm, 78, 0.5);
}

TEST(Leakage, the_other_way_is_as_much) {
    const LeakageClass made = leakage_class(Airtightness::c);
    const units::Area walls(20);
    EXPECT_EQ(leakage(made, walls, units::Pressure(-30)), -leakage(made, walls, units::Pressure(30)));
    EXPECT_EQ(leakage(made, walls, units::Pressure(0)).si(), 0);
}

TEST(Leakage, each_european_class_is_three_times_as_tight) {
    const double a = leakage_class(Airtightness::a).at_one_pascal;
    EXPECT_NEAR(a / leakage_class(Airtightness::b).at_one_pascal, 3, 1e-12);
    EXPECT_NEAR(a / leakage_class(Airtightness::c).at_one_pascal, 9, 1e-12);
    EXPECT_NEAR(a / leakage_class(Airtightness::d).at_one_pascal, 27, 1e-12);
    EXPECT_NEAR(north_american(leakage_class(7.5)), 7.5, 1e-12);
}

}  // namespace
}  // namespace ducts
