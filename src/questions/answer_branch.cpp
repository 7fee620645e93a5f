#include "questions/answer_branch.hpp"

#include <algorithm>

#include "ducts/stock_sizes.hpp"
#include "house/cannot_answer.hpp"
#include "questions/asked_outlet.hpp"
#include "questions/room_as_the_house.hpp"

namespace questions {
namespace {

// The size as a word that tells one choice from another; the largest pipe tried is no choice where it fails.
std::string choice_text(const BranchTrial& trial) {
    const auto* round = std::get_if<house::Round>(&trial.pipe);
    if (!round) return {};
    return trial.holds() ? std::to_string(round->diameter.si()) : std::string(no_pipe_holds);
}

Asked asked(const BranchTrial& trial, std::string choice) {
    const double needs = trial.needs ? trial.needs->airflow.si() : 0;
    return {{needs, trial.gives.si(), trial.margin().si(), trial.reaches.si()}, std::move(choice)};
}

// The size this house would choose, if it passes the bays; else the first of those on the list that both
// holds the room and passes.
std::optional<house::Shape> size_that_passes(const house::House& house, const BranchSetting& setting,
                                             const BranchTrial& choice,
                                             const std::vector<BranchTrial>& others) {
    if (passes_every_bay(house, setting, choice.pipe)) return choice.pipe;
    if (!setting.to_size) return std::nullopt;
    for (const BranchTrial& other : others)
        if (passes_every_bay(house, setting, other.pipe) && try_size(house, setting, other.pipe).holds())
            return other.pipe;
    return std::nullopt;
}

// What is chosen there, by way of the bays where it is led through any.
void choose_again(const house::House& house, const BranchSetting& setting, const BranchTrial& choice,
                  const std::vector<BranchTrial>& others, Asked& asked) {
    asked.choice = setting.to_size ? choice_text(choice) : std::string();
    if (led_through_bays(house, setting).empty()) return;
    asked.passing = size_that_passes(house, setting, choice, others);
    if (!setting.to_size || !choice.holds() || !asked.passing || *asked.passing == choice.pipe) return;
    const auto* round = std::get_if<house::Round>(&*asked.passing);
    asked.choice = round ? std::to_string(round->diameter.si()) : std::string();
}

std::shared_ptr<const HouseAtWork> shared(HouseAtWork at_work) {
    return std::make_shared<const HouseAtWork>(std::move(at_work));
}

// The same question of another house: the size stays, and then what would be chosen there.
std::optional<Asked> ask_again(std::shared_ptr<const HouseAtWork> whole, house::OutletId outlet,
                               const BranchSizing& sizing) {
    const house::House& house = whole->house;
    const BranchSetting setting = branch_setting(house, outlet, sizing.setting.stock, whole);
    const std::optional<house::Shape> kept =
        sizing.to_size ? std::optional<house::Shape>(sizing.choice().pipe) : std::nullopt;
    const BranchTrial trial = try_size(house, setting, kept);
    if (!trial.needs) return std::nullopt;
    Asked again = asked(trial, {});
    const bool searched = sizing.to_size && std::holds_alternative<house::Round>(sizing.trials[0].pipe);
    choose_again(house, setting, searched ? choose_pipe(house, setting, trial) : trial, sizing.trials, again);
    return again;
}

// The answer itself, as ask_again tells it of other houses.
Asked as_answered(const house::House& house, const BranchSizing& sizing) {
    const BranchTrial& choice = sizing.choice();
    Asked answered = asked(choice, choice_text(choice));
    if (passes_every_bay(house, sizing.setting, choice.pipe)) answered.passing = choice.pipe;
    return answered;
}

// A room to be kept beside a pipe that is only a guess may be just what is lacking.
bool may_not_pass(const Weighed& weighed, const house::Shape& chosen) {
    const auto blocked = [&](const std::optional<Asked>& end) { return end && end->passing != chosen; };
    return std::any_of(weighed.weights.begin(), weighed.weights.end(), [&](const Weight& weight) {
        return weight.assumption.id == house::DefaultId::pipe_clearance &&
               (blocked(weight.at_low) || blocked(weight.at_high));
    });
}

std::optional<AtHouseTemperature> at_house_temperature(const house::House& house, const BranchSizing& sizing,
                                                       house::OutletId outlet) {
    const house::RoomId room = sizing.setting.asked.room;
    const std::optional<house::House> changed = with_room_as_the_house(house, room);
    if (!sizing.to_size || !changed) return std::nullopt;
    const HouseAtWork& whole = *sizing.setting.whole;
    const BranchSetting setting =
        branch_setting(*changed, outlet, sizing.setting.stock,
                       shared({*changed, loads::house_heat_loss(*changed), whole.machine}));
    const BranchTrial choice =
        choose_pipe(*changed, setting, try_size(*changed, setting, sizing.choice().pipe));
    // The wanted temperature with the smaller pipe: what the room then loses beyond what its air brings.
    const ducts::Supply& supply = sizing.setting.supply;
    const loads::RoomHeatLoss& asked = sizing.setting.asked;
    const BranchTrial there = try_size(house, sizing.setting, choice.pipe);
    const units::Power electric = loads::left_to_heat(asked.total, supply.on_time, there.gives_mass,
                                                      supply.specific_heat, there.arrives - asked.inside);
    return AtHouseTemperature{house.site.winter_indoor, choice, electric};
}

std::optional<units::Power> loss_as_found(const house::Survey& survey, house::RoomId room,
                                          units::Power planned) {
    const house::Built found = house::build(survey, {}, house::Stage::found);
    if (!found.mistakes.empty()) return std::nullopt;
    const units::Power before =
        loads::house_heat_loss(found.house).rooms[static_cast<std::size_t>(room.index)].total;
    return abs(before - planned) > 0.005 * abs(planned) ? std::optional<units::Power>(before) : std::nullopt;
}

}  // namespace

BranchAnswer answer_branch(const house::Survey& survey, const std::string& outlet_name, ducts::Stock stock) {
    BranchAnswer answer;
    // Asked wrongly is said before anything is worked out.
    const house::Outlet outlet =
        asked_outlet(house::build(survey, {}, house::Stage::planned).house, outlet_name);
    answer.outlet = outlet;
    BothHouses both = both_houses(survey, {}, first_try);
    const auto whole = shared(std::move(both.planned));
    const house::House& house = whole->house;
    answer.sizing = size_branch(house, outlet.id, stock, whole);
    if (!led_through_bays(house, answer.sizing.setting).empty()) {
        add_largest_that_passes(house, answer.sizing);
        choose(house, answer.sizing, best_that_passes(house, answer.sizing));
        answer.passage = branch_passage(house, answer.sizing);
    }
    const BranchTrial& choice = answer.sizing.choice();
    answer.weighed = weigh_assumptions(
        both.assumptions, as_answered(house, answer.sizing), [&](const house::Defaults& defaults) {
            return ask_again(shared(std::move(both_houses(survey, defaults, first_try).planned)), outlet.id,
                             answer.sizing);
        });
    Range margin = answer.range(BranchFigure::margin);
    // "No answer" at one end of a guess means the heater could not warm the room there: never a plain yes.
    if (!answer.weighed.always_answered) margin.low = std::min(margin.low, 0.0);
    if (answer.passage && may_not_pass(answer.weighed, choice.pipe)) margin.low = std::min(margin.low, 0.0);
    answer.verdict = choice.quiet ? verdict(margin) : Verdict::no;
    // Where the heater falls behind, the return air cools and no pipe brings what is reckoned here.
    if (!answer.sizing.setting.on_time.holds() && holds(answer.verdict))
        answer.verdict = Verdict::probably_not;
    if (answer.passage && !answer.passage->passes(answer.sizing.chosen)) answer.verdict = Verdict::no;
    answer.cooler = at_house_temperature(house, answer.sizing, outlet.id);
    answer.judged = judged_ducts(house, answer.sizing);
    answer.leftovers = leftover_ducts(house, answer.sizing, answer.judged);
    answer.way_back = way_back(house, answer.sizing);
    answer.return_faces = return_faces(house, answer.sizing);
    answer.wrap = wrap_effect(house, answer.sizing);
    answer.in_summer = branch_in_summer(house, answer.sizing);
    const house::RoomId room = answer.sizing.setting.asked.room;
    answer.loss_before = loss_as_found(
        survey, room, answer.sizing.setting.loss.rooms[static_cast<std::size_t>(room.index)].total);
    answer.house = house;
    return answer;
}

}  // namespace questions
