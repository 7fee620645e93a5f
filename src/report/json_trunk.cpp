// The answer of `trunk` as JSON.
#include <nlohmann/json.hpp>

#include "report/cautions.hpp"
#include "report/json.hpp"
#include "report/json_parts.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

using Json = nlohmann::ordered_json;

Json room_of(const questions::RoomShare& share, const questions::TrunkAnswer& answer) {
    const bool before = answer.both.found_is_supplied;
    return {{"room", share.room ? Json(answer.house().room(*share.room).name) : Json(nullptr)},
            {"supply_before_m3_s", before ? Json(si(share.before)) : Json(nullptr)},
            {"supply_m3_s", si(share.after)},
            {"needs_m3_s", si_or_null<Json>(share.needs)},
            {"wanted_C", celsius(share.wanted)},
            {"reaches_before_C", before ? Json(celsius(share.reached_before)) : Json(nullptr)},
            {"reaches_C", celsius(share.reached_after)}};
}

Json duct_of(const questions::DuctSpeed& speed, const questions::TrunkAnswer& answer) {
    const ducts::VelocityLimit& limit = ducts::velocity_limit(speed.part);
    return {{"duct", answer.house().ducts[static_cast<std::size_t>(speed.duct)].name},
            {"part", std::string(limit.name)},
            {"speed_before_m_s", si(speed.before)},
            {"speed_m_s", si(speed.after)},
            {"usual_limit_m_s", si(limit.usual)},
            {"limit_m_s", si(limit.most)}};
}

Json blower_of(const questions::BlowerSide& side) {
    return {{"external_static_Pa", si(side.external_static)},
            {"airflow_m3_s", si(side.airflow)},
            {"temperature_rise_K", si(side.rise)}};
}

Json at_work_of(const questions::AtWork& work, const questions::BlowerSide& blower) {
    return {{"blower", blower_of(blower)},
            {"supply_plenum_Pa", si(work.point.supply_plenum)},
            {"return_plenum_Pa", si(work.point.return_plenum)},
            {"supply_leak_kg_s", si(work.point.supply_leak)},
            {"return_leak_kg_s", si(work.point.return_leak)},
            {"supply_C", celsius(work.night.supply)},
            {"on_time", figure_of(work.night.on_time_wanted)},
            {"residual", figure_of(work.point.residual)},
            {"steps", work.point.steps},
            {"outer_loops", work.point.loops}};
}

Json dampers_of(const questions::TrunkAnswer& answer) {
    Json set = Json::array();
    for (const questions::DamperSet& damper : answer.balanced.dampers)
        set.push_back({{"room", answer.house().room(damper.room).name},
                       {"degrees_from_open", figure_of(damper.degrees)},
                       {"supply_m3_s", si(damper.airflow)},
                       {"reaches_C", celsius(damper.reaches)}});
    const auto& short_of = answer.balanced.falls_short;
    return {{"holds_every_room", !short_of},
            {"falls_short", short_of ? Json(answer.house().room(*short_of).name) : Json(nullptr)},
            {"dampers", set}};
}

Json taps_of(const questions::TrunkAnswer& answer) {
    Json all = Json::array();
    for (const questions::TapTrial& trial : answer.taps) {
        const house::House& house = answer.house();
        all.push_back(
            {{"from", trial.tap.duct ? house.duct(*trial.tap.duct)->name : std::string("plenum")},
             {"at_m", si(trial.tap.at)},
             {"supply_m3_s", si(trial.airflow)},
             {"reaches_C", celsius(trial.reaches)},
             {"loser", trial.has_loser ? Json(house.room(trial.loser).name) : Json(nullptr)},
             {"loser_supply_m3_s", trial.has_loser ? Json(si(trial.loser_airflow)) : Json(nullptr)}});
    }
    return all;
}

Json door_of(const std::optional<questions::DoorShut>& door) {
    if (!door) return nullptr;
    return {{"pressure_Pa", si(door->pressure)},
            {"supply_m3_s", si(door->supply)},
            {"fan_m3_s", door->has_fan ? Json(si(door->fan)) : Json(nullptr)},
            {"inflow_with_fan_m3_s", door->has_fan ? Json(si(door->inflow)) : Json(nullptr)}};
}

Json old_of(const std::optional<questions::OldKept>& kept) {
    if (!kept) return nullptr;
    return {{"outlets", kept->outlets},
            {"supply_m3_s", si(kept->airflow)},
            {"old_supply_m3_s", si(kept->old_airflow)},
            {"reaches_C", celsius(kept->reaches)}};
}

