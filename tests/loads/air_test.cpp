#include "loads/air.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

using testing::HasSubstr;
using testing::Property;
using testing::ThrowsMessage;

house::Site site_at(units::Length elevation) {
    house::Site site;
    site.elevation = elevation;
    return site;
}

TEST(Air, sea_level_has_the_standard_pressure) { EXPECT_DOUBLE_EQ(site_pressure(site_at({})).si(), 101325); }

TEST(Air, dry_air_at_20_c) {
    const Air air = air_at(units::unit::celsius(20), units::Pressure(101325));
    EXPECT_NEAR(air.density.si(), 101325 / (287.042 * 293.15), 1e-9);
    EXPECT_DOUBLE_EQ(air.specific_heat.si(), 1006);
    EXPECT_NEAR(air.viscosity.si(), 1.81e-5, 0.01e-5);
}

TEST(Air, a_site_above_the_atmosphere_cannot_be_answered) {
    EXPECT_THAT(
        [] { site_pressure(site_at(units::Length(12'000))); },
        ThrowsMessage<house::CannotAnswer>(HasSubstr("no air pressure is known at this elevation: ")));
}

TEST(Air, air_hotter_than_its_figures_cannot_be_answered) {
    EXPECT_THAT([] { air_at(units::unit::celsius(120), units::Pressure(101325)); },
                ThrowsMessage<house::CannotAnswer>(HasSubstr("no figures for such air: ")));
}

}  // namespace
}  // namespace loads
