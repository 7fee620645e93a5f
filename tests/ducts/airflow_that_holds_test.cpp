#include "ducts/airflow_that_holds.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "ducts/a_duct_house.hpp"
#include "loads/heater.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
namespace unit = units::unit;

constexpr double cp = 1006;

Supply supply_at(double celsius, double on_time = 0.6) {
    return {unit::celsius(celsius), units::SpecificHeat(cp), units::Pressure(101325), on_time};
}

loads::RoomHeatLoss room(double watts, double inside_c = 20, double watts_per_kelvin = 40) {
    loads::RoomHeatLoss loss;
    loss.inside = unit::celsius(inside_c);
    loss.total = units::Power(watts);
    loss.conductance = units::HeatLossPerKelvin(watts_per_kelvin);
    loss.balance = loss.inside - loss.total / loss.conductance;
    return loss;
}

Run run(double metres, double surroundings_c = 10) {
    return {units::Length(metres), units::Length(0.48), units::Resistance(0.15),
            unit::celsius(surroundings_c)};
}

// 8 m of its own after 5 m shared with 0.4 kg/s.
HeatWay way_with_loss() { return {{run(5)}, {units::MassFlow(0.4)}, {run(6), run(2)}}; }

double delivered(const HeatWay& way, const Supply& supply, double inside_c, double kg_s) {
    const units::Temperature at = arrival(way, supply, units::MassFlow(kg_s));
    return supply.on_time * kg_s * cp * (at - unit::celsius(inside_c)).si();
}

TEST(HeatWay, tells_shared_ducts_from_the_outlets_own) {
    const house::House house = two_branches();
    const Side supply = system_of(house).supply;
    const HeatWay way = heat_way(supply, way_to(supply, house, 1));
    ASSERT_EQ(way.shared.size(), 1u);
    ASSERT_EQ(way.own.size(), 2u);
    EXPECT_NEAR(way.shared_flows.at(0).si(), 0.11, 1e-15);
    EXPECT_NEAR(in_feet(way.shared[0].length), 5, 1e-12);
    EXPECT_NEAR(in_feet(way.own[0].length), 7, 1e-12);
    EXPECT_NEAR(in_feet(way.own[1].length), 10, 1e-12);
    EXPECT_EQ(way.own[1].perimeter, section_of(six_inch).perimeter);
    EXPECT_EQ(way.own[1].resistance, house.ducts[2].resistance);
    EXPECT_EQ(way.own[1].surroundings, std::get<units::Temperature>(house.ducts[2].surroundings));
}

TEST(HeatWay, a_duct_that_ends_in_two_outlets_is_shared) {
    house::House house;
    const int duct = add_root(house, six_inch, 9);
    add_outlet(house, duct);
    add_outlet(house, duct);
    const Side supply = system_of(house).supply;
    const HeatWay way = heat_way(supply, way_to(supply, house, 0));
    EXPECT_EQ(way.shared.size(), 1u);
    EXPECT_NEAR(way.shared_flows.at(0).si(), 0.11, 1e-15);
}

TEST(Arrival, is_the_supply_temperature_where_ducts_lose_nothing) {
    EXPECT_EQ(arrival({}, supply_at(50), units::MassFlow(0.05)), unit::celsius(50));
}

TEST(Arrival, loses_on_shared_and_own_runs_in_turn) {
    const HeatWay way = way_with_loss();
    const double after_shared = 10 + 40 * std::exp(-0.48 * 5 / (0.15 * 0.4 * cp));
    const double end = 10 + (after_shared - 10) * std::exp(-0.48 * 8 / (0.15 * 0.05 * cp));
    EXPECT_NEAR(unit::in_celsius(arrival(way, supply_at(50), units::MassFlow(0.05))), end, 1e-10);
}

TEST(AirflowThatHolds, has_a_closed_form_without_duct_loss) {
    const auto holding = airflow_that_holds({}, supply_at(50), room(1200));
    ASSERT_TRUE(holding);
    EXPECT_NEAR(holding->flow.si() / (1200 / (0.6 * cp * 30)), 1, 1e-9);
    EXPECT_EQ(holding->arrival, unit::celsius(50));
}

TEST(AirflowThatHolds, gives_the_airflow_at_the_arrivals_density) {
    const auto holding = airflow_that_holds(way_with_loss(), supply_at(50), room(1200));
    ASSERT_TRUE(holding);
    const double density = 101325 / (287.05 * holding->arrival.si());
    EXPECT_NEAR(holding->airflow.si() * density / holding->flow.si(), 1, 1e-3);
}

TEST(AirflowThatHolds, brings_just_what_the_room_loses) {
    const HeatWay way = way_with_loss();
    for (double watts : {1.0, 150.0, 1200.0, 9000.0}) {
        const auto holding = airflow_that_holds(way, supply_at(50), room(watts));
        ASSERT_TRUE(holding) << watts;
        EXPECT_NEAR(delivered(way, supply_at(50), 20, holding->flow.si()) / watts, 1, 1e-9);
        EXPECT_EQ(holding->arrival, arrival(way, supply_at(50), holding->flow)) << watts;
    }
}

