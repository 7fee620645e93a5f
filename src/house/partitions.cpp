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

// Lower id first; of that room its walls, its ceiling or its floor.
struct Between {
    int first = 0, second = 0;
    SurfaceKind kind = SurfaceKind::wall;
    auto operator<=>(const Between&) const = default;
};

// A slope is a ceiling here; what is a ceiling of one room is a floor of the other.
SurfaceKind flat(SurfaceKind kind) { return kind == SurfaceKind::slope ? SurfaceKind::ceiling : kind; }
SurfaceKind from_the_other_side(SurfaceKind kind) {
    if (kind == SurfaceKind::ceiling) return SurfaceKind::floor;
    return kind == SurfaceKind::floor ? SurfaceKind::ceiling : kind;
}
Between between(int room, int other, SurfaceKind kind) {
    if (room < other) return {room, other, flat(kind)};
    return {other, room, from_the_other_side(flat(kind))};
}

struct Partition {
    units::Area area;
    Maybe<std::string> construction;
};

const SurveyWall* named_wall(const SurveyRoom& room, WallSide side) {
    for (const SurveyWall& wall : room.walls)
        if (wall.side == side && (wall.faces || !wall.room_grows)) return &wall;
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
        for (const auto& [where, partition] : between_) {
            const Assembly make = assembly(partition, where);
            add_surface(where.first, where.second, {where.kind, partition.area, make});
            add_surface(where.second, where.first, {from_the_other_side(where.kind), partition.area, make});
        }
        for (std::size_t i = 0; i < rooms().size(); ++i) add_rest(static_cast<int>(i));
    }

  private:
    std::vector<Room>& rooms() { return work_.house.rooms; }
    Room& room(int i) { return rooms()[static_cast<std::size_t>(i)]; }
    const SurveyRoom& written(int i) { return work_.survey.rooms[static_cast<std::size_t>(i)]; }

    // The surfaces of room i that name another room; where that one names i too, the smaller of both is what
    // they can share.
    void add_named(int i) {
        std::map<Between, Partition> named;
        for (const SurveyWall& wall : written(i).walls)
            add_facing(i, wall,
                       {SurfaceKind::wall, wall.area ? wall.area->value : wall_area(room(i), wall.side)},
                       named);
        for (const SurveySurface& surface : written(i).surfaces)
            add_facing(i, surface, {kind_of(surface), listed_area(room(i), surface)}, named);
        for (const auto& [where, partition] : named) {
            const auto [at, is_new] = between_.try_emplace(where, partition);
            if (is_new) continue;
            at->second.area = std::min(at->second.area, partition.area);
            if (!at->second.construction) at->second.construction = partition.construction;
        }
    }

    struct Extent {
        SurfaceKind kind;
        units::Area area;
    };
    template <class Written>
    void add_facing(int i, const Written& wall, Extent extent, std::map<Between, Partition>& named) {
        const auto other = wall.faces ? find_named(work_.survey.rooms, wall.faces->value) : std::nullopt;
        if (!other || extent.area <= units::Area()) return;
        if (*other == i) {
            work_.ledger.blame(wall.faces->place, "a wall of the " + room(i).name + " faces its own room");
            return;
        }
        blame_words_of_the_ground(work_, wall.ground, "wall inside", room(i));
        Partition& partition = named[between(i, *other, extent.kind)];
        partition.area += extent.area;
        const auto& make = at_stage(work_, wall.construction, wall.becomes);
        if (!partition.construction) partition.construction = make;
    }

    void add_drawn(int i, int j) {
        if (between_.count({i, j, SurfaceKind::wall}) || room(i).storey != room(j).storey) return;
        if (!written(i).corner || !written(j).corner) return;
        const Two here = corner_of(work_, written(i)), there = corner_of(work_, written(j));
        for (WallSide side : all_sides) {
            if (named_wall(written(i), side) || named_wall(written(j), opposite(side))) continue;
            const double length = beside(room(i), here, side, room(j), there);
            if (length > 0)
                between_[{i, j, SurfaceKind::wall}].area +=
                    units::Length(length) * std::min(room(i).ceiling, room(j).ceiling);
        }
    }

    Assembly assembly(const Partition& partition, const Between& pair) {
        if (is_known(partition.construction)) return assembly_named(work_, *partition.construction);
        return usual(room(pair.first).winter_indoor != room(pair.second).winter_indoor,
                     "wall between the " + room(pair.first).name + " and the " + room(pair.second).name);
    }

    // Between rooms at one temperature nothing flows: the default's value stands in, and is no assumption.
    Assembly usual(bool heat_flows, const std::string& used_for) {
        return units::Transmittance(heat_flows ? work_.ledger.take(DefaultId::partition, used_for)
                                               : default_row(DefaultId::partition).value);
    }

    struct Seen {
        SurfaceKind kind;
        units::Area area;
        const Assembly& make;
    };
    void add_surface(int of, int towards, const Seen& seen) {
        room(of).surfaces.push_back({SurfaceKind::partition,
                                     std::string(word(seen.kind)) + " to the " + room(towards).name,
                                     seen.area, RoomId{towards}, seen.make});
    }

    // Inside walls that face rooms nobody described: what no described room takes of the walls inside.
    void add_rest(int i) {
        units::Area rest;
        for (WallSide side : all_sides)
            if (lies_inside(work_.survey, written(i), side)) rest += wall_area(room(i), side);
        for (const auto& [where, partition] : between_)
            if (where.kind == SurfaceKind::wall && (where.first == i || where.second == i))
                rest -= partition.area;
        for (const SurveySurface& surface : written(i).surfaces)
            if (kind_of(surface) == SurfaceKind::wall && surface.faces &&
                !find_named(work_.survey.rooms, surface.faces->value))
                rest -= listed_area(room(i), surface);
        const bool flows = room(i).winter_indoor != work_.house.site.winter_indoor;
        if (rest.si() <= 1e-9 || !flows) return;
        room(i).surfaces.push_back({SurfaceKind::partition, "other inside walls", rest, Space::heated_rooms,
                                    usual(true, "inside walls of the " + room(i).name)});
    }

    Work& work_;
    std::map<Between, Partition> between_;
};

}  // namespace

void build_partitions(Work& work) { Partitions(work).build(); }

}  // namespace house
