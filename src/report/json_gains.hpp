// The cooling season as JSON; private to this folder. Written for any JSON type, as a header may not name
// one.
#pragma once

#include "questions/answer_loads.hpp"
#include "report/json_figures.hpp"
#include "units/unit.hpp"

namespace report {

template <class Json>
Json room_gain_as(const questions::HouseLoads& loads, std::size_t room) {
    const loads::RoomHeatGain& gain = loads.gains->gain.rooms[room];
    Json surfaces = Json::array();
    for (const loads::SurfaceGain& s : gain.surfaces)
        surfaces.push_back({{"surface", s.surface},
                            {"from", s.beyond_name},
                            {"area_m2", figure_of(s.area.si())},
                            {"gain_W_m2", figure_of(s.factor.si())},
                            {"gain_W", figure_of(s.gain.si())}});
    return {{"room", loads.house.room(gain.room).name},
            {"gain_W", figure_of(gain.total.si())},
            {"leakage_m3_s", figure_of(gain.leakage.si())},
            {"leakage_gain_W", figure_of(gain.leakage_gain.si())},
            {"internal_gain_W", figure_of(gain.internal.si())},
            {"surfaces", surfaces},
            {"needs_at_least_m3_s", figure_of(loads.gains->air[room].airflow.si())},
            {"needs_at_least_kg_s", figure_of(loads.gains->air[room].flow.si())},
            {"cooling_governs", loads.cooling_governs(room)}};
}

template <class Json>
Json summer_as(const questions::HouseLoads& loads) {
    const loads::HouseHeatGain& gain = loads.gains->gain;
    Json rooms = Json::array();
    for (std::size_t i = 0; i < gain.rooms.size(); ++i) rooms.push_back(room_gain_as<Json>(loads, i));
    return {
        {"gain_W", figure_of(gain.sensible.si())},
        {"moisture_W", figure_of(gain.latent.si())},
        {"rooms", rooms},
        {"other_rooms_W", loads.house.other_rooms ? Json(figure_of(gain.other_rooms.si())) : Json(nullptr)},
        {"leakage_m3_s", figure_of(gain.leakage.airflow.si())},
        {"outdoor_C", figure_of(units::unit::in_celsius(loads.house.summer->outdoor))},
        {"indoor_C", figure_of(units::unit::in_celsius(loads.house.summer->indoor))},
        {"supply_C", figure_of(units::unit::in_celsius(loads.house.summer->supply))}};
}

}  // namespace report
