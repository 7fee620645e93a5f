#include "ducts/duct_system.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "ducts/a_duct_house.hpp"
#include "house/cannot_answer.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
using testing::HasSubstr;

std::vector<double> feet_of_duct(const Side& side, int duct) {
    std::vector<double> feet;  // from the end towards the blower
    for (const SystemSection& section : side)
        if (section.duct == duct) feet.push_back(in_feet(section.length));
    return feet;
}

double flow_of(const Side& side, int position) { return at(side, position).flow.si(); }

std::vector<int> children_of(const Side& side, int position) {
    std::vector<int> children;
    for (std::size_t i = 0; i < side.size(); ++i)
        if (side[i].parent == position) children.push_back(static_cast<int>(i));
    return children;
}

int count_roots(const Side& side) { return static_cast<int>(children_of(side, -1).size()); }

TEST(DuctSystem, cuts_the_trunk_at_each_takeoff) {
    const house::House house = two_branches();
    const Side supply = system_of(house).supply;
    EXPECT_EQ(way_text(supply, house, 0), "0:5 1:8");
    EXPECT_EQ(way_text(supply, house, 1), "0:5 0:7 2:10");
    EXPECT_EQ(supply.size(), 4u);
}

TEST(DuctSystem, leaves_out_the_dead_end_beyond_the_last_takeoff) {
    const house::House house = two_branches();  // 20 ft of trunk, the last takeoff at 12 ft
    const std::vector<double> trunk = feet_of_duct(system_of(house).supply, 0);
    ASSERT_EQ(trunk.size(), 2u);
    EXPECT_NEAR(trunk[0] + trunk[1], 12, 1e-12);
}

TEST(DuctSystem, a_trunk_with_an_outlet_at_its_end_is_kept_whole) {
    house::House house = two_branches();
    const int end = add_outlet(house, 0);
    EXPECT_EQ(way_text(system_of(house).supply, house, end), "0:5 0:7 0:8");
}

TEST(DuctSystem, lists_leaves_first) {
    const DuctSystem system = system_of(two_branches());
    for (std::size_t i = 0; i < system.supply.size(); ++i) {
        const int parent = system.supply[i].parent;
        EXPECT_TRUE(parent == -1 || parent > static_cast<int>(i)) << i;
    }
}

TEST(DuctSystem, sums_flows_towards_the_plenum) {
    const house::House house = two_branches();
    const Side supply = system_of(house).supply;
    const std::vector<int> way = way_to(supply, house, 1);
    EXPECT_NEAR(flow_of(supply, way[0]), 0.05 + 0.06, 1e-15);
    EXPECT_NEAR(flow_of(supply, way[1]), 0.06, 1e-15);
    EXPECT_NEAR(flow_of(supply, way[2]), 0.06, 1e-15);
}

TEST(DuctSystem, new_flows_replace_the_old) {
    const house::House house = two_branches();
    DuctSystem system = system_of(house);
    DesignFlows flows = some_flows(house);
    flows.outlets[0] = units::MassFlow(0.2);
    set_flows(system, flows);
    const std::vector<int> way = way_to(system.supply, house, 0);
    EXPECT_NEAR(flow_of(system.supply, way[0]), 0.26, 1e-15);
    EXPECT_NEAR(flow_of(system.supply, way[1]), 0.2, 1e-15);
}

TEST(DuctSystem, fittings_sit_on_the_first_section_of_their_duct) {
    house::House house = two_branches();
    const Side supply = system_of(house).supply;
    const std::vector<int> way = way_to(supply, house, 1);
    ASSERT_EQ(at(supply, way[0]).fittings.size(), 1u);
    EXPECT_EQ(at(supply, way[0]).fittings[0].name, "trunk start, square");
    EXPECT_TRUE(at(supply, way[1]).fittings.empty());
    ASSERT_EQ(at(supply, way[2]).fittings.size(), 1u);
    EXPECT_EQ(at(supply, way[2]).fittings[0].name, "side takeoff, 45 degree entry");
}

