// Two things of one kind with the same name: TOML sees nothing wrong in it, but nobody could say which is
// meant.
#include <fmt/format.h>

#include <map>

#include "sheet/code_points.hpp"
#include "sheet/parts.hpp"

namespace sheet {
namespace {

template <class Thing>
void find_repeated(const std::vector<Thing>& things, std::string_view kind, Mistakes& mistakes) {
    std::map<std::string_view, house::Place> first;
    for (const Thing& thing : things) {
        if (!thing.name) continue;
        const auto [at, is_new] = first.try_emplace(thing.name->value, thing.name->place);
        if (!is_new) {
            mistakes.push_back({fmt::format("two {} have the name '{}'", kind, shown(thing.name->value)), "",
                                "give one of them another name", thing.name->place, at->second});
        }
    }
}

}  // namespace

void find_repeated_names(const house::Survey& survey, Mistakes& mistakes) {
    find_repeated(survey.rooms, "rooms", mistakes);
    find_repeated(survey.ducts, "ducts", mistakes);
    find_repeated(survey.outlets, "outlets", mistakes);
    find_repeated(survey.floors, "floors", mistakes);
    find_repeated(survey.bays, "bays", mistakes);
    for (const house::SurveyRoom& room : survey.rooms) {
        find_repeated(room.surfaces, "surfaces of one room", mistakes);
        find_repeated(room.windows, "windows of one room", mistakes);
    }
}

}  // namespace sheet
