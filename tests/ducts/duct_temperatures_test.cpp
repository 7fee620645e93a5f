#include "ducts/duct_temperatures.hpp"

#include <gtest/gtest.h>

#include "ducts/a_duct_house.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
namespace unit = units::unit;

constexpr units::Temperature plenum = unit::celsius(50);
constexpr units::SpecificHeat cp{1006};

TEST(DuctTemperatures, along_the_way_as_run_by_run) {
    const house::House house = two_branches();
    const Side supply = system_of(house).supply;
    const auto leaving = leaving_temperatures(supply, plenum, cp);
    ASSERT_EQ(leaving.size(), supply.size());
    for (int outlet : {0, 1}) {
        units::Temperature at_end = plenum;
        int last = -1;
        for (int position : way_to(supply, house, outlet)) {
            const SystemSection& section = at(supply, position);
            at_end = leaving_temperature(run_of(section), section.flow, cp, at_end);
            last = position;
        }
        EXPECT_EQ(leaving[static_cast<std::size_t>(last)], at_end);
        EXPECT_LT(at_end, plenum);
    }
}

// What the air brings to the outlets and what the ducts lose is what left the plenum.
TEST(DuctTemperatures, heat_is_conserved) {
    const house::House house = two_branches();
    const Side supply = system_of(house).supply;
    const auto leaving = leaving_temperatures(supply, plenum, cp);
    units::Power sent, lost, brought;
    for (std::size_t i = 0; i < supply.size(); ++i) {
        const int parent = supply[i].parent;
        const units::Temperature entering = parent < 0 ? plenum : leaving[static_cast<std::size_t>(parent)];
        if (parent < 0) sent += supply[i].flow * cp * (plenum - unit::celsius(0));
        lost += supply[i].flow * cp * (entering - leaving[i]);
        if (supply[i].outlet >= 0) brought += supply[i].flow * cp * (leaving[i] - unit::celsius(0));
    }
    EXPECT_NEAR(sent.si(), (lost + brought).si(), 1e-9 * sent.si());
    EXPECT_GT(lost, units::Power());
}

TEST(DuctTemperatures, a_run_nobody_described_loses_nothing_of_its_own) {
    house::House house;
    add_root(house, trunk_shape, 20);
    add_other_rooms(house, 2, 6, 16);
    const Side supply = system_of(house).supply;
    const auto leaving = leaving_temperatures(supply, plenum, cp);
    for (std::size_t i = 0; i < supply.size(); ++i) {
        if (supply[i].duct >= 0) continue;
        EXPECT_EQ(leaving[i], leaving[static_cast<std::size_t>(supply[i].parent)]);
    }
}

}  // namespace
}  // namespace ducts
