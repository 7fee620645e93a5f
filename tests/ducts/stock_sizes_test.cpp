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

std::vector<house::Rectangular> faces_of(std::span<const StockRegister> registers) {
    std::vector<house::Rectangular> faces;
    for (const StockRegister& each : registers) faces.push_back(each.face);
    return faces;
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

void expect_same_pipes(std::span<const house::Round> stock, const std::string& kind,
                       units::Length counted_in) {
    std::vector<house::Round> published;
    for (const auto& row : published::read("ducts_stock_sizes.csv")) {
        if (row.text("kind") == kind) published.push_back({row.number("a_in") * counted_in});
    }
    EXPECT_TRUE(std::equal(stock.begin(), stock.end(), published.begin(), published.end())) << kind;
    EXPECT_TRUE(std::is_sorted(stock.begin(), stock.end())) << kind;
}

TEST(StockSizes, round_pipes_are_the_published_ones_and_rise) {
    expect_same_pipes(stock_round_pipes(), "round pipe", unit::inch);
    expect_same_pipes(stock_flexible_ducts(), "flexible duct", unit::inch);
    expect_same_pipes(stock_round_pipes(Stock::metric), "metric duct", unit::millimetre);
    EXPECT_TRUE(stock_wall_stacks(Stock::metric).empty());
}

TEST(StockSizes, filters_are_the_published_ones) {
    std::vector<house::Rectangular> faces;
    for (const StockFilter& filter : stock_filters()) {
        faces.push_back(filter.face);
        EXPECT_GE(filter.thickness, 1 * unit::inch);
    }
    expect_same_faces(faces, "filter");
}

// Pressed flat a pipe keeps its girth, and so loses area: the more, the larger it was.
TEST(StockSizes, ovals_keep_the_girth_of_their_pipe) {
    double inches = 5;
    for (const house::FlatOval& oval : stock_flat_ovals()) {
        const house::Round pipe{inches * unit::inch};
        EXPECT_NEAR(section_of(oval).perimeter / section_of(pipe).perimeter, 1, 1e-12);
        EXPECT_LT(equivalent_round(oval), pipe.diameter);
        EXPECT_EQ(oval.minor, 3.25 * unit::inch);
        inches += 1;
    }
    EXPECT_EQ(inches, 9);
    EXPECT_TRUE(stock_flat_ovals(Stock::metric).empty());
}

TEST(StockSizes, faces_and_stacks_are_the_published_ones) {
    expect_same_faces(stock_wall_stacks(), "wall stack");
    expect_same_faces(faces_of(stock_registers(house::Mount::floor)), "floor register");
    expect_same_faces(faces_of(stock_registers(house::Mount::high_wall)), "wall register");
    expect_same_faces(stock_trunks(), "trunk");
    expect_same_faces(stock_return_grilles(), "return grille");
}

TEST(StockSizes, stacks_rise_in_what_they_carry_and_faces_in_area) {
    EXPECT_TRUE(rise(stock_wall_stacks(), carries_less));
    for (const Stock stock : {Stock::us, Stock::metric})
        for (const auto& mount : house::words<house::Mount>())
            EXPECT_TRUE(rise(faces_of(stock_registers(mount.value, stock)), has_less_area)) << mount.text;
    EXPECT_TRUE(rise(stock_trunks(), has_less_area));
    EXPECT_TRUE(rise(stock_return_grilles(), has_less_area));
}

TEST(StockSizes, every_register_is_as_open_as_those_of_its_mount_are) {
    std::size_t mounts = 0;
    for (const auto& row : published::read("ducts_register_free_area.csv")) {
        const double low = row.number("low") - 1e-12, high = row.number("high") + 1e-12;
        const auto within = [&](double share) { return share >= low && share <= high; };
        for (const auto& [text, mount] : house::words<house::Mount>()) {
            if (text != row.text("mount")) continue;
            ++mounts;
            EXPECT_TRUE(within(register_free_share(mount))) << row.where();
            for (const Stock stock : {Stock::us, Stock::metric})
                for (const StockRegister& each : stock_registers(mount, stock))
                    EXPECT_TRUE(within(each.free / (each.face.width * each.face.height))) << row.where();
        }
    }
    EXPECT_EQ(mounts, house::words<house::Mount>().size());
}

}  // namespace
}  // namespace ducts
