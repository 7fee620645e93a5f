// The rooms that are described, with their walls, windows and doors, and the rest of the house in one lump.
#include <fmt/format.h>

#include <algorithm>

#include "sheet/parts.hpp"

namespace sheet {
namespace {

std::optional<house::SurveyHorizontal> read_horizontal(TableReader& room, std::string_view word) {
    const Node* node = room.table(word, "{ space = \"attic\" }");
    if (node == nullptr) return std::nullopt;
    TableReader table(*node, fmt::format("'{}' of {}", word, room.owner()), room.mistakes(), &room);
    house::SurveyHorizontal surface;
    surface.place = table.place();
    surface.space = table.text("space", "\"attic\"");
    surface.construction = table.text("construction");
    surface.becomes = table.text("becomes");
    surface.ground = read_floor_ground(table);
    table.finish();
    return surface;
}

void read_walls(TableReader& room, house::SurveyRoom& into) {
    const Node* node = room.table("wall", "{ ... }, under a heading [room.wall.north]");
    if (node == nullptr) return;
    TableReader walls(*node, fmt::format("the walls of {}", room.owner()), room.mistakes());
    for (const auto& row : house::words<house::WallSide>()) {
        const Node* wall_node = walls.table(row.text, "{ faces = \"outdoors\" }");
        if (wall_node == nullptr) continue;
        TableReader table(*wall_node, fmt::format("the {} wall of {}", row.text, room.owner()),
                          room.mistakes(), &room);
        house::SurveyWall wall;
        wall.side = row.value;
        wall.place = table.place();
        wall.faces = read_faces(table);
        wall.construction = table.text("construction");
        wall.becomes = table.text("becomes");
        wall.area = table.quantity("area", area);
        wall.room_grows = read_growth(table);
        wall.ground = read_ground(table);
        wall.studs = {table.two("stud", thickness), table.quantity("stud_spacing", extent),
                      table.quantity("first_stud", distance)};
        table.finish();
        into.walls.push_back(std::move(wall));
    }
    walls.finish();
    std::stable_sort(into.walls.begin(), into.walls.end(), [](const auto& a, const auto& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
}

// The wall a window or a door is in: a side, or a surface of the list by its name.
template <class Opening>
void read_wall_of(TableReader& table, const house::SurveyRoom& room, Opening& opening) {
    const auto value = table.value("wall");
    if (!value) return;
    const auto text = value->text("\"north\"");
    if (!text) return;
    std::vector<std::string_view> known = spellings<house::WallSide>();
    for (const auto& row : house::words<house::WallSide>())
        if (row.text == *text) opening.wall = house::Given<house::WallSide>{row.value, value->node->place};
    if (opening.wall) return;
    for (const house::SurveySurface& surface : room.surfaces) {
        if (!surface.name) continue;
        known.push_back(surface.name->value);
        if (surface.name->value == *text)
            opening.surface = house::Given<std::string>{*text, value->node->place};
    }
    if (!opening.surface) blame_word(*value, *text, known);
}

house::SurveyWindow read_window(TableReader& table, const house::SurveyRoom& room) {
    house::SurveyWindow window;
    window.place = table.place();
    window.name = table.text("name");
    read_wall_of(table, room, window);
    window.centre = table.quantity("centre", distance);
    window.size = table.two("size", extent);
    window.sill = table.quantity("sill", distance);
    window.glass = table.text("glass");
    window.becomes = table.text("becomes");
    window.u = table.quantity("u", transmittance);
    window.shgc = table.quantity("shgc", solar_share);
    window.screen = table.yes_or_no("screen");
    window.shade = table.text("shade", "\"roller, white\"");
    window.shade_closed = table.quantity("shade_closed", fraction);
    window.overhang = table.quantity("overhang", extent);
    window.overhang_above = table.quantity("overhang_above", distance);
    table.finish();
    return window;
}

house::SurveyDoor read_door(TableReader& table, const house::SurveyRoom& room) {
    house::SurveyDoor door;
    door.place = table.place();
    read_wall_of(table, room, door);
    door.centre = table.quantity("centre", distance);
    door.width = table.quantity("width", extent);
    door.height = table.quantity("height", extent);
    door.u = table.quantity("u", transmittance);
    door.undercut = table.quantity("undercut", gap);
    door.shut = table.yes_or_no("shut");
    door.swings = read_swing(table);
    table.finish();
    return door;
}

house::SurveyFan read_fan(TableReader& table) {
    house::SurveyFan fan;
    fan.place = table.place();
    fan.flow = table.quantity("flow", airflow);
    fan.runs = table.one_of<house::FanRuns>("runs");
    table.finish();
    return fan;
}

std::string in_room(std::string_view kind, const Node& node, std::size_t index, const TableReader& room) {
    return fmt::format("{} of {}", owner_by_name(kind, node, index), room.owner());
}

house::SurveyRoom read_room(TableReader& table) {
    house::SurveyRoom room;
    room.place = table.place();
    room.name = table.text("name", "\"bath\"");
    room.storey = table.whole("storey", storeys);
    room.use = table.one_of<house::RoomUse>("use");
    room.corner = table.two("corner", any_length);
    room.size = table.two("size", extent);
    room.floor_area = table.quantity("floor_area", area);
    room.ceiling = table.quantity("ceiling", extent);
    room.winter_indoor = table.quantity("winter_indoor", temperature);
    if (const auto face = table.value("transfer")) room.transfer = read_sides(*face, "12 x 6 in");
    room.transfer_free_area = table.quantity("transfer_free_area", area);
    room.above = read_horizontal(table, "above");
    room.below = read_horizontal(table, "below");
    read_walls(table, room);
    read_surfaces(table, room);
    const auto windows = table.tables("window", "[[room.window]]");
    for (std::size_t i = 0; i < windows.size(); ++i) {
        TableReader window(*windows[i], in_room("window", *windows[i], i, table), table.mistakes(), &table);
        room.windows.push_back(read_window(window, room));
    }
    const auto doors = table.tables("door", "[[room.door]]");
    for (std::size_t i = 0; i < doors.size(); ++i) {
        TableReader door(*doors[i], in_room("door", *doors[i], i, table), table.mistakes(), &table);
        room.doors.push_back(read_door(door, room));
    }
    read_fixtures(table, room);
    const auto fans = table.tables("exhaust_fan", "[[room.exhaust_fan]]");
    for (std::size_t i = 0; i < fans.size(); ++i) {
        TableReader fan(*fans[i], in_room("exhaust fan", *fans[i], i, table), table.mistakes(), &table);
        room.exhaust_fans.push_back(read_fan(fan));
    }
    table.finish();
    return room;
}

void read_other_rooms(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("other_rooms", "{ outlets = 8 }, or a heading [other_rooms]");
    if (node == nullptr) return;
    TableReader table(*node, "[other_rooms]", sheet.mistakes());
    house::SurveyOtherRooms rooms;
    rooms.place = table.place();
    rooms.floor_area = table.quantity("floor_area", area);
    rooms.heat_loss = table.quantity("heat_loss", power);
    rooms.outlets = table.whole("outlets", {1, 60});
    rooms.pipe = table.quantity("pipe", thickness);
    rooms.reach = table.range("reach", distance);
    rooms.turns = read_turns(table, "turns");
    rooms.from = table.text("from");
    table.finish();
    survey.other_rooms = std::move(rooms);
}

}  // namespace

void read_rooms(TableReader& sheet, house::Survey& survey) {
    const auto rooms = sheet.tables("room", "[[room]]");
    for (std::size_t i = 0; i < rooms.size(); ++i) {
        TableReader room(*rooms[i], owner_by_name("room", *rooms[i], i), sheet.mistakes());
        survey.rooms.push_back(read_room(room));
    }
    read_other_rooms(sheet, survey);
}

}  // namespace sheet
