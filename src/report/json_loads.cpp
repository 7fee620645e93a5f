// The answer of `loads` as JSON.
#include "report/json.hpp"

#include <nlohmann/json.hpp>

#include "report/cautions.hpp"
#include "report/json_gains.hpp"
#include "report/json_parts.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

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

const char* sharing_of(const loads::LeakageShares& shares) {
    if (shares.by_volume) return "by volume";
    return shares.less_upstairs ? "by outside surface, less upstairs" : "by outside surface";
}

Json spaces_of(const loads::SpacesInWinter& spaces) {
    Json all = Json::array();
    for (const loads::SpaceBalance& balance : spaces.balances) {
        Json parts = Json::array();
        for (const loads::BalancePart& part : balance.parts)
            parts.push_back({{"part", part.name},
                             {"conductance_W_K", si(part.conductance)},
                             {"beyond_C", celsius(part.beyond)}});
        all.push_back({{"space", std::string(house::word(balance.space))},
                       {"temperature_C", celsius(balance.temperature)},
                       {"heat_W", si(balance.heat)},
                       {"parts", parts}});
    }
    return all;
}

Json house_of(const questions::HouseLoads& loads) {
    Json rooms = Json::array();
    for (std::size_t i = 0; i < loads.loss.rooms.size(); ++i) {
        Json room = needs_of(loads.air[i], loss_of<Json>(loads.loss.rooms[i], loads.house));
        room["coldest_surface"] = coldest_of(loads.coldest[i]);
        room["at_house_temperature"] = as_the_house_of(loads.as_the_house[i]);
        rooms.push_back(std::move(room));
    }
    Json house = {
        {"loss_W", si(loads.loss.total)},
        {"rooms", rooms},
        {"other_rooms_W", loads.house.other_rooms ? Json(si(loads.loss.other_rooms)) : Json(nullptr)},
        {"leakage_m3_s", si(loads.loss.infiltration.airflow)},
        {"outdoor_air_m3_s", si(loads.loss.infiltration.air.to_heat())},
        {"outdoor_air_shared", sharing_of(loads.loss.infiltration.shares)},
        {"spaces_in_balance", spaces_of(loads.loss.spaces)},
        {"on_time", on_time_of<Json>(loads.on_time)},
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

}  // namespace

std::string loads_json(const questions::LoadsAnswer& answer) {
    Json json = document<Json>("loads");
    Json only = nullptr;
    if (answer.only) only = answer.planned.house.room(*answer.only).name;
    json["answer"] = {{"planned", house_of(answer.planned)},
                      {"found", answer.found ? house_of(*answer.found) : Json(nullptr)},
                      {"only_room", only},
                      {"fits_badly", limits_of(answer)}};
    json["range"] = loads_figures(
        answer, [&](std::size_t figure) { return range_of<Json>(answer.weighed.ranges[figure]); });
    json["assumptions"] = assumptions_of<Json>(answer.weighed, [&](const std::vector<double>& figures) {
        return loads_figures(answer, [&](std::size_t figure) { return Json(figure_of(figures[figure])); });
    });
    json["cautions"] = cautions(answer.planned.house);
    return text_of(json);
}

}  // namespace report
