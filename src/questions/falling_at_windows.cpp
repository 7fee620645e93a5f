#include <algorithm>

#include "loads/surface_temperature.hpp"
#include "loads/transmittance.hpp"
#include "questions/place.hpp"
#include "registers/draught.hpp"
#include "registers/falling_air.hpp"

namespace questions {
namespace {

// People stand in a tub, before a basin or a bed.
std::optional<units::Length> before_a_fixture(house::FixtureKind kind) {
    using enum house::FixtureKind;
    switch (kind) {
        case tub:
        case shower:
        case toilet:
        case bed:
        case sofa:
            return units::Length();
        case basin:
        case vanity:
        case kitchen_cabinet:
        case stove:
            return units::Length(0.3);
        default:
            return std::nullopt;
    }
}

// From the wall a window is in.
units::Length from_wall(const house::Plan& plan, house::WallSide wall, const registers::Spot& spot) {
    switch (wall) {
        case house::WallSide::north:
            return plan.depth - spot.north;
        case house::WallSide::south:
            return spot.north;
        case house::WallSide::east:
            return plan.width - spot.east;
        case house::WallSide::west:
            break;
    }
    return spot.east;
}

struct Stand {
    units::Length distance = usually_stands;
    std::string at;
};

Stand nearest_stand_to(const house::Plan& plan, house::WallSide wall) {
    Stand nearest;
    for (const house::Fixture& fixture : plan.fixtures) {
        const auto before = before_a_fixture(fixture.kind);
        if (!before) continue;
        const registers::Spot middle{0.5 * (fixture.box.west + fixture.box.east),
                                     0.5 * (fixture.box.south + fixture.box.north)};
        const units::Length there = std::max(stands_near, from_wall(plan, wall, middle) + *before);
        if (nearest.at.empty() || there < nearest.distance) nearest = {there, fixture.name};
    }
    return nearest;
}

FallingAir off_window(const house::Room& room, const house::PlanWindow& window,
                      const loads::RoomHeatLoss& loss, std::size_t surface) {
    const loads::SurfaceLoss& lost = loss.surfaces[surface];
    const units::Resistance film = loads::inside_film(room.surfaces[surface]);
    FallingAir air;
    air.window = window.name;
    air.glass =
        loads::inside_surface_temperature(loads::temperature_factor(lost.u, film), loss.inside, lost.beyond);
    air.sweats_above = std::min(1.0, loads::sweating_humidity(air.glass, loss.inside));
    const Stand stand = nearest_stand_to(*room.plan, window.wall);
    air.distance = stand.distance;
    air.at = stand.at;
    const registers::ColdGlass glass =
        registers::cold_glass(window.height, lost.u, film, loss.inside - lost.beyond);
    air.speed = registers::falling_air_speed(glass, air.distance);
    air.air = loss.inside - registers::falling_air_colder(glass, air.distance);
    const auto felt_at = [&](units::Length distance) {
        return registers::draught(loss.inside - registers::falling_air_colder(glass, distance),
                                  registers::falling_air_speed(glass, distance));
    };
    const registers::Draught felt = felt_at(air.distance);
    air.dissatisfied = felt.dissatisfied;
    air.tested = felt.tested;
    if (!stand.at.empty()) return air;
    air.dissatisfied_near = felt_at(stands_near).dissatisfied;
    air.dissatisfied_far = felt_at(stands_far).dissatisfied;
    return air;
}

}  // namespace

std::vector<FallingAir> falling_at_windows(const house::House& house, const loads::RoomHeatLoss& loss) {
    const house::Room& room = house.room(loss.room);
    std::vector<FallingAir> all;
    for (const house::PlanWindow& window : room.plan->windows)
        for (std::size_t s = 0; s < room.surfaces.size(); ++s)
            if (room.surfaces[s].kind == house::SurfaceKind::window && room.surfaces[s].name == window.name)
                all.push_back(off_window(room, window, loss, s));
    return all;
}

const FallingAir* felt_most(const std::vector<FallingAir>& falling) {
    const auto most = std::max_element(
        falling.begin(), falling.end(),
        [](const FallingAir& a, const FallingAir& b) { return a.dissatisfied < b.dissatisfied; });
    return most == falling.end() || most->speed.si() <= 0 ? nullptr : &*most;
}

WindowSide window_side(const std::vector<FallingAir>& falling) {
    constexpr double useful = 0.1, needed = 0.2;  // of people; ISO 7730's categories A and B (memory)
    const FallingAir* most = felt_most(falling);
    if (!most || most->dissatisfied < useful) return WindowSide::indifferent;
    return most->dissatisfied > needed ? WindowSide::needed : WindowSide::useful;
}

}  // namespace questions
