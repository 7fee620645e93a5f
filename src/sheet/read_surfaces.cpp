// The surfaces of a room that its four sides cannot describe, and how walls and floors lie in the ground.
#include <fmt/format.h>

#include "sheet/code_points.hpp"
#include "sheet/parts.hpp"

namespace sheet {
namespace {

constexpr std::string_view compass[] = {"north", "northeast", "east", "southeast",
                                        "south", "southwest", "west", "northwest"};
constexpr double eighth_of_a_turn = 45;

// A word of the compass, or an angle.
house::Maybe<units::Angle> read_looks(TableReader& table) {
    const auto value = table.value("looks");
    if (!value) return std::nullopt;
    const std::string* text = value->plain_text();
    if (text == nullptr || text->find_first_of("0123456789") != std::string::npos)
        return read_quantity(*value, angle);
    for (std::size_t i = 0; i < std::size(compass); ++i)
        if (*text == compass[i])
            return house::Given<units::Angle>{units::Angle{eighth_of_a_turn * static_cast<double>(i)},
                                              value->node->place};
    if (value->text("\"north\"")) {
        blame_word(*value, *text, compass);
        table.mistakes().back().remedy += ", or an angle from north: \"35 deg\"";
    }
    return std::nullopt;
}

house::SurveySurface read_surface(TableReader& table) {
    house::SurveySurface surface;
    surface.place = table.place();
    surface.name = table.text("name", "\"west knee wall\"");
    surface.kind = table.one_of<house::SurfaceKind>("kind");
    surface.faces = read_faces(table);
    surface.length = table.quantity("length", extent);
    surface.height = table.quantity("height", extent);
    surface.area = table.quantity("area", area);
    surface.looks = read_looks(table);
    surface.construction = table.text("construction");
    surface.becomes = table.text("becomes");
    surface.ground = read_floor_ground(table);
    table.finish();
    return surface;
}

// A side's word would be taken for the side.
bool is_no_side(const house::SurveySurface& surface, Mistakes& mistakes) {
    for (const auto& row : house::words<house::WallSide>())
        if (surface.name && surface.name->value == row.text) {
            mistakes.push_back({fmt::format("a surface cannot be called '{}'", row.text), "",
                                fmt::format("that is a side of the room; call it '{} knee wall'", row.text),
                                surface.name->place, std::nullopt});
            return false;
        }
    return true;
}

}  // namespace

house::Maybe<std::string> read_faces(TableReader& table) {
    const auto value = table.value("faces");
    if (!value) return std::nullopt;
    if (std::holds_alternative<List>(value->node->value)) {
        value->blame("is a list: a wall faces one thing",
                     {"", "describe the wall's parts as [[room.surface]], each with what it faces"});
        return std::nullopt;
    }
    return read_text(*value, "\"outdoors\"");
}

house::Maybe<units::Length> read_growth(TableReader& table) {
    const auto value = table.value("room_grows");
    if (!value) return std::nullopt;
    const std::string* text = value->plain_text();
    if (text == nullptr || !text->starts_with('-')) return read_quantity(*value, any_length);
    const Node unsigned_text{text->substr(1), value->node->place};
    Value inwards = *value;
    inwards.node = &unsigned_text;
    auto read = read_quantity(inwards, any_length);
    if (read) read->value = -read->value;
    return read;
}

house::SurveyGround read_ground(TableReader& table) {
    house::SurveyGround ground;
    ground.depth = table.quantity("depth", distance);
    ground.depth_from = table.quantity("depth_from", distance);
    return ground;
}

house::SurveyGround read_floor_ground(TableReader& table) {
    house::SurveyGround ground = read_ground(table);
    ground.exposed_edge = table.quantity("exposed_edge", distance);
    ground.edge = table.text("edge", "\"bare\"");
    ground.covering = table.text("covering", "\"carpet\"");
    return ground;
}

void read_surfaces(TableReader& room, house::SurveyRoom& into) {
    const auto surfaces = room.tables("surface", "[[room.surface]]");
    for (std::size_t i = 0; i < surfaces.size(); ++i) {
        TableReader table(*surfaces[i],
                          fmt::format("{} of {}", owner_by_name("surface", *surfaces[i], i), room.owner()),
                          room.mistakes(), &room);
        house::SurveySurface surface = read_surface(table);
        if (is_no_side(surface, room.mistakes())) into.surfaces.push_back(std::move(surface));
    }
}

}  // namespace sheet