TEST(DuctSystem, a_takeoff_on_the_return_side_joins) {
    house::House house;
    house.fitting_losses = 1.2;
    const int trunk = add_return(house, trunk_shape, 20);
    add_outlet(house, add_branch(house, trunk, 5, six_inch, 8, {"side takeoff, straight", "C 0.4"}));
    add_outlet(house, trunk);
    const Side side = system_of(house).return_side;
    const SystemSection& branch = at(side, way_to(side, house, 0).back());
    EXPECT_EQ(branch.fittings.at(0).law, LossLaw::joining);
    EXPECT_EQ(branch.fittings.at(0).factor, 1.2);
    EXPECT_EQ(branch.fittings.at(1).factor, 1);  // the sheet's own is not doubted
}

TEST(DuctSystem, every_section_keeps_what_its_duct_is_made_of) {
    house::House house = two_branches();
    house.ducts[0].loss_factor = 1.5;
    const Side supply = system_of(house).supply;
    for (const SystemSection& section : supply) {
        const house::Duct& duct = house.ducts[static_cast<std::size_t>(section.duct)];
        EXPECT_EQ(section.section.area, section_of(*duct.shape).area) << duct.name;
        EXPECT_EQ(section.loss_factor, duct.loss_factor) << duct.name;
        EXPECT_EQ(section.resistance, duct.resistance) << duct.name;
        EXPECT_EQ(section.surroundings, std::get<units::Temperature>(duct.surroundings)) << duct.name;
    }
}

TEST(DuctSystem, two_branches_at_one_place_share_their_section) {
    house::House house = two_branches();
    house.ducts[2].at = house.ducts[1].at;
    const Side supply = system_of(house).supply;
    const int first = way_to(supply, house, 0)[0];
    EXPECT_EQ(way_to(supply, house, 1)[0], first);
    EXPECT_EQ(children_of(supply, first).size(), 2u);
    EXPECT_EQ(way_text(supply, house, 1), "0:5 2:10");
}

TEST(DuctSystem, a_branch_at_the_very_start_of_a_trunk) {
    house::House house = two_branches();
    house.ducts[1].at = {};
    const Side supply = system_of(house).supply;
    EXPECT_EQ(way_text(supply, house, 0), "0:0 1:8");
    EXPECT_EQ(way_text(supply, house, 1), "0:0 0:12 2:10");
    EXPECT_NEAR(flow_of(supply, way_to(supply, house, 0)[0]), 0.11, 1e-15);
}

TEST(DuctSystem, a_branch_written_beyond_the_end_leaves_at_the_end) {
    house::House house = two_branches();
    house.ducts[2].at = house.ducts[0].length + units::Length(1);
    EXPECT_EQ(way_text(system_of(house).supply, house, 1), "0:5 0:15 2:10");
}

TEST(DuctSystem, branches_of_branches) {
    house::House house = two_branches();
    const int twig = add_branch(house, 2, 4, six_inch, 3);
    const int outlet = add_outlet(house, twig);
    const Side supply = system_of(house).supply;
    EXPECT_EQ(way_text(supply, house, outlet), "0:5 0:7 2:4 3:3");
    EXPECT_EQ(way_text(supply, house, 1), "0:5 0:7 2:4 2:6");
}

// Two outlets at the end of one duct: each gets its own air, the duct carries both.
TEST(DuctSystem, several_outlets_at_the_end_of_a_duct) {
    house::House house;
    const int duct = add_root(house, six_inch, 9);
    const int a = add_outlet(house, duct);
    const int b = add_outlet(house, duct);
    const Side supply = system_of(house).supply;
    EXPECT_EQ(way_text(supply, house, a), "0:9 0:0");
    EXPECT_EQ(way_text(supply, house, b), "0:9 0:0");
    EXPECT_NEAR(flow_of(supply, way_to(supply, house, a).back()), 0.05, 1e-15);
    EXPECT_NEAR(flow_of(supply, way_to(supply, house, b).back()), 0.06, 1e-15);
    EXPECT_NEAR(flow_of(supply, way_to(supply, house, b).front()), 0.11, 1e-15);
}

