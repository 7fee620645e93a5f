#include "registers/locations.hpp"

#include <algorithm>
#include <array>
#include <functional>

#include "registers/floor_space.hpp"

namespace registers {
namespace {

using house::Box;
using house::Mount;
using house::Plan;
using house::WallSide;

constexpr units::Length trim{2 * units::unit::inch}, beside_frame{6 * units::unit::inch},
    low_grille{4 * units::unit::inch}, step{0.25 * units::unit::inch}, out_at_most{8 * units::unit::inch};

class Finder {
  public:
    Finder(const house::Room& room, const Looked& looked) : plan_(*room.plan), looked_(looked) {}

    std::vector<Location> found() {
        for (const house::PlanWindow& window : plan_.windows)
            if (window.stretch && is_outside(plan_.wall(window.wall)) &&
                (looked_.window.empty() || looked_.window == window.name))
                at_window(window);
        for (const WallSide wall : all_walls) {
            if (!is_outside(plan_.wall(wall))) continue;
            if (!has_window(wall)) floor_along(wall);
            low_in_outside_wall(wall);
        }
        for (const house::Fixture& fixture : plan_.fixtures) toe_kick(fixture);
        for (const WallSide wall : all_walls)
            if (plan_.wall(wall).beyond == house::Space::heated_rooms) in_inside_wall(wall);
        if (wanted(Mount::ceiling)) in_ceiling();
        return std::move(found_);
    }

  private:
    static constexpr std::array all_walls{WallSide::north, WallSide::east, WallSide::south, WallSide::west};

    bool wanted(Mount mount) const {
        if (looked_.mount) return *looked_.mount == mount;
        return mount != Mount::high_wall;  // only on request
    }
    bool has_window(WallSide wall) const {
        return std::any_of(plan_.windows.begin(), plan_.windows.end(),
                           [&](const house::PlanWindow& window) { return window.wall == wall; });
    }
    bool joists_cross(WallSide wall) const {  // square to the wall: a place along it clears them
        return plan_.floor && runs_east(wall) == (plan_.floor->run == house::JoistsRun::north_south);
    }

    Location floor_at(WallSide wall, units::Length along, units::Length out) const {
        Location location;
        location.mount = Mount::floor;
        location.wall = wall;
        location.along = along;
        location.face = box_at(plan_, wall, along, out, looked_.face);
        location.middle = middle_of(location.face);
        if (const int joist = joist_at(plan_, location.face))
            location.stopped = Stopped{Stop::joist, {}, joist};
        else if (auto door = stopped_by_door(plan_, wall, along, looked_.face.width))
            location.stopped = door;
        else
            location.stopped = stopped_by_things(plan_, location.face);
        return location;
    }

    bool fits(WallSide wall, units::Length along, units::Length wide) const {
        const units::Length half = 0.5 * wide;
        return along >= half && along + half <= plan_.wall(wall).length;
    }

    // The nearest place that clears the joists: along the wall where they cross it, out from it where they
    // run with it.
    std::optional<Location> cleared(WallSide wall, units::Length along, units::Length at_most) const {
        const bool crossed = joists_cross(wall);
        const units::Length limit = crossed ? at_most : out_at_most;
        for (units::Length by = step; by <= limit; by += step) {
            if (!crossed) {
                const Location out = floor_at(wall, along, trim + by);
                if (joist_at(plan_, out.face) == 0) return out;
                continue;
            }
            // To the west or south first: of two equal ones the mirrored room takes the mirrored one by the
            // nearer corner of the room.
            const bool west_first = along <= 0.5 * plan_.wall(wall).length;
            for (const double sign : {west_first ? -1.0 : 1.0, west_first ? 1.0 : -1.0}) {
                const units::Length there = along + sign * by;
                if (fits(wall, there, looked_.face.width) &&
                    joist_at(plan_, box_at(plan_, wall, there, trim, looked_.face)) == 0)
                    return floor_at(wall, there, trim);
            }
        }
        return std::nullopt;
    }

