// The outlets: where the air leaves for a room, or comes back from it.
#include "sheet/parts.hpp"

namespace sheet {
namespace {

constexpr std::string_view place_sample =
    "{ under = \"north window\" }, or { wall = \"north\", centre = \"3 ft\" }";

// Three ways to say where, one at a time.
void read_where(TableReader& outlet, house::SurveyOutlet& into) {
    const auto value = outlet.value("place");
    if (!value) return;
    if (!std::holds_alternative<Table>(value->node->value))
        return value->blame_kind("a table in braces", place_sample);
    TableReader table(*value->node, "'place' of " + outlet.owner(), outlet.mistakes(), &outlet);
    into.under = table.text("under", "\"north window\"");
    into.wall = table.one_of<house::WallSide>("wall");
    into.centre = table.quantity("centre", distance);
    into.point = table.two("point", distance);
    table.finish();
    if (table.members().empty()) value->blame("says nothing", {"", value->write(place_sample)});
    if ((into.under ? 1 : 0) + (into.wall || into.centre ? 1 : 0) + (into.point ? 1 : 0) > 1)
        value->blame("says where in more than one way", {"", "keep one of: under, wall with centre, point"});
}

house::SurveyOutlet read_outlet(TableReader& table) {
    house::SurveyOutlet outlet;
    outlet.place = table.place();
    outlet.name = table.text("name", "\"bath register\"");
    outlet.duct = table.text("duct", "\"main trunk\"");
    outlet.room = table.text("room", "\"bath\"");
    if (const auto face = table.value("face")) outlet.face = read_sides(*face);
    outlet.free_area = table.quantity("free_area", area);
    outlet.mount = table.one_of<house::Mount>("mount");
    read_where(table, outlet);
    outlet.damper = read_damper(table);
    outlet.state = table.one_of<house::State>("state");
    table.finish();
    return outlet;
}

}  // namespace

void read_outlets(TableReader& sheet, house::Survey& survey) {
    const auto outlets = sheet.tables("outlet", "[[outlet]]");
    for (std::size_t i = 0; i < outlets.size(); ++i) {
        TableReader outlet(*outlets[i], owner_by_name("outlet", *outlets[i], i), sheet.mistakes());
        survey.outlets.push_back(read_outlet(outlet));
    }
}

}  // namespace sheet
