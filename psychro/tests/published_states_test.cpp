#include <gtest/gtest.h>

#include <functional>
#include <map>
#include <string>

#include "psychro/atmosphere.hpp"
#include "psychro/density.hpp"
#include "psychro/dew_point.hpp"
#include "psychro/enthalpy.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/saturation.hpp"
#include "psychro/wet_bulb.hpp"
#include "published.hpp"

namespace psychro {
namespace {

constexpr double temperature_tolerance_k = 0.002;

void expect_dew_point(const PublishedRow& row, const State& air) {
    if (row.text("tdp_c").empty()) {
        EXPECT_THROW(dew_point_c(air), OutOfRange) << row.line();
    } else {
        EXPECT_NEAR(dew_point_c(air), row.number("tdp_c"), temperature_tolerance_k) << row.line();
    }
}

void expect_common_columns(const PublishedRow& row, const State& air) {
    expect_printed(row, "p_pa", air.pressure_pa);
    expect_printed(row, "w_kg_per_kg", air.humidity_ratio);
    expect_printed(row, "h_kj_per_kg", enthalpy_j_per_kg_dry_air(air) / 1000.0);
    expect_printed(row, "v_m3_per_kg", specific_volume_m3_per_kg_dry_air(air));
    expect_dew_point(row, air);
}

TEST(PublishedStates, from_relative_humidity) {
    const auto rows = read_published("states.csv");
    ASSERT_EQ(rows.size(), 43U);
    for (const auto& row : rows) {
        const State air = state_from_relative_humidity(row.number("t_c"), row.number("rh"),
                                                       standard_pressure_pa(row.number("altitude_m")));
        expect_common_columns(row, air);
        expect_printed(row, "pws_pa", saturation_pressure_pa(air.dry_bulb_c));
        expect_printed(row, "rho_kg_per_m3", density_kg_per_m3(air));
        EXPECT_NEAR(wet_bulb_c(air), row.number("twb_c"), temperature_tolerance_k) << row.line();
    }
}

TEST(PublishedStates, from_wet_bulb) {
    const auto rows = read_published("wetbulb-states.csv");
    ASSERT_EQ(rows.size(), 10U);
    for (const auto& row : rows) {
        const State air = state_from_wet_bulb(row.number("t_c"), row.number("twb_c"),
                                              standard_pressure_pa(row.number("altitude_m")));
        expect_common_columns(row, air);
        expect_printed(row, "rh", relative_humidity(air));
    }
}

// Equal-pressure mixing of two flows given by volume.
State mixture(double first_m3_per_s, const State& first, double second_m3_per_s, const State& second) {
    const double first_kg = first_m3_per_s / specific_volume_m3_per_kg_dry_air(first);
    const double second_kg = second_m3_per_s / specific_volume_m3_per_kg_dry_air(second);
    const double share = first_kg / (first_kg + second_kg);
    const auto mean = [share](double a, double b) { return share * a + (1.0 - share) * b; };
    return state_from_enthalpy(mean(enthalpy_j_per_kg_dry_air(first), enthalpy_j_per_kg_dry_air(second)),
                               mean(first.humidity_ratio, second.humidity_ratio), first.pressure_pa);
}

TEST(PublishedStates, worked_examples_of_the_book) {
    const std::map<std::string, State> cases{
        {"40/20 wb sea level", state_from_wet_bulb(40.0, 20.0, sea_level_pressure_pa)},
        {"40/30 wb sea level", state_from_wet_bulb(40.0, 30.0, sea_level_pressure_pa)},
        {"40/30 wb 1500 m", state_from_wet_bulb(40.0, 30.0, standard_pressure_pa(1500.0))},
        {"mix 2 m3/s at 4/2wb with 6.25 m3/s at 25/50%",
         mixture(2.0, state_from_wet_bulb(4.0, 2.0, sea_level_pressure_pa), 6.25,
                 state_from_relative_humidity(25.0, 0.5, sea_level_pressure_pa))}};
    const std::map<std::string, std::function<double(const State&)>> quantities{
        {"w_g_per_kg", [](const State& air) { return 1000.0 * air.humidity_ratio; }},
        {"h_kj_per_kg", [](const State& air) { return enthalpy_j_per_kg_dry_air(air) / 1000.0; }},
        {"tdp_c", dew_point_c},
        {"rh_percent", [](const State& air) { return 100.0 * relative_humidity(air); }},
        {"v_m3_per_kg", specific_volume_m3_per_kg_dry_air},
        {"t_c", [](const State& air) { return air.dry_bulb_c; }},
        {"twb_c", wet_bulb_c}};
    const auto rows = read_published("book-examples.csv");
    ASSERT_EQ(rows.size(), 15U);
    for (const auto& row : rows) {
        const double value = quantities.at(row.text("quantity"))(cases.at(row.text("case")));
        EXPECT_NEAR(value, row.number("book"), row.number("tolerance")) << row.line();
        expect_printed(row, "computed", value);
    }
}

}  // namespace
}  // namespace psychro
