#include <gtest/gtest.h>

#include "psychro/atmosphere.hpp"
#include "psychro/density.hpp"
#include "psychro/relative_humidity.hpp"
#include "psychro/specific_heat.hpp"
#include "psychro/viscosity.hpp"
#include "published.hpp"

namespace psychro {
namespace {

TEST(PublishedAir, standard_atmosphere) {
    const auto rows = read_published("standard-atmosphere.csv");
    ASSERT_EQ(rows.size(), 6U);
    for (const auto& row : rows) {
        const double p_kpa = standard_pressure_pa(row.number("altitude_m")) / 1000.0;
        expect_printed(row, "p_book_kpa", p_kpa);
        expect_printed(row, "p_formula_kpa", p_kpa);
    }
}

TEST(PublishedAir, dry_air_density_and_viscosity) {
    const State reference{20.0, 0.0, sea_level_pressure_pa};
    const auto rows = read_published("air.csv");
    ASSERT_EQ(rows.size(), 16U);
    for (const auto& row : rows) {
        const State air{row.number("t_c"), 0.0, row.number("p_pa")};
        const double rho = density_kg_per_m3(air);
        EXPECT_NEAR(dynamic_viscosity_pa_s(air.dry_bulb_c) / row.number("mu_pa_s"), 1.0, 2e-6) << row.line();
        EXPECT_NEAR(rho / row.number("rho_kg_per_m3"), 1.0, 1e-4) << row.line();
        expect_printed(row, "ratio_to_20c_sea_level", rho / density_kg_per_m3(reference));
        EXPECT_NEAR(standard_pressure_pa(row.number("altitude_m")) / air.pressure_pa, 1.0, 2e-4)
            << row.line();
    }
}

// Heat per volume of air of one temperature and humidity: the published factors are this times a constant.
double volume_heat_ratio(double altitude_m) {
    const State low{20.0, 0.005, sea_level_pressure_pa};
    const State high{20.0, 0.005, standard_pressure_pa(altitude_m)};
    return density_kg_per_m3(high) * specific_heat_j_per_kg_k(high) /
           (density_kg_per_m3(low) * specific_heat_j_per_kg_k(low));
}

TEST(PublishedAir, heat_factors_scale_with_altitude) {
    const auto rows = read_published("altitude-factors.csv");
    ASSERT_EQ(rows.size(), 8U);
    const auto& sea_level = rows.front();
    for (const auto& row : rows) {
        const double ratio = volume_heat_ratio(row.number("altitude_m"));
        expect_printed(row, "p_ratio", ratio);
        for (const char* factor :
             {"cs_si", "cl_si", "ct_si", "cs_ip_from_1p08", "cs_ip_from_1p10", "cl_ip_from_4840"}) {
            expect_printed(row, factor, ratio * sea_level.number(factor));
        }
    }
}

}  // namespace
}  // namespace psychro
