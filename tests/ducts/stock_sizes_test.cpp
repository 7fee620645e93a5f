#include "ducts/stock_sizes.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "ducts/reference_air.hpp"
#include "published/csv.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

std::vector<house::Rectangular> published_faces(const std::string& kind) {
    std::vector<house::Rectangular> faces;
    for (const auto& row : published::read("ducts_stock_sizes.csv")) {
        if (row.text("kind") == kind) faces.push_back(rectangle_of(row.number("a_in"), row.number("b_in")));
    }
    return faces;
}

void expect_same_faces(std::span<const house::Rectangular> stock, const std::string& kind) {
    const auto published = published_faces(kind);
    EXPECT_TRUE(std::is_permutation(stock.begin(), stock.end(), published.begin(), published.end())) << kind;
}

bool rise(std::span<const house::Rectangular> stock,
          bool (*smaller)(house::Rectangular, house::Rectangular)) {
    return std::is_sorted(stock.begin(), stock.end(), smaller);
}

bool carries_less(house::Rectangular a, house::Rectangular b) {
    return equivalent_round(a) < equivalent_round(b);
}
bool has_less_area(house::Rectangular a, house::Rectangular b) {
    return a.width * a.height < b.width * b.height;
}

TEST(StockSizes, round_pipes_are_the_published_ones_and_rise) {
    std::vector<house::Round> published;
    for (const auto& row : published::read("ducts_stock_sizes.csv")) {
        if (row.text("kind") == "round pipe") published.push_back(round_of(row.number("a_in")));
    }
    const auto stock = stock_round_pipes();
    EXPECT_TRUE(std::equal(stock.begin(), stock.end(), published.begin(), published.end()));
    EXPECT_TRUE(std::is_sorted(stock.begin(), stock.end()));
}

TEST(StockSizes, faces_and_stacks_are_the_published_ones) {
    expect_same_faces(stock_wall_stacks(), "wall stack");
    expect_same_faces(stock_floor_registers(), "floor register");
    expect_same_faces(stock_wall_registers(), "wall register");
}

TEST(StockSizes, stacks_rise_in_what_they_carry_and_faces_in_area) {
    EXPECT_TRUE(rise(stock_wall_stacks(), carries_less));
    EXPECT_TRUE(rise(stock_floor_registers(), has_less_area));
    EXPECT_TRUE(rise(stock_wall_registers(), has_less_area));
}

TEST(RoundUp, takes_the_next_pipe) {
    EXPECT_EQ(round_up(5.2 * unit::inch), round_of(6));
    EXPECT_EQ(round_up(6.01 * unit::inch), round_of(7));
    EXPECT_EQ(round_up(10.5 * unit::inch), round_of(12));
}

TEST(RoundUp, leaves_a_stock_size_alone_in_any_unit) {
    for (const house::Round& stock : stock_round_pipes()) EXPECT_EQ(round_up(stock.diameter), stock);
    EXPECT_EQ(round_up(152.4 * unit::millimetre), round_of(6));
}

TEST(RoundUp, ends_at_the_largest_and_starts_at_the_smallest) {
    EXPECT_EQ(round_up(30 * unit::inch), round_of(20));
    EXPECT_EQ(round_up(units::Length(0)), round_of(3));
}

}  // namespace
}  // namespace ducts