// Little air arrives colder than the room and takes heat from it: heat brought falls, then rises for good.
TEST(AirflowThatHolds, is_on_the_rising_branch) {
    const HeatWay way = way_with_loss();
    int turns = 0;
    double last = 0;
    bool falling = true;
    for (double kg_s = 1e-6; kg_s < 1; kg_s *= 1.05) {
        const double now = delivered(way, supply_at(50), 20, kg_s);
        if ((now < last) != falling) ++turns, falling = !falling;
        last = now;
    }
    EXPECT_EQ(turns, 1);
    EXPECT_FALSE(falling);
    const auto holding = airflow_that_holds(way, supply_at(50), room(800));
    ASSERT_TRUE(holding);
    EXPECT_LT(delivered(way, supply_at(50), 20, holding->flow.si() * 0.999), 800);
    EXPECT_GT(delivered(way, supply_at(50), 20, holding->flow.si() * 1.001), 800);
    EXPECT_GT(holding->arrival, unit::celsius(20));
}

TEST(AirflowThatHolds, needs_more_where_the_duct_loses) {
    const auto with = airflow_that_holds(way_with_loss(), supply_at(50), room(800));
    const auto without = airflow_that_holds({}, supply_at(50), room(800));
    ASSERT_TRUE(with && without);
    EXPECT_GT(with->flow, without->flow);
}

TEST(AirflowThatHolds, has_no_answer_where_the_supply_is_no_warmer_than_the_room) {
    EXPECT_FALSE(airflow_that_holds({}, supply_at(15), room(800)));
    EXPECT_FALSE(airflow_that_holds({}, supply_at(20), room(800)));
    EXPECT_FALSE(airflow_that_holds(way_with_loss(), supply_at(20.3), room(800)));
}

TEST(AirflowThatHolds, has_no_answer_where_the_heater_is_never_on) {
    EXPECT_FALSE(airflow_that_holds({}, supply_at(50, 0), room(800)));
}

TEST(AirflowThatHolds, a_room_that_loses_nothing_needs_none) {
    for (double watts : {0.0, -300.0}) {
        const auto holding = airflow_that_holds(way_with_loss(), supply_at(50), room(watts));
        ASSERT_TRUE(holding) << watts;
        EXPECT_EQ(holding->flow.si(), 0) << watts;
        EXPECT_EQ(holding->airflow.si(), 0) << watts;
    }
}

TEST(AirflowThatHolds, twice_the_output_halves_the_time_and_needs_the_same_air) {
    const units::Temperature indoors = unit::celsius(20);
    const auto supply_of = [&](double output, double on_time) {
        Supply supply = supply_at(0, on_time);
        supply.temperature = loads::supply_temperature(units::Power(output), units::MassFlow(0.5),
                                                       supply.specific_heat, indoors);
        return supply;
    };
    const auto once = airflow_that_holds({}, supply_of(10'000, 0.8), room(1200));
    const auto twice = airflow_that_holds({}, supply_of(20'000, 0.4), room(1200));
    ASSERT_TRUE(once && twice);
    EXPECT_NEAR(twice->flow / once->flow, 1, 1e-9);
    const units::Temperature reached = room_temperature({}, supply_of(20'000, 0.4), room(1200), once->flow);
    EXPECT_NEAR(unit::in_celsius(reached), 20, 1e-9);
}

TEST(RoomTemperature, is_the_rooms_own_with_just_the_air_needed) {
    const auto holding = airflow_that_holds(way_with_loss(), supply_at(50), room(1200, 23));
    ASSERT_TRUE(holding);
    const units::Temperature reached =
        room_temperature(way_with_loss(), supply_at(50), room(1200, 23), holding->flow);
    EXPECT_NEAR(unit::in_celsius(reached), 23, 1e-9);
}

TEST(RoomTemperature, without_air_is_where_the_room_loses_nothing) {
    EXPECT_NEAR(unit::in_celsius(room_temperature({}, supply_at(50), room(1200), {})), 20 - 30, 1e-9);
}

TEST(RoomTemperature, balances_loss_and_heat_brought) {
    const units::Temperature reached =
        room_temperature(way_with_loss(), supply_at(50), room(1200), units::MassFlow(0.03));
    const double brought = delivered(way_with_loss(), supply_at(50), unit::in_celsius(reached), 0.03);
    EXPECT_NEAR(brought, 40 * (unit::in_celsius(reached) + 10), 1e-8);
}

TEST(RoomTemperature, of_a_room_that_exchanges_nothing_stays) {
    loads::RoomHeatLoss sealed;
    sealed.inside = sealed.balance = unit::celsius(20);
    EXPECT_EQ(room_temperature({}, supply_at(50), sealed, {}), unit::celsius(20));
}

}  // namespace
}  // namespace ducts
