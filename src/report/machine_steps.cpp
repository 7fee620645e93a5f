#include "loads/air.hpp"
#include "report/room_words.hpp"
#include "report/step_building.hpp"

namespace report {
namespace {

constexpr loads::Method other_rooms_method{"rooms not described",
                                           "their outside surface / that of the rooms they are judged by x "
                                           "these rooms' loss through surfaces at the house's temperature, "
                                           "+ air x density x specific heat x difference",
                                           "the described rooms' mean, without those the work alters"};
constexpr loads::Method output_method{"output", "heat loss x (1 + duct loss) / share of time on",
                                      "energy balance"};
constexpr loads::Method mass_flow_method{"mass flow", "airflow x density", "definition"};

// The described rooms that the others are judged by: those the work leaves alone, or all where it spares
// none.
std::vector<const loads::RoomHeatLoss*> judged_by(const MachineWork& work) {
    std::vector<const loads::RoomHeatLoss*> unaltered, all;
    units::Area exposed;
    for (const loads::RoomHeatLoss& room : work.loss.rooms) {
        const house::Room& built = work.house.room(room.room);
        const units::Area here = loads::exposed_surface(built);
        if (here.si() <= 0 && out_of_the_house(room) == units::Power()) continue;
        all.push_back(&room);
        if (built.altered) continue;
        unaltered.push_back(&room);
        exposed += here;
    }
    return exposed.si() > 0 ? unaltered : all;
}

void add_other_rooms(std::vector<Step>& steps, const MachineWork& work) {
    const house::Site& site = work.house.site;
    const units::TemperatureDifference usual = site.winter_indoor - site.winter_outdoor;
    units::Area exposed;
    std::vector<Worked> losses;
    for (const loads::RoomHeatLoss* room : judged_by(work)) {
        exposed += loads::exposed_surface(work.house.room(room->room));
        const units::TemperatureDifference here = room->inside - site.winter_outdoor;
        const Worked loss = in_sum(out_of_the_house(*room) - room->leakage_loss, work.system);
        if (here.si() > 0)
            losses.push_back(here == usual ? loss
                                           : loss * in_sum(usual, work.system) / in_sum(here, work.system));
    }
    const Worked others = in_sum(work.loss.infiltration.exposed, work.system) -
                          in_sum(loads::described_exposed_surface(work.house), work.system);
    const loads::Air indoors = loads::air_at(site.winter_indoor, loads::site_pressure(site));
    const Worked air =
        given(heat_per_airflow(work.system), work.system == units::System::us ? "60" : "0.001") *
        in_sum(work.loss.other_leakage, work.system) * in_sum(indoors.density, work.system) *
        in_sum(indoors.specific_heat, work.system) * in_sum(usual, work.system);
    steps.push_back(step("heat loss of the rooms not described", other_rooms_method,
                         others / in_sum(exposed, work.system) * plus_all(losses) + air,
                         work.loss.other_rooms, work.system));
}

void add_house_loss(std::vector<Step>& steps, const MachineWork& work) {
    std::vector<Worked> parts;
    for (const loads::RoomHeatLoss& room : work.loss.rooms)
        parts.push_back(in_sum(out_of_the_house(room), work.system));
    if (work.house.other_rooms) {
        if (!work.house.other_rooms->heat_loss) add_other_rooms(steps, work);
        parts.push_back(in_sum(work.loss.other_rooms, work.system));
    }
    steps.push_back(step("heat loss of the house: each room without what stays in the house", sum_method,
                         plus_all(parts), work.loss.total, work.system));
}

Worked with_duct_loss(const MachineWork& work) {
    return in_sum(work.loss.total, work.system) * (given(1, "1") + printed(work.house.heater.duct_loss, 3));
}

void add_on_time(std::vector<Step>& steps, const MachineWork& work) {
    if (const auto* share = std::get_if<double>(&work.house.heater.capacity)) {
        steps.push_back(step("output of the heater, from the time it is taken to be on", output_method,
                             with_duct_loss(work) / printed(*share, 3), work.on_time.output, work.system));
        return;
    }
    const units::Power plate = std::get<units::Power>(work.house.heater.capacity);
    if (const double share = loads::share_of_plate(work.house.heater, work.house.site); share < 1)
        steps.push_back(step("output of the heater on that night", loads::derating_method,
                             in_sum(plate, work.system) * printed(share, 3), work.on_time.output,
                             work.system));
    steps.push_back(plain_step("on-time of the heater", loads::on_time_method,
                               with_duct_loss(work) / in_sum(work.on_time.output, work.system),
                               work.on_time.wanted, 3));
}

void add_supply(std::vector<Step>& steps, const MachineWork& work) {
    const units::System system = work.system;
    const loads::Air air =
        loads::air_at(work.house.site.winter_indoor, loads::site_pressure(work.house.site));
    const bool us = system == units::System::us;
    const Worked airflow = in_sum(work.blower.airflow, system);
    const Worked flow =
        (us ? given(60, "60") * airflow : airflow / given(1000, "1000")) * in_sum(air.density, system);
    steps.push_back(finished_step("mass flow of the blower's return air", mass_flow_method, flow,
                                  count(work.blower.mass_flow, system),
                                  mass_text(work.blower.mass_flow, system)));
    const Worked sum = in_sum(work.house.site.winter_indoor, system) +
                       in_sum(work.on_time.output, system) /
                           (in_sum(work.blower.mass_flow, system) * in_sum(air.specific_heat, system));
    steps.push_back(step("supply air at the plenum", loads::supply_method, sum, work.supply, system));
}

}  // namespace

void add_airflow_by_rise(std::vector<Step>& steps, const MachineWork& work) {
    if (work.blower.basis != ducts::AirflowBasis::temperature_rise) return;
    const loads::Air air =
        loads::air_at(work.house.site.winter_indoor, loads::site_pressure(work.house.site));
    const Worked per_degree =
        given(heat_per_airflow(work.system), work.system == units::System::us ? "60" : "0.001") *
        in_sum(air.density, work.system) * in_sum(air.specific_heat, work.system);
    steps.push_back(
        step("airflow of the blower, by the temperature rise", ducts::airflow_from_rise,
             in_sum(work.on_time.output, work.system) / (per_degree * in_sum(work.blower.rise, work.system)),
             work.blower.airflow, work.system));
}

void add_machine(std::vector<Step>& steps, const MachineWork& work) {
    add_house_loss(steps, work);
    add_on_time(steps, work);
    add_supply(steps, work);
}

}  // namespace report
