// The cautions that only the air as it flows calls for.
#include <fmt/format.h>

#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

std::string beyond_plate(const TrunkView& view) {
    const house::Heater& heater = view.house().heater;
    const questions::BlowerSide& after = view.answer.blower_after;
    std::vector<std::string> beyond;
    if (heater.max_static.si() > 0 && after.external_static > heater.max_static)
        beyond.push_back(fmt::format("external static pressure comes to {}, {} is allowed",
                                     figure(after.external_static, view.system),
                                     figure(heater.max_static, view.system)));
    if (after.rise > heater.most_rise || after.rise < heater.least_rise)
        beyond.push_back(fmt::format("temperature rise comes to {}, {} to {} is allowed",
                                     figure(after.rise, view.system), number(heater.least_rise, view.system),
                                     figure(heater.most_rise, view.system)));
    return beyond.empty() ? std::string() : listed(beyond);
}

}  // namespace

FlowingAir flowing_air(const TrunkView& view) {
    FlowingAir air;
    units::Airflow exhaust;
    for (const house::ExhaustFan& fan : view.house().exhaust_fans) exhaust += fan.flow;
    if (exhaust.si() > 0) air.draws.push_back("the exhaust fans draw " + figure(exhaust, view.system));
    const network::OperatingPoint& point = view.answer.after.point;
    const units::Airflow leak = point.return_leak / point.return_air.density;
    if (leak > 0.02 * view.answer.blower_after.airflow)
        air.draws.push_back("leaks of the return ducts suck in " + figure(leak, view.system));
    air.beyond_plate = beyond_plate(view);
    return air;
}

}  // namespace report
