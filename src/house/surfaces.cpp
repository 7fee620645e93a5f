// Surfaces of a room towards anything that is not a heated room: walls as the sheet names them, ceiling and
// floor.
#include <algorithm>

#include "house/builders.hpp"
#include "house/names.hpp"

namespace house {

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
        "write outdoors, attic, basement, crawl, garage, porch, ground, heated rooms, or a room's name",
        faces.place, std::nullopt, true});
}

DefaultId usual_wall(const Work& work) {
    const auto& built = work.survey.built;
    return built && built->value >= 1980 ? DefaultId::newer_wall : DefaultId::old_wall;
}

void add_face(Work& work, const SurveyRoom& written, Room& room, const Face& face, const Make& make) {
    const std::string whose = face.name + " of the " + room.name;
    const units::Area open = build_openings(work, written, room, face);
    const units::Area net = face.area - open;
    if (net.si() < 0)
        return work.ledger.blame(face.place,
                                 "the openings of the " + face.name + " are larger than the wall");
    if (face.beyond == Space::ground && open.si() > 0)
        return work.ledger.blame(face.place,
                                 "the " + whose + " lies in the ground and has a window or a door",
                                 "describe the part above the ground as a [[room.surface]] of its own");
    if (face.beyond == Space::ground) return add_in_the_ground(work, written, room, face, make);
    blame_words_of_the_ground(work, make.ground, face.name, room);
    ask_for_space(work, face.beyond, whose);
    room.surfaces.push_back(
        {face.kind, face.name, net, face.beyond, assembly_or(work, make.construction, make.usual, whose)});
}

namespace {

std::string whose(const SurveyWall& wall, const Room& room) {
    return std::string(word(wall.side)) + " wall of the " + room.name;
}

units::Area area_of_side(Work& work, const Room& room, const SurveyWall& wall) {
    constexpr double tape = 1.001;
    const units::Area whole = wall_area(room, wall.side);
    if (!wall.area) {
        if (room.stated_floor > units::Area())
            work.ledger.blame_missing(wall.place, "the area of the " + whose(wall, room),
                                      "area = \"52 ft2\", as the room has no size");
        return whole;
    }
    if (whole.si() > 0 && wall.area->value > tape * whole)
        work.ledger.blame(wall.area->place,
                          "the " + whose(wall, room) + " is larger than that side of the room",
                          "area is that of the part which faces so");
    return wall.area->value;
}

void build_wall(Work& work, const SurveyRoom& written, Room& room, const SurveyWall& wall) {
    if (!wall.faces) {
        if (wall.room_grows) return;  // an inside wall that moves
        work.ledger.blame_missing(wall.place, "what the " + whose(wall, room) + " faces",
                                  "faces = \"outdoors\"");
        return;
    }
    const auto space = space_named(wall.faces->value);
    if (!space && !find_named(work.survey.rooms, wall.faces->value)) return blame_facing(work, *wall.faces);
    if (!space || *space == Space::heated_rooms) return;  // partitions.cpp
    Face face;
    face.side = wall.side;
    face.name = std::string(word(wall.side)) + " wall";
    face.place = wall.place;
    face.length = wall_length(room, wall.side);
    face.height = room.ceiling;
    face.area = area_of_side(work, room, wall);
    face.beyond = *space;
    if (face.area.si() <= 0) {  // the room's size is to blame
        build_openings(work, written, room, face);
        return;
    }
    add_face(work, written, room, face,
             {at_stage(work, wall.construction, wall.becomes), usual_wall(work), wall.ground});
}

// What lies above or below where the sheet is silent: heated rooms inside the house, attic and basement at
// its ends.
Space silent_space(const Room& room, const House& house, bool above) {
    if (above) return room.storey < house.storeys ? Space::heated_rooms : Space::attic;
    return room.storey > 1 ? Space::heated_rooms : Space::basement;
}

DefaultId usual_horizontal(const Face& face) {
    if (face.beyond == Space::heated_rooms) return DefaultId::partition;
    if (face.beyond == Space::ground) return DefaultId::buried_make;
    return face.kind == SurfaceKind::ceiling ? DefaultId::attic_ceiling : DefaultId::floor_over_unheated;
}

struct Silently {
    const Make& make;
    bool says;  // the sheet, what lies there
};
void add_horizontal(Work& work, const SurveyRoom& survey, Room& room, const Face& face,
                    const Silently& silently) {
    const Make& make = silently.make;
    if (silently.says && face.beyond == Space::ground) return add_face(work, survey, room, face, make);
    const bool taken = !silently.says && face.beyond != Space::heated_rooms;
    const std::string whose = face.name + " of the " + room.name +
                              (taken ? ", taken to be next to the " + std::string(word(face.beyond)) : "");
    blame_words_of_the_ground(work, make.ground, face.name, room);
    ask_for_space(work, face.beyond, whose);
    // Between rooms at one temperature nothing flows, so nothing need be assumed.
    const bool flows = face.beyond != Space::heated_rooms ||
                       room.winter_indoor != work.house.site.winter_indoor || is_known(make.construction);
    if (flows)
        room.surfaces.push_back({face.kind, face.name, face.area, face.beyond,
                                 assembly_or(work, make.construction, make.usual, whose)});
}

// What is left above or below beside what a list describes; without a list all of the floor.
units::Area rest_of(Work& work, const std::optional<SurveyHorizontal>& written, const SurveyRoom& survey,
                    const Room& room, bool above) {
    const auto is_slope = [](const SurveySurface& s) { return kind_of(s) == SurfaceKind::slope; };
    const bool sloped = std::any_of(survey.surfaces.begin(), survey.surfaces.end(), is_slope);
    if (above && sloped) {
        if (written)
            work.ledger.blame(written->place, "the ceiling of the " + room.name + " is partly sloped",
                              "describe its flat part as a [[room.surface]] with kind = \"ceiling\"");
        return {};
    }
    const units::Area listed = listed_flat(work, survey, above ? SurfaceKind::ceiling : SurfaceKind::floor);
    const units::Area rest = room.floor_area() - listed;
    constexpr double tape = 0.01;  // of the floor: what two measurements of it may differ by
    if (rest < -tape * room.floor_area() && room.floor_area().si() > 0)
        work.ledger.blame(survey.place, "the " + room.name + " has more " + (above ? "ceiling" : "floor") +
                                            " in its list than it has floor area");
    return rest > tape * room.floor_area() || listed.si() == 0 ? rest : units::Area();
}

void build_horizontal(Work& work, const SurveyRoom& survey, Room& room, bool above) {
    const std::optional<SurveyHorizontal>& written = above ? survey.above : survey.below;
    const units::Area rest = rest_of(work, written, survey, room, above);
    if (rest <= units::Area()) return;
    Face face;
    face.kind = above ? SurfaceKind::ceiling : SurfaceKind::floor;
    face.name = above ? "ceiling" : "floor";
    face.place = written ? written->place : survey.place;
    face.area = rest;
    face.beyond = silent_space(room, work.house, above);
    const bool says = written && written->space;
    if (says) {
        const auto named = space_named(written->space->value);
        if (!named) return blame_facing(work, *written->space);
        face.beyond = *named;
    }
    static const SurveyHorizontal nothing{};
    const SurveyHorizontal& what = written ? *written : nothing;
    const Make make{at_stage(work, what.construction, what.becomes), usual_horizontal(face), what.ground};
    add_horizontal(work, survey, room, face, {make, says});
}

}  // namespace

