// The heater, the blower, the cooling, the devices in the air's way, and how the ducts leak.
#include "sheet/parts.hpp"

namespace sheet {
namespace {

void read_heater(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("heater", "{ kind = \"furnace\" }, or a heading [heater]");
    if (node == nullptr) return;
    TableReader table(*node, "[heater]", sheet.mistakes());
    house::SurveyHeater heater;
    heater.place = table.place();
    heater.kind = table.one_of<house::HeaterKind>("kind");
    heater.input = table.quantity("input", power);
    heater.output = table.quantity("output", power);
    heater.cold_output = table.quantity("cold_output", power);
    heater.efficiency = table.quantity("efficiency", efficiency);
    heater.rise = table.range("rise", temperature_rise);
    heater.max_static = table.quantity("max_static", pressure);
    heater.duct_loss = table.quantity("duct_loss", fraction);
    heater.adjusted_for_elevation = table.yes_or_no("adjusted_for_elevation");
    heater.shares_space_with = table.text("shares_space_with", "\"gas water heater\"");
    table.finish();
    survey.heater = std::move(heater);
}

constexpr std::string_view point_sample = "[\"0.2 in.wc\", \"1180 cfm\"]";
constexpr std::string_view points_sample = "[[\"0.2 in.wc\", \"1180 cfm\"], [\"0.4 in.wc\", \"1080 cfm\"]]";

std::optional<house::Given<house::BlowerPoint>> read_point(const Value& value) {
    const auto parts = value.list_of(2, "a pressure and an airflow", point_sample);
    if (!parts) return std::nullopt;
    const auto external_static = read_quantity((*parts)[0], pressure);
    const auto flow = read_quantity((*parts)[1], flow_or_none);
    if (!external_static || !flow) return std::nullopt;
    return house::Given<house::BlowerPoint>{{external_static->value, flow->value}, value.node->place};
}

void read_blower(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("blower", "{ measured = \"1010 cfm\" }, or a heading [blower]");
    if (node == nullptr) return;
    TableReader table(*node, "[blower]", sheet.mistakes());
    house::SurveyBlower blower;
    blower.place = table.place();
    blower.kind = table.one_of<house::BlowerKind>("kind");
    blower.up_to = table.quantity("up_to", pressure_above_zero);
    if (const auto points = table.value("points")) {
        if (const auto parts = points->list(points_sample)) {
            for (const Value& part : *parts)
                if (const auto point = read_point(part)) blower.points.push_back(*point);
        }
    }
    blower.measured = table.quantity("measured", airflow);
    blower.external_static = table.quantity("static", pressure);
    if (const auto includes = table.value("includes")) {
        if (const auto parts = includes->list("[\"filter\"]")) {
            for (const Value& part : *parts)
                if (const auto kind = read_word<house::DeviceKind>(part)) blower.includes.push_back(*kind);
        }
    }
    table.finish();
    survey.blower = std::move(blower);
}

void read_cooling(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("cooling", "{ kind = \"none\" }, or a heading [cooling]");
    if (node == nullptr) return;
    TableReader table(*node, "[cooling]", sheet.mistakes());
    survey.cooling = table.one_of<house::CoolingKind>("kind");
    survey.cooling_airflow = table.quantity("airflow", airflow);
    table.finish();
}

house::SurveyDevice read_device(TableReader& table) {
    house::SurveyDevice device;
    device.place = table.place();
    device.name = table.text("name", "\"pleated filter\"");
    device.kind = table.one_of<house::DeviceKind>("kind");
    device.drop = table.quantity("drop", pressure);
    device.at = table.quantity("at", airflow);
    table.finish();
    return device;
}

void read_duct_leakage(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("duct_leakage", "{ sealing = \"unsealed\" }, or a heading [duct_leakage]");
    if (node == nullptr) return;
    TableReader table(*node, "[duct_leakage]", sheet.mistakes());
    house::SurveyDuctLeakage leakage;
    leakage.place = table.place();
    leakage.sealing = table.one_of<house::DuctSealing>("sealing");
    leakage.supply = table.quantity("supply", fraction);
    leakage.return_side = table.quantity("return", fraction);
    leakage.measured = table.quantity("measured", flow_or_none);
    leakage.at = table.quantity("at", pressure_above_zero);
    table.finish();
    survey.duct_leakage = std::move(leakage);
}

}  // namespace

void read_machine(TableReader& sheet, house::Survey& survey) {
    read_heater(sheet, survey);
    read_blower(sheet, survey);
    read_cooling(sheet, survey);
    read_duct_leakage(sheet, survey);
    const auto devices = sheet.tables("device", "[[device]]");
    for (std::size_t i = 0; i < devices.size(); ++i) {
        TableReader device(*devices[i], owner_by_name("device", *devices[i], i), sheet.mistakes());
        survey.devices.push_back(read_device(device));
    }
}

}  // namespace sheet
