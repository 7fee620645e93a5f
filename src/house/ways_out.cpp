// How the air that is blown into a room gets out again: under its doors, or through an opening.
#include <algorithm>

#include "house/builders.hpp"
#include "house/names.hpp"
#include "units/unit.hpp"

namespace house {
namespace {

constexpr units::Length usual_door = 30 * units::unit::inch;  // wide; a stock inside door (common practice)
constexpr units::Length most_undercut = 4 * units::unit::inch;

// A wall the sheet does not name, or one that faces heated rooms or a room, lies inside.
bool faces_inside(const Maybe<std::string>& faces) {
    const auto space = faces ? space_named(faces->value) : std::nullopt;
    return !space || *space == Space::heated_rooms;
}

bool is_inside(const SurveyRoom& room, const SurveyDoor& door) {
    if (door.surface) {
        const auto surface = find_named(room.surfaces, door.surface->value);
        return !surface || faces_inside(room.surfaces[static_cast<std::size_t>(*surface)].faces);
    }
    return std::none_of(room.walls.begin(), room.walls.end(), [&](const SurveyWall& wall) {
        return door.wall && wall.side == door.wall->value && !faces_inside(wall.faces);
    });
}

void blame_door(Work& work, const Room& room, const SurveyDoor& door, bool inside) {
    Ledger& ledger = work.ledger;
    if (!inside && (door.undercut || door.shut))
        ledger.blame(door.undercut ? door.undercut->place : door.shut->place,
                     "a door of the " + room.name + " that leads out of the house lets no air back",
                     "undercut and shut belong to inside doors, in a wall that faces another room");
    if (door.undercut && door.undercut->value > most_undercut)
        ledger.blame(door.undercut->place, "no door of the " + room.name + " hangs so high",
                     "the undercut is the gap between door and floor: undercut = \"1/2 in\"");
}

void blame_transfer(Work& work, const SurveyRoom& written, const Room& room) {
    if (!written.transfer_free_area) return;
    const Place place = written.transfer_free_area->place;
    if (!written.transfer)
        return work.ledger.blame(place, "the " + room.name + " has a transfer_free_area but no transfer",
                                 "write its face too, as transfer = \"12 x 6 in\"");
    const units::Area face = written.transfer->value.first * written.transfer->value.second;
    if (written.transfer_free_area->value > face)
        blame_more_free_than_face(work, place, "the transfer opening of the " + room.name, face);
}

WayOut way_out(Work& work, const SurveyRoom& written, const Room& room) {
    WayOut way;
    way.place = written.place;
    if (written.transfer) way.transfer = written.transfer->value.first * written.transfer->value.second;
    if (written.transfer_free_area) way.transfer_free_area = written.transfer_free_area->value;
    const auto gap = [&](const Maybe<units::Length>& undercut) {
        return work.ledger.or_default(undercut, DefaultId::undercut, "the door of the " + room.name);
    };
    int doors = 0, shut = 0;
    for (const SurveyDoor& door : written.doors) {
        if (!is_inside(written, door)) continue;
        ++doors;
        if (door.shut && door.shut->value) ++shut;
        way.undercut += gap(door.undercut) * (door.width ? door.width->value : usual_door);
    }
    if (doors == 0) way.undercut = gap({}) * usual_door;
    way.shut = doors > 0 && shut == doors;
    return way;
}

bool is_supplied(const House& house, RoomId room) {
    return std::any_of(house.outlets.begin(), house.outlets.end(),
                       [&](const Outlet& outlet) { return outlet.room == room && house.is_supply(outlet); });
}

}  // namespace

std::vector<std::optional<WayOut>> build_ways_out(Work& work) {
    std::vector<std::optional<WayOut>> ways;
    for (const Room& room : work.house.rooms) {
        const SurveyRoom& written = work.survey.rooms[static_cast<std::size_t>(room.id.index)];
        for (const SurveyDoor& door : written.doors) blame_door(work, room, door, is_inside(written, door));
        blame_transfer(work, written, room);
        ways.emplace_back();
        if (is_supplied(work.house, room.id)) ways.back() = way_out(work, written, room);
    }
    return ways;
}

}  // namespace house
