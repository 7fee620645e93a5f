// Mechanical ventilation that runs all the time: that of the house and the fans of single rooms.
#include "house/builders.hpp"

namespace house {
namespace {

units::Airflow flow_of(Work& work, const Maybe<units::Airflow>& given) {
    if (!given) return {};
    blame_too_much_air(work.ledger, given->value, given->place);
    return given->value;
}

void add_fan(Work& work, const SurveyFan& fan, const Room& room) {
    Ventilation& ventilation = work.house.ventilation;
    const FanRuns runs = fan.runs ? fan.runs->value : FanRuns::at_times;
    work.house.exhaust_fans.push_back({room.id, fan.flow ? fan.flow->value : units::Airflow(), runs});
    if (runs == FanRuns::at_times) {
        ++ventilation.fans_at_times;
        return;
    }
    work.ledger.required(fan.flow, fan.place, "the airflow of the exhaust fan of the " + room.name,
                         "flow = \"50 cfm\"");
    ventilation.exhaust += flow_of(work, fan.flow);
}

}  // namespace

void build_ventilation(Work& work) {
    Ventilation& ventilation = work.house.ventilation;
    if (work.survey.ventilation) {
        ventilation.supply = flow_of(work, work.survey.ventilation->supply);
        ventilation.exhaust = flow_of(work, work.survey.ventilation->exhaust);
    }
    for (std::size_t i = 0; i < work.survey.rooms.size(); ++i)
        for (const SurveyFan& fan : work.survey.rooms[i].exhaust_fans)
            add_fan(work, fan, work.house.rooms[i]);
    if (!work.survey.ventilation || !work.survey.ventilation->recovery) return;
    const auto& recovery = *work.survey.ventilation->recovery;
    ventilation.recovery = recovery.value;
    if (!work.survey.ventilation->supply || !work.survey.ventilation->exhaust)
        work.ledger.blame(recovery.place, "heat is recovered only between supply and exhaust",
                          "give supply and exhaust of the ventilation that recovers heat");
}

}  // namespace house
