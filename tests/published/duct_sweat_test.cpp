// The outside of a cold duct, and whether water forms on it, against derived values.
#include "ducts/duct_sweat.hpp"

#include <gtest/gtest.h>

#include "loads/surface_temperature.hpp"
#include "published/csv.hpp"
#include "units/unit.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;
using published::Row;

TEST(PublishedDuctSweat, outside_of_the_duct) {
    const auto table = published::read("ducts_sweat.csv");
    ASSERT_EQ(table.size(), 7u);
    for (const Row& row : table) {
        const units::Temperature outside =
            outside_of_duct(unit::celsius(row.number("Td")), unit::celsius(row.number("Ta")),
                            units::Resistance(row.number("R")));
        EXPECT_NEAR(unit::in_celsius(outside), row.number("Ts"), 0.02) << row.where();
        const units::Temperature dew_point = unit::celsius(row.number("dew_point"));
        EXPECT_EQ(outside <= dew_point, row.number("sweats") == 1) << row.where();
        // The dew point is that of the air around: it would just sweat on a surface of that temperature.
        EXPECT_NEAR(100 * loads::sweating_humidity(dew_point, unit::celsius(row.number("Ta"))),
                    row.number("rh"), 0.1)
            << row.where();
    }
}

}  // namespace
}  // namespace ducts
