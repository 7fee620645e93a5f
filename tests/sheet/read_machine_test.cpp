// A sheet with every word in it arrives whole in the survey: the other rooms, the machine, ducts and outlets.
#include "expect_given.hpp"

namespace {

using namespace units::unit;
using house::Place;

TEST(Read, OtherRooms) {
    ASSERT_TRUE(survey().other_rooms);
    const auto& rooms = *survey().other_rooms;
    EXPECT_EQ(rooms.place, at("[other_rooms]"));
    expect_quantity(rooms.floor_area, 900 * square_foot, "\"900 ft2\"");
    expect_quantity(rooms.heat_loss, 30000 * btu_per_hour, "\"30000 Btu/h\"");
    ASSERT_TRUE(rooms.outlets);
    EXPECT_EQ(rooms.outlets->value, 7);
    expect_quantity(rooms.pipe, 5 * inch, "\"5 in\"");
    expect_two(rooms.reach, two(49 * inch, 21 * foot), "[\"4 ft 1 in\", \"21 ft\"]");
    ASSERT_TRUE(rooms.from);
    EXPECT_EQ(rooms.from->value, "trunk");
    ASSERT_TRUE(rooms.turns);
    EXPECT_EQ(rooms.turns->value.count, 2);
    EXPECT_FALSE(rooms.turns->value.square);
    EXPECT_EQ(rooms.turns->place, at("\"2 rounded\""));
}

TEST(Read, Heater) {
    ASSERT_TRUE(survey().heater);
    const auto& heater = *survey().heater;
    EXPECT_EQ(heater.place, at("[heater]"));
    expect_given(heater.kind, house::HeaterKind::heat_pump, "\"heat pump\"");
    expect_quantity(heater.input, 80000 * btu_per_hour, "\"80000 Btu/h\"");
    expect_quantity(heater.output, 64000 * btu_per_hour, "\"64000 Btu/h\"");
    expect_quantity(heater.cold_output, 41000 * btu_per_hour, "\"41000 Btu/h\"");
    ASSERT_TRUE(heater.duct_loss);
    EXPECT_NEAR(heater.duct_loss->value, 0.12, tolerance);
    ASSERT_TRUE(heater.efficiency);
    EXPECT_NEAR(heater.efficiency->value, 0.81, tolerance);
    EXPECT_EQ(heater.efficiency->place, at("\"81 %\""));
    expect_two(heater.rise, std::pair(35 * fahrenheit_degree, 65 * fahrenheit_degree),
               "[\"35 F\", \"65 F\"]");
    expect_quantity(heater.max_static, 0.5 * inch_wc, "\"0.5 in.wc\"");
    expect_given(heater.adjusted_for_elevation, true, "true\nshares");
    expect_given(heater.shares_space_with, "gas dryer");
}

TEST(Read, BlowerCoolingAndDevices) {
    ASSERT_TRUE(survey().blower);
    const auto& blower = *survey().blower;
    EXPECT_EQ(blower.place, at("[blower]"));
    ASSERT_EQ(blower.points.size(), 2u);
    EXPECT_NEAR(blower.points[1].value.external_static / inch_wc, 0.4, tolerance);
    EXPECT_NEAR(blower.points[1].value.airflow / cfm, 1080, 1e-6);
    EXPECT_EQ(blower.points[1].place, at("[\"0.4 in.wc\", \"1080 cfm\"]"));
    expect_quantity(blower.measured, 1010 * cfm, "\"1010 cfm\"");
    ASSERT_EQ(blower.includes.size(), 2u);
    EXPECT_EQ(blower.includes[0].value, house::DeviceKind::filter);
    expect_given(house::Maybe<house::DeviceKind>(blower.includes[1]), house::DeviceKind::other, "\"other\"");
    expect_given(survey().cooling, house::CoolingKind::coil, "\"coil\"");
    ASSERT_EQ(survey().devices.size(), 1u);
    const auto& device = survey().devices[0];
    EXPECT_EQ(device.place, at("[[device]]"));
    expect_given(device.name, "pleated filter");
    ASSERT_TRUE(device.kind);
    EXPECT_EQ(device.kind->value, house::DeviceKind::filter);
    expect_quantity(device.drop, 0.21 * inch_wc, "\"0.21 in.wc\"");
    expect_quantity(device.at, 1000 * cfm, "\"1000 cfm\"");
}

TEST(Read, Ducts) {
    ASSERT_EQ(survey().ducts.size(), 3u);
    const auto& trunk = survey().ducts[0];
    EXPECT_EQ(trunk.place, at("[[duct]]\nname = \"trunk\""));
    expect_given(trunk.name, "trunk");
    expect_given(trunk.side, house::DuctSide::supply, "\"supply\"");
    expect_given(trunk.from, "plenum");
    expect_quantity(trunk.at, 18 * foot, "\"18 ft\"");
    ASSERT_TRUE(trunk.shape);
    EXPECT_EQ(trunk.shape->value, house::Shape(house::Rectangular{8 * inch, 16 * inch}));
    EXPECT_EQ(trunk.shape->place, at("\"8 x 16 in\""));
    expect_quantity(trunk.length, 22 * foot, "\"22 ft\"");
    ASSERT_EQ(trunk.fittings.size(), 2u);
    expect_given(trunk.fittings[1], "side takeoff");
    ASSERT_TRUE(trunk.turns);
    EXPECT_EQ(trunk.turns->value.count, 3);
    EXPECT_TRUE(trunk.turns->value.square);
    expect_given(trunk.runs_in, house::Space::heated_rooms, "\"heated rooms\"");
    expect_quantity(trunk.wrap, 6 * r_value_us, "\"R-6\"");
    expect_given(trunk.hidden, true, "true\nstate");
    expect_given(trunk.state, house::State::removed, "\"removed\"");
}

TEST(Read, DuctsByTheTapeAndRoundOnes) {
    const auto& drop = survey().ducts[1];
    expect_given(drop.side, house::DuctSide::return_side, "\"return\"");
    expect_given(drop.to, "blower");
    expect_quantity(drop.around, 19 * inch, "\"19 in\"");
    EXPECT_FALSE(drop.shape);
    expect_given(drop.state, house::State::added, "\"new\"");
    ASSERT_TRUE(survey().ducts[2].shape);
    EXPECT_EQ(survey().ducts[2].shape->value, house::Shape(house::Round{4 * inch}));
    EXPECT_FALSE(survey().ducts[2].around);
}

TEST(Read, DuctsOfOtherKindsAndFlatOvals) {
    const house::Survey read =
        sheet::read(
            "sheet = 1\n[[duct]]\nshape = \"8 x 16 in oval\"\nkind = \"panned joist\"\n"
            "[[duct]]\nkind = \"flex\"\nstretch = \"96 %\"\n")
            .survey;
    ASSERT_EQ(read.ducts.size(), 2u);
    EXPECT_EQ(read.ducts[0].shape->value, house::Shape(house::FlatOval{16 * inch, 8 * inch}));
    EXPECT_EQ(read.ducts[0].shape->place, (Place{3, 9, 25}));
    EXPECT_EQ(read.ducts[0].kind->value, house::DuctKind::panned_joist);
    EXPECT_EQ(read.ducts[1].kind->value, house::DuctKind::flex);
    EXPECT_NEAR(read.ducts[1].stretch->value, 0.96, 1e-12);
}

TEST(Read, Outlets) {
    ASSERT_EQ(survey().outlets.size(), 3u);
    const auto& outlet = survey().outlets[0];
    EXPECT_EQ(outlet.place, at("[[outlet]]\nname = \"floor register\""));
    expect_given(outlet.name, "floor register");
    ASSERT_TRUE(outlet.duct);
    EXPECT_EQ(outlet.duct->value, "branch");
    expect_given(outlet.room, "washroom in plan");
    expect_two(outlet.face, two(10 * inch, 6 * inch), "\"10 x 6 in\"");
    expect_given(outlet.mount, house::Mount::toe_kick, "\"toe kick\"");
    expect_given(outlet.under, "the west window");
    expect_given(outlet.state, house::State::found, "\"found\"");
    EXPECT_FALSE(outlet.wall || outlet.centre || outlet.point);
    expect_given(survey().outlets[1].wall, house::WallSide::south, "\"south\"");
    expect_quantity(survey().outlets[1].centre, 19 * inch, "\"1 ft 7 in\"");
    expect_two(survey().outlets[2].point, two(20 * inch, 21 * inch), "[\"1 ft 8 in\", \"1 ft 9 in\"]");
}

}  // namespace
