#include "network/real_losses.hpp"

#include <algorithm>
#include <cmath>

#include "loads/heater.hpp"
#include "network/damper.hpp"
#include "network/terminals.hpp"

namespace network {
namespace {

// C on the velocity pressure of a section, of the dampers in the duct it begins.
double damper_in(const house::House& house, const ducts::Side& side, std::size_t i) {
    const ducts::SystemSection& section = side[i];
    if (section.duct < 0) return 0;
    const int parent = section.parent;
    const bool begins = parent < 0 || side[static_cast<std::size_t>(parent)].duct != section.duct;
    return begins ? handle_coefficient(house.ducts[static_cast<std::size_t>(section.duct)].damper) : 0;
}

double on_velocity_pressure(double coefficient, units::Area area, const loads::Air& air) {
    return coefficient / (2 * air.density.si() * area.si() * area.si());
}

}  // namespace

RealLosses::RealLosses(const house::House& house, const Machine& machine, ducts::DuctSystem& system,
                       Wired& wired)
    : machine_(machine), house_(house), system_(system), wired_(wired) {
    air_.returns = loads::air_at(machine.returns, machine.pressure);
    warm_up(machine.design_flow);
}

void RealLosses::warm_up(units::MassFlow blower) {
    const double cp = air_.returns.specific_heat.si();
    // A blower that moves next to nothing would make air no furnace's limit switch lets out.
    constexpr units::TemperatureDifference hottest{60};
    const units::MassFlow least(machine_.output.si() / (cp * hottest.si()));
    const units::Temperature leaves = loads::supply_temperature(machine_.output, std::max(blower, least),
                                                                air_.returns.specific_heat, machine_.returns);
    if (leaves == air_.supply_temperature) return;
    air_.supply_temperature = leaves;
    air_.supply = loads::air_at(leaves, machine_.pressure);
    set_terminals();
}

void RealLosses::set_terminals() {
    for (const bool supply : {true, false})
        for (std::size_t i = 0; i < side(supply).size(); ++i)
            if (const int at = links(supply).terminals[i]; at != no_link)
                link(at).law = FixedLoss{
                    0, terminal_quadratic(house_, machine_, side(supply)[i], supply, air_of(supply))};
}

void RealLosses::take(const std::vector<double>& flows) {
    for (const bool supply : {true, false})
        for (std::size_t i = 0; i < side(supply).size(); ++i)
            side(supply)[i].flow =
                units::MassFlow(flows[static_cast<std::size_t>(links(supply).sections[i])]);
    warm_up(units::MassFlow(flows[devices_link]));
    for (const bool supply : {true, false})
        for (std::size_t i = 0; i < side(supply).size(); ++i) {
            const ducts::SystemSection& section = side(supply)[i];
            link(links(supply).sections[i]).law =
                DuctLoss{section.section, section.length, air_of(supply), section.loss_factor,
                         on_velocity_pressure(damper_in(house_, side(supply), i), section.section.area,
                                              air_of(supply))};
        }
}

double RealLosses::fittings(bool supply, const ducts::SystemSection& section, double own,
                            double trunk) const {
    const loads::Air& air = air_of(supply);
    ducts::FittingPlace place{section.section, units::MassFlow(own) / air.density, {}, {}};
    if (section.parent >= 0) {
        const ducts::Side& sections = supply ? system_.supply : system_.return_side;
        place.trunk = sections[static_cast<std::size_t>(section.parent)].section;
        place.trunk_flow = units::MassFlow(std::max(own, trunk)) / air.density;
    }
    units::Pressure loss;
    for (const ducts::Fitting& fitting : section.fittings) loss += ducts::fitting_loss(fitting, place, air);
    return section.loss_factor * std::max(0.0, loss.si());
}

const ducts::SystemSection* RealLosses::trunk_of(bool supply, std::size_t i) {
    const int parent = side(supply)[i].parent;
    return parent < 0 ? nullptr : &side(supply)[static_cast<std::size_t>(parent)];
}

RealLosses::Toll RealLosses::toll(bool supply, std::size_t i) {
    constexpr double least = 1e-6, step = 1e-5, little = 0.05;
    const ducts::SystemSection& section = side(supply)[i];
    const double own = std::abs(section.flow.si()), trunk = std::abs(trunk_flow(supply, i));
    const double square_to = std::max(least, little * trunk);
    const auto loss_at = [&](double own_there, double trunk_there) {
        const double to = std::max(least, little * trunk_there);
        if (own_there >= to) return fittings(supply, section, own_there, trunk_there);
        return fittings(supply, section, to, trunk_there) * (own_there / to) * (own_there / to);
    };
    const double sign = section.flow.si() < 0 ? -1 : 1;
    Toll toll{sign * loss_at(own, trunk), 0, 0};
    const double d_own = step * std::max(own, square_to), own_low = std::max(0.0, own - d_own);
    toll.by_own = (loss_at(own + d_own, trunk) - loss_at(own_low, trunk)) / (own + d_own - own_low);
    if (section.parent < 0) return toll;
    const double d_trunk = step * std::max(trunk, least), trunk_low = std::max(0.0, trunk - d_trunk);
    const double turned = trunk_flow(supply, i) < 0 ? -sign : sign;
    toll.by_trunk =
        turned * (loss_at(own, trunk + d_trunk) - loss_at(own, trunk_low)) / (trunk + d_trunk - trunk_low);
    return toll;
}

void RealLosses::at(const std::vector<double>& flows, LinkLosses& losses) {
    take(flows);
    losses.pressure.clear();
    losses.slope.clear();
    losses.cross.clear();
    for (std::size_t i = 0; i < flows.size(); ++i) {
        const Loss one = loss(wired_.network.links[i].law, units::MassFlow(flows[i]));
        losses.pressure.push_back(one.pressure.si());
        losses.slope.push_back(one.slope.si());
    }
    for (const bool supply : {true, false}) {
        add_fittings(supply, losses);
        add_velocities(supply, losses);
    }
}

void RealLosses::add_fittings(bool supply, LinkLosses& losses) {
    for (std::size_t i = 0; i < side(supply).size(); ++i) {
        if (side(supply)[i].fittings.empty()) continue;
        const Toll pays = toll(supply, i);
        const int at = links(supply).sections[i];
        losses.pressure[static_cast<std::size_t>(at)] += pays.loss;
        losses.slope[static_cast<std::size_t>(at)] += pays.by_own;
        if (const int parent = side(supply)[i].parent; parent >= 0)
            losses.cross.push_back(
                {at, links(supply).sections[static_cast<std::size_t>(parent)], pays.by_trunk});
    }
}

// Static pressure drives a leak: total less velocity pressure inside.
void RealLosses::add_velocities(bool supply, LinkLosses& losses) {
    for (std::size_t i = 0; i < side(supply).size(); ++i) {
        const int at = links(supply).leaks[i];
        if (at == no_link) continue;
        const ducts::SystemSection& section = side(supply)[i];
        const double flow = section.flow.si();
        const double square = on_velocity_pressure(1, section.section.area, air_of(supply));
        const double sign = supply ? 1 : -1;
        losses.pressure[static_cast<std::size_t>(at)] += sign * square * flow * flow;
        losses.cross.push_back({at, links(supply).sections[i], 2 * sign * square * flow});
    }
}

void RealLosses::set_squares() {
    for (const bool supply : {true, false})
        for (std::size_t i = 0; i < side(supply).size(); ++i) {
            const ducts::SystemSection& section = side(supply)[i];
            const double own = std::max(1e-9, std::abs(section.flow.si()));
            if (!section.fittings.empty())
                std::get<DuctLoss>(link(links(supply).sections[i]).law).quadratic +=
                    std::abs(toll(supply, i).loss) / (own * own);
            const int leak = links(supply).leaks[i];
            if (leak != no_link)
                link(leak).head = units::Pressure(
                    (supply ? -1 : 1) * on_velocity_pressure(1, section.section.area, air_of(supply)) * own *
                    own);
        }
}

}  // namespace network