TEST(DuctSystem, an_outlet_where_a_branch_leaves_the_end_of_its_duct) {
    house::House house;
    const int duct = add_root(house, six_inch, 9, {"plenum collar, square"});
    const int own = add_outlet(house, duct);
    const int further = add_outlet(house, add_branch(house, duct, 9, six_inch, 4));
    const Side supply = system_of(house).supply;
    EXPECT_EQ(way_text(supply, house, own), "0:9 0:0");
    EXPECT_EQ(way_text(supply, house, further), "0:9 1:4");
    const SystemSection& end = at(supply, way_to(supply, house, own).back());
    EXPECT_NEAR(end.flow.si(), 0.05, 1e-15);
    EXPECT_TRUE(end.fittings.empty());
}

TEST(DuctSystem, several_ducts_off_the_plenum) {
    house::House house = two_branches();
    const int outlet = add_outlet(house, add_root(house, six_inch, 15));
    const Side supply = system_of(house).supply;
    EXPECT_EQ(count_roots(supply), 2);
    EXPECT_EQ(way_text(supply, house, outlet), "3:15");
}

TEST(DuctSystem, the_return_side_is_a_tree_of_its_own) {
    house::House house = two_branches();
    const int drop = add_return(house, trunk_shape, 6);
    const int grille = add_outlet(house, add_branch(house, drop, 4, trunk_shape, 11));
    const DuctSystem system = system_of(house);
    EXPECT_EQ(way_text(system.return_side, house, grille), "3:4 4:11");
    EXPECT_EQ(system.return_side.size(), 2u);
    EXPECT_EQ(system.supply.size(), 4u);
    EXPECT_NEAR(flow_of(system.return_side, 0), 0.07, 1e-15);
}

TEST(DuctSystem, an_outlet_of_the_other_side_has_no_way) {
    house::House house = two_branches();
    const int grille = add_outlet(house, add_return(house, trunk_shape, 6));
    const DuctSystem system = system_of(house);
    try {
        way_to(system.supply, house, grille);
        FAIL() << "a return grille has no supply duct";
    } catch (const house::CannotAnswer& why) {
        EXPECT_THAT(why.what(), HasSubstr("no duct leads to the outlet outlet 2"));
        EXPECT_EQ(why.place(), house.outlets[2].place);
    }
}

std::vector<const SystemSection*> other_runs(const Side& side) {
    std::vector<const SystemSection*> runs;
    for (const SystemSection& section : side)
        if (section.duct == -1) runs.push_back(&section);
    std::sort(runs.begin(), runs.end(),
              [](const SystemSection* a, const SystemSection* b) { return a->length < b->length; });
    return runs;
}

double feet_to_root(const Side& side, const SystemSection& from) {
    double feet = 0;
    for (int i = from.parent; i != -1; i = at(side, i).parent) feet += in_feet(at(side, i).length);
    return feet;
}

TEST(DuctSystem, runs_not_described_leave_the_trunk_at_equal_spacing) {
    house::House house;
    add_root(house, trunk_shape, 20);
    add_other_rooms(house, 4, 6, 18);
    const Side supply = system_of(house).supply;
    const auto runs = other_runs(supply);
    ASSERT_EQ(runs.size(), 4u);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(in_feet(runs[i]->length), 6 + 4.0 * static_cast<double>(i), 1e-12);
        EXPECT_NEAR(feet_to_root(supply, *runs[i]), 2.5 + 5.0 * static_cast<double>(i), 1e-12);
        EXPECT_EQ(runs[i]->fittings.size(), 3u);
        EXPECT_EQ(runs[i]->fittings[0].name, "square turn");
        EXPECT_EQ(runs[i]->flow, units::MassFlow(0.02));
        EXPECT_EQ(runs[i]->section.area, section_of(round_of(5)).area);
    }
    EXPECT_NEAR(supply.back().flow.si(), 0.08, 1e-15);
}

