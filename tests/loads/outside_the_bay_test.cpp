#include "loads/outside_the_bay.hpp"

#include <gtest/gtest.h>

#include "loads/a_house.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

namespace unit = units::unit;

house::Surface made_of(const std::vector<std::string>& names) {
    house::Layers layers;
    layers.framing = 0.25;
    for (const std::string& name : names) layers.names.push_back({name, {}});
    house::Surface wall = a_house::surface(10, a_house::u(1));
    wall.assembly = layers;
    return wall;
}

double r_us(units::Resistance resistance) { return resistance / unit::r_value_us; }

// Lap siding 0.14 and 3/4 in of softwood 0.1656 m2 K/W.
TEST(OutsideTheBay, counts_what_lies_outside_the_studs) {
    const auto filled = outside_the_bay(made_of(
        {"lap siding", "board sheathing, 3/4 in", "dense cellulose, 3-5/8 in", "gypsum board, 1/2 in"}));
    ASSERT_TRUE(filled);
    EXPECT_NEAR(filled->layers.si(), 0.01905 / 0.115 + usual_outside_the_bay().layers.si() - 0.01905 / 0.115,
                1e-9);
    EXPECT_NEAR(filled->bay / unit::inch, 3.625, 1e-9);
    const auto empty = outside_the_bay(
        made_of({"lap siding", "board sheathing, 3/4 in", "empty stud bay, 3-5/8 in", "plaster, 3/4 in"}));
    EXPECT_EQ(empty->layers, filled->layers);
    EXPECT_EQ(empty->bay, filled->bay);
}

TEST(OutsideTheBay, board_outside_counts_and_board_inside_does_not) {
    const auto bare = outside_the_bay(made_of({"lap siding", "empty stud bay, 3-1/2 in", "drywall, 1/2 in"}));
    const auto outside = outside_the_bay(
        made_of({"lap siding", "XPS board, 1 in", "empty stud bay, 3-1/2 in", "drywall, 1/2 in"}));
    const auto inside = outside_the_bay(
        made_of({"lap siding", "empty stud bay, 3-1/2 in", "XPS board, 1 in", "drywall, 1/2 in"}));
    EXPECT_NEAR(r_us(outside->layers - bare->layers), 5.24, 0.01);  // 1 in of 0.0275 W/(m K)
    EXPECT_EQ(inside->layers, bare->layers);
}

TEST(OutsideTheBay, a_bay_nobody_knows_lies_where_it_is_written) {
    house::Surface wall = made_of({"lap siding", "gypsum board, 1/2 in"});
    auto& layers = std::get<house::Layers>(wall.assembly);
    layers.bay_depth = 3.5 * unit::inch;
    layers.bay = units::Resistance(0.16);
    layers.bay_after = 1;
    const auto outside = outside_the_bay(wall);
    EXPECT_NEAR(outside->bay / unit::inch, 3.5, 1e-9);
    EXPECT_LT(outside->layers, usual_outside_the_bay().layers);
    layers.bay_after = 2;
    EXPECT_GT(outside_the_bay(wall)->layers, outside->layers);
}

TEST(OutsideTheBay, layers_nobody_knows_may_hide_a_bay) {
    house::Surface wall = made_of({"lap siding", "gypsum board, 1/2 in"});
    std::get<house::Layers>(wall.assembly).unknown = units::Resistance(0.3);
    EXPECT_FALSE(outside_the_bay(wall));
    EXPECT_TRUE(usual_outside_the_bay().assumed);
}

TEST(OutsideTheBay, a_solid_wall_has_none_and_a_plain_u_does_not_tell) {
    EXPECT_EQ(outside_the_bay(made_of({"brick, 8 in", "plaster, 3/4 in"}))->bay, units::Length());
    EXPECT_FALSE(outside_the_bay(a_house::surface(10, a_house::u(1))));
}

}  // namespace
}  // namespace loads
