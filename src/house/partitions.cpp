// Walls between rooms. Each partition is a surface of both its rooms, so that what one loses the other gains
// exactly.
//
// A wall that names a room is a partition to it over its whole face. A wall the sheet does not name faces the
// rooms drawn beside it (same storey, gap of at most a foot), as far as they overlap; what is left faces the
// rooms not described.
#include <algorithm>
#include <map>

#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

using Pair = std::pair<int, int>;  // lower id first

struct Partition {
    units::Area area;
    Maybe<std::string> construction;
};

const SurveyWall* named_wall(const SurveyRoom& room, WallSide side) {
    for (const SurveyWall& wall : room.walls)
        if (wall.side == side) return &wall;
    return nullptr;
}

double shared(double a, double a_size, double b, double b_size) {
    return std::max(0.0, std::min(a + a_size, b + b_size) - std::max(a, b));
}

// Length over which room b stands beside the given wall of room a; 0 where it does not.
double beside(const Room& a, const Two& a_corner, WallSide side, const Room& b, const Two& b_corner) {
    const double ax = a_corner.first.si(), ay = a_corner.second.si(), bx = b_corner.first.si(),
                 by = b_corner.second.si();
    const double aw = a.width.si(), ad = a.depth.si(), bw = b.width.si(), bd = b.depth.si();
    double gap = 0, length = 0;
    switch (side) {
        case WallSide::north:
            gap = by - (ay + ad), length = shared(ax, aw, bx, bw);
            break;
        case WallSide::south:
            gap = ay - (by + bd), length = shared(ax, aw, bx, bw);
            break;
        case WallSide::east:
            gap = bx - (ax + aw), length = shared(ay, ad, by, bd);
            break;
        case WallSide::west:
            gap = ax - (bx + bw), length = shared(ay, ad, by, bd);
            break;
    }
    const double thickest_wall = units::unit::foot.si();
    return gap > -0.02 && gap <= thickest_wall ? length : 0;
}

constexpr WallSide opposite(WallSide side) { return static_cast<WallSide>((static_cast<int>(side) + 2) % 4); }
constexpr WallSide all_sides[] = {WallSide::north, WallSide::east, WallSide::south, WallSide::west};

class Partitions {
  public:
    explicit Partitions(Work& work) : work_(work) {
        for (std::size_t i = 0; i < rooms().size(); ++i) add_named(static_cast<int>(i));
        for (std::size_t i = 0; i < rooms().size(); ++i)
            for (std::size_t j = i + 1; j < rooms().size(); ++j)
                add_drawn(static_cast<int>(i), static_cast<int>(j));
    }

    void build() {
        for (const auto& [pair, partition] : between_) {
            const Assembly make = assembly(partition, pair);
            add_surface(pair.first, pair.second, partition.area, make);
            add_surface(pair.second, pair.first, partition.area, make);
        }
        for (std::size_t i = 0; i < rooms().size(); ++i) add_rest(static_cast<int>(i));
    }

  private:
    std::vector<Room>& rooms() { return work_.house.rooms; }
    Room& room(int i) { return rooms()[static_cast<std::size_t>(i)]; }
    const SurveyRoom& written(int i) { return work_.survey.rooms[static_cast<std::size_t>(i)]; }

    // The walls of room i that name another room; where that one names i too, the smaller of both is what
    // they can share.
    void add_named(int i) {
        std::map<int, Partition> named;
        for (const SurveyWall& wall : written(i).walls) {
            const auto other = wall.faces ? find_named(work_.survey.rooms, wall.faces->value) : std::nullopt;
            if (!other) continue;
            if (*other == i) {
                work_.ledger.blame(wall.faces->place,
                                   "a wall of the " + room(i).name + " faces its own room");
                continue;
            }
            Partition& partition = named[*other];
            partition.area += wall_area(room(i), wall.side);
            const auto& make = at_stage(work_, wall.construction, wall.becomes);
            if (!partition.construction) partition.construction = make;
        }
        for (const auto& [other, partition] : named) {
            const auto [at, is_new] = between_.try_emplace(std::minmax(i, other), partition);
            if (is_new) continue;
            at->second.area = std::min(at->second.area, partition.area);
            if (!at->second.construction) at->second.construction = partition.construction;
        }
    }

    void add_drawn(int i, int j) {
        if (between_.count({i, j}) || room(i).storey != room(j).storey) return;
        if (!written(i).corner || !written(j).corner) return;
        for (WallSide side : all_sides) {
            if (named_wall(written(i), side) || named_wall(written(j), opposite(side))) continue;
            const double length =
                beside(room(i), written(i).corner->value, side, room(j), written(j).corner->value);
            if (length > 0)
                between_[{i, j}].area += units::Length(length) * std::min(room(i).ceiling, room(j).ceiling);
        }
    }

    Assembly assembly(const Partition& partition, Pair pair) {
        if (partition.construction) return assembly_named(work_, *partition.construction);
        return usual(room(pair.first).winter_indoor != room(pair.second).winter_indoor,
                     "wall between the " + room(pair.first).name + " and the " + room(pair.second).name);
    }

    // Between rooms at one temperature nothing flows: the default's value stands in, and is no assumption.
    Assembly usual(bool heat_flows, const std::string& used_for) {
        return units::Transmittance(heat_flows ? work_.ledger.take(DefaultId::partition, used_for)
                                               : default_row(DefaultId::partition).value);
    }

    void add_surface(int of, int towards, units::Area area, const Assembly& make) {
        room(of).surfaces.push_back(
            {SurfaceKind::partition, "wall to the " + room(towards).name, area, RoomId{towards}, make});
    }

    // Inside walls that face rooms nobody described: what no described room takes of the walls inside.
    void add_rest(int i) {
        units::Area rest;
        for (WallSide side : all_sides)
            if (lies_inside(work_.survey, written(i), side)) rest += wall_area(room(i), side);
        for (const auto& [pair, partition] : between_)
            if (pair.first == i || pair.second == i) rest -= partition.area;
        const bool flows = room(i).winter_indoor != work_.house.site.winter_indoor;
        if (rest.si() <= 1e-9 || !flows) return;
        room(i).surfaces.push_back({SurfaceKind::partition, "other inside walls", rest, Space::heated_rooms,
                                    usual(true, "inside walls of the " + room(i).name)});
    }

    Work& work_;
    std::map<Pair, Partition> between_;
};

}  // namespace

void build_partitions(Work& work) { Partitions(work).build(); }

}  // namespace house
