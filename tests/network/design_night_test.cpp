// Design nights that can be worked out by hand.
#include "network/design_night.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "house/cannot_answer.hpp"
#include "network/a_whole_house.hpp"

namespace network {
namespace {

using a_duct_house::add_branch;
using a_duct_house::add_outlet;
using a_duct_house::add_return;
using a_duct_house::add_root;
using a_duct_house::six_inch;

// Rooms of 5 W/K at 20 C, -10 C outside; each has its own pipe of no length and no loss.
house::House alike(int rooms) {
    house::House house = with_rooms(rooms);
    house.register_drop = units::Pressure(10);
    for (int room = 0; room < rooms; ++room) add_outlet(house, add_root(house, six_inch, 0), room);
    house.thermostat = house::RoomId{0};
    return house;
}

Machine heating(double flow, double watts) {
    Machine machine = holding(flow);
    machine.output = units::Power(watts);
    return machine;
}

DesignNight night_of(const house::House& house, const Machine& machine) {
    return design_night(house, loads::house_heat_loss(house), machine, running(house, machine));
}

double cp() { return loads::air_at(units::unit::celsius(20), units::Pressure(101325)).specific_heat.si(); }
double celsius(units::Temperature t) { return units::unit::in_celsius(t); }

TEST(DesignNight, one_room_takes_what_it_loses) {
    const DesignNight night = night_of(alike(1), heating(0.05, 1000));
    EXPECT_NEAR(night.on_time, 5.0 * 30 / 1000, 1e-9);
    EXPECT_NEAR(celsius(night.rooms[0]), 20, 1e-9);
    EXPECT_NEAR(celsius(night.supply), 20 + 1000 / (0.05 * cp()), 1e-9);
    EXPECT_NEAR(night.delivered.si(), 1000, 1e-6);
    EXPECT_NEAR(night.lost_on_the_way.si(), 0, 1e-6);
}

TEST(DesignNight, a_cold_pipe_takes_its_share_of_every_hour_on) {
    house::House house = alike(1);
    duct(house, 0).length = units::Length(6);
    const DesignNight night = night_of(house, heating(0.05, 1000));
    const double kept = std::exp(-std::numbers::pi * 0.1524 * 6 / (0.15 * 0.05 * cp()));
    const double supply = 20 + 1000 / (0.05 * cp());
    const double arrival = 10 + kept * (supply - 10);
    EXPECT_NEAR(celsius(night.arrivals[0]), arrival, 1e-9);
    EXPECT_NEAR(night.on_time, 150 / (0.05 * cp() * (arrival - 20)), 1e-9);
    EXPECT_NEAR(night.lost_on_the_way.si(), 0.05 * cp() * (supply - arrival), 1e-6);
}

TEST(DesignNight, a_heater_too_small_runs_all_night_and_the_room_falls_behind) {
    const DesignNight night = night_of(alike(1), heating(0.05, 100));
    EXPECT_FALSE(night.holds());
    EXPECT_NEAR(night.on_time_wanted, 1.5, 1e-9);
    EXPECT_EQ(night.on_time, 1);
    EXPECT_NEAR(celsius(night.rooms[0]), -10 + 100.0 / 5, 1e-9);
}

TEST(DesignNight, the_room_that_loses_more_stays_colder) {
    house::House house = alike(2);
    house.rooms[1].surfaces = {a_house::surface(20, a_house::u(0.5))};
    const DesignNight night = night_of(house, heating(0.1, 4000));
    // Each draws back what it is supplied, so: f (supply - room) 0.05 cp = loss, supply the mean + 4000 /
    // (0.1 cp).
    const double t0 = celsius(night.rooms[0]), t1 = celsius(night.rooms[1]);
    EXPECT_NEAR(t0, 20, 1e-9);
    const double supply = 0.5 * (t0 + t1) + 4000 / (0.1 * cp());
    EXPECT_NEAR(night.on_time * 0.05 * cp() * (supply - t1), 10 * (t1 + 10), 1e-6);
    EXPECT_NEAR(night.on_time * 4000, 5 * 30 + 10 * (t1 + 10), 1e-6);
}

TEST(DesignNight, a_partition_shares_the_warmth) {
    house::House house = alike(2);
    house.rooms[1].surfaces = {a_house::surface(20, a_house::u(0.5))};
    const double apart = celsius(night_of(house, heating(0.1, 4000)).rooms[1]);
    a_house::add_partition(house, 0, 1, a_house::surface(10, a_house::u(2)));
    EXPECT_GT(celsius(night_of(house, heating(0.1, 4000)).rooms[1]), apart + 0.5);
}

TEST(DesignNight, a_hall_that_only_gives_air_back_is_warmed_by_what_comes_to_it) {
    house::House house = alike(1);
    a_house::add_room(house, "hall").surfaces = {a_house::surface(10, a_house::u(0.5))};
    house.whole_system->ways_out.emplace_back();
    add_outlet(house, add_return(house, six_inch, 0), 1);
    const DesignNight night = night_of(house, heating(0.05, 1000));
    const double hall = celsius(night.rooms[1]);
    EXPECT_NEAR(night.on_time * 0.05 * cp() * (20 - hall), 5 * (hall + 10), 1e-6);
    EXPECT_NEAR(celsius(night.arrivals[1]), hall, 1e-12);
}

// A second return whose grille nobody described takes from everywhere: no heat may vanish with its air.
TEST(DesignNight, a_return_without_a_described_grille_takes_what_the_others_leave) {
    house::House house = alike(2);
    house.grille_drop = units::Pressure(5);
    add_outlet(house, add_return(house, six_inch, 0), 1);
    add_return(house, six_inch, 0);
    const DesignNight night = night_of(house, heating(0.1, 4000));
    EXPECT_NEAR(night.lost_on_the_way.si(), 0, 1e-6);
    EXPECT_NEAR(celsius(night.rooms[1]), 20, 1e-9);
}

TEST(DesignNight, a_return_that_leaks_brings_the_cold_of_where_it_runs) {
    house::House house = alike(1);
    add_outlet(house, add_return(house, six_inch, 20), 0);  // surroundings 10 C
    house.grille_drop = units::Pressure(5);
    Machine machine = heating(0.05, 1000);
    machine.leaks.return_side.per_area = 1e-4;
    const OperatingPoint point = running(house, machine);
    const DesignNight night = night_of(house, machine);
    ASSERT_GT(point.return_leak.si(), 1e-4);
    EXPECT_NEAR(night.lost_on_the_way.si(), point.return_leak.si() * cp() * 10, 1e-6);
}

TEST(DesignNight, rooms_nobody_described_hold_the_house_where_no_thermostat_is_named) {
    house::House house = with_rooms(1);
    house.register_drop = units::Pressure(10);
    const int trunk = add_root(house, house::Round{12 * units::unit::inch}, 20);
    add_outlet(house, add_branch(house, trunk, 5, six_inch, 0), 0);
    a_duct_house::add_other_rooms(house, 4, 5, 15);
    house.other_rooms->heat_loss = units::Power(3000);
    house.heater.duct_loss = 0.25;
    const Machine machine = heating(0.3, 12'000);
    const DesignNight night = night_of(house, machine);
    EXPECT_NEAR(celsius(night.other_rooms), 20, 1e-9);
    // They give the return its air, so they get what the described room has too much as well.
    const OperatingPoint point = running(house, machine);
    const double from_runs = point.other_rooms.si() * cp() * (celsius(night.others_arrival) - 20);
    const double from_the_room = point.outlets[0].si() * cp() * (celsius(night.rooms[0]) - 20);
    EXPECT_NEAR(night.on_time * (from_runs + from_the_room), 3000, 1e-5);
    EXPECT_NEAR(celsius(night.others_arrival) - 20, (celsius(night.supply) - 20) / 1.25, 1e-9);
}

TEST(DesignNight, rooms_that_nothing_leaves_are_as_warm_as_the_house) {
    house::House house = alike(1);
    for (const char* name : {"closet", "store"}) {
        a_house::add_room(house, name);
        house.whole_system->ways_out.emplace_back();
    }
    a_house::add_partition(house, 1, 2, a_house::surface(8, a_house::u(2)));
    const DesignNight night = night_of(house, heating(0.05, 1000));
    EXPECT_NEAR(celsius(night.rooms[1]), 20, 1e-6);
    EXPECT_NEAR(celsius(night.rooms[2]), 20, 1e-6);
}

TEST(DesignNight, no_air_and_no_warmth_are_refused) {
    house::House house = alike(1);
    EXPECT_THROW(night_of(house, heating(0.05, 0)), house::CannotAnswer);
    EXPECT_THROW(night_of(house, heating(0, 1000)), house::CannotAnswer);
}

}  // namespace
}  // namespace network
