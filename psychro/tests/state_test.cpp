#include "psychro/state.hpp"

#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"
#include "psychro/humidity_ratio.hpp"

namespace psychro {
namespace {

TEST(State, a_valid_state_comes_back_unchanged) {
    const State air{20.0, 0.007, sea_level_pressure_pa};
    EXPECT_EQ(&require_valid(air), &air);
}

TEST(State, fog_is_an_error_that_names_the_most_the_air_can_hold) {
    const double saturated = saturation_humidity_ratio(20.0, sea_level_pressure_pa);
    try {
        require_valid({20.0, 1.001 * saturated, sea_level_pressure_pa});
        FAIL() << "no error";
    } catch (const OutOfRange& error) {
        EXPECT_STREQ(error.quantity(), "humidity ratio, kg/kg,");
        EXPECT_EQ(error.value(), 1.001 * saturated);
        EXPECT_EQ(error.high(), saturated);
    }
}

}  // namespace
}  // namespace psychro
