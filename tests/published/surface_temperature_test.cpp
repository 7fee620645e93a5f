// Inside surface temperatures and the humidity at which they sweat, against published and derived values.
#include "loads/surface_temperature.hpp"

#include <gtest/gtest.h>

#include "published/csv.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;
using published::Row;

constexpr double kelvin_off = 0.05;  // of a dew point

double factor_of(const Row& row) {
    return temperature_factor(units::Transmittance(row.number("U")), units::Resistance(row.number("Rsi")));
}

units::Temperature surface_of(const Row& row, double factor) {
    return inside_surface_temperature(factor, unit::celsius(row.number("Ti")),
                                      unit::celsius(row.number("To")));
}

// The humidity of air that just sweats at a temperature, with the bounds that half a tenth of a degree makes.
void expect_sweats(double rh_percent, units::Temperature surface, units::Temperature room, const Row& row) {
    const units::TemperatureDifference off{kelvin_off};
    EXPECT_LE(100 * sweating_humidity(surface - off, room), rh_percent) << row.where();
    EXPECT_GE(100 * sweating_humidity(surface + off, room), rh_percent) << row.where();
}

TEST(PublishedSurfaceTemperature, dew_points) {
    const auto table = published::read("loads_dew_point.csv");
    EXPECT_EQ(table.size(), 10u);
    for (const Row& row : table)
        expect_sweats(row.number("rh"), unit::celsius(row.number("dew_point")),
                      unit::celsius(row.number("t")), row);
}

TEST(PublishedSurfaceTemperature, temperature_factors) {
    const auto table = published::read("loads_temperature_factor.csv");
    EXPECT_EQ(table.size(), 10u);
    for (const Row& row : table) {
        const double factor = factor_of(row);
        EXPECT_NEAR(factor, row.number("f"), 0.001 * row.number("f")) << row.where();
        EXPECT_NEAR(unit::in_celsius(surface_of(row, factor)), row.number("Tsi"), kelvin_off) << row.where();
    }
}

TEST(PublishedSurfaceTemperature, factors_below_which_air_sweats_or_feeds_mould) {
    constexpr double mould = 0.8;  // of saturation at the surface
    for (const Row& row : published::read("loads_temperature_factor.csv")) {
        const units::Temperature room = unit::celsius(row.number("Ti"));
        const double rh = row.number("rh");
        expect_sweats(rh, surface_of(row, row.number("f_min_condensation")), room, row);
        expect_sweats(rh / mould, surface_of(row, row.number("f_min_mould")), room, row);
        const double sweats = 100 * sweating_humidity(surface_of(row, factor_of(row)), room);
        EXPECT_EQ(rh > sweats, row.number("condenses") == 1) << row.where();
        EXPECT_EQ(rh > mould * sweats, row.number("mould_risk") == 1) << row.where();
    }
}

TEST(PublishedSurfaceTemperature, glass_so_much_colder_than_the_room) {
    const auto table = published::read("loads_glass_colder_than_the_room.csv");
    EXPECT_EQ(table.size(), 7u);
    for (const Row& row : table) {
        const double factor =
            temperature_factor(units::Transmittance(row.number("U_max")), units::Resistance(0.13));
        const double colder = row.number("Ti") - unit::in_celsius(surface_of(row, factor));
        EXPECT_NEAR(colder, row.number("dT_max"), 0.001 * row.number("dT_max")) << row.where();
    }
}

}  // namespace
}  // namespace loads
