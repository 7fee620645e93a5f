#include <fmt/format.h>

#include "loads/air.hpp"
#include "loads/below_grade.hpp"
#include "loads/slab_edges.hpp"
#include "loads/transmittance.hpp"
#include "report/step_building.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using units::System;
namespace unit = units::unit;

constexpr loads::Method plain_path{"U-factor", "1 / R from air to air", loads::parallel_path.source};
constexpr loads::Method leakage_area_method{"leakage area", "leak per outside surface x outside surface",
                                            "ASHRAE Handbook-Fundamentals 2021 ch. 17, table 3"};
constexpr loads::Method leakage_share_method{
    "share of the air leakage", "outside surface of the room / of the house x leakage of the house",
    "shared by outside surface, adds up to the house"};

void add_u_factor(std::vector<Step>& steps, const RoomWork& work, const house::Surface& surface,
                  const std::string& where) {
    const auto* layers = std::get_if<house::Layers>(&surface.assembly);
    if (!layers || surface.slab) return;
    const loads::Paths paths = loads::paths(*layers, loads::films(surface), work.house.empty_bay);
    const Worked bay = in_sum(paths.through_bay, work.system);
    const Worked one = given(1, "1");
    const Worked framing = printed(paths.framing, 3);
    const Worked sum = paths.framing > 0
                           ? framing / in_sum(paths.through_wood, work.system) + (one - framing) / bay
                           : one / bay;
    steps.push_back(step(where + ", U-factor", paths.framing > 0 ? loads::parallel_path : plain_path, sum,
                         paths.u, work.system));
}

// What the soil adds: the layers' U above becomes the resistance R here.
void add_soil(std::vector<Step>& steps, const RoomWork& work, const house::Surface& surface,
              const std::string& where) {
    const house::Buried& buried = *surface.buried;
    const System system = work.system;
    const Worked two = given(2, "2"), pi = given(3.14159265358979, "3.141592654");
    const Worked k = in_sum(buried.soil, system);
    const Worked r = in_sum(loads::to_the_soil(surface, work.house.empty_bay), system);
    const units::Transmittance u = loads::transmittance(surface, work.house.empty_bay);
    const bool floor = buried.shortest_width > units::Length();
    if (floor) {
        const Worked w = in_sum(buried.shortest_width, system), depth = in_sum(buried.bottom, system);
        const Worked beyond = depth / two + k * r / pi;
        steps.push_back(step(where + ", U-factor with the soil", loads::below_grade_floor_method,
                             two * k / (pi * w) * (ln(w / two + beyond) - ln(beyond)), u, system));
        return;
    }
    const Worked from = in_sum(buried.top, system), to = in_sum(buried.bottom, system);
    const Worked beyond = two * k * r / pi;
    steps.push_back(step(where + ", U-factor with the soil", loads::below_grade_wall_method,
                         two * k / (pi * (to - from)) * (ln(to + beyond) - ln(from + beyond)), u, system));
}

void add_surface(std::vector<Step>& steps, const RoomWork& work, const loads::RoomHeatLoss& room,
                 std::size_t i) {
    const house::Room& built = work.house.room(room.room);
    const loads::SurfaceLoss& lost = room.surfaces[i];
    const std::string where = fmt::format("the {}: its {}", built.name, lost.surface);
    if (i < built.surfaces.size()) add_u_factor(steps, work, built.surfaces[i], where);
    if (i < built.surfaces.size() && built.surfaces[i].buried)
        add_soil(steps, work, built.surfaces[i], where);
    const Worked of_one_degree = lost.on_slab
                                     ? in_sum(lost.edge, work.system) * in_sum(lost.edge_loss, work.system)
                                     : in_sum(lost.area, work.system) * in_sum(lost.u, work.system);
    const Worked sum = of_one_degree * (in_sum(room.inside, work.system) - in_sum(lost.beyond, work.system));
    steps.push_back(step(where + ", heat loss", lost.on_slab ? loads::slab_edge_method : loads::surface_loss,
                         sum, lost.loss, work.system));
}

