#include "report/json.hpp"

#include <functional>
#include <nlohmann/json.hpp>

#include "report/cautions.hpp"
#include "report/json_figures.hpp"
#include "report/json_gains.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

Json range_of(questions::Range range) {
    return {
        {"low", figure_of(range.low)}, {"value", figure_of(range.value)}, {"high", figure_of(range.high)}};
}
Json range_in_celsius(questions::Range range) {
    constexpr double zero = 273.15;
    return range_of({range.low - zero, range.value - zero, range.high - zero});
}

Json shape_of(const house::Shape& shape) {
    if (const auto* round = std::get_if<house::Round>(&shape))
        return {{"kind", "round"}, {"diameter_m", si(round->diameter)}};
    if (const auto* oval = std::get_if<house::FlatOval>(&shape))
        return {{"kind", "flat oval"}, {"width_m", si(oval->major)}, {"height_m", si(oval->minor)}};
    const auto& flat = std::get<house::Rectangular>(shape);
    return {{"kind", "rectangular"}, {"width_m", si(flat.width)}, {"height_m", si(flat.height)}};
}

Json trial_of(const questions::BranchTrial& trial) {
    const bool possible = trial.needs.has_value();
    return {{"pipe", shape_of(trial.pipe)},
            {"needs_m3_s", possible ? Json(si(trial.needs->airflow)) : Json(nullptr)},
            {"needs_kg_s", possible ? Json(si(trial.needs->flow)) : Json(nullptr)},
            {"arrives_at_its_need_C", possible ? Json(celsius(trial.needs->arrival)) : Json(nullptr)},
            {"carries_m3_s", si(trial.carries)},
            {"arrives_C", celsius(trial.arrives)},
            {"reaches_C", celsius(trial.reaches)},
            {"speed_m_s", si(trial.speed)},
            {"speed_at_its_need_m_s", possible ? Json(si(trial.speed_needed)) : Json(nullptr)},
            {"friction_rate_Pa_m", si(trial.rate)},
            {"quiet", trial.quiet},
            {"holds", trial.holds()}};
}

Json loss_of(const loads::RoomHeatLoss& room, const house::House& house) {
    Json surfaces = Json::array();
    for (const loads::SurfaceLoss& s : room.surfaces)
        surfaces.push_back({{"surface", s.surface},
                            {"towards", s.beyond_name},
                            {"area_m2", si(s.area)},
                            {"U_W_m2_K", si(s.u)},
                            {"beyond_C", celsius(s.beyond)},
                            {"loss_W", si(s.loss)}});
    return {{"room", house.room(room.room).name},
            {"inside_C", celsius(room.inside)},
            {"loss_W", si(room.total)},
            {"leakage_m3_s", si(room.leakage)},
            {"leakage_loss_W", si(room.leakage_loss)},
            {"surfaces", surfaces}};
}

Json on_time_of(const loads::OnTime& on_time) {
    return {{"output_W", si(on_time.output)},
            {"wanted", figure_of(on_time.wanted)},
            {"share", figure_of(on_time.share)},
            {"holds", on_time.holds()}};
}

Json path_of(const ducts::Path& path, const house::House& house) {
    Json pieces = Json::array();
    for (const ducts::PathPiece& piece : path.pieces)
        pieces.push_back(
            {{"duct",
              piece.duct < 0 ? Json(nullptr) : Json(house.ducts[static_cast<std::size_t>(piece.duct)].name)},
             {"length_m", si(piece.length)},
             {"fittings_as_length_m", si(piece.equivalent)}});
    return {{"total_m", si(path.total())}, {"pieces", pieces}};
}

Json budget_of(const ducts::FrictionRateBudget& budget, const house::House& house) {
    Json taken = Json::array();
    for (const ducts::PressureLoss& part : budget.taken)
        taken.push_back({{"name", part.name}, {"loss_Pa", si(part.loss)}});
    return {{"external_static_pressure_Pa", si(budget.external_static)},
            {"taken", taken},
            {"available_static_pressure_Pa", si(budget.available)},
            {"longest_supply", path_of(budget.supply, house)},
            {"longest_return", path_of(budget.return_side, house)},
            {"total_effective_length_m", si(budget.total_effective_length)},
            {"friction_rate_Pa_m", si(budget.rate)}};
}

Json assumption_of(const house::Assumption& assumption) {
    const house::DefaultRow& row = house::default_row(assumption.id);
    return {{"what", std::string(row.what)},   {"value_si", figure_of(row.value)},
            {"low_si", figure_of(row.low)},    {"high_si", figure_of(row.high)},
            {"used_for", assumption.used_for}, {"basis", std::string(row.basis)}};
}