TEST(DuctSystem, trunks_are_laid_end_to_end_for_the_runs_not_described) {
    house::House house;
    add_root(house, trunk_shape, 20);
    add_root(house, trunk_shape, 10);
    add_other_rooms(house, 6, 6, 16);  // at 2.5, 7.5, 12.5, 17.5 of the first, 2.5 and 7.5 of the second
    const Side supply = system_of(house).supply;
    std::vector<double> places;
    for (const SystemSection* run : other_runs(supply)) places.push_back(feet_to_root(supply, *run));
    EXPECT_THAT(places, testing::Pointwise(testing::DoubleNear(1e-12), {2.5, 7.5, 12.5, 17.5, 2.5, 7.5}));
}

TEST(DuctSystem, runs_not_described_leave_the_plenum_or_the_duct_the_sheet_names) {
    house::House house;
    const int wide_leg = add_root(house, round_of(12), 9);
    const int stub = add_branch(house, wide_leg, 4, six_inch, 6);
    add_other_rooms(house, 3, 6, 16);
    house.other_rooms->leave = house::UsualStart::plenum;
    for (const Side supply = system_of(house).supply; const SystemSection* run : other_runs(supply))
        EXPECT_EQ(run->parent, -1);
    house.other_rooms->leave = id_of(stub);
    const Side supply = system_of(house).supply;
    ASSERT_EQ(other_runs(supply).size(), 3u);
    for (const SystemSection* run : other_runs(supply)) EXPECT_EQ(at(supply, run->parent).duct, stub);
}

TEST(DuctSystem, a_root_with_an_outlet_is_no_trunk) {
    house::House house;
    add_root(house, trunk_shape, 20);
    add_outlet(house, add_root(house, six_inch, 30));
    add_other_rooms(house, 2, 6, 16);
    const Side supply = system_of(house).supply;
    for (const SystemSection* run : other_runs(supply)) EXPECT_EQ(at(supply, run->parent).duct, 0);
}

// Else the lump's outlets would hang on the very run that is being sized.
TEST(DuctSystem, a_run_from_the_plenum_in_two_pieces_is_no_trunk) {
    house::House house;
    const int first = add_root(house, std::nullopt, 12);
    add_outlet(house, add_branch(house, first, 12, std::nullopt, 10));
    add_other_rooms(house, 4, 5, 20);
    const Side supply = duct_system(house, some_flows(house), six_inch).supply;
    for (const SystemSection& section : supply) {
        if (section.duct == -1) {
            EXPECT_EQ(section.parent, -1);
        }
    }
}

TEST(DuctSystem, a_narrow_root_is_a_trunk_where_something_leaves_it_on_the_way) {
    house::House house;
    const int root = add_root(house, six_inch, 12);
    add_outlet(house, add_branch(house, root, 6, six_inch, 10));
    add_other_rooms(house, 4, 5, 20);
    const Side supply = duct_system(house, some_flows(house), std::nullopt).supply;
    for (const SystemSection& section : supply) {
        if (section.duct == -1) {
            EXPECT_NE(section.parent, -1);
        }
    }
}

TEST(DuctSystem, another_shape_is_tried_on_unsized_ducts_only) {
    house::House house;
    const int trunk = add_root(house, trunk_shape, 20);
    add_outlet(house, add_branch(house, trunk, 10, std::nullopt, 12));
    DuctSystem system = duct_system(house, some_flows(house), six_inch);
    const house::Shape eight_inch = house::Round{8 * units::unit::inch};
    const DuctSystem built_with_it = duct_system(house, some_flows(house), eight_inch);
    give_shape(system, eight_inch);
    ASSERT_EQ(system.supply.size(), built_with_it.supply.size());
    for (std::size_t i = 0; i < system.supply.size(); ++i)
        EXPECT_EQ(system.supply[i].section.area, built_with_it.supply[i].section.area);
}

