// Surfaces of a room towards anything that is not a heated room: walls as the sheet names them, ceiling and
// floor.
#include "house/builders.hpp"
#include "house/names.hpp"

namespace house {
namespace {

std::optional<Space> space_named(std::string_view text) {
    for (const auto& row : words<Space>())
        if (row.text == text) return row.value;
    return std::nullopt;
}

void blame_facing(Work& work, const Given<std::string>& faces) {
    std::vector<std::string_view> known;
    for (const auto& row : words<Space>()) known.push_back(row.text);
    for (const auto& room : work.survey.rooms)
        if (room.name) known.push_back(room.name->value);
    const std::string nearest = units::nearest_word(faces.value, known);
    work.ledger.blame(Mistake{
        "nothing is called '" + faces.value + "'", nearest.empty() ? "" : "did you mean '" + nearest + "'?",
        "write outdoors, attic, basement, crawl, garage, porch, heated rooms, or a room's name", faces.place,
        std::nullopt, true});
}

// Walls of unknown make: by the year the house was built.
Assembly default_wall(Work& work, const std::string& wall) {
    const auto& built = work.survey.built;
    return units::Transmittance(
        work.ledger.take(built && built->value >= 1980 ? DefaultId::newer_wall : DefaultId::old_wall, wall));
}

void build_wall(Work& work, const SurveyRoom& written, Room& room, const SurveyWall& wall) {
    const std::string name = std::string(word(wall.side)) + " wall";
    if (!wall.faces) {
        work.ledger.blame_missing(wall.place, "what the " + name + " of the " + room.name + " faces",
                                  "faces = \"outdoors\"");
        return;
    }
    const auto space = space_named(wall.faces->value);
    if (!space && !find_named(work.survey.rooms, wall.faces->value)) return blame_facing(work, *wall.faces);
    if (!space || *space == Space::heated_rooms) return;  // partitions.cpp
    const units::Area open = build_openings(work, written, room, wall.side, *space);
    const units::Area net = wall_area(room, wall.side) - open;
    if (net.si() < 0 && wall_area(room, wall.side).si() <= 0) return;  // the room's size is to blame
    if (net.si() < 0)
        return work.ledger.blame(wall.place, "the openings of the " + name + " are larger than the wall");
    const auto& make = at_stage(work, wall.construction, wall.becomes);
    const std::string whose = name + " of the " + room.name;
    ask_for_space(work, *space, whose);
    room.surfaces.push_back({SurfaceKind::wall, name, net, *space,
                             make ? assembly_named(work, *make) : default_wall(work, whose)});
}

// What lies above or below where the sheet is silent: heated rooms inside the house, attic and basement at
// its ends.
Space silent_space(const Room& room, const House& house, bool above) {
    if (above) return room.storey < house.storeys ? Space::heated_rooms : Space::attic;
    return room.storey > 1 ? Space::heated_rooms : Space::basement;
}

void build_horizontal(Work& work, const std::optional<SurveyHorizontal>& written, Room& room, bool above) {
    const std::string name = above ? "ceiling" : "floor";
    const bool says = written && written->space;
    Space space = silent_space(room, work.house, above);
    if (says) {
        const auto named = space_named(written->space->value);
        if (!named) return blame_facing(work, *written->space);
        space = *named;
    }
    const std::string whose =
        name + " of the " + room.name +
        (says || space == Space::heated_rooms ? "" : ", taken to be next to the " + std::string(word(space)));
    const SurfaceKind kind = above ? SurfaceKind::ceiling : SurfaceKind::floor;
    const DefaultId usual = space == Space::heated_rooms ? DefaultId::partition
                            : above                      ? DefaultId::attic_ceiling
                                                         : DefaultId::floor_over_unheated;
    ask_for_space(work, space, whose);
    const Maybe<std::string> nothing;
    const auto& make = written ? at_stage(work, written->construction, written->becomes) : nothing;
    if (make)
        return room.surfaces.push_back({kind, name, room.floor_area(), space, assembly_named(work, *make)});
    // Between rooms at one temperature nothing flows, so nothing need be assumed.
    const bool flows = space != Space::heated_rooms || room.winter_indoor != work.house.site.winter_indoor;
    if (flows)
        room.surfaces.push_back(
            {kind, name, room.floor_area(), space, units::Transmittance(work.ledger.take(usual, whose))});
}

}  // namespace

// Whether a wall is known to lie between heated rooms; one whose facing is missing or wrong is blamed for
// that.
bool lies_inside(const Survey& survey, const SurveyRoom& written, WallSide side) {
    for (const SurveyWall& wall : written.walls)
        if (wall.side == side)
            return wall.faces && (wall.faces->value == word(Space::heated_rooms) ||
                                  find_named(survey.rooms, wall.faces->value));
    return true;
}

void build_walls(Work& work, const SurveyRoom& written, Room& room) {
    for (const SurveyWall& wall : written.walls) build_wall(work, written, room, wall);
    for (const SurveyWindow& window : written.windows) {
        if (!window.wall)
            work.ledger.blame_missing(window.place, "the wall of this window of the " + room.name,
                                      "wall = \"north\"");
        else if (lies_inside(work.survey, written, window.wall->value))
            work.ledger.blame(
                window.wall->place,
                "the " + std::string(word(window.wall->value)) + " wall of the " + room.name +
                    " has a window but does not face outdoors",
                "write [room.wall." + std::string(word(window.wall->value)) + "] with faces = \"outdoors\"");
    }
    // A door in an inside wall loses nothing to speak of, but one in no wall at all may be an outside door.
    for (const SurveyDoor& door : written.doors)
        if (!door.wall)
            work.ledger.blame_missing(door.place, "the wall of this door of the " + room.name,
                                      "wall = \"south\"");
}

void build_ceiling_and_floor(Work& work, const SurveyRoom& written, Room& room) {
    build_horizontal(work, written.above, room, true);
    build_horizontal(work, written.below, room, false);
}

}  // namespace house