    void keep(Location location, Where where, const std::string& name, units::Length window_middle) {
        location.where = where;
        location.name = name;
        if (where == Where::under_window || where == Where::beside_window)
            location.off_centre = location.along - window_middle;
        found_.push_back(std::move(location));
    }

    void floor_near(WallSide wall, units::Length along, Where where, const std::string& name,
                    units::Length at_most, units::Length window_middle) {
        if (!fits(wall, along, looked_.face.width)) return;
        const Location there = floor_at(wall, along, trim);
        const bool joist = there.stopped && there.stopped->by == Stop::joist;
        keep(there, where, name, window_middle);
        if (!joist) return;
        if (const auto moved = cleared(wall, along, at_most)) keep(*moved, where, name, window_middle);
    }

    void at_window(const house::PlanWindow& window) {
        if (!wanted(Mount::floor)) return;
        const units::Length middle = 0.5 * (window.stretch->from + window.stretch->to);
        const units::Length half = 0.5 * looked_.face.width;
        floor_near(window.wall, middle, Where::under_window, window.name, 0.5 * window.width + half, middle);
        const units::Length aside = beside_frame + half;
        for (const units::Length along : {window.stretch->from - aside, window.stretch->to + aside})
            floor_near(window.wall, along, Where::beside_window, window.name, beside_frame, middle);
    }

    void floor_along(WallSide wall) {
        if (!wanted(Mount::floor)) return;
        const units::Length length = plan_.wall(wall).length;
        const auto free = nearest_free(wall, 0.5 * length, looked_.face.width, [&](units::Length along) {
            return !floor_at(wall, along, trim).stopped;
        });
        if (free)
            keep(floor_at(wall, *free, trim), Where::outside_wall, {}, {});
        else
            floor_near(wall, 0.5 * length, Where::outside_wall, {}, 0.5 * length, {});
    }

    units::Length from_along(WallSide wall) const {
        return runs_east(wall) ? looked_.from.east : looked_.from.north;
    }

    // The place nearest to one wanted that a test lets pass; by whole inches, between studs by eighths: a
    // boot may just fit.
    std::optional<units::Length> nearest_free(WallSide wall, units::Length want, units::Length wide,
                                              const std::function<bool(units::Length)>& passes) const {
        const house::PlanWall& along = plan_.wall(wall);
        const units::Length length = along.length,
                            by_so_much = (along.studs.empty() ? 1 : 0.125) * units::unit::inch;
        // Of two as near the one where the run comes from: a mirrored room has the mirrored one.
        const double first = from_along(wall) <= want ? -1 : 1;
        for (units::Length by; by <= length; by += by_so_much)
            for (const double sign : {first, -first})
                if (fits(wall, want + sign * by, wide) && passes(want + sign * by)) return want + sign * by;
        return std::nullopt;
    }

    Location wall_at(WallSide wall, units::Length along, Mount mount) const {
        Location location;
        location.mount = mount;
        location.wall = wall;
        location.along = along;
        const units::Length wide = looked_.wall_face.width;
        location.face = box_at(plan_, wall, along, {}, {wide, low_grille});
        location.middle = middle_of(location.face);
        location.stopped = stopped_by_door(plan_, wall, along, wide);
        if (!location.stopped && mount == Mount::low_wall)
            location.stopped = stopped_by_things(plan_, location.face);
        if (const int stud = stud_at(plan_.wall(wall), along, wide); stud && !location.stopped)
            location.stopped = Stopped{Stop::stud, {}, stud};
        return location;
    }

    // The nearest to one wanted that nothing stops; where something stops them all, one that only a stud
    // stops, which can be moved.
    void in_wall_near(WallSide wall, units::Length want, Mount mount, Where where) {
        const auto nearest = [&](const std::function<bool(const Location&)>& passes) {
            return nearest_free(wall, want, looked_.wall_face.width,
                                [&](units::Length along) { return passes(wall_at(wall, along, mount)); });
        };
        auto there = nearest([](const Location& location) { return !location.stopped; });
        if (!there)
            there = nearest([](const Location& location) { return location.stopped->by == Stop::stud; });
        keep(wall_at(wall, there.value_or(want), mount), where, {}, {});
    }

