#include "report/steps.hpp"

#include "report/step_building.hpp"

namespace report {

std::vector<Step> branch_steps(const questions::BranchAnswer& answer, units::System system) {
    const questions::BranchSetting& setting = answer.sizing.setting;
    std::vector<Step> steps;
    const RoomWork room{answer.house, setting.loss, system};
    add_spaces(steps, room);
    add_house_leakage(steps, room);
    add_room(steps, room, setting.loss.rooms[static_cast<std::size_t>(setting.asked.room.index)]);
    if (setting.outlets_in_room > 1)
        steps.push_back(step("the part of it this outlet is asked for",
                             {"equal parts", "heat loss / supply outlets in the room", "assumed equal"},
                             in_sum(setting.outlets_in_room * setting.asked.total, system) /
                                 given(setting.outlets_in_room, std::to_string(setting.outlets_in_room)),
                             setting.asked.total, system));
    ducts::DesignBlower moving = setting.blower;  // with the whole system at work
    moving.mass_flow = setting.moved;
    moving.airflow = setting.moved / setting.return_air.density;
    add_machine(steps,
                {answer.house, setting.loss, setting.on_time, moving, setting.supply.temperature, system});
    add_need(steps, answer, system);
    add_airflow_by_rise(steps, {answer.house, setting.loss, setting.on_time, setting.blower,
                                setting.supply.temperature, system});
    add_friction_rate(steps, answer, system);
    add_carried(steps, answer, system);
    add_reached(steps, answer, system);
    if (answer.sizing.budget.rate.si() > 0) add_judged(steps, answer, system);
    if (answer.way_back) add_way_back(steps, *answer.way_back, system);
    add_return_faces(steps, answer.return_faces, system);
    return steps;
}

std::vector<Step> loads_steps(const questions::LoadsAnswer& answer, units::System system) {
    const questions::HouseLoads& planned = answer.planned;
    std::vector<Step> steps;
    const RoomWork work{planned.house, planned.loss, system};
    add_spaces(steps, work);
    add_house_leakage(steps, work);
    const auto told = [&](std::size_t room) {
        return !answer.only || static_cast<std::size_t>(answer.only->index) == room;
    };
    for (std::size_t i = 0; i < planned.loss.rooms.size(); ++i) {
        if (!told(i)) continue;
        add_room(steps, work, planned.loss.rooms[i]);
        if (planned.coldest[i]) add_coldest_surface(steps, work, *planned.coldest[i], planned.loss.rooms[i]);
    }
    const MachineWork machine{planned.house,  planned.loss,   planned.on_time,
                              planned.blower, planned.supply, system};
    add_machine(steps, machine);
    add_airflow_by_rise(steps, machine);
    for (std::size_t i = 0; i < planned.as_the_house.size(); ++i)
        if (told(i) && planned.as_the_house[i]) add_as_the_house(steps, planned, i, system);
    if (planned.gains) add_gains(steps, {planned.house, planned.loss.infiltration, *planned.gains, system});
    return steps;
}

}  // namespace report
