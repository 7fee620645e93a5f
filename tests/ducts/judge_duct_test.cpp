#include "ducts/judge_duct.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "ducts/a_duct_house.hpp"
#include "ducts/friction.hpp"
#include "ducts/stock_sizes.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
namespace unit = units::unit;

constexpr units::FrictionRate rate = 0.08 * unit::inch_wc_per_100_ft;

// One pipe from the plenum with so many cfm.
JudgedDuct judged(const house::Shape& shape, double cfm) {
    house::House house;
    add_outlet(house, add_root(house, shape, 20));
    DesignFlows flows;
    flows.outlets = {cfm * unit::cfm * reference_air().density};
    const DuctSystem system = duct_system(house, flows, std::nullopt);
    return judge_ducts(house, system.supply, rate, reference_air()).at(0);
}

// At 0.08 in.wc/100 ft a 6 in pipe carries 97.9 cfm, a 5 in one 59.8, and a 10 in one 385.6 at 707 ft/min.
TEST(JudgeDuct, by_friction) {
    EXPECT_EQ(judged(round_of(6), 99).size(), Size::too_small);
    EXPECT_EQ(judged(round_of(6), 97).size(), Size::fair);
    EXPECT_EQ(judged(round_of(6), 61).size(), Size::fair);
    const JudgedDuct larger = judged(round_of(6), 59);
    EXPECT_EQ(larger.size(), Size::larger_than_needed);
    EXPECT_EQ(larger.would_do, house::Shape(round_of(5)));
}

// 40 cfm at 0.08 in.wc/100 ft: a 5 in pipe carries 59.8, a 4 in one 32.7.
TEST(JudgeDuct, the_smallest_that_would_do) {
    EXPECT_EQ(judged(round_of(12), 40).would_do, house::Shape(round_of(5)));
}

TEST(JudgeDuct, a_duct_without_air_is_not_judged) {
    house::House house;
    add_outlet(house, add_root(house, six_inch, 20));
    add_root(house, round_of(9), 16);
    const DuctSystem system = system_of(house);
    const auto all = judge_ducts(house, system.supply, rate, reference_air());
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].duct, 0);
}

TEST(JudgeDuct, by_velocity) {
    const JudgedDuct fast = judged(round_of(10), 350);
    EXPECT_TRUE(fast.too_fast);
    EXPECT_FALSE(fast.loses_too_much);
    EXPECT_EQ(fast.size(), Size::too_small);
}

TEST(JudgeDuct, what_part_it_plays) {
    house::House house = two_branches();
    house.ducts[1].shape = rectangle_of(3.25, 10);
    const int trunk = add_return(house, rectangle_of(8, 24), 20);
    add_branch(house, trunk, 3, round_of(8), 5);
    EXPECT_EQ(part_of(house, house.ducts[0]), DuctPart::supply_trunk);
    EXPECT_EQ(part_of(house, house.ducts[1]), DuctPart::wall_stack);
    EXPECT_EQ(part_of(house, house.ducts[2]), DuctPart::supply_branch);
    EXPECT_EQ(part_of(house, house.ducts[3]), DuctPart::return_trunk);
    EXPECT_EQ(part_of(house, house.ducts[4]), DuctPart::return_branch);
}

TEST(JudgeDuct, next_size_down) {
    EXPECT_EQ(next_size_down(round_of(12)), house::Shape(round_of(10)));
    EXPECT_EQ(next_size_down(round_of(3)), std::nullopt);
    EXPECT_EQ(next_size_down(rectangle_of(8, 16)), house::Shape(rectangle_of(8, 14)));
    EXPECT_EQ(next_size_down(rectangle_of(16, 8)), house::Shape(rectangle_of(14, 8)));
    EXPECT_EQ(next_size_down(rectangle_of(8, 8)), std::nullopt);
    EXPECT_EQ(next_size_down(rectangle_of(2.25, 10)), std::nullopt);
    EXPECT_NE(next_size_down(rectangle_of(3.25, 14)), std::nullopt);
    EXPECT_EQ(next_size_down(house::FlatOval{10 * unit::inch, 9 * unit::inch}), std::nullopt);
}

TEST(JudgeDuct, limits_have_sources_and_order) {
    for (const VelocityLimit& limit : velocity_limits()) {
        EXPECT_EQ(&velocity_limit(limit.part), &limit);
        EXPECT_LE(limit.usual, limit.most) << limit.name;
        EXPECT_FALSE(limit.source.empty()) << limit.name;
    }
}

TEST(JudgeDuct, every_described_duct_is_judged_at_its_largest_flow) {
    const house::House house = two_branches();
    const DuctSystem system = system_of(house);
    const auto all = judge_ducts(house, system.supply, rate, reference_air());
    ASSERT_EQ(all.size(), 3u);
    EXPECT_NEAR(all[0].flow.si(), 0.11, 1e-12);
    EXPECT_NEAR(all[1].flow.si(), 0.05, 1e-12);
}

RC_GTEST_PROP(JudgeLaws, more_air_moves_a_duct_towards_too_small_only, ()) {
    const auto stock = stock_round_pipes();
    const house::Shape shape = stock[*rc::gen::inRange<std::size_t>(0, stock.size())];
    const double cfm = 1 + *rc::gen::inRange(0, 800);
    const Size before = judged(shape, cfm).size(), after = judged(shape, 1.2 * cfm).size();
    RC_ASSERT(after <= before);  // too small, fair, larger than needed
}

}  // namespace
}  // namespace ducts
