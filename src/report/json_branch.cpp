// The answer of `branch` as JSON.
#include "report/json.hpp"

#include <nlohmann/json.hpp>

#include "report/cautions.hpp"
#include "report/json_parts.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

Json shape_of(const house::Shape& shape) {
    if (const auto* round = std::get_if<house::Round>(&shape))
        return {{"kind", "round"}, {"diameter_m", si(round->diameter)}};
    if (const auto* oval = std::get_if<house::FlatOval>(&shape))
        return {{"kind", "flat oval"},
                {"width_m", si(oval->major)},
                {"height_m", si(oval->minor)},
                {"equivalent_round_m", si(ducts::equivalent_round(shape))}};
    const auto& flat = std::get<house::Rectangular>(shape);
    return {{"kind", "rectangular"},
            {"width_m", si(flat.width)},
            {"height_m", si(flat.height)},
            {"equivalent_round_m", si(ducts::equivalent_round(shape))}};
}

Json trial_of(const questions::BranchTrial& trial) {
    const bool possible = trial.needs.has_value();
    return {{"pipe", shape_of(trial.pipe)},
            {"needs_m3_s", possible ? Json(si(trial.needs->airflow)) : Json(nullptr)},
            {"needs_kg_s", possible ? Json(si(trial.needs->flow)) : Json(nullptr)},
            {"arrives_at_its_need_C", possible ? Json(celsius(trial.needs->arrival)) : Json(nullptr)},
            {"carries_m3_s", si(trial.carries)},
            {"gives_m3_s", si(trial.gives)},
            {"arrives_C", celsius(trial.arrives)},
            {"reaches_C", celsius(trial.reaches)},
            {"speed_m_s", si(trial.speed)},
            {"speed_at_its_need_m_s", possible ? Json(si(trial.speed_needed)) : Json(nullptr)},
            {"friction_rate_Pa_m", si(trial.rate)},
            {"quiet", trial.quiet},
            {"holds", trial.holds()}};
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

Json branch_figures(const std::vector<double>& figures) {
    using enum questions::BranchFigure;
    const auto at = [&](questions::BranchFigure figure) { return figures[static_cast<std::size_t>(figure)]; };
    return {{"needs_m3_s", figure_of(at(needs))},
            {"gives_m3_s", figure_of(at(gives))},
            {"margin_m3_s", figure_of(at(margin))},
            {"reaches_C", celsius(units::Temperature(at(reaches)))}};
}

Json cooler_of(const std::optional<questions::AtHouseTemperature>& cooler) {
    if (!cooler) return nullptr;
    return {{"temperature_C", celsius(cooler->temperature)},
            {"choice", trial_of(cooler->choice)},
            {"electric_heater_W", si(cooler->electric)}};
}

Json on_its_way_of(const questions::OnItsWay& way) {
    return {{"arrives_C", celsius(way.arrival)},
            {"needs_m3_s", si(way.needs)},
            {"lost_on_the_way_W", si(way.lost)}};
}

Json wrap_of(const std::optional<questions::WrapEffect>& wrap) {
    if (!wrap) return nullptr;
    return {{"wrap_m2_K_W", si(questions::stock_wrap)},
            {"bare", on_its_way_of(wrap->bare)},
            {"wrapped", on_its_way_of(wrap->wrapped)}};
}

Json on_a_pipe(const questions::OnAPipe& pipe) {
    return {{"arrives_C", celsius(pipe.arrives)}, {"lost_W", si(pipe.lost)}};
}

Json leftovers_of(const questions::BranchAnswer& answer) {
    constexpr const char* advice[] = {"keep", "sleeve", "blank"};
    Json all = Json::array();
    for (const questions::LeftoverDuct& old : answer.leftovers) {
        Json one = {{"duct", answer.house.ducts[static_cast<std::size_t>(old.duct)].name},
                    {"advice", advice[static_cast<std::size_t>(old.advice)]}};
        if (old.advice != questions::Advice::blank) {
            one["speed_m_s"] = si(old.speed);
            one["sleeve_m"] = si(old.sleeve.diameter);
            one["as_it_is"] = on_a_pipe(old.as_it_is);
            one["sleeved"] = on_a_pipe(old.sleeved);
        }
        all.push_back(std::move(one));
    }
    return all;
}

Json in_summer_of(const questions::BranchAnswer& answer) {
    if (!answer.in_summer) return nullptr;
    const questions::BranchInSummer& summer = *answer.in_summer;
    return {{"duct", answer.house.ducts[static_cast<std::size_t>(summer.duct)].name},
            {"air_around_C", celsius(summer.around)},
            {"dew_point_C", celsius(summer.dew_point)},
            {"outside_of_duct_C", celsius(summer.outside)},
            {"sweats", summer.sweats()},
            {"insulation_that_keeps_dry_m2_K_W", summer.needed ? Json(si(*summer.needed)) : Json(nullptr)}};
}

Json bay_passage_of(const questions::BayPassage& passage, const questions::BranchAnswer& answer) {
    const house::Bay& bay = answer.house.bays[static_cast<std::size_t>(passage.bay)];
    Json spares = Json::array();
    for (units::Length spare : passage.spares) spares.push_back(si(spare));
    Json move = nullptr;
    if (passage.move)
        move = {{"pipe", bay.pipes[static_cast<std::size_t>(passage.move->pipe)].name},
                {"way", routes::word_of(passage.move->way)},
                {"by_m", si(passage.move->by)}};
    return {{"bay", bay.name},
            {"duct", answer.house.ducts[static_cast<std::size_t>(passage.duct)].name},
            {"spare_of_each_trial_m", spares},
            {"passes", passage.passes(answer.sizing.chosen)},
            {"would_pass_after", move},
            {"largest_pipe", passage.largest_pipe ? shape_of(*passage.largest_pipe) : Json(nullptr)},
            {"largest_oval", passage.largest_oval ? shape_of(*passage.largest_oval) : Json(nullptr)},
            {"largest_stack", passage.largest_stack ? shape_of(*passage.largest_stack) : Json(nullptr)}};
}

// The tightest bay alone.
Json passage_of(const questions::BranchAnswer& answer) {
    return answer.passage ? bay_passage_of(answer.passage->narrowest(), answer) : Json(nullptr);
}

Json bays_of(const questions::BranchAnswer& answer) {
    Json bays = Json::array();
    if (!answer.passage) return bays;
    for (const questions::BayPassage& bay : answer.passage->bays) bays.push_back(bay_passage_of(bay, answer));
    return bays;
}

const char* size_word(ducts::Size size) {
    if (size == ducts::Size::too_small) return "too small";
    return size == ducts::Size::fair ? "fair" : "larger than needed";
}

Json judged_of(const questions::BranchAnswer& answer) {
    Json all = Json::array();
    for (const ducts::JudgedDuct& duct : answer.judged)
        all.push_back({{"duct", answer.house.ducts[static_cast<std::size_t>(duct.duct)].name},
                       {"part", std::string(ducts::velocity_limit(duct.part).name)},
                       {"size", size_word(duct.size())},
                       {"flow_kg_s", si(duct.flow)},
                       {"speed_m_s", si(duct.velocity)},
                       {"friction_rate_Pa_m", si(duct.friction)}});
    return all;
}

Json way_back_of(const std::optional<questions::WayBack>& back) {
    if (!back) return nullptr;
    Json jump = nullptr;
    if (back->jump)
        jump = {{"grille", shape_of(house::Shape(back->jump->grille))},
                {"duct", shape_of(house::Shape(back->jump->duct))}};
    return {{"flow_m3_s", si(back->flow)},
            {"opening_m2", si(back->opening)},
            {"transfer_grille_m2", si(back->grille)},
            {"jump_duct", jump}};
}

Json return_faces_of(const questions::BranchAnswer& answer) {
    const questions::ReturnFaces& faces = answer.return_faces;
    Json described = Json::array();
    for (const questions::ReturnFace& face : faces.described)
        described.push_back({{"outlet", answer.house.outlets[static_cast<std::size_t>(face.outlet)].name},
                             {"flow_m3_s", si(face.flow)},
                             {"face_speed_m_s", si(face.speed)},
                             {"too_fast", face.too_fast()}});
    return {{"flow_m3_s", si(faces.flow)},
            {"grilles_m2", si(faces.grilles)},
            {"filter_m2", si(faces.filter)},
            {"described", described}};
}

Json branch_answer(const questions::BranchAnswer& answer) {
    const questions::BranchSizing& sizing = answer.sizing;
    const questions::BranchSetting& setting = sizing.setting;
    const auto room = static_cast<std::size_t>(setting.asked.room.index);
    Json trials = Json::array();
    for (const questions::BranchTrial& trial : sizing.trials) trials.push_back(trial_of(trial));
    return {{"verdict", word_of(answer.verdict)},
            {"outlet", answer.outlet.name},
            {"room", loss_of<Json>(setting.loss.rooms[room], answer.house)},
            {"supply_outlets_in_room", setting.outlets_in_room},
            {"asked_of_this_outlet_W", si(setting.asked.total)},
            {"loss_before_W", answer.loss_before ? Json(si(*answer.loss_before)) : Json(nullptr)},
            {"sized_here", sizing.to_size},
            {"chosen", sizing.chosen},
            {"trials", trials},
            {"at_house_temperature", cooler_of(answer.cooler)},
            {"through", passage_of(answer)},
            {"through_bays", bays_of(answer)},
            {"ducts_judged", judged_of(answer)},
            {"leftover_ducts", leftovers_of(answer)},
            {"in_summer", in_summer_of(answer)},
            {"way_back", way_back_of(answer.way_back)},
            {"return_faces", return_faces_of(answer)},
            {"wrap", wrap_of(answer.wrap)},
            {"on_time", on_time_of<Json>(setting.on_time)},
            {"blower_m3_s", si(setting.moved / setting.return_air.density)},
            {"supply_C", celsius(setting.supply.temperature)},
            {"friction_rate", budget_of(sizing.budget, answer.house)}};
}

}  // namespace

std::string branch_json(const questions::BranchAnswer& answer) {
    using enum questions::BranchFigure;
    Json json = document<Json>("branch");
    json["answer"] = branch_answer(answer);
    json["range"] = {{"needs_m3_s", range_of<Json>(answer.range(needs))},
                     {"gives_m3_s", range_of<Json>(answer.range(gives))},
                     {"margin_m3_s", range_of<Json>(answer.range(margin))},
                     {"reaches_C", range_in_celsius<Json>(answer.range(reaches))}};
    json["assumptions"] = assumptions_of<Json>(answer.weighed, branch_figures);
    json["cautions"] = cautions(answer.house);
    return text_of(json);
}

}  // namespace report
