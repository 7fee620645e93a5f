#include "network/terminals.hpp"

#include <algorithm>
#include <cmath>

#include "ducts/return_path.hpp"
#include "ducts/stock_sizes.hpp"
#include "ducts/terminal.hpp"
#include "network/damper.hpp"
#include "units/unit.hpp"

namespace network {
namespace {

// A loss of so much at such a flow.
double quadratic(units::Pressure loss, units::MassFlow flow) { return loss.si() / (flow.si() * flow.si()); }

double on_velocity_pressure(double coefficient, units::Area area, const loads::Air& air) {
    return coefficient / (2 * air.density.si() * area.si() * area.si());
}

// A register for next to no air is still one of the smallest that are sold: about 20 cfm.
constexpr units::MassFlow least_register_flow{0.01};

units::MassFlow planned_flow(const Machine& machine, const ducts::SystemSection& section) {
    const units::MassFlow flow = section.outlet < 0
                                     ? machine.design.each_other_outlet
                                     : machine.design.outlets[static_cast<std::size_t>(section.outlet)];
    return std::max(flow, least_register_flow);
}

}  // namespace

double terminal_quadratic(const house::House& house, const Machine& machine,
                          const ducts::SystemSection& section, bool supply, const loads::Air& air) {
    const units::Pressure usual = supply ? house.register_drop : house.grille_drop;
    // A described return whose grille is not described takes all the air there is.
    if (section.outlet < 0)
        return quadratic(usual, supply ? planned_flow(machine, section) : machine.design_flow);
    const house::Outlet& outlet = house.outlets[static_cast<std::size_t>(section.outlet)];
    const double damper = on_velocity_pressure(handle_coefficient(outlet.damper), section.section.area, air);
    if (!outlet.face) return damper + quadratic(usual, planned_flow(machine, section));
    const units::Area face = outlet.face->width * outlet.face->height;
    const double usual_share = supply ? ducts::register_free_share(outlet.mount.value_or(house::Mount::floor))
                                      : ducts::usual_free_share;
    const double free_share = outlet.free_area ? *outlet.free_area / face : usual_share;
    const double jet = supply ? 1 : 0;  // the velocity pressure a register throws away
    return damper + on_velocity_pressure(ducts::grid_coefficient(free_share) + jet, face, air);
}

double devices_quadratic(const house::House& house, const Machine& machine) {
    const loads::Air air = loads::air_at(machine.returns, machine.pressure);
    double sum = 0;
    for (const house::Device& device : house.devices) {
        const units::MassFlow at = device.at.si() > 0 ? device.at * air.density : machine.design_flow;
        sum += quadratic(device.drop, at);
    }
    return sum;
}

double whole_return_quadratic(const house::House& house, const Machine& machine) {
    constexpr units::FrictionRate usual_rate = 0.08 * units::unit::inch_wc_per_100_ft;
    return quadratic(house.grille_drop + usual_rate * house.return_length, machine.design_flow);
}

double door_quadratic(const house::WayOut& way, const loads::Air& air) {
    constexpr units::Area crack{0.001};  // past the edges of a door that fits
    constexpr units::Pressure pascal{1};
    // Side by side: their flows at one pressure add up.
    units::Airflow at_one_pascal = ducts::through_opening(std::max(crack, way.undercut), pascal, air);
    if (way.transfer.si() > 0) {
        const double free_share =
            way.transfer_free_area ? *way.transfer_free_area / way.transfer : ducts::usual_free_share;
        at_one_pascal += ducts::through_transfer_grille(way.transfer, free_share, pascal, air);
    }
    return quadratic(pascal, at_one_pascal * air.density);
}

}  // namespace network