// Turns the figures at one end of a default into the keys of "range".
using Figures = std::function<Json(const std::vector<double>&)>;

Json at_end(const std::optional<questions::Asked>& asked, const Figures& figures) {
    return asked ? figures(asked->figures) : Json(nullptr);
}

Json branch_figures(const std::vector<double>& figures) {
    using enum questions::BranchFigure;
    const auto at = [&](questions::BranchFigure figure) { return figures[static_cast<std::size_t>(figure)]; };
    return {{"needs_m3_s", figure_of(at(needs))},
            {"carries_m3_s", figure_of(at(carries))},
            {"margin_m3_s", figure_of(at(margin))},
            {"reaches_C", celsius(units::Temperature(at(reaches)))}};
}

// each: how one of the answer's figures is written.
template <class Each>
Json loads_figures(const questions::LoadsAnswer& answer, const Each& each) {
    Json rooms = Json::array(), gains = Json::array();
    for (std::size_t i = 0; i < answer.house_loss_figure(); ++i) rooms.push_back(each(i));
    Json all = {{"rooms_W", rooms}, {"house_W", each(answer.house_loss_figure())}};
    if (!answer.planned.gains) return all;
    for (std::size_t i = 0; i < answer.house_loss_figure(); ++i) gains.push_back(each(answer.gain_figure(i)));
    all["gain_rooms_W"] = gains;
    all["gain_house_W"] = each(answer.house_gain_figure());
    all["moisture_W"] = each(answer.moisture_figure());
    return all;
}

Json assumptions_of(const questions::Weighed& weighed, const Figures& figures) {
    Json all = Json::array();
    for (const questions::Weight& weight : weighed.weights) {
        Json one = assumption_of(weight.assumption);
        one["at_low"] = at_end(weight.at_low, figures);
        one["at_high"] = at_end(weight.at_high, figures);
        all.push_back(std::move(one));
    }
    return all;
}

// A sheet may hold bytes that are no UTF-8: they are replaced, never thrown at the user.
std::string text_of(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json document(const char* question) { return {{"schema", 1}, {"question", question}}; }

Json cooler_of(const std::optional<questions::AtHouseTemperature>& cooler) {
    if (!cooler) return nullptr;
    return {{"temperature_C", celsius(cooler->temperature)},
            {"choice", trial_of(cooler->choice)},
            {"electric_heater_W", si(cooler->electric)}};
}

Json branch_answer(const questions::BranchAnswer& answer) {
    const questions::BranchSizing& sizing = answer.sizing;
    const questions::BranchSetting& setting = sizing.setting;
    const auto room = static_cast<std::size_t>(setting.asked.room.index);
    Json trials = Json::array();
    for (const questions::BranchTrial& trial : sizing.trials) trials.push_back(trial_of(trial));
    return {{"verdict", word_of(answer.verdict)},
            {"outlet", answer.outlet.name},
            {"room", loss_of(setting.loss.rooms[room], answer.house)},
            {"supply_outlets_in_room", setting.outlets_in_room},
            {"asked_of_this_outlet_W", si(setting.asked.total)},
            {"loss_before_W", answer.loss_before ? Json(si(*answer.loss_before)) : Json(nullptr)},
            {"sized_here", sizing.to_size},
            {"chosen", sizing.chosen},
            {"trials", trials},
            {"at_house_temperature", cooler_of(answer.cooler)},
            {"on_time", on_time_of(setting.on_time)},
            {"blower_m3_s", si(setting.blower.airflow)},
            {"supply_C", celsius(setting.supply.temperature)},
            {"friction_rate", budget_of(sizing.budget, answer.house)}};
}

Json coldest_of(const std::optional<loads::ColdestSurface>& coldest) {
    if (!coldest) return nullptr;
    return {{"surface", coldest->surface.surface},
            {"temperature_C", celsius(coldest->temperature)},
            {"sweats_above_relative_humidity", figure_of(coldest->sweats_above)}};
}

Json needs_of(const questions::RoomAir& air, Json json) {
    json["needs_at_least_m3_s"] = air.enough ? Json(si(air.airflow)) : Json(nullptr);
    json["needs_at_least_kg_s"] = air.enough ? Json(si(air.flow)) : Json(nullptr);
    return json;
}

Json as_the_house_of(const std::optional<questions::RoomAsTheHouse>& there) {
    if (!there) return nullptr;
    return needs_of(there->air, {{"temperature_C", celsius(there->inside)},
                                 {"loss_W", si(there->loss)},
                                 {"electric_heater_W", si(there->electric)}});
}

Json house_of(const questions::HouseLoads& loads) {
    Json rooms = Json::array();
    for (std::size_t i = 0; i < loads.loss.rooms.size(); ++i) {
        Json room = needs_of(loads.air[i], loss_of(loads.loss.rooms[i], loads.house));
        room["coldest_surface"] = coldest_of(loads.coldest[i]);
        room["at_house_temperature"] = as_the_house_of(loads.as_the_house[i]);
        rooms.push_back(std::move(room));
    }
    Json house = {
        {"loss_W", si(loads.loss.total)},
        {"rooms", rooms},
        {"other_rooms_W", loads.house.other_rooms ? Json(si(loads.loss.other_rooms)) : Json(nullptr)},
        {"leakage_m3_s", si(loads.loss.infiltration.airflow)},
        {"on_time", on_time_of(loads.on_time)},
        {"blower_m3_s", si(loads.blower.airflow)},
        {"supply_C", celsius(loads.supply)}};
    if (loads.gains) house["summer"] = summer_as<Json>(loads);
    return house;
}

Json limits_of(const questions::LoadsAnswer& answer) {
    Json all = Json::array();
    for (const questions::BeyondLimit& beyond : answer.beyond_limits) {
        Json room = nullptr;
        if (questions::is_of_a_room(beyond.limit)) room = answer.planned.house.room(beyond.room).name;
        all.push_back({{"limit", std::string(questions::word_of(beyond.limit))}, {"room", room}});
    }
    return all;
}

Json place_of(house::Place place) {
    return {{"line", place.line}, {"column", place.column}, {"end_column", place.end_column}};
}

Json mistake_of(const house::Mistake& mistake) {
    return {{"text", mistake.text},
            {"under", mistake.under},
            {"remedy", mistake.remedy},
            {"place", place_of(mistake.place)},
            {"second_place", mistake.second ? place_of(*mistake.second) : Json(nullptr)}};
}

}  // namespace

