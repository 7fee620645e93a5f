// What the plan of a room shows beside its walls: what stands on its floor, how its doors open; and which
// storey a floor of joists lies under.
#include <array>
#include <charconv>

#include "sheet/parts.hpp"

namespace sheet {
namespace {

constexpr std::string_view swing_sample = "\"in, hinged west\", or \"slides\"";
constexpr std::string_view hinged = ", hinged ";

house::SurveyFixture read_fixture(TableReader& table) {
    house::SurveyFixture fixture;
    fixture.place = table.place();
    fixture.name = table.text("name", "\"old tub\"");
    fixture.kind = table.one_of<house::FixtureKind>("kind");
    fixture.corner = table.two("corner", distance);
    fixture.size = table.two("size", extent);
    table.finish();
    return fixture;
}

template <class E>
std::optional<E> spelled(std::string_view text) {
    for (const auto& row : house::words<E>())
        if (row.text == text) return row.value;
    return std::nullopt;
}

bool has_a_hinge(house::DoorHanging hanging) {
    return hanging == house::DoorHanging::in || hanging == house::DoorHanging::out;
}

}  // namespace

void read_fixtures(TableReader& room, house::SurveyRoom& into) {
    const auto fixtures = room.tables("fixture", "[[room.fixture]]");
    for (std::size_t i = 0; i < fixtures.size(); ++i) {
        TableReader fixture(*fixtures[i], owner_by_name("fixture", *fixtures[i], i) + " of " + room.owner(),
                            room.mistakes(), &room);
        into.fixtures.push_back(read_fixture(fixture));
    }
}

house::Maybe<house::SurveySwing> read_swing(TableReader& door) {
    const auto value = door.value("swings");
    const auto text = value ? value->text(swing_sample) : std::nullopt;
    if (!text) return std::nullopt;
    const std::string_view all = *text;
    const std::size_t comma = all.find(hinged);
    const std::string_view how = all.substr(0, comma);
    const auto hanging = spelled<house::DoorHanging>(how);
    if (!hanging) {
        blame_word(*value, how, spellings<house::DoorHanging>());
        return std::nullopt;
    }
    if (has_a_hinge(*hanging) != (comma != std::string_view::npos)) {
        value->blame(has_a_hinge(*hanging) ? "does not say where the door is hinged"
                                           : "gives a hinge to a door that has none",
                     {"", value->write(swing_sample)});
        return std::nullopt;
    }
    house::SurveySwing swing{*hanging, {}};
    if (comma == std::string_view::npos) return house::Given<house::SurveySwing>{swing, value->node->place};
    const std::string_view side = all.substr(comma + hinged.size());
    swing.hinged = spelled<house::WallSide>(side);
    if (!swing.hinged) {
        blame_word(*value, side, spellings<house::WallSide>());
        return std::nullopt;
    }
    return house::Given<house::SurveySwing>{swing, value->node->place};
}

house::Maybe<int> read_under(TableReader& floor) {
    constexpr std::string_view sample = "\"storey 2\"", storey = "storey ";
    const auto value = floor.value("under");
    const auto text = value ? value->text(sample) : std::nullopt;
    if (!text) return std::nullopt;
    int number = 0;
    const char* const end = text->data() + text->size();
    const bool named = text->compare(0, storey.size(), storey) == 0;
    const auto [after, error] = std::from_chars(text->data() + (named ? storey.size() : 0), end, number);
    if (!named || error != std::errc() || after != end || number < storeys.least || number > storeys.most) {
        value->blame("is not a storey", {"", value->write(sample)});
        return std::nullopt;
    }
    return house::Given<int>{number, value->node->place};
}

}  // namespace sheet
