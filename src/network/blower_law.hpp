// How the blower answers when the ducts ask for more pressure or less.
//
//     held      a flow that stays the same at any pressure, or up to a limit, where the pressure stays
//     instead curve     pressure gain falling with the flow: a maker's table, or a straight line through one
//     known
//               point: flow = known flow x (1 - fall x (gain - known gain))
//
// A maker's table is straight between its points (ducts/blower.hpp) and holds at 1.2041 kg/m3; pressure goes
// with the density at the same airflow (fan laws). A table whose blower was measured at another flow is
// stretched along the flow, so that it passes there.
#pragma once

#include <span>
#include <variant>

#include "house/house.hpp"
#include "loads/air.hpp"
#include "network/fan_curve.hpp"
#include "units/quantity.hpp"

namespace network {

struct HeldAirflow {
    units::MassFlow flow;
    units::Pressure up_to;  // 0: at any pressure
};
using BlowerLaw = std::variant<HeldAirflow, FanCurve>;

// stretch: of the table's airflow.
FanCurve table_curve(std::span<const house::BlowerPoint> points, const loads::Air& return_air,
                     double stretch = 1);
// fall: share of the airflow lost for each Pa more, over 0.
FanCurve falling_curve(units::MassFlow flow, units::Pressure gain, double fall);
// Beyond its limit: the pressure that a held airflow's motor keeps, at less and less flow.
FanCurve limit_curve(const HeldAirflow& held);
// The stretch by which a table passes through a flow at a gain; 0 where the table moves no air at that gain.
double stretch_through(std::span<const house::BlowerPoint> points, const loads::Air& return_air,
                       units::MassFlow flow, units::Pressure gain);

}  // namespace network
