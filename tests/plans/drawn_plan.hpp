// Rooms drawn in letters, a foot to a letter, north at the top:
//
//     # outside wall   = inside wall   W window in an outside wall   D door in a wall
//     . floor   T tub   S shower   O toilet   V vanity   B bed
//
// The outermost letters are the walls. Letters of one kind are one fixture (their bounding box). Doors swing
// nowhere unless a test says so.
#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "house/house.hpp"
#include "units/unit.hpp"

namespace drawn_plan {

using Drawing = std::vector<std::string>;

inline constexpr units::Length letter{1 * units::unit::foot};

inline house::Room room_of(const Drawing& drawing) {
    const int rows = static_cast<int>(drawing.size()), columns = static_cast<int>(drawing[0].size());
    const auto at = [&](int column, int row_from_south) {
        return drawing[static_cast<std::size_t>(rows - 1 - row_from_south)][static_cast<std::size_t>(column)];
    };
    house::Room room;
    room.id = {0};
    room.name = "room";
    room.ceiling = 8 * units::unit::foot;
    house::Plan plan;
    plan.width = (columns - 2) * letter;
    plan.depth = (rows - 2) * letter;
    using house::WallSide;
    const auto wall_letter = [&](WallSide side, int i) {
        switch (side) {
            case WallSide::south:
                return at(i, 0);
            case WallSide::north:
                return at(i, rows - 1);
            case WallSide::west:
                return at(0, i);
            default:
                return at(columns - 1, i);
        }
    };
    for (const WallSide side : {WallSide::north, WallSide::south, WallSide::east, WallSide::west}) {
        const bool long_way = side == WallSide::north || side == WallSide::south;
        const int letters = (long_way ? columns : rows) - 2;
        house::PlanWall& wall = plan.walls[static_cast<std::size_t>(side)];
        wall.length = letters * letter;
        int from = 0;
        for (int i = 1; i <= letters + 1; ++i) {
            const char now = i <= letters ? wall_letter(side, i) : '\0';
            if (now == '#' || now == 'W') wall.beyond = house::Space::outdoors, wall.faces_it = wall.length;
            const char before = from > 0 ? wall_letter(side, from) : '\0';
            if (from > 0 && now != before) {
                const house::Stretch stretch{side, (from - 1) * letter, (i - 1) * letter};
                if (before == 'W')
                    plan.windows.push_back({std::string(house::word(side)) + " window", side, stretch,
                                            stretch.to - stretch.from, 4 * units::unit::foot,
                                            2 * units::unit::foot});
                else
                    plan.doors.push_back({side, stretch, house::DoorHanging::none, {}});
                from = 0;
            }
            if (from == 0 && (now == 'W' || now == 'D')) from = i;
        }
    }
    std::map<char, house::Fixture> fixtures;
    const std::map<char, house::FixtureKind> kinds{{'T', house::FixtureKind::tub},
                                                   {'S', house::FixtureKind::shower},
                                                   {'O', house::FixtureKind::toilet},
                                                   {'V', house::FixtureKind::vanity},
                                                   {'B', house::FixtureKind::bed}};
    for (int row = 1; row < rows - 1; ++row)
        for (int column = 1; column < columns - 1; ++column) {
            const auto kind = kinds.find(at(column, row));
            if (kind == kinds.end()) continue;
            const house::Box cell{(column - 1) * letter, (row - 1) * letter, column * letter, row * letter};
            const auto [fixture, is_new] = fixtures.try_emplace(kind->first);
            house::Box& box = fixture->second.box;
            if (is_new) {
                fixture->second = {kind->second, std::string(house::word(kind->second)), cell};
                continue;
            }
            box = {std::min(box.west, cell.west), std::min(box.south, cell.south),
                   std::max(box.east, cell.east), std::max(box.north, cell.north)};
        }
    for (const auto& [drawn_as, fixture] : fixtures) plan.fixtures.push_back(fixture);
    room.width = plan.width;
    room.depth = plan.depth;
    room.plan = std::move(plan);
    return room;
}

// West for east.
inline Drawing mirrored(Drawing drawing) {
    for (std::string& row : drawing) std::reverse(row.begin(), row.end());
    return drawing;
}

// Joists from wall to wall, the first so far from the west or south wall.
inline void lay_joists(house::Room& room, house::JoistsRun run, units::Length first, units::Length spacing,
                       units::Length thick) {
    house::JoistFloor floor;
    floor.run = run;
    const units::Length across = run == house::JoistsRun::north_south ? room.plan->width : room.plan->depth;
    int number = 1;
    for (units::Length middle = first; middle < across; middle += spacing)
        floor.joists.push_back({number++, middle - 0.5 * thick, middle + 0.5 * thick});
    room.plan->floor = std::move(floor);
}

// Studs in one wall, likewise from its west or south end.
inline void stand_studs(house::Room& room, house::WallSide side, units::Length first, units::Length spacing,
                        units::Length thick) {
    house::PlanWall& wall = room.plan->walls[static_cast<std::size_t>(side)];
    int number = 1;
    for (units::Length middle = first; middle < wall.length; middle += spacing)
        wall.studs.push_back({number++, middle - 0.5 * thick, middle + 0.5 * thick});
}

}  // namespace drawn_plan
