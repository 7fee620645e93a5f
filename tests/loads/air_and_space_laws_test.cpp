// What must hold of every unheated space, of every way of sharing outdoor air and of every ventilation.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "loads/a_house.hpp"
#include "loads/room_heat_loss.hpp"

namespace loads {
namespace {

using a_house::surface;
using a_house::u;
using house::Space;
using house::SurfaceKind;
namespace unit = units::unit;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

units::Airflow any_air(double most_litres) { return between(0, most_litres) * unit::litre_per_second; }

// Rooms on every storey, each with outside walls, a ceiling under the attic and a floor over the crawl space,
// both of these in balance.
house::House any_house() {
    house::House any = a_house::bare(between(15, 25), between(-35, 10));
    any.storeys = *rc::gen::inRange(1, 5);
    any.air_leakage = between(0.7, 10.4);
    any.leakage_sharing =
        *rc::gen::arbitrary<bool>() ? house::LeakageSharing::by_surface : house::LeakageSharing::by_volume;
    const int rooms = *rc::gen::inRange(1, 6);
    for (int i = 0; i < rooms; ++i) {
        house::Room& room = a_house::add_room(any, "a room");
        room.storey = *rc::gen::inRange(1, any.storeys + 1);
        room.winter_indoor = unit::celsius(between(15, 25));
        room.surfaces = {surface(between(1, 30), u(between(0.2, 5))),
                         surface(12, u(between(0.1, 2)), Space::attic, SurfaceKind::ceiling),
                         surface(12, u(between(0.1, 2)), Space::crawl, SurfaceKind::floor)};
    }
    for (const Space space : {Space::attic, Space::crawl}) {
        house::BufferSpace buffer;
        buffer.space = space;
        buffer.floor_area = units::Area(between(12, 200));
        buffer.outer = {surface(between(5, 200), u(between(0.2, 5)))};
        buffer.outdoor_air = any_air(300);
        any.buffer_spaces.push_back(buffer);
    }
    if (*rc::gen::arbitrary<bool>()) {
        any.other_rooms = house::OtherRooms{};
        any.other_rooms->floor_area = units::Area(between(10, 300));
        any.other_rooms->exposure = between(0.7, 1.3);
    }
    if (*rc::gen::arbitrary<bool>()) any.ventilation = {any_air(100), any_air(100), between(0, 1), 0};
    return any;
}

RC_GTEST_PROP(SpaceLaws, a_space_lies_between_outdoors_and_its_warmest_neighbour, ()) {
    const house::House any = any_house();
    units::Temperature warmest = std::max(any.site.winter_indoor, any.site.winter_outdoor);
    for (const house::Room& room : any.rooms) warmest = std::max(warmest, room.winter_indoor);
    for (const SpaceBalance& balance : spaces_in_winter(any).balances) {
        RC_ASSERT(balance.temperature.si() >= any.site.winter_outdoor.si() - 1e-9);
        RC_ASSERT(balance.temperature.si() <= warmest.si() + 1e-9);
    }
}

RC_GTEST_PROP(SpaceLaws, what_comes_in_goes_out, ()) {
    for (const SpaceBalance& balance : spaces_in_winter(any_house()).balances) {
        units::Power sum = balance.heat, size;
        for (const BalancePart& part : balance.parts) {
            sum += part.conductance * (part.beyond - balance.temperature);
            size += abs(part.conductance * (part.beyond - balance.temperature));
        }
        RC_ASSERT(std::abs(sum.si()) <= 1e-9 * (1 + size.si()));
    }
}

RC_GTEST_PROP(SpaceLaws, more_outdoor_air_or_roof_never_warms_and_more_heat_never_cools, ()) {
    const house::House any = any_house();
    house::House airier = any, thinner = any, warmed = any;
    for (house::BufferSpace& space : airier.buffer_spaces) space.outdoor_air += any_air(100);
    for (house::BufferSpace& space : thinner.buffer_spaces) space.outer[0].area *= between(1, 3);
    for (house::BufferSpace& space : warmed.buffer_spaces) space.heat = units::Power(between(0, 1000));
    for (const Space space : {Space::attic, Space::crawl}) {
        const auto celsius = [&](const house::House& house) {
            return unit::in_celsius(spaces_in_winter(house).of(space));
        };
        RC_ASSERT(celsius(airier) <= celsius(any) + 1e-9);
        RC_ASSERT(celsius(thinner) <= celsius(any) + 1e-9);
        RC_ASSERT(celsius(warmed) >= celsius(any) - 1e-9);
    }
}

RC_GTEST_PROP(SpaceLaws, without_a_difference_nothing_is_lost, ()) {
    house::House any = any_house();
    any.site.winter_indoor = any.site.winter_outdoor;
    any.space_winter.fill(any.site.winter_outdoor);
    for (house::Room& room : any.rooms) room.winter_indoor = any.site.winter_outdoor;
    RC_ASSERT(house_heat_loss(any).total == units::Power());
}

RC_GTEST_PROP(SharingLaws, the_shares_add_up_to_the_house, ()) {
    const house::House any = any_house();
    const HouseHeatLoss loss = house_heat_loss(any);
    units::Airflow sum = loss.other_leakage;
    for (const RoomHeatLoss& room : loss.rooms) {
        RC_ASSERT(room.leakage >= units::Airflow());
        sum += room.leakage;
    }
    RC_ASSERT(std::abs(sum / loss.infiltration.air.to_heat() - 1) <= 1e-9);
}

RC_GTEST_PROP(SharingLaws, upstairs_never_has_more_for_its_surface_than_downstairs, ()) {
    house::House any = any_house();
    any.leakage_sharing = house::LeakageSharing::by_surface;
    const LeakageShares shares = infiltration(any).shares;
    for (const house::Room& low : any.rooms)
        for (const house::Room& high : any.rooms) {
            if (low.storey >= high.storey) continue;
            RC_ASSERT(share_of(shares, low) / exposed_surface(low).si() >=
                      share_of(shares, high) / exposed_surface(high).si() - 1e-12);
        }
}

// Every room of a house like the others, so that describing one more of them tells nothing new.
house::House of_like_rooms(int described, house::LeakageSharing sharing) {
    house::House house = a_house::bare(20, -15);
    house.air_leakage = 5.6;
    house.leakage_sharing = sharing;
    for (int i = 0; i < described; ++i)
        a_house::add_room(house, "a room").surfaces = {
            surface(10, u(1.5)), surface(12, u(0.5), Space::attic, SurfaceKind::ceiling)};
    house.other_rooms = house::OtherRooms{};
    house.other_rooms->floor_area = units::Area(12.0 * (10 - described));
    house::BufferSpace attic;
    attic.floor_area = units::Area(120);
    attic.outer = {surface(144, u(3))};
    house.buffer_spaces = {attic};
    return house;
}

RC_GTEST_PROP(SharingLaws, describing_a_like_room_more_leaves_the_house_as_it_was, ()) {
    const auto sharing =
        *rc::gen::arbitrary<bool>() ? house::LeakageSharing::by_surface : house::LeakageSharing::by_volume;
    const double few = house_heat_loss(of_like_rooms(1, sharing)).total.si();
    const double more = house_heat_loss(of_like_rooms(*rc::gen::inRange(2, 7), sharing)).total.si();
    RC_ASSERT(std::abs(few / more - 1) <= 1e-9);
}

RC_GTEST_PROP(VentilationLaws, more_of_it_never_needs_less_heat_and_recovery_never_more, ()) {
    const house::House any = any_house();
    house::House more = any, recovered = any;
    more.ventilation.supply += any_air(50);
    more.ventilation.exhaust = std::max(more.ventilation.exhaust, more.ventilation.supply);
    more.ventilation.recovery = 0;
    recovered.ventilation.recovery = std::min(1.0, any.ventilation.recovery + between(0, 0.5));
    const auto air = [](const house::House& house) { return infiltration(house).air.to_heat().si(); };
    RC_ASSERT(air(more) >= air(any) - 1e-12);
    RC_ASSERT(air(recovered) <= air(any) + 1e-12);
    RC_ASSERT(air(any) >= infiltration(any).airflow.si() - 1e-12);
}

RC_GTEST_PROP(AltitudeLaws, in_thin_air_only_what_air_carries_shrinks, ()) {
    house::House any = any_house();
    any.buffer_spaces.clear();  // their air is part of their balance
    any.site.elevation = {};
    const HouseHeatLoss low = house_heat_loss(any);
    any.site.elevation = units::Length(1609);
    const HouseHeatLoss high = house_heat_loss(any);
    for (std::size_t i = 0; i < low.rooms.size(); ++i) {
        const double before = low.rooms[i].leakage_loss.si();
        RC_ASSERT(std::abs(high.rooms[i].leakage_loss.si() - 0.8234 * before) <= 1e-3 * std::abs(before));
        for (std::size_t j = 0; j < low.rooms[i].surfaces.size(); ++j)
            RC_ASSERT(high.rooms[i].surfaces[j].loss == low.rooms[i].surfaces[j].loss);
    }
}

}  // namespace
}  // namespace loads
