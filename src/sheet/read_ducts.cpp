// The ducts: one run each, by name.
#include "sheet/parts.hpp"
#include "sheet/shape_text.hpp"

namespace sheet {
namespace {

constexpr Kind<house::Shape> duct_shape{read_shape_text, "shapes", "{} in", "6 in", Sign::positive};

void read_around(const Value& value, house::SurveyDuct& duct) {
    const std::string owner = "'shape' of " + std::string(value.owner);
    TableReader table(*value.node, owner, *value.mistakes);
    duct.around = table.quantity("around", thickness);
    if (table.members().empty()) value.blame("says nothing", {"", value.write("{ around = \"19 in\" }")});
    table.finish();
}

void read_shape(TableReader& table, house::SurveyDuct& duct) {
    const auto value = table.value("shape");
    if (!value) return;
    if (std::holds_alternative<Table>(value->node->value)) return read_around(*value, duct);
    duct.shape = read_quantity(*value, duct_shape);
}

house::SurveyDuct read_duct(TableReader& table) {
    house::SurveyDuct duct;
    duct.place = table.place();
    duct.name = table.text("name", "\"main trunk\"");
    duct.side = table.one_of<house::DuctSide>("side");
    duct.from = table.text("from", "\"plenum\"");
    duct.to = table.text("to", "\"blower\"");
    duct.at = table.quantity("at", distance);
    read_shape(table, duct);
    duct.kind = table.one_of<house::DuctKind>("kind");
    duct.stretch = table.quantity("stretch", stretch);
    duct.length = table.quantity("length", distance);
    duct.fittings = table.texts("fittings", "\"stackhead\"");
    duct.turns = read_turns(table, "turns");
    duct.runs_in = table.one_of<house::Space>("runs_in");
    duct.through = table.text("through", "\"bay 3\"");
    duct.wrap = table.quantity("wrap", wrap_resistance);
    duct.damper = read_damper(table);
    duct.hidden = table.yes_or_no("hidden");
    duct.state = table.one_of<house::State>("state");
    table.finish();
    return duct;
}

}  // namespace

void read_ducts(TableReader& sheet, house::Survey& survey) {
    const auto ducts = sheet.tables("duct", "[[duct]]");
    for (std::size_t i = 0; i < ducts.size(); ++i) {
        TableReader duct(*ducts[i], owner_by_name("duct", *ducts[i], i), sheet.mistakes());
        survey.ducts.push_back(read_duct(duct));
    }
}

}  // namespace sheet
