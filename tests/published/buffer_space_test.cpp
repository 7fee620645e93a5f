// Unheated spaces in heat balance against worked-out values.
#include "loads/buffer_space.hpp"

#include <gtest/gtest.h>

#include "published/csv.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

TEST(PublishedBufferSpace, temperatures) {
    const published::Table table = published::read("loads_buffer_space.csv");
    std::vector<BalancePart> parts;
    int cases = 0;
    for (const published::Row& row : table) {
        const units::Temperature beyond = units::unit::celsius(row.number("beyond"));
        const double conductance =
            row.has("air") ? 1.23 * row.number("air") : row.number("area") * row.number("u");
        parts.push_back({row.text("element"), units::HeatLossPerKelvin(conductance), beyond});
        if (!row.has("t")) continue;
        const auto balanced = balance_temperature(parts, {});
        ASSERT_TRUE(balanced) << row.where();
        EXPECT_NEAR(units::unit::in_celsius(*balanced), row.number("t"), 0.01) << row.where();
        parts.clear();
        ++cases;
    }
    EXPECT_EQ(cases, 5);
}

}  // namespace
}  // namespace loads
