// What the documents of several questions share; private to this folder. Written for any JSON type, as a
// header may not name one.
#pragma once

#include <string>
#include <vector>

#include "loads/heater.hpp"
#include "loads/room_heat_loss.hpp"
#include "questions/weigh_assumptions.hpp"
#include "report/json_figures.hpp"

namespace report {

template <class Json>
Json document(const char* question) {
    return {{"schema", 1}, {"question", question}};
}

// A sheet may hold bytes that are no UTF-8: they are replaced, never thrown at the user.
template <class Json>
std::string text_of(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

template <class Json, class Optional>
Json si_or_null(const Optional& quantity) {
    return quantity ? Json(si(*quantity)) : Json(nullptr);
}

template <class Json>
Json range_of(questions::Range range) {
    return {
        {"low", figure_of(range.low)}, {"value", figure_of(range.value)}, {"high", figure_of(range.high)}};
}
template <class Json>
Json range_in_celsius(questions::Range range) {
    constexpr double zero = 273.15;
    return range_of<Json>({range.low - zero, range.value - zero, range.high - zero});
}

template <class Json>
Json loss_of(const loads::RoomHeatLoss& room, const house::House& house) {
    Json surfaces = Json::array();
    for (const loads::SurfaceLoss& s : room.surfaces) {
        surfaces.push_back({{"surface", s.surface},
                            {"towards", s.beyond_name},
                            {"area_m2", si(s.area)},
                            {"U_W_m2_K", si(s.u)},
                            {"beyond_C", celsius(s.beyond)},
                            {"loss_W", si(s.loss)}});
        if (!s.on_slab) continue;
        surfaces.back()["slab_edge_m"] = si(s.edge);
        surfaces.back()["slab_edge_loss_W_m_K"] = si(s.edge_loss);
    }
    return {{"room", house.room(room.room).name},
            {"inside_C", celsius(room.inside)},
            {"loss_W", si(room.total)},
            {"leakage_m3_s", si(room.leakage)},
            {"leakage_loss_W", si(room.leakage_loss)},
            {"surfaces", surfaces}};
}

template <class Json>
Json on_time_of(const loads::OnTime& on_time) {
    return {{"output_W", si(on_time.output)},
            {"wanted", figure_of(on_time.wanted)},
            {"share", figure_of(on_time.share)},
            {"holds", on_time.holds()}};
}

template <class Json>
Json assumption_of(const house::Assumption& assumption) {
    const house::DefaultRow& row = house::default_row(assumption.id);
    return {{"what", std::string(row.what)},    {"unit_si", unit_of(row.written)},
            {"value_si", figure_of(row.value)}, {"low_si", figure_of(row.low)},
            {"high_si", figure_of(row.high)},   {"used_for", assumption.used_for},
            {"basis", std::string(row.basis)}};
}

// figures: how the answer's figures at one end of a default become the keys of "range".
template <class Json, class Figures>
Json assumptions_of(const questions::Weighed& weighed, const Figures& figures) {
    const auto at_end = [&](const std::optional<questions::Asked>& asked) {
        return asked ? Json(figures(asked->figures)) : Json(nullptr);
    };
    Json all = Json::array();
    for (const questions::Weight& weight : weighed.weights) {
        Json one = assumption_of<Json>(weight.assumption);
        one["at_low"] = at_end(weight.at_low);
        one["at_high"] = at_end(weight.at_high);
        all.push_back(std::move(one));
    }
    return all;
}

}  // namespace report
