// What closed doors and fans that only blow out do to pressures in a house: derived rows.
#include <gtest/gtest.h>

#include <cmath>

#include "ducts/return_path.hpp"
#include "network/laws.hpp"
#include "published/csv.hpp"
#include "units/unit.hpp"

namespace {

using namespace units::unit;
using published::Row;

const units::Density room_air{1.2};

TEST(PublishedPressure, air_under_a_closed_door) {
    const auto table = published::read("registers_door_gap.csv");
    EXPECT_EQ(table.size(), 8u);
    for (const Row& row : table) {
        const units::Area gap = row.number("door_in") * inch * (row.number("gap_in") * inch) +
                                row.number("extra_in2") * square_inch;
        EXPECT_NEAR(gap / square_inch, row.number("area_in2"), 1e-9) << row.where();
        const units::Airflow flow =
            ducts::through_opening(gap, row.number("dp") * pascal, {room_air, {}, {}});
        EXPECT_NEAR(flow / cfm, row.number("cfm"), 0.013 * row.number("cfm")) << row.where();
    }
}

TEST(PublishedPressure, a_house_with_fans_that_only_blow_out) {
    const auto table = published::read("registers_house_pressure.csv");
    EXPECT_EQ(table.size(), 6u);
    for (const Row& row : table) {
        const double n = row.number("n");
        const units::MassFlow at_50 = row.number("cfm50") * cfm * room_air;
        const network::LeakLaw house{at_50.si() / std::pow(50, n), n};
        const auto pressure = network::loss(house, row.number("unbalanced_cfm") * cfm * room_air).pressure;
        EXPECT_NEAR(pressure / pascal, row.number("dp_Pa"), 0.005 * row.number("dp_Pa")) << row.where();
    }
}

}  // namespace
