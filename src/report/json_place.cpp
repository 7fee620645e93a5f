// The answer of `place` as JSON.
#include <nlohmann/json.hpp>

#include "registers/framing_beside.hpp"
#include "report/cautions.hpp"
#include "report/json.hpp"
#include "report/json_parts.hpp"
#include "report/place_parts.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

const char* word_of(questions::WindowSide side) {
    switch (side) {
        case questions::WindowSide::needed:
            return "needed";
        case questions::WindowSide::useful:
            return "useful";
        case questions::WindowSide::indifferent:
            break;
    }
    return "indifferent";
}

// Not the page's words: these stay as they are. Null where nothing rules it out.
Json word_of(questions::RuledOut ruled_out) {
    switch (ruled_out) {
        case questions::RuledOut::no:
            return nullptr;
        case questions::RuledOut::stopped:
            return "cannot be built";
        case questions::RuledOut::too_little_air:
            return "too little air";
        case questions::RuledOut::stays_up:
            return "warm air stays up";
        case questions::RuledOut::cold_wall:
            return "too little insulation behind it";
        case questions::RuledOut::loud:
            break;
    }
    return "loud";
}

const char* word_of(registers::Where where) {
    switch (where) {
        case registers::Where::under_window:
            return "under a window";
        case registers::Where::beside_window:
            return "beside a window";
        case registers::Where::outside_wall:
            return "at an outside wall";
        case registers::Where::inside_wall:
            return "at an inside wall";
        case registers::Where::toe_kick:
            return "in a toe kick";
        case registers::Where::ceiling:
            break;
    }
    return "in the ceiling";
}

const char* word_of(registers::WarmAir warm_air) {
    switch (warm_air) {
        case registers::WarmAir::mixes:
            return "mixes";
        case registers::WarmAir::comes_down:
            return "comes down";
        case registers::WarmAir::stays_up:
            break;
    }
    return "stays up";
}

Json at_glass_of(const std::optional<registers::AgainstTheSheet>& at_glass) {
    if (!at_glass) return nullptr;
    return {{"jet_m_s", si(at_glass->jet)},
            {"falling_m_s", si(at_glass->sheet)},
            {"covered", figure_of(at_glass->covered)},
            {"washes", at_glass->washes}};
}

Json from_high_up_of(const std::optional<registers::FromHighUp>& from_high_up) {
    if (!from_high_up) return nullptr;
    return {{"warm_air", word_of(from_high_up->warm_air)},
            {"needed_m", si(from_high_up->needed)},
            {"carries_m", si(from_high_up->carries)}};
}

const char* word_of(registers::CooledAir becomes) {
    switch (becomes) {
        case registers::CooledAir::over_the_floor:
            return "over the floor";
        case registers::CooledAir::falls_back:
            return "falls back";
        case registers::CooledAir::to_the_ceiling:
            return "to the ceiling";
        case registers::CooledAir::spreads_above:
            break;
    }
    return "spreads above";
}

Json cooled_of(const std::optional<questions::CooledPlace>& cooled) {
    if (!cooled) return nullptr;
    return {{"supply_m3_s", si(cooled->gives)},
            {"becomes", word_of(cooled->air.becomes)},
            {"reaches_m", si_or_null<Json>(cooled->air.reaches)},
            {"drops_m", si_or_null<Json>(cooled->air.drops)}};
}

Json in_cold_wall_of(const std::optional<registers::StackInWall>& stack) {
    if (!stack) return nullptr;
    return {{"left_m", si(stack->left)},
            {"behind_m2_K_W", si(stack->behind)},
            {"at_rest_C", celsius(stack->at_rest)},
            {"sweats_above", figure_of(stack->sweats_above)},
            {"loses_W", si(stack->loses)},
            {"wall_assumed", stack->wall_assumed}};
}

Json figures_of(const std::optional<questions::PlaceFigures>& figures) {
    if (!figures) return nullptr;
    const questions::BranchTrial& trial = figures->trial;
    const questions::WarmAirThere& warm = figures->warm;
    return {{"supply_m3_s", si(trial.gives)},
            {"needs_m3_s", trial.needs ? Json(si(trial.needs->airflow)) : Json(nullptr)},
            {"arrives_C", celsius(trial.arrives)},
            {"reaches_C", celsius(trial.reaches)},
            {"run_m", si(figures->run)},
            {"turns", figures->turns},
            {"lost_on_the_way_W", si(figures->lost_on_the_way)},
            {"face_speed_m_s", si(figures->face_speed)},
            {"sound", std::string(registers::in_words(figures->sound))},
            {"throw_m", si(warm.throw_length)},
            {"rise_m", si(warm.rise)},
            {"at_glass", at_glass_of(warm.at_glass)},
            {"from_high_up", from_high_up_of(warm.from_high_up)},
            {"cooled", cooled_of(figures->cooled)},
            {"in_cold_wall", in_cold_wall_of(figures->in_cold_wall)},
            {"washes", figures->washes},
            {"from_water_m", si_or_null<Json>(figures->from_water)},
            {"water", figures->water}};
}

Json framing_of(const std::optional<registers::FramingBeside>& framing) {
    if (!framing) return nullptr;
    const auto number = [](int member) { return member ? Json(member) : Json(nullptr); };
    return {{"members", framing->studs ? "studs" : "joists"},
            {"before", number(framing->before)},
            {"after", number(framing->after)}};
}

