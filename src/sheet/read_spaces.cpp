// The unheated spaces beside the rooms, and the ventilation of the house.
#include <fmt/format.h>

#include <algorithm>

#include "sheet/parts.hpp"

namespace sheet {
namespace {

using house::Space;
using OutdoorAir = std::variant<units::AirChange, units::Airflow>;

bool counts_air_changes(std::string_view text) {
    constexpr std::string_view unit = "ach";
    const auto same = [](char a, char b) { return (a | 0x20) == b; };
    return std::search(text.begin(), text.end(), unit.begin(), unit.end(), same) != text.end();
}

// "2 ACH" or "60 cfm".
std::optional<house::Given<OutdoorAir>> read_outdoor_air(TableReader& table) {
    const auto value = table.value("ventilation");
    if (!value) return std::nullopt;
    const std::string* text = value->plain_text();
    if (text == nullptr || counts_air_changes(*text)) {
        const auto changes = read_quantity(*value, air_change);
        return changes ? std::optional(house::Given<OutdoorAir>{changes->value, changes->place})
                       : std::nullopt;
    }
    if (const auto flow = read_quantity(*value, flow_or_none))
        return house::Given<OutdoorAir>{flow->value, flow->place};
    std::string& remedy = table.mistakes().back().remedy;
    remedy += (remedy.empty() ? "write an air change: \"2 ACH\"" : ", or an air change: \"2 ACH\"");
    return std::nullopt;
}

// Each space has the words that make sense of it.
house::SurveySpace read_space(TableReader& table, Space kind) {
    house::SurveySpace space;
    const bool underneath = kind == Space::crawl || kind == Space::basement;
    space.place = table.place();
    space.winter = table.quantity("winter", temperature);
    if (kind == Space::crawl) space.vented = table.yes_or_no("vented");
    space.ventilation = read_outdoor_air(table);
    space.floor_area = table.quantity("floor_area", area);
    space.height = table.quantity("height", extent);
    space.construction = table.text("construction");
    if (underneath) {
        space.perimeter = table.quantity("perimeter", extent);
        space.above_ground = table.quantity("above_ground", distance);
    } else {
        space.outer_area = table.quantity("outer_area", area);
        space.roof = table.text("roof");
        space.roof_area = table.quantity("roof_area", area);
    }
    space.heat = table.quantity("heat", power);
    table.finish();
    return space;
}

void read_ventilation(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("ventilation", "{ exhaust = \"60 cfm\" }, or a heading [ventilation]");
    if (node == nullptr) return;
    TableReader table(*node, "[ventilation]", sheet.mistakes());
    house::SurveyVentilation ventilation;
    ventilation.place = table.place();
    ventilation.supply = table.quantity("supply", airflow);
    ventilation.exhaust = table.quantity("exhaust", airflow);
    ventilation.recovery = table.quantity("recovery", fraction);
    table.finish();
    survey.ventilation = ventilation;
}

}  // namespace

void read_spaces(TableReader& sheet, house::Survey& survey) {
    read_ventilation(sheet, survey);
    const Node* node = sheet.table("space", "{ ... }, under a heading [space.basement]");
    if (node == nullptr) return;
    TableReader spaces(*node, "[space]", sheet.mistakes());
    for (const auto& row : house::words<Space>()) {
        // Outdoors and the heated rooms have their temperature from the site.
        if (row.value == Space::outdoors || row.value == Space::heated_rooms || row.value == Space::ground)
            continue;
        const Node* space = spaces.table(row.text, "{ winter = \"58 F\" }");
        if (space == nullptr) continue;
        TableReader table(*space, fmt::format("[space.{}]", row.text), sheet.mistakes());
        survey.spaces[row.value] = read_space(table, row.value);
    }
    spaces.finish();
}

}  // namespace sheet
