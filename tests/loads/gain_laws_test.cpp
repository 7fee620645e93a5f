// What must hold of the heat gain of every house.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "house/cannot_answer.hpp"
#include "loads/a_house.hpp"
#include "loads/overhang.hpp"
#include "loads/room_heat_gain.hpp"

namespace loads {
namespace {

using a_house::surface;
using a_house::u;
using house::Space;
using house::SurfaceKind;
namespace unit = units::unit;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

void expect_same(double a, double b, double tolerance) {
    RC_ASSERT(std::abs(a - b) <= tolerance * std::max({1.0, std::abs(a), std::abs(b)}));
}

house::Surface any_window() {
    house::Surface window = surface(between(0.5, 6), u(between(1, 5)), Space::outdoors, SurfaceKind::window);
    house::Sunlit sun;
    sun.azimuth = between(0, 360);
    sun.height = units::Length(between(0.5, 2.5));
    sun.shgc = between(0.2, 0.7);
    if (*rc::gen::arbitrary<bool>()) sun.overhang = units::Length(between(0.1, 1.5));
    sun.overhang_above = units::Length(between(0, 0.5));
    sun.screen = *rc::gen::arbitrary<bool>();
    window.sun = sun;
    return window;
}

house::House any_house() {
    house::House any = a_house::bare(20, between(-30, 5));
    any.storeys = *rc::gen::inRange(1, 4);
    any.air_leakage = between(0.7, 10.4);
    any.site.elevation = units::Length(between(0, 1900));
    house::Summer summer;
    summer.indoor = unit::celsius(between(22, 26));
    summer.outdoor = unit::celsius(between(27, 42));
    summer.daily_range = units::TemperatureDifference(between(5, 16));
    summer.latitude = between(20, 60);
    if (*rc::gen::arbitrary<bool>()) summer.latitude = -summer.latitude;
    summer.bedrooms = *rc::gen::inRange(0, 6);
    summer.roof = between(0.3, 0.95);
    summer.moisture = between(0, 0.008);
    summer.supply = unit::celsius(14);
    any.summer = summer;
    const int rooms = *rc::gen::inRange(1, 5);
    for (int i = 0; i < rooms; ++i) {
        house::Room& room = a_house::add_room(any, "a room");
        room.use = static_cast<house::RoomUse>(*rc::gen::inRange(0, 5));
        for (const Space beyond : {Space::outdoors, Space::attic, Space::garage, Space::crawl})
            room.surfaces.push_back(surface(between(1, 30), u(between(0.2, 3)), beyond));
        room.surfaces.push_back(any_window());
    }
    if (*rc::gen::arbitrary<bool>()) {
        any.other_rooms = house::OtherRooms{};
        any.other_rooms->floor_area = units::Area(between(10, 300));
    }
    return any;
}

HouseHeatGain gain_of(const house::House& house) { return house_heat_gain(house, infiltration(house)); }

// Every window of the house changed.
template <class Change>
house::House with_windows(house::House house, const Change& change) {
    for (house::Room& room : house.rooms)
        for (house::Surface& surface : room.surfaces)
            if (surface.sun) change(*surface.sun);
    return house;
}

RC_GTEST_PROP(GainLaws, a_full_turn_of_the_house_changes_nothing, ()) {
    const house::House any = any_house();
    const house::House turned = with_windows(any, [](house::Sunlit& sun) { sun.azimuth += 360; });
    expect_same(gain_of(turned).sensible.si(), gain_of(any).sensible.si(), 1e-9);
}

// The sun is the same from east and west; only when it counts differs: the load factor, and that alone.
RC_GTEST_PROP(GainLaws, east_and_west_have_the_same_sun, ()) {
    const house::Surface window = any_window();
    const double latitude = between(20, 60);
    house::Surface mirrored = window;
    mirrored.sun->azimuth = 360 - window.sun->azimuth;
    const WindowGain a = window_gain(window, latitude), b = window_gain(mirrored, latitude);
    expect_same(a.sunshine().si(), b.sunshine().si(), 1e-9);
    expect_same(a.from_the_sun().si() / a.load_factor, b.from_the_sun().si() / b.load_factor, 1e-9);
}

RC_GTEST_PROP(GainLaws, south_of_the_equator_north_and_south_change_places, ()) {
    house::Surface north = any_window(), south = north;
    south.sun->azimuth = 180 - north.sun->azimuth;
    const double latitude = between(20, 60);
    expect_same(window_gain(north, latitude).from_the_sun().si(),
                window_gain(south, -latitude).from_the_sun().si(), 1e-9);
}

RC_GTEST_PROP(GainLaws, an_overhang_a_screen_or_a_shade_never_adds_gain, ()) {
    const house::House any = any_house();
    const double usual = gain_of(any).sensible.si();
    const units::Length deeper{between(0, 1)};
    const double closed = between(0, 1);
    const auto gain = [&](const auto& change) { return gain_of(with_windows(any, change)).sensible.si(); };
    const double slack = 1e-9 * std::abs(usual);
    RC_ASSERT(gain([&](house::Sunlit& sun) { sun.overhang += deeper; }) <= usual + slack);
    RC_ASSERT(gain([](house::Sunlit& sun) { sun.screen = true; }) <= usual + slack);
    RC_ASSERT(gain([&](house::Sunlit& sun) {
                  sun.shade = house::CatalogueName{"blind, white", {}};
                  sun.shade_closed = closed;
              }) <= usual + slack);
}

RC_GTEST_PROP(GainLaws, sums_close, ()) {
    const house::House any = any_house();
    const HouseHeatGain gain = gain_of(any);
    units::Power house_sum = gain.other_rooms, internal;
    for (const RoomHeatGain& room : gain.rooms) {
        units::Power sum = room.leakage_gain + room.internal;
        for (const SurfaceGain& surface : room.surfaces) sum += surface.gain;
        expect_same(sum.si(), room.total.si(), 1e-12);
        house_sum += room.total;
        internal += room.internal;
    }
    expect_same(house_sum.si(), gain.sensible.si(), 1e-12);
    RC_ASSERT(internal <= gain.internal.sensible * (1 + 1e-12));
    if (!any.other_rooms) expect_same(internal.si(), gain.internal.sensible.si(), 1e-12);
}

RC_GTEST_PROP(GainLaws, without_difference_and_sun_there_is_only_internal_gain, ()) {
    house::House any = any_house();
    any.summer->outdoor = any.summer->indoor;
    any.summer->daily_range = {};
    any.other_rooms.reset();
    for (house::Room& room : any.rooms)
        room.surfaces = {surface(between(1, 30), u(1), Space::garage),
                         surface(between(1, 30), u(1), Space::crawl, SurfaceKind::floor),
                         surface(2, u(3), Space::porch, SurfaceKind::window)};
    const HouseHeatGain gain = gain_of(any);
    expect_same(gain.sensible.si(), gain.internal.sensible.si(), 1e-12);
}

RC_GTEST_PROP(GainLaws, units_do_not_matter, ()) {
    const house::House si = any_house();
    house::House us = si;
    us.summer->outdoor = unit::fahrenheit(unit::in_fahrenheit(si.summer->outdoor));
    us.summer->indoor = unit::fahrenheit(unit::in_fahrenheit(si.summer->indoor));
    us.summer->daily_range = (si.summer->daily_range / unit::fahrenheit_degree) * unit::fahrenheit_degree;
    for (house::Room& room : us.rooms)
        for (house::Surface& surface : room.surfaces)
            surface.area = (surface.area / unit::square_foot) * unit::square_foot;
    expect_same(gain_of(us).sensible.si(), gain_of(si).sensible.si(), 1e-9);
    expect_same(gain_of(us).latent.si(), gain_of(si).latent.si(), 1e-9);
}

TEST(Gain, internal_gain_goes_to_kitchen_and_living_rooms_else_to_the_rooms_not_described) {
    house::House house = a_house::bare();
    house.summer = house::Summer{};
    house.summer->latitude = 40;
    a_house::add_room(house, "kitchen").use = house::RoomUse::kitchen;
    a_house::add_room(house, "bedroom").use = house::RoomUse::bedroom;
    EXPECT_EQ(internal_share(house, house.rooms[0]), 1);
    EXPECT_EQ(internal_share(house, house.rooms[1]), 0);
    house.rooms[0].use = house::RoomUse::other;
    EXPECT_EQ(internal_share(house, house.rooms[0]), 0.5);
    house.other_rooms = house::OtherRooms{};
    EXPECT_EQ(internal_share(house, house.rooms[0]), 0);
}

TEST(Gain, living_rooms_not_described_take_their_part_of_the_internal_gain) {
    house::House house = a_house::bare();
    house.summer = house::Summer{};
    house.summer->lived_in_share = 0.5;
    house::Room& living = a_house::add_room(house, "living room");
    living.use = house::RoomUse::living;
    const units::Area own = living.floor_area();
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = 9 * own;
    EXPECT_NEAR(internal_share(house, house.rooms[0]), 1 / (0.5 * 10), 1e-12);
    house.other_rooms->floor_area = 0.5 * own;  // more than half the house is this room
    EXPECT_EQ(internal_share(house, house.rooms[0]), 1);
}

TEST(Gain, a_humid_day_brings_moisture_and_a_dry_one_takes_no_credit) {
    house::House house = a_house::bare(20, 0);
    house.air_leakage = 5.6;
    house.site.elevation = units::Length(315);
    house.summer = house::Summer{};
    house.summer->indoor = unit::celsius(24);
    house.summer->outdoor = unit::celsius(33);
    house.summer->moisture = unit::celsius(23.2);
    a_house::add_room(house, "a room").surfaces = {surface(30, u(1), Space::garage)};
    EXPECT_NEAR(summer_leakage(house, infiltration(house)).moisture, 0.00488, 0.0001);
    house.summer->moisture = unit::celsius(14);
    EXPECT_EQ(summer_leakage(house, infiltration(house)).latent, units::Power());
}

TEST(Gain, the_sun_is_known_from_20_to_60_degrees_only) {
    EXPECT_NO_THROW(peak_irradiance(90, -60));
    EXPECT_THROW(peak_irradiance(90, 61), house::CannotAnswer);
    EXPECT_THROW(peak_irradiance(90, 0), house::CannotAnswer);
}

}  // namespace
}  // namespace loads
