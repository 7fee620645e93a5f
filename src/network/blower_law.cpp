#include "network/blower_law.hpp"

#include <algorithm>

#include "ducts/blower.hpp"

namespace network {
namespace {

constexpr units::Density table_density{1.2041};  // makers' tables: air of 20 C at sea level

}  // namespace

FanCurve table_curve(std::span<const house::BlowerPoint> points, const loads::Air& return_air,
                     double stretch) {
    std::vector<FanPoint> by_flow;
    by_flow.reserve(points.size());
    for (const house::BlowerPoint& point : points)
        by_flow.push_back({stretch * point.airflow * return_air.density,
                           (return_air.density / table_density) * point.external_static});
    std::reverse(by_flow.begin(), by_flow.end());       // the sheet's points rise in pressure
    return FanCurve(by_flow, Between::straight_lines);  // as ducts/blower.hpp reads the table
}

FanCurve falling_curve(units::MassFlow flow, units::Pressure gain, double fall) {
    const FanPoint points[] = {{0.5 * flow, gain + units::Pressure(0.5 / fall)}, {flow, gain}};
    return FanCurve(points, Between::straight_lines);
}

FanCurve limit_curve(const HeldAirflow& held) {
    constexpr double almost_flat = 1.001;
    const FanPoint points[] = {{units::MassFlow(), almost_flat * held.up_to}, {held.flow, held.up_to}};
    return FanCurve(points, Between::straight_lines);
}

double stretch_through(std::span<const house::BlowerPoint> points, const loads::Air& return_air,
                       units::MassFlow flow, units::Pressure gain) {
    const units::Airflow there =
        ducts::airflow_at_static(points, (table_density / return_air.density) * gain);
    return there.si() > 0 ? flow / (there * return_air.density) : 0;
}

}  // namespace network
