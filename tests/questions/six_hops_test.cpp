// One room's heat loss to one pipe, hop by hop, in a house that can be done with pencil and paper:
//
//     size_branch -> room_heat_loss -> airflow_that_holds -> friction_rate -> size_duct -> friction
//
// One room, one wall of 10 m2 with U 1.0 facing outdoors, 20 C inside, -10 C outside, leakage 1 cm2 per m2 of
// that wall, sea level. A heater of 2 kW whose air, 0.04 m3/s, all goes to this room through 10 m of pipe
// that loses no heat.
#include <gtest/gtest.h>

#include <cmath>

#include "ducts/friction.hpp"
#include "ducts/size_duct.hpp"
#include "ducts/stock_sizes.hpp"
#include "questions/size_branch.hpp"
#include "units/unit.hpp"

namespace {

using namespace units;

house::House pencil_house() {
    house::House h;
    h.site = {Length(0), unit::celsius(-10), unit::celsius(20)};
    h.air_leakage = 1.0;
    h.space_winter.fill(unit::celsius(20));
    h.space_winter[static_cast<std::size_t>(house::Space::outdoors)] = unit::celsius(-10);
    house::Room room;
    room.name = "room";
    room.width = room.depth = Length(4);
    room.ceiling = Length(2.5);
    room.winter_indoor = unit::celsius(20);
    room.surfaces = {
        {house::SurfaceKind::wall, "wall", Area(10), house::Space::outdoors, Transmittance(1.0)}};
    h.rooms = {room};
    h.heater.capacity = Power(2000);
    h.blower.known_by = Airflow(0.04);
    h.blower.external_static = Pressure(125);
    h.register_drop = Pressure(10);
    h.grille_drop = Pressure(5);
    h.return_length = Length(10);
    house::Duct duct;
    duct.name = "new run";
    duct.state = house::State::added;
    duct.length = Length(10);
    duct.surroundings = unit::celsius(20);
    duct.resistance = Resistance(1e12);  // loses nothing
    h.ducts = {duct};
    house::Outlet outlet;
    outlet.name = "register";
    outlet.state = house::State::added;
    h.outlets = {outlet};
    return h;
}

// Friction by the textbook's fixed-point iteration, which shares no code with ducts/friction.
double friction_by_hand(double flow, double diameter, double density, double viscosity) {
    const double area = 3.14159265358979 * diameter * diameter / 4, speed = flow / area;
    const double reynolds = density * speed * diameter / viscosity, rough = 0.0003 * 0.3048 / diameter;
    double x = 7;
    for (int i = 0; i < 100; ++i) x = -2 * std::log10(rough / 3.7 + 2.51 * x / reynolds);
    return 1 / (x * x) / diameter * density * speed * speed / 2;
}

TEST(SixHops, WalkedWithPencilAndPaper) {
    const house::House h = pencil_house();
    const questions::BranchSizing sizing = questions::size_branch(h, house::OutletId{0});
    const questions::BranchTrial& choice = sizing.choice();
    ASSERT_TRUE(choice.needs.has_value());

    // Dry air by the ideal-gas law; specific heat 1006 J/kg K (handbook).
    const double density_20 = 101325 / (287.042 * 293.15);
    // 1 room heat loss: 10 m2 x 1.0 x 30 K = 300 W; leak 10 cm2 x (51 + 2.5 x 30 x 0.35) / 1000 = 0.7725 L/s
    const double loss = 10 * 1.0 * 30 + 0.0007725 * density_20 * 1006 * 30;
    // 2 airflow that holds: it is the only room, so it takes all the air the blower moves, on for loss / 2000
    // of the time
    const double mass = 0.04 * density_20, arrival = 20 + 2000 / (mass * 1006);
    const double density_arrival = 101325 / (287.042 * (arrival + 273.15)), needed = mass / density_arrival;
    // 3 friction rate: 125 - 10 - 5 = 110 Pa over 10 m of supply and 10 m of return
    const double rate = 110.0 / 20;
    // 4 size: 5 in would run at needed / 0.01267 m2, above 600 ft/min (3.05 m/s); 6 in at needed / 0.01824
    // m2, below
    const double six = 6 * 0.0254;
    // 5 friction of that pipe at the air needed, well below the rate
    const double kelvin = arrival + 273.15, viscosity = 1.458e-6 * std::pow(kelvin, 1.5) / (kelvin + 110.4);
    const double friction = friction_by_hand(needed, six, density_arrival, viscosity);

    const auto& pipe = std::get<house::Round>(choice.pipe);
    const auto section = ducts::section_of(pipe);
    const auto air = loads::air_at(choice.needs->arrival, loads::site_pressure(h.site));
    SCOPED_TRACE(
        testing::Message() << "hops: loss " << sizing.setting.asked.total.si() << " W, on-time "
                           << sizing.setting.on_time.share << ", needs " << choice.needs->airflow.si()
                           << " m3/s at " << unit::in_celsius(choice.needs->arrival) << " C, rate "
                           << choice.rate.si() << " Pa/m, pipe " << pipe.diameter.si() << " m, friction "
                           << ducts::friction(section, choice.needs->airflow, air).si() << " Pa/m");

    EXPECT_NEAR(sizing.setting.asked.total.si(), loss, 1e-3 * loss);
    EXPECT_NEAR(sizing.setting.on_time.share, loss / 2000, 1e-3 * loss / 2000);
    EXPECT_NEAR(choice.needs->airflow.si(), needed, 1e-3 * needed);
    EXPECT_NEAR(unit::in_celsius(choice.needs->arrival), arrival, 0.05);
    EXPECT_NEAR(choice.rate.si(), rate, 1e-9);
    EXPECT_DOUBLE_EQ(pipe.diameter.si(), six);
    EXPECT_EQ(ducts::size_duct(choice.needs->airflow, {choice.rate, ducts::branch_velocity_limit}, air),
              pipe);
    EXPECT_NEAR(ducts::friction(section, choice.needs->airflow, air).si(), friction, 2e-3 * friction);
    EXPECT_LT(friction, rate);
    // The pipe would carry more than it needs, but the room gets all the blower has already: it is held, no
    // more.
    EXPECT_NEAR(unit::in_celsius(choice.reaches), 20, 1e-6);
    EXPECT_LE(choice.gives_mass, sizing.setting.blower.mass_flow * (1 + 1e-8));
}

TEST(SixHops, TheNeededAirHoldsTheRoomExactly) {
    const questions::BranchSizing sizing = questions::size_branch(pencil_house(), house::OutletId{0});
    const auto reached = ducts::room_temperature(sizing.way, sizing.setting.supply, sizing.setting.asked,
                                                 sizing.choice().needs->flow);
    EXPECT_NEAR(unit::in_celsius(reached), 20, 1e-8);
}

}  // namespace
