// Outdoor air: what leaks into the house, what ventilation adds, and how the rooms share it.
#include "report/step_building.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using units::System;
namespace unit = units::unit;

constexpr loads::Method leakage_area_method{"leakage area", "leak per outside surface x outside surface",
                                            "ASHRAE Handbook-Fundamentals 2021 ch. 17, table 3"};
constexpr loads::Method inflow_method{
    "inflow of the storeys",
    "sum of outside surface x inflow; inflow: integral of (storeys below the neutral level)^0.65",
    "stack theory, ASHRAE Handbook-Fundamentals 2021 ch. 16; derived"};

// Square centimetres of leak, and litres per second through them, as the method counts; in us turned from
// and into square inches and cfm in plain sight.
Worked in_square_centimetres(units::Area leak, System system) {
    if (system == System::si) return printed_to(leak / unit::square_centimetre, 5);
    return printed_to(leak / unit::square_inch, 5) * given(6.4516, "6.4516");
}

void add_leakage_area(std::vector<Step>& steps, const RoomWork& work, double per_surface) {
    const System system = work.system;
    const loads::Infiltration& leaks = work.loss.infiltration;
    const double area_unit = system == System::us ? unit::square_inch.si() : unit::square_centimetre.si();
    const Worked exposed = in_sum(leaks.exposed, system);
    const Worked metric = system == System::us ? exposed * given(0.09290304, "0.09290304") : exposed;
    const Worked leak = printed(per_surface, 2) * metric;
    const Worked sum = system == System::us ? leak / given(6.4516, "6.4516") : leak;
    const double result = leaks.leakage_area.si() / area_unit;
    steps.push_back(
        finished_step("leakage area of the house", leakage_area_method, sum, result,
                      with_commas(units::decimal(result, 0)) + (system == System::us ? " in2" : " cm2")));
}

// An area by its square metres.
Worked surface(double square_metres, System system) { return in_sum(units::Area(square_metres), system); }

void add_inflow(std::vector<Step>& steps, const RoomWork& work) {
    const loads::LeakageShares& shares = work.loss.infiltration.shares;
    std::vector<Worked> parts;
    for (std::size_t i = 0; i < shares.surface.size(); ++i)
        if (shares.surface[i] > 0)
            parts.push_back(surface(shares.surface[i], work.system) * printed(shares.inflow[i], 4));
    const units::Area sum{shares.surface_inflow};
    steps.push_back(step("outside surface of the house by what the warmth draws in there", inflow_method,
                         plus_all(parts), sum, work.system));
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

Worked with_ventilation(const loads::OutdoorAir& air, units::Airflow leakage, System system) {
    const Worked half = given(0.5, "0.5") * in_sum(air.unbalanced, system);
    const bool leaks_more = air.through_leaks > air.unbalanced;
    const Worked through = leaks_more ? in_sum(leakage, system) + half : in_sum(air.unbalanced, system);
    if (air.balanced.si() <= 0) return through;
    return through + (given(1, "1") - printed(air.recovery, 3)) * in_sum(air.balanced, system);
}

void add_house_leakage(std::vector<Step>& steps, const RoomWork& work) {
    const System system = work.system;
    const loads::Infiltration& leaks = work.loss.infiltration;
    if (const auto* per_surface = std::get_if<double>(&work.house.air_leakage))
        add_leakage_area(steps, work, *per_surface);
    const Worked sum = leaking_air(leaks, leaks.difference, given(51, "51"), given(0.35, "0.35"), system);
    steps.push_back(step("outdoor air that leaks into the house", loads::infiltration_method, sum,
                         leaks.airflow, system));
    if (work.house.ventilation.runs())
        steps.push_back(step("outdoor air to be heated, with the ventilation", loads::ventilation_method,
                             with_ventilation(leaks.air, leaks.airflow, system), leaks.air.to_heat(),
                             system));
    if (leaks.shares.less_upstairs) add_inflow(steps, work);
}

Worked share_by_volume(const loads::LeakageShares& shares, const house::Room& room, System system) {
    return in_sum(room.floor_area(), system) * in_sum(room.ceiling, system) / in_sum(shares.volume, system);
}

LeakageShare leakage_share(const loads::LeakageShares& shares, const house::Room& room, System system) {
    if (shares.by_volume) return {share_by_volume(shares, room, system), &loads::leakage_by_volume};
    const Worked exposed = in_sum(loads::exposed_surface(room), system), all = in_sum(shares.exposed, system);
    if (!shares.less_upstairs) return {exposed / all, &loads::leakage_by_surface};
    const Worked wind = printed(shares.wind, 4);
    const Worked stack =
        (given(1, "1") - wind) * printed(shares.inflow_of(room), 4) / surface(shares.surface_inflow, system);
    return {exposed * (wind / all + stack), &loads::leakage_by_storey};
}

}  // namespace report
