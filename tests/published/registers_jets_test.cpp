// Jets from registers: the handbook's example and derived rows.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>
#include <string>

#include "published/csv.hpp"
#include "registers/buoyant_jet.hpp"
#include "registers/jet.hpp"
#include "registers/outlet_pattern.hpp"
#include "units/unit.hpp"

namespace registers {
namespace {

using published::Row;

void expect_within(double share, double got, double published, const Row& row) {
    EXPECT_NEAR(got, published, share * std::abs(published) + 1e-12) << row.where();
}

const OutletPattern& pattern_named(const std::string& name) {
    const auto all = outlet_patterns();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const OutletPattern& row) { return row.name == name; });
    if (found == all.end()) throw std::runtime_error("no pattern is called " + name);
    return *found;
}

struct Distances {
    double to_025, thrown, to_050, to_075;
};
Distances distances_of(const Jet& jet) {
    const auto to = [&](double speed) { return distance_to(jet, units::Velocity(speed)).si(); };
    return {to(0.25), throw_of(jet).si(), to(0.5), to(0.75)};
}

TEST(PublishedJets, how_far_they_carry) {
    const auto table = published::read("registers_jets.csv");
    EXPECT_EQ(table.size(), 14u);
    for (const Row& row : table) {
        const OutletPattern& pattern = pattern_named(row.text("pattern"));
        EXPECT_DOUBLE_EQ(pattern.k, row.number("K")) << row.where();
        const Jet jet{units::Airflow(row.number("Q")), units::Area(row.number("A0")), pattern.k};
        expect_within(0.001, outlet_speed(jet).si(), row.number("V0"), row);
        const Distances got = distances_of(jet);
        expect_within(0.001, got.to_025, row.number("x025"), row);
        expect_within(0.001, got.thrown, row.number("x025_70"), row);
        expect_within(0.001, got.to_050, row.number("x050"), row);
        expect_within(0.001, got.to_075, row.number("x075"), row);
        if (!row.has("printed_x025")) continue;
        EXPECT_EQ(std::round(got.to_025), row.number("printed_x025")) << row.where();
        EXPECT_EQ(std::round(got.thrown), row.number("printed_x025_70")) << row.where();
        EXPECT_EQ(std::round(got.to_050), row.number("printed_x050")) << row.where();
        EXPECT_EQ(std::round(got.to_075), row.number("printed_x075")) << row.where();
    }
}

WarmJet warm_jet_of(const Row& row) {
    const units::Area area{row.number("A0")};
    return {{units::Velocity(row.number("V0")) * area, area, row.number("K")},
            units::TemperatureDifference(row.number("dT")),
            units::unit::celsius(row.number("Ta"))};
}

double value_of(const Row& row) {
    const WarmJet warm = warm_jet_of(row);
    const std::string& kind = row.text("kind");
    if (kind == "horizontal_rise") return rise(warm, units::Length(row.number("x"))).si();
    if (kind == "vertical_up_speed") return speed_at(warm, Blows::up, units::Length(row.number("x"))).si();
    if (kind == "warm_jet_down_reach") return stops_at(warm, Blows::down).value().si();
    throw std::runtime_error(row.where() + ": unknown kind " + kind);
}

TEST(PublishedJets, warm_and_cold) {
    const auto table = published::read("registers_buoyant_jets.csv");
    EXPECT_EQ(table.size(), 13u);
    for (const Row& row : table) {
        expect_within(0.001, archimedes(warm_jet_of(row)), row.number("Ar"), row);
        expect_within(0.001, value_of(row), row.number("value"), row);
    }
}

// Turner 1966: a fountain stops 1.74 diameters x Froude number above its source. Only K of a plain round
// jet can be so compared.
TEST(PublishedJets, warm_air_blown_down_stops_as_a_fountain_does) {
    for (const Row& row : published::read("registers_buoyant_jets.csv")) {
        if (row.text("kind") != "warm_jet_down_reach" || row.number("K") != 5.7) continue;
        const double diameter = std::sqrt(4 * row.number("A0") / std::numbers::pi);
        const double buoyancy = 9.80665 * row.number("dT") / (row.number("Ta") + 273.15);
        const double froude = row.number("V0") / std::sqrt(buoyancy * diameter);
        expect_within(0.06, value_of(row), 1.74 * diameter * froude, row);
    }
}

}  // namespace
}  // namespace registers