// Whether a wall is known to lie between heated rooms; one whose facing is missing or wrong is blamed for
// that.
bool lies_inside(const Survey& survey, const SurveyRoom& written, WallSide side) {
    for (const SurveyWall& wall : written.walls)
        if (wall.side == side && (wall.faces || !wall.room_grows))
            return wall.faces && (wall.faces->value == word(Space::heated_rooms) ||
                                  find_named(survey.rooms, wall.faces->value));
    return true;
}

namespace {

void blame_inside_window(Work& work, const SurveyRoom& written, const Room& room,
                         const Given<std::string>& surface) {
    const auto at = find_named(written.surfaces, surface.value);
    if (!at) return blame_unknown(work.ledger, surface, "surface of that room", written.surfaces);
    const SurveySurface& listed = written.surfaces[static_cast<std::size_t>(*at)];
    const auto space = listed.faces ? space_named(listed.faces->value) : std::nullopt;
    if (space == Space::heated_rooms || (listed.faces && find_named(work.survey.rooms, listed.faces->value)))
        work.ledger.blame(
            surface.place,
            "the " + surface.value + " of the " + room.name + " has a window but does not face outdoors",
            "give the [[room.surface]] faces = \"outdoors\"");
}

}  // namespace

void build_walls(Work& work, const SurveyRoom& written, Room& room) {
    for (const SurveyWall& wall : written.walls) build_wall(work, written, room, wall);
    for (const SurveyWindow& window : written.windows) {
        if (window.surface)
            blame_inside_window(work, written, room, *window.surface);
        else if (!window.wall)
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
        if (!door.wall && !door.surface)
            work.ledger.blame_missing(door.place, "the wall of this door of the " + room.name,
                                      "wall = \"south\"");
}

void build_ceiling_and_floor(Work& work, const SurveyRoom& written, Room& room) {
    build_horizontal(work, written, room, true);
    build_horizontal(work, written, room, false);
}

}  // namespace house
