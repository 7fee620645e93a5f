// Sources: fan laws (static pressure with density at equal airflow); sensible heat balance for the rise.
#include "ducts/blower.hpp"

#include <algorithm>

#include "house/cannot_answer.hpp"

namespace ducts {
namespace {

constexpr units::Density table_density{1.2041};  // makers' tables: air of 20 C at sea level

// y at x on the line through the two points nearest to x; x rises along the points, and where it stands still
// the first of them counts.
struct Knot {
    double x, y;
};
template <class Points, class ToKnot>
double on_polyline(const Points& points, double x, ToKnot knot) {
    if (points.size() == 1) return knot(points[0]).y;
    std::size_t upper = 1;
    while (upper + 1 < points.size() && knot(points[upper]).x < x) ++upper;
    const Knot a = knot(points[upper - 1]), b = knot(points[upper]);
    if (a.x == b.x) return x > a.x ? b.y : a.y;
    return a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x);
}

}  // namespace

units::Pressure static_pressure_at(std::span<const house::BlowerPoint> points, units::Airflow airflow) {
    // The points' airflow falls as their pressure rises: read them from the far end.
    std::vector<house::BlowerPoint> by_airflow(points.rbegin(), points.rend());
    const double y = on_polyline(by_airflow, airflow.si(), [](const house::BlowerPoint& p) {
        return Knot{p.airflow.si(), p.external_static.si()};
    });
    return units::Pressure(std::max(0.0, y));
}

units::Airflow airflow_at_static(std::span<const house::BlowerPoint> points,
                                 units::Pressure external_static) {
    const double y = on_polyline(points, external_static.si(), [](const house::BlowerPoint& p) {
        return Knot{p.external_static.si(), p.airflow.si()};
    });
    return units::Airflow(std::max(0.0, y));
}

DesignBlower design_blower(const house::Blower& blower, units::Power output, const loads::Air& return_air) {
    const double lighter = return_air.density / table_density;
    DesignBlower design;
    design.external_static = blower.external_static;
    if (const auto* measured = std::get_if<units::Airflow>(&blower.known_by)) {
        design.airflow = *measured;
        if (!blower.points.empty() && !blower.static_measured)
            design.external_static = lighter * static_pressure_at(blower.points, *measured);
    } else if (const auto* external_static = std::get_if<units::Pressure>(&blower.known_by)) {
        if (blower.points.empty())
            throw house::CannotAnswer({}, "the blower's static pressure is known but not its table");
        design.basis = AirflowBasis::makers_table;
        design.airflow = airflow_at_static(blower.points, *external_static / lighter);
    } else {
        design.basis = AirflowBasis::temperature_rise;
        const auto rise = std::get<units::TemperatureDifference>(blower.known_by);
        design.airflow = output / (return_air.density * return_air.specific_heat * rise);
    }
    design.mass_flow = design.airflow * return_air.density;
    if (design.mass_flow.si() > 0) design.rise = output / (design.mass_flow * return_air.specific_heat);
    return design;
}

}  // namespace ducts
