#include "ducts/duct_sweat.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "units/unit.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

struct Air {
    units::Temperature inside, around, dew_point;
};
Air some_air() {
    const double inside = *rc::gen::inRange(80, 180) / 10.0;
    const double around = inside + *rc::gen::inRange(10, 400) / 10.0;
    const double dew_point = inside + (around - inside) * *rc::gen::inRange(0, 99) / 100.0;
    return {unit::celsius(inside), unit::celsius(around), unit::celsius(dew_point)};
}

RC_GTEST_PROP(DuctSweat, more_insulation_makes_the_outside_warmer, ()) {
    const Air air = some_air();
    const units::Resistance less(*rc::gen::inRange(0, 200) / 100.0);
    const units::Resistance more = less + units::Resistance(0.1);
    const auto outside = outside_of_duct(air.inside, air.around, less);
    RC_ASSERT(outside > air.inside);
    RC_ASSERT(outside < air.around);
    RC_ASSERT(outside_of_duct(air.inside, air.around, more) > outside);
}

RC_GTEST_PROP(DuctSweat, the_least_insulation_brings_the_outside_to_the_dew_point, ()) {
    const Air air = some_air();
    const auto least = insulation_that_keeps_dry(air.inside, air.around, air.dew_point);
    RC_ASSERT(least.has_value());
    const auto outside = outside_of_duct(air.inside, air.around, *least);
    const double above = (outside - air.dew_point).si();
    RC_ASSERT(above > -1e-9);
    RC_ASSERT(least->si() <= 0 || above < 1e-9);
}

TEST(DuctSweat, nothing_keeps_a_cold_duct_dry_in_fog) {
    EXPECT_FALSE(insulation_that_keeps_dry(unit::celsius(13), unit::celsius(20), unit::celsius(20)));
    EXPECT_EQ(insulation_that_keeps_dry(unit::celsius(13), unit::celsius(20), unit::celsius(12)),
              units::Resistance());
}

}  // namespace
}  // namespace ducts