// A pressure in Pa, an airflow in m3/s, a temperature in C: by its kind, with its key.
struct KeyedFigure {
    Json operator()(units::Airflow flow) const { return {{"airflow_m3_s", si(flow)}}; }
    Json operator()(const house::BagFilled& bag) const { return {{"airflow_m3_s", si(bag.airflow)}}; }
    Json operator()(units::Pressure pressure) const { return {{"static_Pa", si(pressure)}}; }
    Json operator()(units::TemperatureDifference rise) const { return {{"temperature_rise_K", si(rise)}}; }
    Json operator()(units::Temperature temperature) const {
        return {{"temperature_C", celsius(temperature)}};
    }
};

Json in_summer_of(const questions::TrunkAnswer& answer) {
    if (!answer.in_summer) return nullptr;
    const questions::TrunkInSummer& summer = *answer.in_summer;
    Json rooms = Json::array();
    for (const questions::CooledRoom& room : summer.rooms)
        rooms.push_back({{"room", answer.house().room(room.room).name},
                         {"before_m3_s", si(room.before)},
                         {"after_m3_s", si(room.after)},
                         {"needs_m3_s", si(room.needs)}});
    return {{"cooling_speed_known", summer.own_speed},
            {"blower_m3_s", si(summer.blower)},
            {"external_static_before_Pa", si(summer.external_static_before)},
            {"external_static_Pa", si(summer.external_static)},
            {"rooms", rooms}};
}

Json readings_of(const questions::TrunkAnswer& answer) {
    Json all = Json::array();
    for (const questions::ReadingBeside& beside : answer.readings)
        all.push_back({{"at", beside.at},
                       {"measured", std::visit(KeyedFigure{}, beside.reading.value)},
                       {"predicted", std::visit(KeyedFigure{}, beside.predicted)}});
    return all;
}

Json trunk_figures(const std::vector<double>& figures) {
    using enum questions::TrunkFigure;
    const auto at = [&](questions::TrunkFigure figure) { return figures[static_cast<std::size_t>(figure)]; };
    return {{"airflow_m3_s", figure_of(at(airflow))},
            {"reaches_C", celsius(units::Temperature(at(reaches)))},
            {"spare_K", figure_of(at(spare))},
            {"external_static_Pa", figure_of(at(external_static))},
            {"blower_m3_s", figure_of(at(blower))}};
}

Json answer_of(const questions::TrunkAnswer& answer) {
    Json rooms = Json::array(), ducts = Json::array();
    for (const questions::RoomShare& share : answer.rooms) rooms.push_back(room_of(share, answer));
    for (const questions::DuctSpeed& speed : answer.ducts) ducts.push_back(duct_of(speed, answer));
    return {{"verdict", word_of(answer.verdict)},
            {"ducts_can", word_of(answer.ducts_can)},
            {"blower_can", word_of(answer.blower_can)},
            {"heater_can", word_of(answer.heater_can)},
            {"outlet", answer.new_outlet().name},
            {"rooms", rooms},
            {"ducts", ducts},
            {"before",
             answer.both.found_is_supplied ? at_work_of(answer.before, answer.blower_before) : Json(nullptr)},
            {"after", at_work_of(answer.after, answer.blower_after)},
            {"to_hold_every_room", dampers_of(answer)},
            {"other_taps", taps_of(answer)},
            {"old_outlet_kept", old_of(answer.old_kept)},
            {"door_shut", door_of(answer.door_shut)},
            {"in_summer", in_summer_of(answer)},
            {"readings", readings_of(answer)}};
}

}  // namespace

std::string trunk_json(const questions::TrunkAnswer& answer) {
    using enum questions::TrunkFigure;
    Json json = document<Json>("trunk");
    json["answer"] = answer_of(answer);
    json["range"] = {{"airflow_m3_s", range_of<Json>(answer.range(airflow))},
                     {"reaches_C", range_in_celsius<Json>(answer.range(reaches))},
                     {"spare_K", range_of<Json>(answer.range(spare))},
                     {"external_static_Pa", range_of<Json>(answer.range(external_static))},
                     {"blower_m3_s", range_of<Json>(answer.range(blower))}};
    json["assumptions"] = assumptions_of<Json>(answer.weighed, trunk_figures);
    json["cautions"] = cautions(answer.house(), flowing_air({answer, units::System::si}));
    return text_of(json);
}

}  // namespace report
