#include "questions/check_sheet.hpp"

#include <algorithm>

#include "ducts/fittings.hpp"
#include "loads/inside_shades.hpp"
#include "loads/materials.hpp"
#include "loads/roofs.hpp"
#include "loads/slab_edges.hpp"

namespace questions {
namespace {

template <class Found>
void add_if_mistake(std::vector<house::Mistake>& mistakes, const Found& found) {
    if (const auto* mistake = std::get_if<house::Mistake>(&found)) mistakes.push_back(*mistake);
}

std::vector<house::SurveyGround> grounds(const house::SurveyRoom& room) {
    std::vector<house::SurveyGround> all;
    if (room.below) all.push_back(room.below->ground);
    for (const house::SurveySurface& surface : room.surfaces) all.push_back(surface.ground);
    return all;
}

// Names only their owners know, of whatever stage, used or not.
std::vector<house::Mistake> unknown_names(const house::Survey& survey) {
    std::vector<house::Mistake> mistakes;
    const auto as_name = [](const auto& given) { return house::CatalogueName{given.value, given.place}; };
    for (const house::SurveyConstruction& construction : survey.constructions)
        for (const auto& layer : construction.layers)
            add_if_mistake(mistakes, loads::look_up_layer(as_name(layer)));
    for (const house::SurveyRoom& room : survey.rooms) {
        for (const house::SurveyGround& ground : grounds(room)) {
            if (ground.edge && ground.edge->value != house::dont_know)
                add_if_mistake(mistakes, loads::look_up_slab_edge(as_name(*ground.edge)));
            if (ground.covering) add_if_mistake(mistakes, loads::look_up_layer(as_name(*ground.covering)));
        }
        for (const house::SurveyWindow& window : room.windows) {
            for (const auto& glass : {window.glass, window.becomes})
                if (glass && glass->value != house::dont_know)
                    add_if_mistake(mistakes, loads::look_up_glass(as_name(*glass)));
            if (window.shade) add_if_mistake(mistakes, loads::look_up_shade(as_name(*window.shade)));
        }
    }
    if (survey.roof) add_if_mistake(mistakes, loads::look_up_roof(as_name(*survey.roof)));
    for (const house::SurveyDuct& duct : survey.ducts)
        for (const auto& fitting : duct.fittings)
            add_if_mistake(mistakes, ducts::look_up_fitting(as_name(fitting)));
    return mistakes;
}

// Where the reader could not take some value, what is missing may be missing only for that: the reader's word
// is enough.
void add_once(std::vector<house::Mistake>& to, std::vector<house::Mistake> more, bool read_well) {
    for (house::Mistake& mistake : more) {
        if (mistake.may_follow && !read_well) continue;
        const bool known = std::any_of(to.begin(), to.end(), [&](const house::Mistake& m) {
            return m.place == mistake.place && m.text == mistake.text;
        });
        if (!known) to.push_back(std::move(mistake));
    }
}

int count_new_outlets(const house::House& house) {
    return static_cast<int>(
        std::count_if(house.outlets.begin(), house.outlets.end(), [&](const house::Outlet& outlet) {
            return outlet.state == house::State::added && house.is_supply(outlet);
        }));
}

bool plans_an_outlet(const house::Survey& survey) {
    return std::any_of(survey.outlets.begin(), survey.outlets.end(), [](const house::SurveyOutlet& outlet) {
        return outlet.state && outlet.state->value == house::State::added;
    });
}

}  // namespace

bool plans_a_change(const house::Survey& survey) {
    const auto changes_state = [](const auto& thing) {
        return thing.state && thing.state->value != house::State::found;
    };
    return std::any_of(survey.ducts.begin(), survey.ducts.end(), changes_state) ||
           std::any_of(survey.outlets.begin(), survey.outlets.end(), changes_state) ||
           std::any_of(survey.rooms.begin(), survey.rooms.end(), house::is_altered);
}

CheckAnswer check_sheet(const house::Survey& survey, std::vector<house::Mistake> from_reading) {
    CheckAnswer answer;
    const bool read_well = from_reading.empty();
    answer.mistakes = std::move(from_reading);
    // What a question about the whole system assumes is told too, as soon as there is one to ask.
    const house::Extent extent =
        plans_an_outlet(survey) ? house::Extent::whole_system : house::Extent::branch;
    house::Built planned = house::build(survey, {}, house::Stage::planned, extent);
    add_once(answer.mistakes, std::move(planned.mistakes), read_well);
    add_once(answer.mistakes, unknown_names(survey), read_well);
    answer.changes = plans_a_change(survey);
    if (answer.changes) {
        house::Built found = house::build(survey, {}, house::Stage::found);
        add_once(answer.mistakes, std::move(found.mistakes), read_well);
    }
    std::stable_sort(answer.mistakes.begin(), answer.mistakes.end(), [](const auto& a, const auto& b) {
        return a.place.line != b.place.line ? a.place.line < b.place.line : a.place.column < b.place.column;
    });
    answer.assumptions = std::move(planned.assumptions);
    answer.planned = std::move(planned.house);
    answer.new_outlets = count_new_outlets(answer.planned);
    return answer;
}

}  // namespace questions
