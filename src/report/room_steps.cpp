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

void add_room_leakage(std::vector<Step>& steps, const RoomWork& work, const loads::RoomHeatLoss& room) {
    const System system = work.system;
    const loads::Infiltration& leaks = work.loss.infiltration;
    const house::Room& built = work.house.room(room.room);
    if (room.leakage.si() <= 0) return;
    const auto [share, method] = leakage_share(leaks.shares, built, system);
    steps.push_back(step("outdoor air that enters the " + built.name, *method,
                         share * in_sum(leaks.air.to_heat(), system), room.leakage, system));
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
