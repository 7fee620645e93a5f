// How warm a room is: the coldest inside surface with the humidity at which it sweats, and the electric
// heater that takes a room from the house's temperature to the wanted one.
#include <fmt/format.h>

#include "loads/air.hpp"
#include "report/step_building.hpp"
#include "units/unit.hpp"

namespace report {

void add_coldest_surface(std::vector<Step>& steps, const RoomWork& work, const loads::ColdestSurface& coldest,
                         const loads::RoomHeatLoss& room) {
    const units::System system = work.system;
    const std::string name = work.house.room(room.room).name;
    const std::string where = fmt::format("the {}: its {}", name, coldest.surface.surface);
    const Worked inside = in_sum(room.inside, system);
    const Worked sum = inside - in_sum(coldest.surface.u, system) * in_sum(coldest.film, system) *
                                    (inside - in_sum(coldest.surface.beyond, system));
    steps.push_back(step(where + ", mean temperature of its inside", loads::inside_surface_method, sum,
                         coldest.temperature, system));
    const auto pascals = [](units::Temperature t) {
        return printed_to(loads::saturation_pressure(t) / units::unit::pascal, 5);
    };
    steps.push_back(finished_step(
        fmt::format("humidity of the air in the {} above which it sweats", name), loads::sweating_method,
        given(100, "100") * pascals(coldest.temperature) / pascals(room.inside), 100 * coldest.sweats_above,
        with_plain_spaces(percent(coldest.sweats_above))));
}

void add_as_the_house(std::vector<Step>& steps, const questions::HouseLoads& loads, std::size_t room,
                      units::System system) {
    const questions::RoomAsTheHouse& there = *loads.as_the_house[room];
    const loads::RoomHeatLoss& wanted = loads.loss.rooms[room];
    const loads::Air air = loads::air_at(loads.supply, loads::site_pressure(loads.house.site));
    const Worked brings = printed(loads.on_time.share, 4) * in_sum(there.air.flow, system) *
                          in_sum(air.specific_heat, system) *
                          (in_sum(loads.supply, system) - in_sum(wanted.inside, system));
    steps.push_back(
        step(fmt::format("heat an electric heater adds in the {}, with the air for {}",
                         loads.house.rooms[room].name, with_plain_spaces(figure(there.inside, system))),
             loads::left_to_heat_method, in_sum(wanted.total, system) - brings, there.electric, system));
}

}  // namespace report
