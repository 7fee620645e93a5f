// What the house gains in summer, step by step.
#include "loads/air.hpp"
#include "loads/heater.hpp"
#include "loads/slab_edges.hpp"
#include "report/step_building.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using units::System;

constexpr loads::Method internal_share_method{"share of the internal gain",
                                              "floor of the room / floor that shares it x gain of the house",
                                              "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 30-32"};
constexpr loads::Method moisture_method{"moisture of the leaking air",
                                        "airflow x density x moisture x (2501 + 1.86 t), t: indoors in C",
                                        "ASHRAE Handbook-Fundamentals 2021 ch. 1"};

loads::Air indoor_air(const GainWork& work) {
    return loads::air_at(work.house.summer->indoor, loads::site_pressure(work.house.site));
}

// Mass flow of an airflow: lb/h of cfm, kg/s of L/s.
Worked mass_flow(units::Airflow airflow, units::Density density, System system) {
    const Worked flow = in_sum(airflow, system);
    return (system == System::us ? given(60, "60") * flow : flow / given(1000, "1000")) *
           in_sum(density, system);
}

Worked warmer(const GainWork& work) {
    const house::Summer& summer = *work.house.summer;
    return in_sum(summer.outdoor, work.system) - in_sum(summer.indoor, work.system);
}

// The methods count in W and m2.
Worked power(const Worked& watts, System system) {
    return system == System::us ? watts * given(unit_of(units::Power(), system).per_si, "3.412141633128")
                                : watts;
}
Worked square_metres(units::Area area, System system) {
    const Worked counted = in_sum(area, system);
    return system == System::us ? counted * given(0.09290304, "0.09290304") : counted;
}

void add_house_in_summer(std::vector<Step>& steps, const GainWork& work) {
    const loads::SummerLeakage& leaks = work.gains.gain.leakage;
    steps.push_back(
        step("outdoor air that leaks into the house in summer", loads::summer_leakage_method,
             leaking_air(work.winter, abs(leaks.warmer), given(25, "25"), given(0.38, "0.38"), work.system),
             leaks.airflow, work.system));
    if (work.house.ventilation.runs())
        steps.push_back(step("outdoor air to be cooled, with the ventilation", loads::ventilation_method,
                             with_ventilation(leaks.air, leaks.airflow, work.system), leaks.air.to_heat(),
                             work.system));
    const loads::InternalGain& internal = work.gains.gain.internal;
    const Worked people = given(internal.people, std::to_string(internal.people));
    const Worked floor = square_metres(internal.floor, work.system);
    const Worked sum = given(136, "136") + given(2.2, "2.2") * floor + given(22, "22") * people;
    steps.push_back(step("heat of people, lights and kitchen in the house", loads::internal_heat_method,
                         power(sum, work.system), internal.sensible, work.system));
}

Worked opaque_factor(const GainWork& work, const loads::SurfaceGain& gain) {
    const auto& parts = std::get<loads::OpaqueGain>(gain.parts);
    return in_sum(gain.u, work.system) *
           (printed(parts.of_difference, 2) * warmer(work) + in_sum(parts.of_sun, work.system) +
            printed(parts.of_daily_range, 2) * in_sum(work.house.summer->daily_range, work.system));
}

// Counted in W/m2 and m2K/W, and turned into Btu/h.ft2 in plain sight.
Worked slab_factor(const loads::SlabGain& slab, System system) {
    const Worked resistance = in_sum(slab.covering, System::si) + given(0.12, "0.12");
    const Worked watts = given(1.9, "1.9") - given(1.4, "1.4") / resistance;
    return system == System::us ? watts * given(unit_of(units::HeatFlux(), system).per_si, "0.316998330628")
                                : watts;
}

void add_surface(std::vector<Step>& steps, const GainWork& work, const loads::RoomHeatGain& room,
                 std::size_t i) {
    const house::Room& built = work.house.room(room.room);
    const loads::SurfaceGain& gain = room.surfaces[i];
    if (gain.factor == units::HeatFlux()) return;  // towards rooms and basement nothing goes
    const std::string where = "the " + built.name + ": its " + gain.surface + " in summer";
    if (std::holds_alternative<loads::WindowGain>(gain.parts))
        add_window_gain(steps, work, built.surfaces[i], gain, where);
    else if (const auto* slab = std::get_if<loads::SlabGain>(&gain.parts))
        steps.push_back(step(where + ", of each unit of area", loads::slab_gain_method,
                             slab_factor(*slab, work.system), gain.factor, work.system));
    else
        steps.push_back(step(where + ", of each unit of area", loads::opaque_gain_method,
                             opaque_factor(work, gain), gain.factor, work.system));
    steps.push_back(step(where + ", heat gain", loads::surface_gain_method,
                         in_sum(gain.area, work.system) * in_sum(gain.factor, work.system), gain.gain,
                         work.system));
}

