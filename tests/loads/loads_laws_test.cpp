// What must hold of every house: heat and air add up, flows are equal and opposite, more of a cause is more
// of its effect.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "loads/a_house.hpp"
#include "loads/air.hpp"
#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"
#include "loads/transmittance.hpp"

namespace loads {
namespace {

using a_house::surface;
using a_house::u;
using house::Space;
namespace unit = units::unit;

// A number between two, to a thousandth of the way.
double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

// One to five rooms at temperatures of their own, a few surfaces each, and partitions between neighbours.
house::House any_house() {
    house::House any = a_house::bare(between(15, 25), between(-35, 10));
    any.storeys = *rc::gen::inRange(1, 4);
    any.site.elevation = units::Length(between(0, 3000));
    any.air_leakage = between(0.7, 10.4);
    any.space_winter[static_cast<std::size_t>(Space::basement)] = unit::celsius(between(5, 18));
    const int rooms = *rc::gen::inRange(1, 6);
    for (int i = 0; i < rooms; ++i) {
        house::Room& room = a_house::add_room(any, "a room");
        room.winter_indoor = unit::celsius(between(15, 25));
        for (const Space beyond : {Space::outdoors, Space::attic, Space::basement, Space::heated_rooms})
            room.surfaces.push_back(surface(between(1, 30), u(between(0.2, 5)), beyond));
    }
    for (std::size_t i = 1; i < any.rooms.size(); ++i)
        a_house::add_partition(any, i - 1, i, surface(between(1, 20), u(between(0.5, 3))));
    return any;
}

house::House any_house_with_other_rooms() {
    house::House any = any_house();
    any.other_rooms = house::OtherRooms{};
    any.other_rooms->exposure = between(0.7, 1.3);
    if (*rc::gen::arbitrary<bool>()) any.other_rooms->floor_area = units::Area(between(10, 300));
    if (any.other_rooms->floor_area == units::Area() || *rc::gen::arbitrary<bool>())
        any.other_rooms->heat_loss = units::Power(between(500, 20'000));
    return any;
}

void expect_same(double a, double b, double tolerance) {
    RC_ASSERT(std::abs(a - b) <= tolerance * std::max({1.0, std::abs(a), std::abs(b)}));
}

units::Power to_neighbours(const RoomHeatLoss& room) {
    units::Power sum;
    for (const SurfaceLoss& lost : room.surfaces)
        if (lost.to_neighbour) sum += lost.loss;
    return sum;
}

RC_GTEST_PROP(LoadsLaws, rooms_and_other_rooms_add_up_to_the_house, ()) {
    const HouseHeatLoss loss = house_heat_loss(any_house_with_other_rooms());
    units::Power sum = loss.other_rooms;
    for (const RoomHeatLoss& room : loss.rooms) sum += room.total - to_neighbours(room);
    expect_same(sum.si(), loss.total.si(), 1e-12);
}

RC_GTEST_PROP(LoadsLaws, surfaces_and_leakage_add_up_to_the_room, ()) {
    for (const RoomHeatLoss& room : house_heat_loss(any_house()).rooms) {
        units::Power sum = room.leakage_loss;
        for (const SurfaceLoss& lost : room.surfaces) sum += lost.loss;
        expect_same(sum.si(), room.total.si(), 1e-12);
        expect_same((room.conductance * (room.inside - room.balance)).si(), room.total.si(), 1e-9);
    }
}

RC_GTEST_PROP(LoadsLaws, what_one_room_loses_to_another_the_other_gains, ()) {
    house::House any = any_house();
    for (house::Room& room : any.rooms)
        std::erase_if(room.surfaces, [](const house::Surface& s) { return s.beyond.index() == 0; });
    units::Power sum;
    for (const RoomHeatLoss& room : house_heat_loss(any).rooms) sum += room.total;
    expect_same(sum.si(), 0, 1e-9);
}

RC_GTEST_PROP(LoadsLaws, a_floor_of_layers_between_two_rooms_is_the_same_from_both, ()) {
    house::House any = a_house::bare();
    a_house::add_room(any, "below").winter_indoor = unit::celsius(between(15, 25));
    a_house::add_room(any, "above");
    const house::Layers made = a_house::layers({"hardwood floor", "plaster on wood lath"}, between(0, 0.3));
    a_house::add_partition(any, 0, 1, surface(between(1, 20), made));
    any.rooms[0].surfaces[0].kind = house::SurfaceKind::ceiling;
    any.rooms[1].surfaces[0].kind = house::SurfaceKind::floor;
    const HouseHeatLoss loss = house_heat_loss(any);
    RC_ASSERT(loss.rooms[0].total == -loss.rooms[1].total);
}

RC_GTEST_PROP(LoadsLaws, leakage_shares_add_up_to_the_house, ()) {
    const house::House any = any_house_with_other_rooms();
    const HouseHeatLoss loss = house_heat_loss(any);
    units::Airflow sum = loss.other_leakage;
    for (const RoomHeatLoss& room : loss.rooms) sum += room.leakage;
    RC_ASSERT(std::abs(sum / loss.infiltration.airflow - 1) <= 1e-12);
}

RC_GTEST_PROP(LoadsLaws, without_a_difference_nothing_is_lost, ()) {
    house::House any = any_house();
    const units::Temperature everywhere = any.site.winter_outdoor;
    any.site.winter_indoor = everywhere;
    any.space_winter.fill(everywhere);
    for (house::Room& room : any.rooms) room.winter_indoor = everywhere;
    const HouseHeatLoss loss = house_heat_loss(any);
    RC_ASSERT(loss.total == units::Power());
    for (const RoomHeatLoss& room : loss.rooms) RC_ASSERT(room.total == units::Power());
}

// A house of which one cause can be made larger.
struct Causes {
    double area = 10, u = 1.5, outdoors = -10, leakage = 5.6;
    units::Power loss() const {
        house::House made = a_house::bare(20, outdoors);
        made.air_leakage = leakage;
        a_house::add_room(made, "a room").surfaces = {surface(area, a_house::u(u))};
        return house_heat_loss(made).total;
    }
};

RC_GTEST_PROP(LoadsLaws, more_area_u_difference_or_leakage_loses_more, ()) {
    const Causes less{between(1, 50), between(0.1, 5), between(-30, 15), between(0.5, 15)};
    const double more = between(1.01, 2);
    Causes larger = less, worse = less, colder = less, leakier = less;
    larger.area *= more;
    worse.u *= more;
    colder.outdoors -= more;
    leakier.leakage *= more;
    for (const Causes& cause : {larger, worse, colder, leakier}) RC_ASSERT(cause.loss() > less.loss());
}

RC_GTEST_PROP(LoadsLaws, twice_the_heater_is_on_half_the_time_and_gives_the_same_over_the_night, ()) {
    house::House any = any_house();
    const HouseHeatLoss loss = house_heat_loss(any);
    RC_PRE(loss.total > units::Power(100));
    const auto night = [&](double times) {
        any.heater.capacity = times * 3 * loss.total;
        const OnTime on = on_time(any, loss);
        const units::Temperature room = unit::celsius(20);
        const units::Temperature supply =
            supply_temperature(on.output, units::MassFlow(0.4), units::SpecificHeat(1006), room);
        return std::pair(on.share, on.share * (supply - room).si());
    };
    const auto [once, warmth_once] = night(1);
    const auto [twice, warmth_twice] = night(2);
    expect_same(once, 2 * twice, 1e-12);
    expect_same(warmth_once, warmth_twice, 1e-9);
}

RC_GTEST_PROP(LoadsLaws, the_air_for_a_load_carries_that_load, ()) {
    const units::Power load{between(1, 10'000)};
    const double on = between(0.05, 1);
    const units::SpecificHeat cp{1006};
    const units::TemperatureDifference warm{between(1, 60)};
    expect_same((on * airflow_for(load, on, cp, warm) * cp * warm).si(), load.si(), 1e-12);
}

RC_GTEST_PROP(LoadsLaws, units_do_not_matter, ()) {
    const double feet = between(5, 30), fahrenheit = between(-30, 60);
    const auto loss = [](units::Length side, units::Temperature outdoors) {
        house::House made = a_house::bare(20, 0);
        made.site.winter_outdoor = outdoors;
        made.space_winter.fill(outdoors);
        made.air_leakage = 5.6;
        a_house::add_room(made, "a room").surfaces = {surface((side * side).si(), u(1.5))};
        return house_heat_loss(made).total.si();
    };
    expect_same(loss(feet * unit::foot, unit::fahrenheit(fahrenheit)),
                loss(units::Length(feet * 0.3048), unit::celsius((fahrenheit - 32) / 1.8)), 1e-9);
}

RC_GTEST_PROP(LoadsLaws, altitude_changes_only_the_air_terms, ()) {
    house::House any = any_house();
    any.site.elevation = {};
    const HouseHeatLoss low = house_heat_loss(any);
    any.site.elevation = units::Length(between(100, 3000));
    const HouseHeatLoss high = house_heat_loss(any);
    const double thinner = site_pressure(any.site) / units::Pressure(101325);
    for (std::size_t i = 0; i < low.rooms.size(); ++i) {
        expect_same(high.rooms[i].leakage_loss.si(), thinner * low.rooms[i].leakage_loss.si(), 1e-9);
        for (std::size_t j = 0; j < low.rooms[i].surfaces.size(); ++j)
            RC_ASSERT(high.rooms[i].surfaces[j].loss == low.rooms[i].surfaces[j].loss);
    }
}

RC_GTEST_PROP(LoadsLaws, more_wood_worsens_an_insulated_wall_and_betters_an_empty_one, ()) {
    const auto wall = [](const char* bay, double framing) {
        const house::Layers made = a_house::layers({"lap siding", bay, "plaster on wood lath"}, framing);
        return transmittance(surface(10, made), units::Resistance(0.16));
    };
    const double framing = between(0, 0.3), more = framing + between(0.01, 0.2);
    RC_ASSERT(wall("dense cellulose, 3-5/8 in", more) > wall("dense cellulose, 3-5/8 in", framing));
    RC_ASSERT(wall("empty stud bay, 3-5/8 in", more) < wall("empty stud bay, 3-5/8 in", framing));
}

RC_GTEST_PROP(LoadsLaws, a_parallel_path_lies_between_its_two, ()) {
    const units::Resistance bay{between(0.2, 6)}, wood{between(0.2, 6)};
    const units::Resistance both = 1 / parallel_paths(bay, wood, between(0, 1)).u;
    RC_ASSERT(both.si() >= std::min(bay, wood).si() * (1 - 1e-12));
    RC_ASSERT(both.si() <= std::max(bay, wood).si() * (1 + 1e-12));
}

}  // namespace
}  // namespace loads
