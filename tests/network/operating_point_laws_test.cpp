// What the whole system obeys, whatever house is drawn.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "network/a_whole_house.hpp"

namespace network {
namespace {

double flow_to(const OperatingPoint& point, std::size_t outlet) { return point.outlets[outlet].si(); }
std::uint64_t any_seed() { return *rc::gen::arbitrary<std::uint32_t>(); }

TEST(OperatingPointLaws, every_random_house_settles_and_its_masses_balance) {
    for (std::uint64_t seed = 1; seed <= 500; ++seed) {
        const RandomHouse made = random_whole_house(seed);
        const OperatingPoint point = running(made.house, made.machine, seed % 2 == 0 ? Fans::on : Fans::off);
        EXPECT_LT(point.residual, 1e-7) << "seed " << seed;
        EXPECT_LE(point.loops, 60) << "seed " << seed;
        double supplied = (point.other_rooms + point.supply_leak).si();
        for (std::size_t i = 0; i < made.house.outlets.size(); ++i)
            if (made.house.is_supply(made.house.outlets[i])) supplied += flow_to(point, i);
        EXPECT_NEAR(supplied, point.blower.si(), 1e-9 * point.blower.si()) << "seed " << seed;
    }
}

RC_GTEST_PROP(OperatingPointLaws, each_node_of_tight_ducts_passes_on_all_it_gets, ()) {
    Drawn drawn;
    drawn.leaks = false;
    const RandomHouse made = random_whole_house(any_seed(), drawn);
    RC_ASSERT(worst_imbalance(running(made.house, made.machine)) < 1e-9);
}

// Fittings whose loss follows from the trunk's flow may behave otherwise; so may a room with several ways
// out.
Drawn plain_houses() {
    Drawn drawn;
    drawn.only_fixed_fittings = drawn.usual = true;
    drawn.leaks = drawn.doors = false;
    return drawn;
}
RandomHouse plain_house() {
    RandomHouse made = random_whole_house(any_seed(), plain_houses());
    made.machine.output = {};  // or warmer, thinner air would change every loss a little
    return made;
}

RC_GTEST_PROP(OperatingPointLaws, a_damper_closed_takes_from_its_own_outlet_and_gives_to_all_others, ()) {
    RandomHouse made = plain_house();
    const auto own = *rc::gen::inRange<std::size_t>(0, made.house.outlets.size());
    const bool supply = made.house.is_supply(made.house.outlets[own]);
    const OperatingPoint before = running(made.house, made.machine);
    made.house.outlets[own].damper += 20;
    const OperatingPoint after = running(made.house, made.machine);
    const double rounding = 1e-9 * before.blower.si();
    RC_ASSERT(flow_to(after, own) <= flow_to(before, own) + rounding);
    for (std::size_t i = 0; i < made.house.outlets.size(); ++i)
        if (i != own && made.house.is_supply(made.house.outlets[i]) == supply)
            RC_ASSERT(flow_to(after, i) >= flow_to(before, i) - rounding);
}

RC_GTEST_PROP(OperatingPointLaws, one_more_outlet_takes_from_every_other_on_its_side, ()) {
    RandomHouse made = plain_house();
    made.house.other_rooms.reset();  // theirs would spread along the trunks anew
    made.machine = planned_for(made.house, made.machine);
    const OperatingPoint before = running(made.house, made.machine);
    house::House more = made.house;
    const int root = 0;
    const double along = *rc::gen::inRange(0, 11) * 0.1 * (duct(more, root).length / units::unit::foot);
    const int run = a_duct_house::add_branch(more, root, along, a_duct_house::six_inch, 15, {"C 1.5"});
    a_duct_house::add_outlet(more, run);
    Machine machine = made.machine;
    machine.design.outlets.push_back(machine.design.outlets.front());
    const OperatingPoint after =
        operating_point(more, ducts::duct_system(more, machine.design, std::nullopt), machine);
    for (std::size_t i = 0; i < made.house.outlets.size(); ++i)
        if (made.house.is_supply(made.house.outlets[i]))
            RC_ASSERT(flow_to(after, i) <= flow_to(before, i) + 1e-9 * before.blower.si());
}

void expect_same(const OperatingPoint& a, const OperatingPoint& b) {
    RC_ASSERT(std::abs((a.blower - b.blower).si()) <= 1e-8 * a.blower.si());
    for (std::size_t i = 0; i < a.outlets.size(); ++i)
        RC_ASSERT(std::abs(flow_to(a, i) - flow_to(b, i)) <= 1e-8 * a.blower.si());
}

// Outlets nobody described are shared along the trunks in their order, so they would move.
RandomHouse described_house() {
    RandomHouse made = random_whole_house(any_seed());
    made.house.other_rooms.reset();
    return made;
}

RC_GTEST_PROP(OperatingPointLaws, the_order_of_the_ducts_in_the_sheet_is_no_matter, ()) {
    RandomHouse made = described_house();
    const OperatingPoint before = running(made.house, made.machine);
    auto& ducts = made.house.ducts;
    const auto turn = *rc::gen::inRange<std::size_t>(0, ducts.size());
    std::reverse(ducts.begin(), ducts.end());
    std::rotate(ducts.begin(), ducts.begin() + static_cast<std::ptrdiff_t>(turn), ducts.end());
    expect_same(before, running(made.house, made.machine));
}

// Tight, as the leaks of a section are taken at its far end.
RC_GTEST_PROP(OperatingPointLaws, a_duct_written_in_two_pieces_is_the_same_duct, ()) {
    RandomHouse made = described_house();
    made.machine.leaks = {};
    const OperatingPoint before = running(made.house, made.machine);
    house::House& house = made.house;
    const int whole = *rc::gen::inRange<int>(0, static_cast<int>(house.ducts.size()));
    const units::Length cut = *rc::gen::inRange(1, 10) * 0.1 * duct(house, whole).length;
    house::Duct rest = duct(house, whole);
    rest.id = {1000};
    rest.from = duct(house, whole).id;
    rest.at = cut;
    rest.length = rest.length - cut;
    rest.fittings.clear();
    rest.damper = 0;
    bool empty = true;
    for (house::Duct& branch : house.ducts)
        if (branch.from == duct(house, whole).id && branch.at > cut) {
            empty = false;
            branch.from = rest.id;
            branch.at = branch.at - cut;
        }
    for (house::Outlet& one : house.outlets)
        if (one.duct == duct(house, whole).id) empty = false, one.duct = rest.id;
    RC_PRE(!empty);  // an empty return duct is taken for one whose grille is not described
    duct(house, whole).length = cut;
    house.ducts.push_back(rest);
    expect_same(before, running(house, made.machine));
}

}  // namespace
}  // namespace network