void add_air_and_people(std::vector<Step>& steps, const GainWork& work, const loads::RoomHeatGain& room) {
    const System system = work.system;
    const house::Room& built = work.house.room(room.room);
    const loads::HouseHeatGain& gain = work.gains.gain;
    if (room.leakage.si() > 0) {
        const Worked share =
            share_by_volume(work.winter.shares, built, system) * in_sum(gain.leakage.air.to_heat(), system);
        steps.push_back(step("outdoor air that enters the " + built.name + " in summer",
                             loads::leakage_by_volume, share, room.leakage, system));
        const loads::Air air = indoor_air(work);
        const Worked sum =
            mass_flow(room.leakage, air.density, system) * in_sum(air.specific_heat, system) * warmer(work);
        steps.push_back(step("heat that air brings into the " + built.name, loads::leakage_loss, sum,
                             room.leakage_gain, system));
    }
    if (room.internal.si() > 0)
        steps.push_back(
            step("people, lights and kitchen of the " + built.name, internal_share_method,
                 in_sum(built.floor_area(), system) / in_sum(loads::floor_that_shares(work.house), system) *
                     in_sum(gain.internal.sensible, system),
                 room.internal, system));
}

void add_room_in_summer(std::vector<Step>& steps, const GainWork& work, std::size_t i) {
    const System system = work.system;
    const loads::RoomHeatGain& room = work.gains.gain.rooms[i];
    const std::string name = work.house.room(room.room).name;
    std::vector<Worked> parts;
    for (std::size_t s = 0; s < room.surfaces.size(); ++s) {
        add_surface(steps, work, room, s);
        parts.push_back(in_sum(room.surfaces[s].gain, system));
    }
    add_air_and_people(steps, work, room);
    parts.push_back(in_sum(room.leakage_gain, system));
    parts.push_back(in_sum(room.internal, system));
    steps.push_back(step("heat gain of the " + name, sum_method, plus_all(parts), room.total, system));
    if (room.total.si() <= 0) return;
    const house::Summer& summer = *work.house.summer;
    const loads::Air supply = loads::air_at(summer.supply, loads::site_pressure(work.house.site));
    const Worked per_airflow = given(heat_per_airflow(system), system == System::us ? "60" : "0.001") *
                               in_sum(supply.density, system) * in_sum(supply.specific_heat, system) *
                               (in_sum(summer.indoor, system) - in_sum(summer.supply, system));
    steps.push_back(step("supply air that cools the " + name, loads::cooling_need_method,
                         in_sum(room.total, system) / per_airflow, work.gains.air[i].airflow, system));
}

Worked heat_of_vapour(const GainWork& work) {
    const Worked indoor = in_sum(work.house.summer->indoor, work.system);
    const bool us = work.system == System::us;
    const Worked celsius = us ? (indoor - given(32, "32")) / given(1.8, "1.8") : indoor;
    const Worked kilojoules = given(2501, "2501") + given(1.86, "1.86") * celsius;
    const double per_si = unit_of(units::SpecificHeat(), System::us).per_si * 1.8 * 1000;
    return kilojoules * (us ? given(per_si, "0.429922613938") : given(1000, "1000"));
}

void add_sums(std::vector<Step>& steps, const GainWork& work) {
    const System system = work.system;
    const loads::HouseHeatGain& gain = work.gains.gain;
    std::vector<Worked> parts;
    for (const loads::RoomHeatGain& room : gain.rooms) parts.push_back(in_sum(room.total, system));
    if (work.house.other_rooms) parts.push_back(in_sum(gain.other_rooms, system));
    steps.push_back(step("heat gain of the house", sum_method, plus_all(parts), gain.sensible, system));
    steps.push_back(step("moisture of the leaking air", moisture_method,
                         mass_flow(gain.leakage.air.entering(), indoor_air(work).density, system) *
                             printed(gain.leakage.moisture, 6) * heat_of_vapour(work),
                         gain.leakage.latent, system));
    const Worked people = given(gain.internal.people, std::to_string(gain.internal.people));
    const Worked sum = given(20, "20") + given(0.22, "0.22") * square_metres(gain.internal.floor, system) +
                       given(12, "12") * people;
    steps.push_back(step("moisture of people and kitchen", loads::internal_moisture_method,
                         power(sum, system), gain.internal.latent, system));
}

}  // namespace

void add_gains(std::vector<Step>& steps, const GainWork& work) {
    add_house_in_summer(steps, work);
    for (std::size_t i = 0; i < work.gains.gain.rooms.size(); ++i) add_room_in_summer(steps, work, i);
    add_sums(steps, work);
}

}  // namespace report
