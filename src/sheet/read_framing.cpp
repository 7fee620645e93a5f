// Floors of joists, and the bays between joists or studs that a duct may pass.
#include <fmt/format.h>

#include "house/framing_ranges.hpp"
#include "sheet/parts.hpp"

namespace sheet {
namespace {

constexpr std::string_view sister_sample = "{ joist = 3, side = \"east\", add = \"1-1/2 in\" }";
constexpr std::string_view pipe_sample = "{ outside = \"3-1/2 in\", from_west = \"1 in\", top = \"2 in\" }";
constexpr WholeRange joists_in_a_floor{1, house::most_joists_in_a_floor};

// Each part of a list is a table in braces; reads them one by one.
template <class Thing, class ReadOne>
void read_each(TableReader& table, std::string_view word, std::string_view sample, std::vector<Thing>& into,
               ReadOne read_one) {
    const auto value = table.value(word);
    if (!value) return;
    const auto parts = value->list(fmt::format("[{}]", sample));
    if (!parts) return;
    for (const Value& part : *parts) {
        if (!std::holds_alternative<Table>(part.node->value)) {
            part.blame_kind("a table in braces", sample);
            continue;
        }
        TableReader one(*part.node, fmt::format("'{}' of {}", word, table.owner()), table.mistakes(), &table);
        into.push_back(read_one(one));
        one.finish();
    }
}

house::SurveySister read_sister(TableReader& table) {
    house::SurveySister sister;
    sister.joist = table.whole("joist", joists_in_a_floor);
    sister.side = table.one_of<house::WallSide>("side");
    sister.add = table.quantity("add", thickness);
    return sister;
}

// One length, or one for each end of a pipe that slopes.
house::Maybe<house::Two> read_height(TableReader& table, std::string_view word) {
    const auto value = table.value(word);
    if (!value) return std::nullopt;
    if (value->plain_text() == nullptr) return read_two(*value, distance);
    const auto both = read_quantity(*value, distance);
    if (!both) return std::nullopt;
    return house::Given<house::Two>{{both->value, both->value}, both->place};
}

void read_from_side(TableReader& table, house::SurveyBayPipe& pipe) {
    struct FromSide {
        std::string_view word;
        house::WallSide side;
    };
    static constexpr FromSide words[] = {{"from_west", house::WallSide::west},
                                         {"from_east", house::WallSide::east},
                                         {"from_south", house::WallSide::south},
                                         {"from_north", house::WallSide::north}};
    for (const auto& [word, side] : words) {
        const auto value = table.value(word);
        if (!value) continue;
        if (pipe.from) {
            value->blame("says from which side a second time", {"", "keep one of them"});
            continue;
        }
        pipe.from = house::Given<house::WallSide>{side, value->node->place};
        pipe.distance = read_quantity(*value, distance);
    }
}

house::SurveyBayPipe read_pipe(TableReader& table) {
    house::SurveyBayPipe pipe;
    pipe.place = table.place();
    pipe.name = table.text("name", "\"3 in drain\"");
    pipe.outside = table.quantity("outside", thickness);
    pipe.size = table.text("size", "\"3 in PVC\"");
    read_from_side(table, pipe);
    pipe.top = read_height(table, "top");
    pipe.bottom = read_height(table, "bottom");
    pipe.across = table.yes_or_no("across");
    return pipe;
}

house::Maybe<std::pair<int, int>> read_between(TableReader& table) {
    const auto value = table.value("between");
    if (!value) return std::nullopt;
    const auto parts = value->list_of(2, "two joists, by their numbers", "[2, 3]");
    if (!parts) return std::nullopt;
    const auto first = read_whole((*parts)[0], joists_in_a_floor);
    const auto second = read_whole((*parts)[1], joists_in_a_floor);
    if (!first || !second) return std::nullopt;
    return house::Given<std::pair<int, int>>{{first->value, second->value}, value->node->place};
}

house::SurveyFloor read_floor(TableReader& table) {
    house::SurveyFloor floor;
    floor.place = table.place();
    floor.name = table.text("name", "\"upstairs floor\"");
    floor.under = read_under(table);
    floor.joists_run = table.one_of<house::JoistsRun>("joists_run");
    floor.first = table.quantity("first", distance);
    floor.spacing = table.quantity("spacing", extent);
    floor.joist = table.two("joist", thickness);
    read_each(table, "sisters", sister_sample, floor.sisters, read_sister);
    table.finish();
    return floor;
}

house::SurveyBay read_bay(TableReader& table) {
    house::SurveyBay bay;
    bay.place = table.place();
    bay.name = table.text("name", "\"bay 3\"");
    bay.framing = table.one_of<house::Framing>("framing");
    bay.clear = table.two("clear", extent);
    bay.floor = table.text("floor", "\"upstairs floor\"");
    bay.between = read_between(table);
    bay.clearance = table.quantity("clearance", distance);
    read_each(table, "pipes", pipe_sample, bay.pipes, read_pipe);
    table.finish();
    return bay;
}

}  // namespace

void read_framing(TableReader& sheet, house::Survey& survey) {
    const auto floors = sheet.tables("floor", "[[floor]]");
    for (std::size_t i = 0; i < floors.size(); ++i) {
        TableReader floor(*floors[i], owner_by_name("floor", *floors[i], i), sheet.mistakes());
        survey.floors.push_back(read_floor(floor));
    }
    const auto bays = sheet.tables("bay", "[[bay]]");
    for (std::size_t i = 0; i < bays.size(); ++i) {
        TableReader bay(*bays[i], owner_by_name("bay", *bays[i], i), sheet.mistakes());
        survey.bays.push_back(read_bay(bay));
    }
}

}  // namespace sheet