    void low_in_outside_wall(WallSide wall) {
        if (wanted(Mount::low_wall))
            in_wall_near(wall, 0.5 * plan_.wall(wall).length, Mount::low_wall, Where::outside_wall);
    }

    void in_inside_wall(WallSide wall) {
        for (const Mount mount : {Mount::low_wall, Mount::high_wall}) {
            if (!wanted(mount)) continue;
            const units::Length from = from_along(wall);
            const units::Length half = 0.5 * looked_.wall_face.width;
            const units::Length want = std::clamp(from, half, std::max(half, plan_.wall(wall).length - half));
            in_wall_near(wall, want, mount, Where::inside_wall);
        }
    }

    void toe_kick(const house::Fixture& fixture) {
        const bool cabinet =
            fixture.kind == house::FixtureKind::vanity || fixture.kind == house::FixtureKind::kitchen_cabinet;
        if (!cabinet || !wanted(Mount::toe_kick)) return;
        const Box& box = fixture.box;
        // Its front looks into the room: the side farthest from the wall it looks at.
        const std::array<units::Length, 4> before{plan_.depth - box.north, plan_.width - box.east, box.south,
                                                  box.west};  // north, east, south, west
        const auto front =
            static_cast<std::size_t>(std::max_element(before.begin(), before.end()) - before.begin());
        const Spot middle = middle_of(box);
        constexpr units::Length thin{0.5 * units::unit::inch};
        const units::Length half = 0.5 * looked_.face.width;
        const std::array<Box, 4> faces{
            Box{middle.east - half, box.north, middle.east + half, box.north + thin},
            Box{box.east, middle.north - half, box.east + thin, middle.north + half},
            Box{middle.east - half, box.south - thin, middle.east + half, box.south},
            Box{box.west - thin, middle.north - half, box.west, middle.north + half}};
        Location location;
        location.mount = Mount::toe_kick;
        location.face = faces.at(front);
        location.middle = middle_of(location.face);
        for (const house::Fixture& other : plan_.fixtures)
            if (other.kind == house::FixtureKind::shower && distance(location.face, other.box) < splash)
                location.stopped = Stopped{Stop::splash, other.name, 0};
        keep(std::move(location), Where::toe_kick, fixture.name, {});
    }

    void in_ceiling() {
        Location location;
        location.mount = Mount::ceiling;
        location.middle = {0.5 * plan_.width, 0.5 * plan_.depth};
        const units::Length half = 0.5 * looked_.face.width;
        location.face = {location.middle.east - half, location.middle.north - half,
                         location.middle.east + half, location.middle.north + half};
        for (const house::Fixture& fixture : plan_.fixtures)
            if (fixture.kind == house::FixtureKind::shower && distance(location.face, fixture.box).si() <= 0)
                location.stopped = Stopped{Stop::splash, fixture.name, 0};
        keep(std::move(location), Where::ceiling, {}, {});
    }

    const Plan& plan_;
    const Looked& looked_;
    std::vector<Location> found_;
};

// 0, all or half of an extent, away from the sides that are outside.
units::Length inner(bool low_outside, bool high_outside, units::Length extent) {
    if (low_outside == high_outside) return 0.5 * extent;
    return low_outside ? extent : units::Length();
}

}  // namespace

std::vector<Location> locations(const house::Room& room, const Looked& looked) {
    return Finder(room, looked).found();
}

Spot inner_corner(const Plan& plan) {
    const auto outside = [&](WallSide wall) { return is_outside(plan.wall(wall)); };
    return {inner(outside(WallSide::west), outside(WallSide::east), plan.width),
            inner(outside(WallSide::south), outside(WallSide::north), plan.depth)};
}

Spot at_wall(const Plan& plan, WallSide wall, units::Length along, const house::Rectangular& face) {
    return middle_of(box_at(plan, wall, along, trim, face));
}

}  // namespace registers
