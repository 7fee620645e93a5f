#include "registers/floor_space.hpp"

#include <algorithm>
#include <cmath>

namespace registers {

bool runs_east(house::WallSide wall) {
    return wall == house::WallSide::south || wall == house::WallSide::north;
}

namespace {

using house::Box;
using house::Plan;
using house::Stretch;
using house::WallSide;

constexpr units::Length beside_joist{0.25 * units::unit::inch};
// The outside of a stack is 1/4 in over its name in all, as routes/bay_section.hpp has it.
constexpr units::Length beside_stud{0.125 * units::unit::inch};
constexpr units::Length hair{0.001};  // a measure met exactly is met in the mirrored room too

bool meet(units::Length from, units::Length to, const Stretch& stretch) {
    return from + hair < stretch.to && to > stretch.from + hair;
}

// What an open leaf hides: from it to 2 ft beyond, where a wall is near.
Box behind_leaf(const house::PlanDoor& door) {
    constexpr units::Length hidden{2 * units::unit::foot};
    const house::DoorSwing& swing = *door.swing;
    const bool opens_north = runs_east(door.wall);  // the leaf then lies south-north
    const units::Length east =
        (opens_north ? !swing.towards_east : swing.towards_east) ? 1.0 * swing.leaf : -swing.leaf;
    const units::Length north =
        (opens_north ? swing.towards_north : !swing.towards_north) ? 1.0 * swing.leaf : -swing.leaf;
    const double share = hidden / swing.leaf;
    const units::Length to_east = swing.hinge_east + (opens_north ? share : 1.0) * east;
    const units::Length to_north = swing.hinge_north + (opens_north ? 1.0 : share) * north;
    return {std::min(swing.hinge_east, to_east), std::min(swing.hinge_north, to_north),
            std::max(swing.hinge_east, to_east), std::max(swing.hinge_north, to_north)};
}

// The first that a boot between these two would hit; 0: none.
int member_between(const std::vector<house::Member>& members, units::Length from, units::Length to) {
    for (const house::Member& member : members)
        if (from + hair < member.to && to > member.from + hair) return member.number;
    return 0;
}

bool covers_the_floor(house::FixtureKind kind) { return kind != house::FixtureKind::basin; }

}  // namespace

bool is_outside(const house::PlanWall& wall) {
    return wall.beyond == house::Space::outdoors && wall.faces_it.si() > 0;
}

Box box_at(const Plan& plan, WallSide wall, units::Length along, units::Length out,
           const house::Rectangular& face) {
    const units::Length half = 0.5 * face.width, near = out, far = out + face.height;
    switch (wall) {
        case WallSide::south:
            return {along - half, near, along + half, far};
        case WallSide::north:
            return {along - half, plan.depth - far, along + half, plan.depth - near};
        case WallSide::west:
            return {near, along - half, far, along + half};
        case WallSide::east:
            break;
    }
    return {plan.width - far, along - half, plan.width - near, along + half};
}

Spot middle_of(const Box& box) { return {0.5 * (box.west + box.east), 0.5 * (box.south + box.north)}; }

int joist_at(const Plan& plan, const Box& box) {
    if (!plan.floor) return 0;
    const bool by_east = plan.floor->run == house::JoistsRun::north_south;
    const auto& joists = plan.floor->joists;
    return by_east ? member_between(joists, box.west - beside_joist, box.east + beside_joist)
                   : member_between(joists, box.south - beside_joist, box.north + beside_joist);
}

int stud_at(const house::PlanWall& wall, units::Length along, units::Length wide) {
    const units::Length half = 0.5 * wide + beside_stud;
    return member_between(wall.studs, along - half, along + half);
}

std::optional<Stopped> stopped_by_things(const Plan& plan, const Box& box) {
    for (const house::Fixture& fixture : plan.fixtures)
        if (covers_the_floor(fixture.kind) && house::overlap(fixture.box, box))
            return Stopped{Stop::fixture, fixture.name, 0};
    for (const house::PlanDoor& door : plan.doors)
        if (door.swing && (house::sweeps(*door.swing, box) || house::overlap(behind_leaf(door), box)))
            return Stopped{Stop::door_swing, {}, 0};
    for (const house::Fixture& fixture : plan.fixtures)
        if (fixture.kind == house::FixtureKind::shower && distance(box, fixture.box) < splash - hair)
            return Stopped{Stop::splash, fixture.name, 0};
    return std::nullopt;
}

std::optional<Stopped> stopped_by_door(const Plan& plan, WallSide wall, units::Length along,
                                       units::Length wide) {
    for (const house::PlanDoor& door : plan.doors)
        if (door.stretch && door.wall == wall && meet(along - 0.5 * wide, along + 0.5 * wide, *door.stretch))
            return Stopped{Stop::door, {}, 0};
    return std::nullopt;
}

units::Length longest_between_joists(const Plan& plan) {
    constexpr units::Length any{10};
    if (!plan.floor || plan.floor->joists.size() < 2) return any;
    units::Length widest;
    const std::vector<house::Joist>& joists = plan.floor->joists;
    for (std::size_t i = 1; i < joists.size(); ++i)
        widest = std::max(widest, joists[i].from - joists[i - 1].to);
    return std::max(units::Length(), widest - 2 * beside_joist);
}

units::Length distance(const Box& a, const Box& b) {
    const double east = std::max({0.0, (b.west - a.east).si(), (a.west - b.east).si()});
    const double north = std::max({0.0, (b.south - a.north).si(), (a.south - b.north).si()});
    return units::Length(std::hypot(east, north));
}

}  // namespace registers
