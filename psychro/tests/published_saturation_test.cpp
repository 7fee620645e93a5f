#include <gtest/gtest.h>

#include "psychro/density.hpp"
#include "psychro/enthalpy.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/saturation.hpp"
#include "published.hpp"

namespace psychro {
namespace {

double branch_pa(const PublishedRow& row) {
    const double t_c = row.number("t_c");
    return row.text("phase") == "ice" ? saturation_pressure_over_ice_pa(t_c)
                                      : saturation_pressure_over_water_pa(t_c);
}

TEST(PublishedSaturation, agrees_with_iapws) {
    const auto rows = read_published("saturation-iapws.csv");
    ASSERT_EQ(rows.size(), 24U);
    for (const auto& row : rows) {
        const double p = branch_pa(row);
        const double iapws = row.number("p_iapws_pa");
        EXPECT_NEAR(p / row.number("p_handbook_pa"), 1.0, 1e-6) << row.line();
        EXPECT_NEAR(p / iapws, 1.0, 4e-4) << row.line();
        expect_printed(row, "deviation_percent", 100.0 * (p / iapws - 1.0));
    }
}

TEST(PublishedSaturation, saturated_air_agrees_with_the_perfect_gas_columns) {
    const auto rows = read_published("saturated-air.csv");
    ASSERT_EQ(rows.size(), 19U);
    for (const auto& row : rows) {
        const State air = state_from_relative_humidity(row.number("t_c"), 1.0, 101325.0);
        expect_printed(row, "ws_ideal", air.humidity_ratio);
        expect_printed(row, "vs_ideal", specific_volume_m3_per_kg_dry_air(air));
        expect_printed(row, "hs_ideal", enthalpy_j_per_kg_dry_air(air) / 1000.0);
    }
}

TEST(PublishedSaturation, saturated_air_is_near_the_real_gas_book) {
    for (const auto& row : read_published("saturated-air.csv")) {
        const double t_c = row.number("t_c");
        const State air = state_from_relative_humidity(t_c, 1.0, 101325.0);
        const double ws_book = row.number("ws_book");
        const double vs_book = row.number("vs_book");
        const double hs_book = row.number("hs_book");
        EXPECT_NEAR(air.humidity_ratio, ws_book, ws_book * (t_c <= 40.0 ? 0.006 : 0.014)) << row.line();
        EXPECT_NEAR(specific_volume_m3_per_kg_dry_air(air), vs_book, 0.0015 * vs_book) << row.line();
        EXPECT_NEAR(enthalpy_j_per_kg_dry_air(air) / 1000.0, hs_book, t_c <= 30.0 ? 0.3 : 0.01 * hs_book)
            << row.line();
    }
}

}  // namespace
}  // namespace psychro
