// Cold air that falls down glass and what a jet does against it: published and derived rows.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "published/csv.hpp"
#include "registers/against_the_sheet.hpp"
#include "registers/draught.hpp"
#include "registers/falling_air.hpp"
#include "registers/falling_sheet.hpp"
#include "units/unit.hpp"

namespace registers {
namespace {

namespace unit = units::unit;
using published::Row;

constexpr double handbook_nu = 1.51e-5;  // m2/s, which the rows were worked out with
const units::Temperature room_of_the_rows = unit::celsius(21);

units::TemperatureDifference kelvin(double value) { return units::TemperatureDifference(value); }

// For values that may be 0 or below.
void expect_within(double share, double got, double published, const Row& row) {
    EXPECT_NEAR(got, published, share * std::abs(published) + 1e-12) << row.where();
}

ColdGlass glass_of(const Row& row) {
    return cold_glass(units::Length(row.number("H")), units::Transmittance(row.number("U")),
                      units::Resistance(row.number("Rsi")), kelvin(row.number("Ti") - row.number("To")));
}

FallingSheet sheet_of(const Row& row) {
    const loads::Air air{units::Density(1.2), {}, units::Viscosity(1.2 * handbook_nu)};
    return falling_sheet({units::Length(row.number("H")), kelvin(row.number("dT"))}, room_of_the_rows, air);
}

Jet jet_of(const Row& row, double k) {
    return {units::Airflow(row.number("Q")), units::Area(row.number("A0")), k};
}

TEST(PublishedFallingAir, over_the_floor) {
    const auto table = published::read("registers_falling_air.csv");
    EXPECT_EQ(table.size(), 14u);
    for (const Row& row : table) {
        const ColdGlass glass = glass_of(row);
        const units::Length distance{row.number("x")};
        expect_within(0.001, glass.colder.si(), row.number("dT"), row);
        expect_within(0.001, falling_air_speed(glass, distance).si(), row.number("v"), row);
        EXPECT_NEAR(row.number("Ti") - falling_air_colder(glass, distance).si(), row.number("T"), 0.01)
            << row.where();
    }
}

TEST(PublishedFallingAir, the_draught_it_makes) {
    for (const Row& row : published::read("registers_falling_air.csv")) {
        const ColdGlass glass = glass_of(row);
        const units::Length distance{row.number("x")};
        const Draught felt = draught(unit::celsius(row.number("Ti")) - falling_air_colder(glass, distance),
                                     falling_air_speed(glass, distance));
        expect_within(0.001, 100 * felt.dissatisfied, row.number("DR40"), row);
        EXPECT_EQ(felt.tested, row.number("DR_extrapolated") == 0) << row.where();
    }
}

TEST(PublishedFallingAir, glass_that_is_good_enough) {
    const auto table = published::read("registers_safe_glass.csv");
    EXPECT_EQ(table.size(), 7u);
    for (const Row& row : table) {
        const auto colder = colder_at_most(units::Velocity(row.number("v_limit")),
                                           units::Length(row.number("H")), units::Length(row.number("x")));
        expect_within(0.001, colder.si(), row.number("dT_max"), row);
        const auto glass =
            glass_at_most(colder, units::Resistance(0.13), kelvin(row.number("Ti") - row.number("To")));
        ASSERT_TRUE(glass) << row.where();
        expect_within(0.001, glass->si(), row.number("U_max"), row);
    }
}

TEST(PublishedFallingAir, the_sheet_at_the_bottom_of_the_glass) {
    const auto table = published::read("registers_falling_sheet.csv");
    EXPECT_EQ(table.size(), 6u);
    for (const Row& row : table) {
        const FallingSheet sheet = sheet_of(row);
        expect_within(0.01, sheet.speed.si(), row.number("u_max"), row);
        expect_within(0.01, sheet.thickness.si(), row.number("delta"), row);
        expect_within(0.01, sheet.flow.si(), row.number("q_per_m"), row);
        const double momentum = (sheet.momentum * units::Length(row.number("W"))).si();
        expect_within(0.01, momentum, row.number("M_sheet"), row);
        const double of_jet = momentum_of(jet_of(row, 1)).si();
        expect_within(0.01, of_jet, row.number("M_jet"), row);
        expect_within(0.01, of_jet / momentum, row.number("ratio"), row);
    }
}

TEST(PublishedFallingAir, the_sheet_by_the_short_forms_of_handbooks) {
    for (const Row& row : published::read("registers_falling_sheet.csv")) {
        const FallingSheet sheet = sheet_of(row);
        const double height = row.number("H"), colder = row.number("dT");
        expect_within(0.03, sheet.speed.si(), 0.1 * std::sqrt(colder * height), row);
        expect_within(0.03, sheet.flow.si(), 2.87e-3 * std::pow(colder, 0.4) * std::pow(height, 1.2), row);
    }
}

AgainstTheSheet washed(const Row& row, double warmer, double spread) {
    const WarmJet jet{jet_of(row, row.number("K")), kelvin(warmer), room_of_the_rows};
    const WindowAbove window{units::Length(row.number("sill")),
                             units::Length(row.number("H")),
                             units::Length(row.number("W")),
                             {}};
    return against_the_sheet({jet, units::Length(row.number("L")), spread}, window, sheet_of(row));
}

TEST(PublishedFallingAir, a_jet_against_it) {
    const auto table = published::read("registers_against_the_sheet.csv");
    EXPECT_EQ(table.size(), 7u);
    for (const Row& row : table) {
        const AgainstTheSheet plain = washed(row, 0, 22), warm = washed(row, 25, 22);
        EXPECT_DOUBLE_EQ(row.number("z"), row.number("sill") + row.number("H") / 2) << row.where();
        expect_within(0.01, plain.jet.si(), row.number("V_jet"), row);
        expect_within(0.01, warm.jet.si(), row.number("V_warm25"), row);
        expect_within(0.01, plain.sheet.si(), row.number("u_sheet"), row);
        expect_within(0.01, plain.jet / plain.sheet, row.number("ratio"), row);
        expect_within(0.01, warm.jet / warm.sheet, row.number("ratio_warm"), row);
        expect_within(0.01, plain.covered, row.number("coverage"), row);
        EXPECT_GE(washed(row, 0, 60).covered, plain.covered) << row.where();
        EXPECT_EQ(plain.washes, row.number("ratio") >= 1) << row.where();
        EXPECT_EQ(warm.washes, row.number("ratio_warm") >= 1) << row.where();
    }
}

}  // namespace
}  // namespace registers
