// Small systems whose flows and pressures can be had by hand.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "ducts/friction.hpp"
#include "ducts/return_path.hpp"
#include "ducts/terminal.hpp"
#include "house/cannot_answer.hpp"
#include "network/a_whole_house.hpp"
#include "network/damper.hpp"

namespace network {
namespace {

using a_duct_house::add_branch;
using a_duct_house::add_outlet;
using a_duct_house::add_return;
using a_duct_house::add_root;
using a_duct_house::six_inch;

const house::Rectangular face{10 * units::unit::inch, 4 * units::unit::inch};

loads::Air indoors() { return loads::air_at(units::unit::celsius(20), units::Pressure(101325)); }

// Pa s2/kg2 of a coefficient on the velocity pressure in an area.
double square_law(double coefficient, units::Area area) {
    return coefficient / (2 * indoors().density.si() * std::pow(area.si(), 2));
}
double of_the_face() {
    return square_law(ducts::grid_coefficient(ducts::usual_free_share) + 1, face.width * face.height);
}

// One pipe of no length that ends in a register with a face: all its loss is in that.
house::House only_a_register(int rooms = 1) {
    house::House house = with_rooms(rooms);
    add_outlet(house, add_root(house, six_inch, 0));
    outlet(house, 0).face = face;
    return house;
}

TEST(OperatingPoint, one_pipe_and_one_register_on_a_blower_that_holds_its_airflow) {
    house::House house = with_rooms(1);
    add_outlet(house, add_root(house, six_inch, 20, {"C 0.7"}));
    outlet(house, 0).face = face;
    const OperatingPoint point = running(house, holding(0.05));
    const ducts::Section pipe = ducts::section_of(six_inch);
    const double by_hand = (ducts::friction(pipe, units::MassFlow(0.05) / indoors().density, indoors()) *
                            (20 * units::unit::foot))
                               .si() +
                           (square_law(0.7, pipe.area) + of_the_face()) * 0.05 * 0.05;
    EXPECT_NEAR(point.supply_plenum.si(), by_hand, 1e-7);
    EXPECT_NEAR(point.external_static.si(), by_hand, 1e-7);
    EXPECT_NEAR(point.return_plenum.si(), 0, 1e-9);
    EXPECT_NEAR(point.outlets[0].si(), 0.05, 1e-12);
    EXPECT_LT(point.residual, 1e-9);
}

TEST(OperatingPoint, a_register_loses_by_its_free_area_else_by_that_of_its_mount) {
    const auto of_share = [](double share) {
        return square_law(ducts::grid_coefficient(share) + 1, face.width * face.height) * 0.0025;
    };
    house::House house = only_a_register();
    outlet(house, 0).mount = house::Mount::high_wall;
    EXPECT_NEAR(running(house, holding(0.05)).supply_plenum.si(), of_share(0.7), 1e-7);
    outlet(house, 0).free_area = 0.6 * (face.width * face.height);
    EXPECT_NEAR(running(house, holding(0.05)).supply_plenum.si(), of_share(0.6), 1e-7);
}

TEST(OperatingPoint, devices_and_a_return_nobody_described_are_in_the_blowers_way) {
    house::House house = only_a_register();
    house.grille_drop = units::Pressure(6);
    house.devices = {{house::DeviceKind::filter, "filter", units::Pressure(40), units::Airflow(0.1)},
                     {house::DeviceKind::coil, "coil", units::Pressure(25), {}}};
    const OperatingPoint point = running(house, holding(0.05));
    EXPECT_NEAR(point.return_plenum.si(), -6, 1e-9);
    const double filter = 40 * std::pow(0.05 / (0.1 * indoors().density.si()), 2);
    EXPECT_NEAR(point.external_static.si(), of_the_face() * 0.0025 + 6 + filter + 25, 1e-7);
}

TEST(OperatingPoint, a_falling_blower_works_where_its_line_and_the_systems_square_meet) {
    const double K = of_the_face(), fall = 2e-3;  // m = 0.1 (1 - fall (K m2 - 40))
    Machine machine = holding(0.1);
    machine.blower = falling_curve(units::MassFlow(0.1), units::Pressure(40), fall);
    const OperatingPoint point = running(only_a_register(), machine);
    const double a = 0.1 * fall * K, c = -0.1 * (1 + fall * 40);
    const double m = (-1 + std::sqrt(1 - 4 * a * c)) / (2 * a);
    EXPECT_NEAR(point.blower.si(), m, 1e-10);
    EXPECT_NEAR(point.external_static.si(), K * m * m, 1e-6);
}

TEST(OperatingPoint, a_held_airflow_stays_to_its_limit_and_gives_way_beyond) {
    const double K = of_the_face();
    Machine machine = holding(0.06);
    machine.blower = HeldAirflow{units::MassFlow(0.06), units::Pressure(K * 0.0037)};
    EXPECT_NEAR(running(only_a_register(), machine).blower.si(), 0.06, 1e-12);
    machine.blower = HeldAirflow{units::MassFlow(0.06), units::Pressure(K * 0.0009)};
    const OperatingPoint point = running(only_a_register(), machine);
    EXPECT_NEAR(point.blower.si(), 0.03, 0.03 * 0.001);
    EXPECT_NEAR(point.external_static.si(), K * 0.0009, K * 0.0009 * 0.001);
}

TEST(OperatingPoint, a_plenum_leaks_by_its_pressure_and_a_pipe_by_the_static_pressure_in_it) {
    house::House house = only_a_register();
    Machine machine = holding(0.06);
    machine.leaks.supply.at_plenum = 1e-3;
    OperatingPoint point = running(house, machine);
    EXPECT_NEAR(point.supply_leak.si(), 1e-3 * std::pow(point.supply_plenum.si(), 0.65), 1e-12);
    EXPECT_NEAR(point.outlets[0].si() + point.supply_leak.si(), 0.06, 1e-12);

    duct(house, 0).length = units::Length(3);
    outlet(house, 0).damper = 40;  // or its static pressure would be below the room's
    machine.leaks.supply = {2e-3, 0};
    point = running(house, machine);
    const ducts::SystemSection& pipe = point.system.supply[0];
    const double damper = square_law(handle_coefficient(40), pipe.section.area);
    const double at_its_end = (of_the_face() + damper) * std::pow(point.outlets[0].si(), 2);
    const double moving = ducts::velocity_pressure(ducts::velocity(pipe, indoors()), indoors()).si();
    const double wall = (pipe.section.perimeter * pipe.length).si();
    EXPECT_NEAR(point.supply_leak.si(), 2e-3 * wall * std::pow(at_its_end - moving, 0.65), 1e-9);
}

TEST(OperatingPoint, dampers_lose_on_the_velocity_pressure_in_their_pipe) {
    house::House house = only_a_register();
    const double open = running(house, holding(0.05)).supply_plenum.si();
    const double damper = square_law(handle_coefficient(35), ducts::section_of(six_inch).area) * 0.0025;
    outlet(house, 0).damper = 35;
    EXPECT_NEAR(running(house, holding(0.05)).supply_plenum.si(), open + damper, 1e-7);
    duct(house, 0).damper = 35;
    EXPECT_NEAR(running(house, holding(0.05)).supply_plenum.si(), open + 2 * damper, 1e-7);
}

TEST(OperatingPoint, a_damper_in_a_trunk_counts_once_however_often_the_trunk_is_cut) {
    house::House house = with_rooms(1);
    const int trunk = add_root(house, six_inch, 0);
    add_branch(house, trunk, 0, six_inch, 0);
    add_outlet(house, trunk);
    duct(house, trunk).damper = 40;
    const OperatingPoint point = running(house, holding(0.05));
    const double damper = square_law(handle_coefficient(40), ducts::section_of(six_inch).area) * 0.0025;
    EXPECT_NEAR(point.supply_plenum.si(), damper, 1e-6);
}

TEST(OperatingPoint, a_shut_rooms_air_leaves_under_its_door) {
    house::House house = only_a_register(2);
    house.whole_system->ways_out[0] = house::WayOut{units::Area(0.012), {}, {}, true, {}};
    const OperatingPoint point = running(house, holding(0.05));
    const units::Airflow air = units::MassFlow(0.05) / indoors().density;
    EXPECT_NEAR(ducts::through_opening(units::Area(0.012), point.rooms[0], indoors()).si(), air.si(), 1e-10);
    EXPECT_NEAR(point.door_flows[0].si(), 0.05, 1e-12);
    EXPECT_EQ(point.rooms[1], units::Pressure());
    EXPECT_NEAR(point.supply_plenum.si(), of_the_face() * 0.0025 + point.rooms[0].si(), 1e-7);
}

TEST(OperatingPoint, a_fan_draws_what_the_register_does_not_bring_in_under_the_door) {
    house::House house = only_a_register();
    house.whole_system->ways_out[0] = house::WayOut{units::Area(0.012), {}, {}, true, {}};
    house.exhaust_fans = {{{0}, units::Airflow(0.06), house::FanRuns::at_times}};
    EXPECT_NEAR(running(house, holding(0.05)).door_flows[0].si(), 0.05, 1e-12);
    const OperatingPoint point = running(house, holding(0.05), Fans::on);
    const double inflow = 0.06 * indoors().density.si() - 0.05;
    EXPECT_NEAR(point.door_flows[0].si(), -inflow, 1e-12);
    EXPECT_NEAR(ducts::through_opening(units::Area(0.012), -1.0 * point.rooms[0], indoors()).si(),
                inflow / indoors().density.si(), 1e-10);
}

TEST(OperatingPoint, a_grille_draws_its_return_ducts_pressure_below_the_room) {
    house::House house = only_a_register();
    add_outlet(house, add_return(house, six_inch, 0));
    outlet(house, 1).face = face;
    const OperatingPoint point = running(house, holding(0.05));
    EXPECT_NEAR(
        point.return_plenum.si(),
        -square_law(ducts::grid_coefficient(ducts::usual_free_share), face.width * face.height) * 0.0025,
        1e-7);
}

TEST(OperatingPoint, a_takeoff_pays_by_the_real_split) {
    house::House house = with_rooms(1);
    const int trunk = add_root(house, a_duct_house::trunk_shape, 10);
    const int run = add_branch(house, trunk, 5, six_inch, 8, {"side takeoff, straight"});
    add_outlet(house, run);
    add_outlet(house, trunk);
    house.register_drop = units::Pressure(8);
    const OperatingPoint point = running(house, holding(0.2));
    for (const ducts::SystemSection& section : point.system.supply) {
        if (section.outlet != 0) continue;
        const auto& before = point.system.supply[static_cast<std::size_t>(section.parent)];
        const double fitting = ducts::fittings_loss(point.system.supply, section, indoors()).si();
        const double pipe =
            (ducts::friction(section.section, section.flow / indoors().density, indoors()) * section.length)
                .si();
        const double trunk_piece =
            (ducts::friction(before.section, before.flow / indoors().density, indoors()) * before.length)
                .si();
        const double at_register = 8 * std::pow(section.flow.si() / 0.1, 2);  // half of the plan's air each
        EXPECT_NEAR(point.supply_plenum.si(), trunk_piece + fitting + pipe + at_register, 1e-7);
        EXPECT_GT(fitting, 0);
    }
}

TEST(OperatingPoint, what_has_no_way_out_is_refused) {
    house::House house = with_rooms(1);
    add_root(house, six_inch, 20);  // a dead end
    EXPECT_THROW(running(house, holding(0.05)), house::CannotAnswer);
}

}  // namespace
}  // namespace network