// Square centimetres of leak, and litres per second through them, as the method counts; in us turned from
// and into square inches and cfm in plain sight.
Worked in_square_centimetres(units::Area leak, System system) {
    if (system == System::si) return printed_to(leak / unit::square_centimetre, 5);
    return printed_to(leak / unit::square_inch, 5) * given(6.4516, "6.4516");
}

void add_room_leakage(std::vector<Step>& steps, const RoomWork& work, const loads::RoomHeatLoss& room) {
    const System system = work.system;
    const loads::Infiltration& leaks = work.loss.infiltration;
    const house::Room& built = work.house.room(room.room);
    if (leaks.exposed.si() <= 0) return;
    const Worked share = in_sum(loads::exposed_surface(built), system) / in_sum(leaks.exposed, system) *
                         in_sum(leaks.airflow, system);
    steps.push_back(step("outdoor air that leaks into the " + built.name, leakage_share_method, share,
                         room.leakage, system));
    const loads::Air indoors =
        loads::air_at(work.house.site.winter_indoor, loads::site_pressure(work.house.site));
    const bool us = system == System::us;
    const Worked airflow = in_sum(room.leakage, system);
    const Worked sum = (us ? given(60, "60") * airflow : airflow / given(1000, "1000")) *
                       in_sum(indoors.density, system) * in_sum(indoors.specific_heat, system) *
                       (in_sum(room.inside, system) - in_sum(work.house.site.winter_outdoor, system));
    steps.push_back(step("heat to warm that air in the " + built.name, loads::leakage_loss, sum,
                         room.leakage_loss, system));
}

}  // namespace

Worked leaking_air(const loads::Infiltration& leaks, units::TemperatureDifference difference,
                   const Worked& wind, const Worked& stack, System system) {
    const bool us = system == System::us;
    const Worked term = stack * in_sum(leaks.stack_height, system) * in_sum(difference, system);
    const Worked driving = us ? term * given(0.3048, "0.3048") / given(1.8, "1.8") : term;
    const Worked litres =
        in_square_centimetres(leaks.leakage_area, system) * (wind + driving) / given(1000, "1000");
    return us ? litres * given(1 / 0.4719474432, "2.1188800033") : litres;
}

void add_house_leakage(std::vector<Step>& steps, const RoomWork& work) {
    const System system = work.system;
    const loads::Infiltration& leaks = work.loss.infiltration;
    if (const auto* per_surface = std::get_if<double>(&work.house.air_leakage)) {
        const double area_unit = system == System::us ? unit::square_inch.si() : unit::square_centimetre.si();
        const Worked exposed = in_sum(leaks.exposed, system);
        const Worked metric = system == System::us ? exposed * given(0.09290304, "0.09290304") : exposed;
        const Worked leak = printed(*per_surface, 2) * metric;
        const Worked sum = system == System::us ? leak / given(6.4516, "6.4516") : leak;
        const double result = leaks.leakage_area.si() / area_unit;
        steps.push_back(
            finished_step("leakage area of the house", leakage_area_method, sum, result,
                          with_commas(units::decimal(result, 0)) + (system == System::us ? " in2" : " cm2")));
    }
    const Worked sum = leaking_air(leaks, leaks.difference, given(51, "51"), given(0.35, "0.35"), system);
    steps.push_back(step("outdoor air that leaks into the house", loads::infiltration_method, sum,
                         leaks.airflow, system));
}

void add_room(std::vector<Step>& steps, const RoomWork& work, const loads::RoomHeatLoss& room) {
    std::vector<Worked> parts;
    for (std::size_t i = 0; i < room.surfaces.size(); ++i) {
        add_surface(steps, work, room, i);
        parts.push_back(in_sum(room.surfaces[i].loss, work.system));
    }
    add_room_leakage(steps, work, room);
    parts.push_back(in_sum(room.leakage_loss, work.system));
    steps.push_back(step("heat loss of the " + work.house.room(room.room).name, sum_method, plus_all(parts),
                         room.total, work.system));
}

}  // namespace report
