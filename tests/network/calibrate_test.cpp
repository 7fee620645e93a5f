#include "network/calibrate.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ducts/blower.hpp"
#include "network/a_whole_house.hpp"

namespace network {
namespace {

using a_duct_house::add_branch;
using a_duct_house::add_outlet;
using a_duct_house::add_return;
using a_duct_house::add_root;
using a_duct_house::six_inch;

// Two rooms on a trunk of round pipe, a return with a grille, 10 kW, an airflow measured as 0.4 m3/s.
house::House a_furnace_house() {
    house::House house = with_rooms(2);
    const int trunk = add_root(house, house::Round{12 * units::unit::inch}, 20);
    for (const int room : {0, 1})
        add_outlet(house,
                   add_branch(house, trunk, 8 + 6 * room, house::Round{8 * units::unit::inch}, 10,
                              {"side takeoff, straight"}),
                   room);
    add_outlet(house, add_return(house, house::Round{14 * units::unit::inch}, 15), 1);
    house.register_drop = units::Pressure(8);
    house.grille_drop = units::Pressure(5);
    house.heater.capacity = units::Power(10'000);
    house.heater.least_rise = units::TemperatureDifference(15);
    house.heater.most_rise = units::TemperatureDifference(40);
    house.blower.known_by = units::Airflow(0.4);
    house.whole_system->blower_fall = 1e-3;
    return house;
}

struct Worked {
    Calibrated calibrated;
    OperatingPoint point;
    double airflow() const { return (point.blower / point.return_air.density).si(); }
};
Worked worked(const house::House& house) {
    Calibrated calibrated = calibrate(house, loads::house_heat_loss(house));
    const Machine& machine = calibrated.machine;
    OperatingPoint point = operating_point(house, planned_ducts(house, machine, std::nullopt), machine);
    return {std::move(calibrated), std::move(point)};
}

const std::vector<house::BlowerPoint> table{{units::Pressure(25), units::Airflow(0.52)},
                                            {units::Pressure(100), units::Airflow(0.44)},
                                            {units::Pressure(180), units::Airflow(0.31)}};

TEST(Calibrate, the_house_as_found_moves_what_was_measured) {
    const Worked at = worked(a_furnace_house());
    EXPECT_EQ(at.calibrated.known_by, AirflowKnown::measured);
    EXPECT_NEAR(at.airflow(), 0.4, 1e-9);
}

TEST(Calibrate, a_table_is_stretched_so_that_it_moves_what_was_measured) {
    house::House house = a_furnace_house();
    house.blower.points = table;
    EXPECT_NEAR(worked(house).airflow(), 0.4, 1e-9);
}

TEST(Calibrate, a_table_alone_is_met_where_the_ducts_meet_it) {
    house::House house = a_furnace_house();
    house.blower.points = table;
    house.blower.known_by = units::Pressure(110);
    house.blower.external_static = units::Pressure(110);
    const Worked at = worked(house);
    EXPECT_EQ(at.calibrated.known_by, AirflowKnown::by_table);
    const double lighter = at.point.return_air.density.si() / 1.2041;
    EXPECT_NEAR(ducts::static_pressure_at(table, units::Airflow(at.airflow())).si() * lighter,
                at.point.external_static.si(), 1e-6);
}

TEST(Calibrate, one_point_of_a_table_is_a_blower_that_falls_through_it) {
    house::House house = a_furnace_house();
    house.blower.points = {{units::Pressure(110), units::Airflow(0.4)}};
    house.blower.known_by = units::Pressure(110);
    house.blower.external_static = units::Pressure(110);
    const Worked at = worked(house);
    const double gain = 110 * at.point.return_air.density.si() / 1.2041;
    EXPECT_NEAR(at.airflow(), 0.4 * (1 - 1e-3 * (at.point.external_static.si() - gain)), 1e-9);
}

TEST(Calibrate, a_measured_static_pressure_is_read_in_the_table) {
    house::House house = a_furnace_house();
    house.blower.points = table;
    house.blower.known_by = units::Pressure(100);
    house.blower.external_static = units::Pressure(100);
    house.blower.static_measured = true;
    const Worked at = worked(house);
    EXPECT_EQ(at.calibrated.known_by, AirflowKnown::by_static);
    const double lighter = at.point.return_air.density.si() / 1.2041;
    EXPECT_NEAR(at.airflow(), ducts::airflow_at_static(table, units::Pressure(100 / lighter)).si(), 1e-9);
}

TEST(Calibrate, a_measured_rise_tells_the_airflow_over_a_table_but_not_over_a_measurement) {
    house::House house = a_furnace_house();
    house.readings.push_back(
        {house::ReadingKind::temperature_rise, house::WholeHouse{}, units::TemperatureDifference(25), {}});
    EXPECT_EQ(worked(house).calibrated.known_by, AirflowKnown::measured);
    house.blower.points = table;
    house.blower.known_by = units::Pressure(110);
    house.blower.external_static = units::Pressure(110);
    const Worked at = worked(house);
    EXPECT_EQ(at.calibrated.known_by, AirflowKnown::by_rise);
    EXPECT_NEAR((at.point.blower * at.point.return_air.specific_heat).si() * 25, 10'000, 1e-5);
}

TEST(Calibrate, shares_of_leakage_are_met_in_the_house_as_found) {
    house::House house = a_furnace_house();
    for (const auto& [supply, back] : {std::pair{0.1, 0.05}, {0.3, 0.2}, {0.0, 0.15}, {0.55, 0.4}}) {
        house.whole_system->leakage = house::LeakageShares{supply, back};
        const OperatingPoint point = worked(house).point;
        EXPECT_NEAR(point.supply_leak / point.blower, supply, 1e-8);
        EXPECT_NEAR(point.return_leak / point.blower, back, 1e-8);
    }
}

TEST(Calibrate, shares_are_met_by_every_kind_of_blower) {
    house::House house = a_furnace_house();
    house.whole_system->leakage = house::LeakageShares{0.12, 0.08};
    house.whole_system->constant_airflow_limit = units::Pressure(20);  // less than these ducts ask for
    house.blower.kind = house::BlowerKind::constant_airflow;
    house.blower.known_by = units::TemperatureDifference(25);
    Worked at = worked(house);
    EXPECT_EQ(at.calibrated.known_by, AirflowKnown::assumed_rise);
    EXPECT_NEAR(at.point.supply_leak / at.point.blower, 0.12, 1e-8);
    EXPECT_NEAR(at.point.external_static.si(), 20, 0.03);
    house.blower.kind = house::BlowerKind::falling;
    house.blower.points = table;
    house.blower.known_by = units::Pressure(110);
    at = worked(house);
    EXPECT_NEAR(at.point.supply_leak / at.point.blower, 0.12, 1e-8);
}

TEST(Calibrate, a_motor_seen_to_hold_its_airflow_holds_it_whatever_limit_is_assumed) {
    house::House house = a_furnace_house();
    house.blower.kind = house::BlowerKind::constant_airflow;
    house.whole_system->constant_airflow_limit = units::Pressure(20);
    EXPECT_NEAR(worked(house).airflow(), 0.4, 1e-9);
}

TEST(Calibrate, a_class_leaks_by_its_walls_and_a_return_nobody_described_as_much_as_the_supply) {
    house::House house = a_furnace_house();
    house.whole_system->leakage = house::DuctSealing::unsealed;
    const Leaks leaks = worked(house).calibrated.machine.leaks;
    EXPECT_DOUBLE_EQ(leaks.supply.per_area, leaks.return_side.per_area);  // all round
    EXPECT_EQ(leaks.supply.at_plenum, 0);
    // CL 30: 30 cfm from 100 ft2 at 1 in.wc.
    const double air = 30 * 0.3048 * 0.3048 * 0.3048 / 60 *
                       loads::air_at(house.site.winter_indoor, units::Pressure(101325)).density.si();
    EXPECT_NEAR(leaks.supply.per_area * std::pow(249.0889, 0.65), air / (100 * 0.3048 * 0.3048), 1e-6 * air);
    house.ducts.pop_back();
    house.outlets.pop_back();
    const Leaks without = worked(house).calibrated.machine.leaks;
    EXPECT_EQ(without.return_side.per_area, 0);
    double walls = 0;
    for (const ducts::SystemSection& section : worked(house).point.system.supply)
        walls += (section.section.perimeter * section.length).si();
    EXPECT_NEAR(
        without.return_side.at_plenum,
        house::leakage_class(house::DuctSealing::unsealed, false) / 30.0 * without.supply.per_area * walls,
        1e-9);
}

TEST(Calibrate, a_test_leaks_what_it_measured_at_its_pressure) {
    house::House house = a_furnace_house();
    house.whole_system->leakage = house::DuctTest{units::Airflow(0.03), units::Pressure(25)};
    const Worked at = worked(house);
    double walls[2] = {};
    const ducts::Side* const sides[] = {&at.point.system.supply, &at.point.system.return_side};
    for (std::size_t side : {0U, 1U})
        for (const ducts::SystemSection& section : *sides[side])
            walls[side] += (section.section.perimeter * section.length).si();
    const Leaks& leaks = at.calibrated.machine.leaks;
    const double at_25 = (leaks.supply.per_area * walls[0] + leaks.return_side.per_area * walls[1]) *
                         std::pow(25, leaks.exponent);
    EXPECT_NEAR(at_25, 0.03 * at.point.return_air.density.si(), 1e-9);
}

TEST(Calibrate, the_planned_house_keeps_machine_and_registers_and_gives_new_ones_their_plan) {
    const house::House found = a_furnace_house();
    const Machine machine = worked(found).calibrated.machine;
    house::House planned = found;
    add_outlet(planned, add_branch(planned, 0, 18, six_inch, 10, {"side takeoff, straight"}), 0);
    const Machine other = machine_for(planned, loads::house_heat_loss(planned), found, machine);
    for (std::size_t i = 0; i < found.outlets.size(); ++i)
        EXPECT_EQ(other.design.outlets[i], machine.design.outlets[i]);
    EXPECT_GT(other.design.outlets.back().si(), 0);
    EXPECT_EQ(other.leaks.supply.per_area, machine.leaks.supply.per_area);
}

}  // namespace
}  // namespace network
