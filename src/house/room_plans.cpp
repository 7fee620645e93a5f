// The plan of each room that has a size and whose walls are its four sides.
#include <algorithm>
#include <tuple>

#include "house/builders.hpp"

namespace house {
namespace {

constexpr WallSide sides[] = {WallSide::north, WallSide::east, WallSide::south, WallSide::west};

// A room whose walls are in a list is no box.
bool lists_walls(const SurveyRoom& written) {
    return std::any_of(written.surfaces.begin(), written.surfaces.end(),
                       [](const SurveySurface& surface) { return kind_of(surface) == SurfaceKind::wall; });
}

PlanWall plan_wall(const Work& work, const SurveyRoom& written, const Room& room, WallSide side) {
    PlanWall wall;
    wall.length = wall.faces_it = wall_length(room, side);
    for (const SurveyWall& named : written.walls) {
        if (named.side == side) place_studs(work, written, named.studs, side, wall);
        const bool faces = named.side == side && named.faces;
        const auto space = faces ? space_named(named.faces->value) : std::nullopt;
        if (!space) continue;
        wall.beyond = *space;
        constexpr double rounding = 1.001;  // of an area worked out by hand
        if (named.area && rounding * named.area->value < wall_area(room, side))
            wall.faces_it = named.area->value / room.ceiling;
    }
    return wall;
}

std::optional<Stretch> stretch(WallSide wall, const Maybe<units::Length>& centre, units::Length width,
                               units::Length moved) {
    if (!centre || width <= units::Length()) return std::nullopt;
    const units::Length middle = centre->value + moved;
    return Stretch{wall, middle - width / 2, middle + width / 2};
}

PlanWindow plan_window(const Work& work, const SurveyRoom& written, const SurveyWindow& window) {
    PlanWindow shown;
    shown.name = window_name(window);
    shown.wall = window.wall->value;
    if (window.size) std::tie(shown.width, shown.height) = window.size->value;
    shown.stretch = stretch(shown.wall, window.centre, shown.width, moved_along(work, written, shown.wall));
    if (window.sill) shown.sill = window.sill->value;
    return shown;
}

DoorSwing swing_into(const Room& room, const Stretch& door, WallSide hinged) {
    const bool at_first_end = is_first_side(hinged);
    const units::Length hinge = at_first_end ? door.from : door.to;
    DoorSwing swing;
    swing.leaf = door.to - door.from;
    if (runs_west_east(door.wall)) {
        swing.hinge_east = hinge;
        swing.hinge_north = door.wall == WallSide::north ? room.depth : units::Length();
        swing.towards_east = at_first_end;
        swing.towards_north = door.wall == WallSide::south;
    } else {
        swing.hinge_east = door.wall == WallSide::east ? room.width : units::Length();
        swing.hinge_north = hinge;
        swing.towards_east = door.wall == WallSide::west;
        swing.towards_north = at_first_end;
    }
    return swing;
}

// Whether the hinge is at an end of the door's wall.
bool is_an_end(WallSide hinged, WallSide wall) { return runs_west_east(hinged) != runs_west_east(wall); }

PlanDoor plan_door(const Work& work, const SurveyRoom& written, const Room& room, const SurveyDoor& door) {
    PlanDoor shown;
    shown.wall = door.wall->value;
    shown.stretch = stretch(shown.wall, door.centre, door.width ? door.width->value : units::Length(),
                            moved_along(work, written, shown.wall));
    if (!door.swings) return shown;
    const SurveySwing& swings = door.swings->value;
    shown.hanging = swings.hanging;
    if (swings.hanging == DoorHanging::in && swings.hinged && shown.stretch &&
        is_an_end(*swings.hinged, shown.wall))
        shown.swing = swing_into(room, *shown.stretch, *swings.hinged);
    return shown;
}

void blame_hinges(Work& work, const SurveyRoom& written, const Room& room) {
    for (const SurveyDoor& door : written.doors) {
        if (!door.wall || !door.swings || !door.swings->value.hinged) continue;
        const WallSide wall = door.wall->value, hinged = *door.swings->value.hinged;
        if (is_an_end(hinged, wall)) continue;
        const std::string side(word(wall));
        work.ledger.blame(door.swings->place,
                          "the " + side + " door of the " + room.name + " cannot be hinged on its " +
                              std::string(word(hinged)) + " side",
                          "a door in the " + side + " wall is hinged " +
                              (runs_west_east(wall) ? "west or east" : "south or north"));
    }
}

Plan plan_of(Work& work, const SurveyRoom& written, const Room& room) {
    Plan plan;
    plan.width = room.width;
    plan.depth = room.depth;
    for (const WallSide side : sides)
        plan.walls[static_cast<std::size_t>(side)] = plan_wall(work, written, room, side);
    for (const SurveyWindow& window : written.windows)
        if (window.wall) plan.windows.push_back(plan_window(work, written, window));
    for (const SurveyDoor& door : written.doors)
        if (door.wall) plan.doors.push_back(plan_door(work, written, room, door));
    plan.fixtures = build_fixtures(work, written, room);
    plan.floor = floor_under(work, written, room);
    return plan;
}

void blame_fixtures_without_a_plan(Work& work, const SurveyRoom& written, const Room& room) {
    if (written.fixtures.empty() || (!written.size && !written.floor_area)) return;  // its size is missing
    work.ledger.blame(written.fixtures.front().place,
                      "the " + room.name + " has a fixture, but its four sides are not known",
                      "give the room its size, and its walls as [room.wall.north]; or leave the fixture out");
}

}  // namespace

void build_plans(Work& work) {
    blame_misplaced_floors(work);
    for (Room& room : work.house.rooms) {
        const SurveyRoom& written = work.survey.rooms[static_cast<std::size_t>(room.id.index)];
        fit_inside_doors(work, written, room);
        blame_hinges(work, written, room);
        blame_misplaced_studs(work, written, room);
        const bool is_a_box = written.size && !lists_walls(written);
        if (!is_a_box)
            blame_fixtures_without_a_plan(work, written, room);
        else if (room.width > units::Length() && room.depth > units::Length())
            room.plan = plan_of(work, written, room);
    }
}

}  // namespace house