std::string branch_json(const questions::BranchAnswer& answer) {
    using enum questions::BranchFigure;
    Json json = document("branch");
    json["answer"] = branch_answer(answer);
    json["range"] = {{"needs_m3_s", range_of(answer.range(needs))},
                     {"carries_m3_s", range_of(answer.range(carries))},
                     {"margin_m3_s", range_of(answer.range(margin))},
                     {"reaches_C", range_in_celsius(answer.range(reaches))}};
    json["assumptions"] = assumptions_of(answer.weighed, branch_figures);
    json["cautions"] = cautions(answer.house);
    return text_of(json);
}

std::string loads_json(const questions::LoadsAnswer& answer) {
    Json json = document("loads");
    Json only = nullptr;
    if (answer.only) only = answer.planned.house.room(*answer.only).name;
    json["answer"] = {{"planned", house_of(answer.planned)},
                      {"found", answer.found ? house_of(*answer.found) : Json(nullptr)},
                      {"only_room", only},
                      {"fits_badly", limits_of(answer)}};
    json["range"] =
        loads_figures(answer, [&](std::size_t figure) { return range_of(answer.weighed.ranges[figure]); });
    json["assumptions"] = assumptions_of(answer.weighed, [&](const std::vector<double>& figures) {
        return loads_figures(answer, [&](std::size_t figure) { return Json(figure_of(figures[figure])); });
    });
    json["cautions"] = cautions(answer.planned.house);
    return text_of(json);
}

std::string start_json(const std::string& file) {
    Json json = document("start");
    json["answer"] = {{"wrote", file}};
    json["range"] = nullptr;
    json["assumptions"] = Json::array();
    json["cautions"] = Json::array();
    return text_of(json);
}

std::string check_json(const questions::CheckAnswer& answer) {
    const bool right = answer.mistakes.empty();
    Json mistakes = Json::array(), assumptions = Json::array();
    for (const house::Mistake& mistake : answer.mistakes) mistakes.push_back(mistake_of(mistake));
    if (right)
        for (const house::Assumption& assumption : answer.assumptions)
            assumptions.push_back(assumption_of(assumption));
    Json json = document("check");
    json["answer"] = {{"right", right},
                      {"mistakes", mistakes},
                      {"rooms", answer.planned.rooms.size()},
                      {"ducts", answer.planned.ducts.size()},
                      {"outlets", answer.planned.outlets.size()},
                      {"new_supply_outlets", answer.new_outlets},
                      {"changes", answer.changes}};
    json["range"] = nullptr;
    json["assumptions"] = assumptions;
    json["cautions"] = right ? Json(cautions(answer.planned)) : Json::array();
    return text_of(json);
}

}  // namespace report
