#include "published.hpp"

#include <gtest/gtest.h>

#include <stdexcept>

namespace psychro {
namespace {

TEST(Published, last_digit_is_the_unit_of_the_last_printed_place) {
    const PublishedRow row({{"plain", "3.20"}, {"whole", "4840"}, {"power", "7.93e-05"}});
    EXPECT_DOUBLE_EQ(row.last_digit("plain"), 0.01);
    EXPECT_DOUBLE_EQ(row.last_digit("whole"), 1.0);
    EXPECT_DOUBLE_EQ(row.last_digit("power"), 1e-7);
}

TEST(Published, an_empty_cell_is_kept) {
    const auto rows = read_published("states.csv");
    ASSERT_EQ(rows.size(), 43U);
    EXPECT_EQ(rows.at(18).text("rh"), "0");
    EXPECT_EQ(rows.at(18).text("tdp_c"), "");
}

TEST(Published, a_missing_file_is_an_error) {
    EXPECT_THROW(read_published("no-such-table.csv"), std::runtime_error);
}

}  // namespace
}  // namespace psychro