TEST(DuctSystem, runs_not_described_leave_the_plenum_where_no_trunk_is) {
    house::House house;
    add_outlet(house, add_root(house, six_inch, 10));
    add_other_rooms(house, 3, 6, 16);
    const Side supply = system_of(house).supply;
    EXPECT_EQ(count_roots(supply), 4);
    EXPECT_EQ(other_runs(supply).size(), 3u);
}

TEST(DuctSystem, a_single_run_not_described_has_the_longest_reach) {
    house::House house;
    add_root(house, trunk_shape, 20);
    add_other_rooms(house, 1, 6, 18);
    const Side supply = system_of(house).supply;
    ASSERT_EQ(other_runs(supply).size(), 1u);
    EXPECT_NEAR(in_feet(other_runs(supply)[0]->length), 18, 1e-12);
    EXPECT_NEAR(feet_to_root(supply, *other_runs(supply)[0]), 10, 1e-12);
}

TEST(DuctSystem, a_house_without_ducts_has_empty_sides) {
    const DuctSystem system = system_of(house::House{});
    EXPECT_TRUE(system.supply.empty());
    EXPECT_TRUE(system.return_side.empty());
}

void expect_cannot_answer(const house::House& house, const std::string& why, const house::Place& place) {
    try {
        system_of(house);
        FAIL() << "expected: " << why;
    } catch (const house::CannotAnswer& cannot) {
        EXPECT_THAT(cannot.what(), HasSubstr(why));
        EXPECT_EQ(cannot.place(), place);
    }
}

TEST(DuctSystem, an_unknown_fitting_is_named_with_its_place) {
    house::House house = two_branches();
    house.ducts[1].fittings[1].text = "stackheat";
    expect_cannot_answer(house, "unknown fitting 'stackheat'", house.ducts[1].fittings[1].place);
}

TEST(DuctSystem, a_duct_without_a_shape_is_named_with_its_place) {
    house::House house = two_branches();
    house.ducts[2].shape.reset();
    expect_cannot_answer(house, "the duct duct 2 has no shape", house.ducts[2].place);
}

TEST(DuctSystem, a_duct_without_a_shape_gets_the_one_tried) {
    house::House house = two_branches();
    house.ducts[2].shape.reset();
    const DuctSystem system = duct_system(house, some_flows(house), round_of(7));
    const int last = way_to(system.supply, house, 1).back();
    EXPECT_EQ(at(system.supply, last).section.area, section_of(round_of(7)).area);
}

TEST(DuctSystem, velocity_is_the_flow_over_density_and_area) {
    SystemSection section;
    section.section = section_of(round_of(6));
    section.flow = 100 * units::unit::cfm * reference_air().density;
    EXPECT_NEAR(velocity(section, reference_air()) / units::unit::foot_per_minute, 509.30, 0.005);
}

// Straight takeoff: velocity pressures of trunk and branch; stackhead: 1.3 times that of the branch.
TEST(DuctSystem, fittings_lose_by_their_own_and_their_trunks_velocity) {
    const house::House house = two_branches();
    const Side supply = system_of(house).supply;
    const loads::Air air = reference_air();
    const std::vector<int> way = way_to(supply, house, 0);
    const double density = air.density.si();
    const double trunk = 0.11 / density / (0.4064 * 0.2032);
    const double branch = 0.05 / density / (3.14159265358979 / 4 * 0.1524 * 0.1524);
    const double expected = density / 2 * (trunk * trunk + branch * branch + 1.3 * branch * branch);
    EXPECT_NEAR(fittings_loss(supply, at(supply, way[1]), air).si(), expected, 1e-12 * expected);
    EXPECT_NEAR(fittings_loss(supply, at(supply, way[0]), air).si(), 0.5 * density / 2 * trunk * trunk,
                1e-12);
}

}  // namespace
}  // namespace ducts
