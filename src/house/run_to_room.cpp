#include "house/run_to_room.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"

namespace house {
namespace {

State state_of(const Maybe<State>& state) { return state ? state->value : State::found; }

SurveyDuct* duct_of(Survey& survey, const SurveyOutlet& outlet) {
    const auto duct = std::find_if(survey.ducts.begin(), survey.ducts.end(), [&](const SurveyDuct& one) {
        return one.name && outlet.duct && one.name->value == outlet.duct->value;
    });
    return duct == survey.ducts.end() ? nullptr : &*duct;
}

bool is_supply_to(Survey& survey, const SurveyOutlet& outlet, const std::string& room) {
    const SurveyDuct* duct = duct_of(survey, outlet);
    return outlet.room && outlet.room->value == room && duct && duct->side &&
           duct->side->value == DuctSide::supply;
}

bool serves_others(const Survey& survey, const SurveyDuct& duct, const SurveyOutlet& outlet) {
    const std::string& name = duct.name->value;
    return std::any_of(survey.ducts.begin(), survey.ducts.end(),
                       [&](const SurveyDuct& one) { return one.from && one.from->value == name; }) ||
           std::any_of(survey.outlets.begin(), survey.outlets.end(), [&](const SurveyOutlet& one) {
               return &one != &outlet && one.duct && one.duct->value == name;
           });
}

[[noreturn]] void plan_a_run(Place place, const std::string& why) {
    throw CannotAnswer(
        place, why + ": plan one, a [[duct]] and its [[outlet]] with state = \"new\", then ask again");
}

}  // namespace

SurveyWithRun with_run_to(Survey survey, const std::string& room) {
    SurveyOutlet* there = nullptr;
    for (SurveyOutlet& outlet : survey.outlets) {
        if (!is_supply_to(survey, outlet, room)) continue;
        if (state_of(outlet.state) == State::added) {
            if (state_of(duct_of(survey, outlet)->state) != State::added)
                plan_a_run(outlet.place, "the new register of the " + room + " has no run of its own");
            std::string name = outlet.name ? outlet.name->value : std::string();
            return {std::move(survey), std::move(name), true};
        }
        if (!there && state_of(outlet.state) == State::found) there = &outlet;
    }
    if (!there) plan_a_run({}, "no run leads to the " + room);
    SurveyDuct* duct = duct_of(survey, *there);
    if (serves_others(survey, *duct, *there))
        plan_a_run(duct->place, "the duct to the " + room + " serves others too");
    SurveyDuct led = *duct;
    SurveyOutlet outlet = *there;
    led.name->value += ", led on";
    outlet.duct->value = led.name->value;
    outlet.name = Given<std::string>{
        (there->name ? there->name->value : "register of the " + room) + ", moved", there->place};
    led.state = outlet.state = Given<State>{State::added, there->place};
    duct->state = there->state = Given<State>{State::removed, there->place};
    std::string name = outlet.name->value;
    survey.ducts.push_back(std::move(led));
    survey.outlets.push_back(std::move(outlet));
    return {std::move(survey), std::move(name), false};
}

}  // namespace house
