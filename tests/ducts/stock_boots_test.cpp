// The boots of the shelf: each joins what the shelf has, and the shelf has one for what is chosen from it.
#include "ducts/stock_boots.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;
using enum house::Mount;

house::Rectangular mm(double width, double height) {
    return {width * unit::millimetre, height * unit::millimetre};
}
house::Round duct_mm(double diameter) { return {diameter * unit::millimetre}; }

void expect_ends_on_the_pipe_shelf(const StockBoot& boot, Stock stock) {
    const auto pipes = stock_round_pipes(stock);
    EXPECT_LE(boot.smallest, boot.largest);
    for (const house::Round& end : {boot.smallest, boot.largest}) {
        EXPECT_TRUE(std::binary_search(pipes.begin(), pipes.end(), end)) << end.diameter / unit::inch;
        EXPECT_TRUE(takes(boot, end, stock));
    }
}

TEST(StockBoots, each_register_has_one_whose_pipes_are_on_the_shelf) {
    for (const Stock stock : {Stock::us, Stock::metric}) {
        for (const auto& mount : house::words<house::Mount>()) {
            const auto registers = stock_registers(mount.value, stock);
            const auto boots = stock_boots(mount.value, stock);
            EXPECT_TRUE(
                std::equal(registers.begin(), registers.end(), boots.begin(), boots.end(),
                           [](const StockRegister& a, const StockBoot& b) { return a.face == b.face; }))
                << mount.text;
            for (const StockBoot& boot : boots) expect_ends_on_the_pipe_shelf(boot, stock);
        }
    }
}

TEST(StockBoots, each_stack_has_one_whose_pipes_are_on_the_shelf) {
    const auto stacks = stock_wall_stacks();
    const auto boots = stock_stack_boots();
    EXPECT_TRUE(std::equal(stacks.begin(), stacks.end(), boots.begin(), boots.end(),
                           [](const house::Rectangular& a, const StockBoot& b) { return a == b.face; }));
    for (const StockBoot& boot : boots) expect_ends_on_the_pipe_shelf(boot, Stock::us);
    EXPECT_TRUE(stock_stack_boots(Stock::metric).empty());
}

TEST(StockBoots, a_register_larger_both_ways_is_for_no_smaller_pipes) {
    for (const Stock stock : {Stock::us, Stock::metric})
        for (const house::Mount mount : {floor, high_wall})
            for (const StockBoot& one : stock_boots(mount, stock))
                for (const StockBoot& other : stock_boots(mount, stock))
                    if (other.face.width >= one.face.width && other.face.height >= one.face.height) {
                        EXPECT_GE(other.smallest, one.smallest);
                        EXPECT_GE(other.largest, one.largest);
                    }
}

TEST(StockBoots, a_pipe_is_taken_from_the_smallest_to_the_largest) {
    const StockBoot* boot = boot_to(rectangle_of(4, 12), stock_boots(floor));
    ASSERT_TRUE(boot);
    for (const double inches : {5., 6., 7., 8.}) EXPECT_TRUE(takes(*boot, round_of(inches)));
    for (const double inches : {4., 5.5, 9.}) EXPECT_FALSE(takes(*boot, round_of(inches)));
}

TEST(StockBoots, a_size_written_to_the_millimetre_is_the_shelfs) {
    const StockBoot* boot = boot_to(mm(102, 305), stock_boots(floor));
    ASSERT_TRUE(boot);
    EXPECT_EQ(boot->face, rectangle_of(4, 12));
    EXPECT_TRUE(takes(*boot, duct_mm(152)));
    EXPECT_FALSE(takes(*boot, duct_mm(160)));
}

TEST(StockBoots, whichever_side_of_a_face_is_written_first) {
    EXPECT_EQ(boot_to(rectangle_of(12, 4), stock_boots(floor)),
              boot_to(rectangle_of(4, 12), stock_boots(floor)));
    EXPECT_EQ(boot_to(rectangle_of(5, 12), stock_boots(floor)), nullptr);
}

TEST(StockBoots, a_round_pipe_joins_what_its_boot_leads_to) {
    EXPECT_TRUE(joins_register(round_of(6), rectangle_of(4, 10), floor));
    EXPECT_FALSE(joins_register(round_of(9), rectangle_of(4, 10), floor));
    EXPECT_TRUE(joins_register(round_of(9), rectangle_of(6, 12), floor));
    EXPECT_FALSE(joins_register(round_of(6), rectangle_of(5, 9), floor));
    EXPECT_TRUE(joins_register(duct_mm(125), mm(200, 150), ceiling, Stock::metric));
    EXPECT_FALSE(joins_register(duct_mm(125), mm(400, 150), ceiling, Stock::metric));
}

TEST(StockBoots, a_stack_joins_a_register_as_long_as_it_is_wide) {
    EXPECT_TRUE(joins_register(rectangle_of(3.25, 10), rectangle_of(10, 6), low_wall));
    EXPECT_FALSE(joins_register(rectangle_of(3.25, 10), rectangle_of(12, 6), low_wall));
    EXPECT_TRUE(joins_register(rectangle_of(3.25, 12), rectangle_of(4, 12), floor));
    EXPECT_FALSE(joins_register(rectangle_of(5, 12), rectangle_of(4, 12), floor));  // on no shelf
}

TEST(StockBoots, an_oval_joins_what_the_pipe_joins_that_was_pressed_flat) {
    double inches = 5;
    for (const house::FlatOval& oval : stock_flat_ovals()) {
        for (const StockRegister& each : stock_registers(high_wall))
            EXPECT_EQ(joins_register(oval, each.face, high_wall),
                      joins_register(round_of(inches), each.face, high_wall));
        inches += 1;
    }
}

TEST(StockBoots, a_pipe_goes_on_in_the_smallest_stack_that_carries_as_much) {
    ASSERT_TRUE(stack_after(round_of(6)));
    EXPECT_EQ(*stack_after(round_of(4)), rectangle_of(2.25, 10));
    EXPECT_EQ(*stack_after(round_of(6)), rectangle_of(3.25, 10));
    EXPECT_EQ(*stack_after(round_of(8)), rectangle_of(3.25, 14));  // carries less, and there is no larger
    EXPECT_EQ(stack_after(round_of(9)), nullptr);
    EXPECT_EQ(stack_after(duct_mm(160), Stock::metric), nullptr);
}

}  // namespace
}  // namespace ducts
