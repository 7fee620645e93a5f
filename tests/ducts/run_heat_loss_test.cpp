#include "ducts/run_heat_loss.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

constexpr units::SpecificHeat cp(1006);
constexpr units::MassFlow hundred_cfm(0.0568);
constexpr units::Temperature supply = unit::fahrenheit(120);
constexpr units::Temperature crawl = unit::fahrenheit(50);

ducts::Run bare_run(double feet) {
    return {feet * unit::foot, section_of(round_of(6)).perimeter, 0.85 * unit::r_value_us, crawl};
}

TEST(RunHeatLoss, no_length_loses_nothing) {
    EXPECT_EQ(leaving_temperature(bare_run(0), hundred_cfm, cp, supply).si(), supply.si());
}

TEST(RunHeatLoss, an_endless_run_ends_at_its_surroundings) {
    EXPECT_NEAR(leaving_temperature(bare_run(1e6), hundred_cfm, cp, supply).si(), crawl.si(), 1e-9);
}

TEST(RunHeatLoss, still_air_takes_the_temperature_of_its_surroundings) {
    EXPECT_EQ(leaving_temperature(bare_run(20), units::MassFlow(0), cp, supply).si(), crawl.si());
    EXPECT_NEAR(leaving_temperature(bare_run(20), units::MassFlow(1e-9), cp, supply).si(), crawl.si(), 1e-9);
}

TEST(RunHeatLoss, cool_air_gains) {
    const auto out = leaving_temperature(bare_run(20), hundred_cfm, cp, unit::fahrenheit(40));
    EXPECT_GT(out, unit::fahrenheit(40));
    EXPECT_LT(out, crawl);
}

TEST(RunHeatLoss, resistance_of_a_wrap_adds_to_that_of_the_bare_duct) {
    const auto R = wrapped_resistance(0.85 * unit::r_value_us, 6 * unit::r_value_us);
    EXPECT_NEAR(R / unit::r_value_us, 6.85, 1e-12);
}

TEST(RunHeatLoss, insulation_of_a_flexible_duct_counts_less_the_thinner_the_duct) {
    const auto R = [](double inches) {
        return flexible_insulation(8 * unit::r_value_us, inches * unit::inch) / unit::r_value_us;
    };
    EXPECT_LT(R(4), R(6));
    EXPECT_LT(R(20), 8);
    EXPECT_NEAR(R(10000), 8, 0.01);
    EXPECT_EQ(flexible_insulation({}, 6 * unit::inch).si(), 0);
}

TEST(RunHeatLoss, only_a_round_flexible_duct_is_wrapped_as_one) {
    const auto R = [](const house::Shape& shape, house::DuctKind kind) {
        return insulated_resistance(0.85 * unit::r_value_us, 6 * unit::r_value_us, kind, section_of(shape)) /
               unit::r_value_us;
    };
    EXPECT_NEAR(R(round_of(6), house::DuctKind::metal), 6.85, 1e-12);
    EXPECT_NEAR(R(house::Rectangular{10 * unit::inch, 3 * unit::inch}, house::DuctKind::flex), 6.85, 1e-12);
    EXPECT_NEAR(R(round_of(6), house::DuctKind::flex), 0.85 + 3 / 0.356 * std::log(1 + 0.356 * 6 / 3), 1e-9);
}

}  // namespace
}  // namespace ducts
