// The house itself, its site, its thermostat, and how its walls are made.
#include <fmt/format.h>

#include "sheet/code_points.hpp"
#include "sheet/parts.hpp"

namespace sheet {
namespace {

using Leakage = std::variant<house::LeakageClass, units::LeakageTest>;

// A text with a figure in it is a test, any other one of the words.
std::optional<house::Given<Leakage>> read_leakage(TableReader& table) {
    const auto value = table.value("air_leakage");
    if (!value) return std::nullopt;
    if (value->plain_text() == nullptr) {
        blame_not_quoted(*value, "{} ACH50", "leaky");
        return std::nullopt;
    }
    if (value->plain_text()->find_first_of("0123456789") == std::string::npos) {
        const auto word = read_word<house::LeakageClass>(*value);
        if (word) return house::Given<Leakage>{word->value, word->place};
        table.mistakes().back().remedy += ", or a blower-door test: \"14 ACH50\"";
        return std::nullopt;
    }
    const auto text = value->text("\"14 ACH50\"");
    if (!text) return std::nullopt;
    const auto reading = units::read_leakage_test(*text);
    if (const auto* problem = std::get_if<units::ReadProblem>(&reading)) {
        value->blame(*problem);
        return std::nullopt;
    }
    const auto test = std::get<units::LeakageTest>(reading);
    if (!sign_is_right(*value, test.at_50_pascal.si(), Sign::positive)) return std::nullopt;
    return house::Given<Leakage>{test, value->node->place};
}

void read_house_table(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("house", "{ name = \"...\" }, or a heading [house]");
    if (node == nullptr) return;
    TableReader table(*node, "[house]", sheet.mistakes());
    survey.house_place = table.place();
    survey.house_name = table.text("name");
    survey.built = table.whole("built", {1600, 2100});
    survey.storeys = table.whole("storeys", {1, 4});
    survey.frame = table.one_of<house::Frame>("frame");
    survey.air_leakage = read_leakage(table);
    survey.house_size = table.two("size", extent);
    survey.north = table.quantity("north", angle);
    survey.bedrooms = table.whole("bedrooms", {0, 20});
    survey.roof = table.text("roof", "\"asphalt, medium\"");
    table.finish();
}

void read_site(TableReader& sheet, house::SurveySite& site) {
    const Node* node = sheet.table("site", "{ elevation = \"620 ft\" }, or a heading [site]");
    if (node == nullptr) return;
    TableReader table(*node, "[site]", sheet.mistakes());
    site.place = table.place();
    site.elevation = table.quantity("elevation", any_length);
    site.winter_outdoor = table.quantity("winter_outdoor", temperature);
    site.winter_indoor = table.quantity("winter_indoor", temperature);
    site.ground = table.quantity("ground", temperature);
    site.latitude = table.quantity("latitude", angle);
    site.summer_outdoor = table.quantity("summer_outdoor", temperature);
    site.summer_indoor = table.quantity("summer_indoor", temperature);
    site.summer_wet_bulb = table.quantity("summer_wet_bulb", temperature);
    site.daily_range = table.quantity("daily_range", temperature_rise);
    table.finish();
}

void read_thermostat(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("thermostat", "{ room = \"hall\" }, or a heading [thermostat]");
    if (node == nullptr) return;
    TableReader table(*node, "[thermostat]", sheet.mistakes());
    survey.thermostat_room = table.text("room", "\"hall\"");
    table.finish();
}

house::SurveyConstruction read_construction(const Member& member, Mistakes& mistakes) {
    house::SurveyConstruction construction;
    construction.name = member.word;
    construction.place = member.place;
    TableReader table(member.node, fmt::format("construction '{}'", shown(member.word)), mistakes);
    construction.layers = table.texts("layers", "\"lap siding\", \"plaster on wood lath\"");
    construction.studs = table.quantity("studs", thickness);
    construction.framing = table.quantity("framing", fraction);
    construction.u = table.quantity("u", transmittance);
    construction.r = table.quantity("r", resistance);
    table.finish();
    return construction;
}

// The name is a word of the sheet here, but what fits a name's text has to fit it too.
bool name_is_right(const Member& member, Mistakes& mistakes) {
    const Node as_text{member.word, member.place};
    if (member.word == house::dont_know) {
        mistakes.push_back({"no construction can be called \"don't know\"", "",
                            "that stands for a make nobody knows; give this one another name", member.place,
                            std::nullopt});
        return false;
    }
    return Value{&as_text, "name", "a construction", &mistakes}.text("bare_wall").has_value();
}

void read_constructions(TableReader& sheet, house::Survey& survey) {
    const Node* node = sheet.table("construction", "{ ... }, under a heading [construction.bare_wall]");
    if (node == nullptr) return;
    for (const Member& member : std::get<Table>(node->value)) {
        const Value value{&member.node, member.word, "[construction]", &sheet.mistakes()};
        if (!name_is_right(member, sheet.mistakes())) continue;
        if (std::holds_alternative<Table>(member.node.value)) {
            survey.constructions.push_back(read_construction(member, sheet.mistakes()));
        } else {
            value.blame_kind("a table", "{ layers = [\"...\"] }");
        }
    }
}

}  // namespace

void read_house(TableReader& sheet, house::Survey& survey) {
    read_house_table(sheet, survey);
    read_site(sheet, survey.site);
    read_thermostat(sheet, survey);
    read_constructions(sheet, survey);
}

}  // namespace sheet