Json place_of(std::size_t index, const PlaceView& view) {
    const questions::Place& place = view.place(index);
    const registers::Location& location = place.location;
    return {{"number", place.figures ? Json(view.number_of(index)) : Json(nullptr)},
            {"mount", std::string(house::word(location.mount))},
            {"where", word_of(location.where)},
            {"wall", location.wall ? Json(std::string(house::word(*location.wall))) : Json(nullptr)},
            {"name", location.name},
            {"from_west_m", si(location.middle.east)},
            {"from_south_m", si(location.middle.north)},
            {"along_wall_m", location.wall ? Json(si(location.along)) : Json(nullptr)},
            {"off_centre_m", si(location.off_centre)},
            {"framing", framing_of(registers::framing_beside(*view.room().plan, location))},
            {"stopped_by", location.stopped ? Json(stopped_words(location)) : Json(nullptr)},
            {"ruled_out", word_of(place.ruled_out)},
            {"figures", figures_of(place.figures)}};
}

Json or_null(const std::optional<double>& share) { return share ? Json(figure_of(*share)) : Json(nullptr); }

Json falling_of(const std::vector<questions::FallingAir>& all) {
    Json list = Json::array();
    for (const questions::FallingAir& falling : all)
        list.push_back({{"window", falling.window},
                        {"glass_C", celsius(falling.glass)},
                        {"sweats_above", figure_of(falling.sweats_above)},
                        {"at", falling.at},
                        {"distance_m", si(falling.distance)},
                        {"speed_m_s", si(falling.speed)},
                        {"air_C", celsius(falling.air)},
                        {"dissatisfied", figure_of(falling.dissatisfied)},
                        {"dissatisfied_near", or_null(falling.dissatisfied_near)},
                        {"dissatisfied_far", or_null(falling.dissatisfied_far)},
                        {"tested", falling.tested}});
    return list;
}

Json now_of(const questions::PlaceAnswer& answer) {
    Json list = Json::array();
    for (const questions::OutletNow& now : answer.now)
        list.push_back({{"outlet", now.name},
                        {"supply_m3_s", si(now.airflow)},
                        {"arrives_C", celsius(now.arrives)},
                        {"reaches_C", celsius(now.reaches)}});
    return list;
}

Json sill_of(const std::optional<questions::SillTaken>& taken) {
    if (!taken) return nullptr;
    Json moves = Json::array();
    for (const units::Length sill : taken->moves_the_choice) moves.push_back(si(sill));
    return {{"window", taken->window}, {"sill_m", si(taken->sill)}, {"choice_moves_at_m", moves}};
}

Json answer_of(const questions::PlaceAnswer& answer) {
    const PlaceView view{answer, units::System::si};
    Json places = Json::array(), fittings = Json::array();
    for (std::size_t i = 0; i < answer.places.size(); ++i) places.push_back(place_of(i, view));
    for (const house::CatalogueName& fitting : answer.fittings) fittings.push_back(fitting.text);
    // Positions in "places".
    const auto position = [](const std::optional<std::size_t>& at) { return at ? Json(*at) : Json(nullptr); };
    return {{"room", view.room().name},
            {"outlet", answer.outlet.name},
            {"run_of_the_sheet", answer.run_of_the_sheet},
            {"on_time", figure_of(answer.on_time)},
            {"window_side", word_of(answer.window_side)},
            {"window_side_before", word_of(answer.window_side_before)},
            {"chosen", position(answer.chosen)},
            {"as_good", answer.as_good},
            {"chosen_before", position(answer.chosen_before)},
            {"fittings", fittings},
            {"places", places},
            {"falling", falling_of(answer.falling)},
            {"falling_before", falling_of(answer.falling_before)},
            {"summer", answer.summer ? Json{{"needs_m3_s", si(answer.summer->needs)},
                                            {"chosen", position(answer.summer->chosen)}}
                                     : Json(nullptr)},
            {"windows_centred", answer.centred},
            {"sill_taken", sill_of(answer.sill_taken)},
            {"now", now_of(answer)}};
}

constexpr std::size_t supply_air = 0, need = 1;  // of the figures that are weighed

Json place_figures(const std::vector<double>& figures) {
    const auto at = [&](std::size_t which) {
        return which < figures.size() ? Json(figure_of(figures[which])) : Json(nullptr);
    };
    return {{"supply_m3_s", at(supply_air)}, {"needs_m3_s", at(need)}};
}

Json range_at(const questions::Weighed& weighed, std::size_t which) {
    return which < weighed.ranges.size() ? range_of<Json>(weighed.ranges[which]) : Json(nullptr);
}

}  // namespace

std::string place_json(const questions::PlaceAnswer& answer) {
    Json json = document<Json>("place");
    json["answer"] = answer_of(answer);
    json["range"] = {{"supply_m3_s", range_at(answer.weighed, supply_air)},
                     {"needs_m3_s", range_at(answer.weighed, need)}};
    json["assumptions"] = assumptions_of<Json>(answer.weighed, place_figures);
    json["cautions"] = cautions(answer.house);
    return text_of(json);
}

}  // namespace report
