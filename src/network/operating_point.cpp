// See operating_point.hpp. Outer loops set fittings, leaks and air from the last flows; each inner solution
// is network/solve.hpp's.
#include "network/operating_point.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "house/cannot_answer.hpp"
#include "loads/heater.hpp"
#include "network/damper.hpp"
#include "network/wiring.hpp"

namespace network {
namespace {

// A loss whose slope has a step somewhere could be followed around it for ever: after some loops the slopes
// stay, and only the losses follow.
constexpr int most_loops = 200, loops_with_new_slopes = 15;
constexpr double settled = 1e-11;  // the largest change of a flow, as a share of the blower's

// C on the velocity pressure of a section, of the dampers in the duct it begins.
double damper_in(const house::House& house, const ducts::Side& side, std::size_t i) {
    const ducts::SystemSection& section = side[i];
    if (section.duct < 0) return 0;
    const int parent = section.parent;
    const bool begins = parent < 0 || side[static_cast<std::size_t>(parent)].duct != section.duct;
    return begins ? handle_coefficient(house.ducts[static_cast<std::size_t>(section.duct)].damper) : 0;
}

class Settling {
  public:
    Settling(const house::House& house, const ducts::DuctSystem& system, const Machine& machine, Fans fans)
        : house_(house), machine_(machine), system_(system), wired_(wire(house, system, machine, fans)) {
        air_.returns = loads::air_at(machine.returns, machine.pressure);
        steepest_ = {std::vector<double>(system.supply.size()),
                     std::vector<double>(system.return_side.size())};
        warm_up(machine.design_flow);
        set_losses(true);
    }

    OperatingPoint settle() {
        Solver solver(wired_.network);
        Solution solution = solver.solve(wired_.network, first_guess());
        OperatingPoint point;
        for (point.loops = 1; point.loops <= most_loops; ++point.loops) {
            if (!solution.converged) fail();
            point.steps += solution.steps;
            const double moved = take(solution);
            if (moved <= settled) break;
            set_losses(point.loops < loops_with_new_slopes);
            const std::vector<units::MassFlow> start = solution.flows;
            solution = solver.solve(wired_.network, start);
        }
        if (point.loops > most_loops) fail();
        point.residual = std::max(solution.residual, unsettled());
        read(solution, point);
        return point;
    }

  private:
    ducts::Side& side(bool supply) { return supply ? system_.supply : system_.return_side; }
    SideLinks& links(bool supply) { return supply ? wired_.supply : wired_.return_side; }
    const loads::Air& air(bool supply) const { return supply ? air_.supply : air_.returns; }
    Link& link(int at) { return wired_.network.links[static_cast<std::size_t>(at)]; }

    [[noreturn]] void fail() const {
        throw house::CannotAnswer({},
                                  "no airflow settles in these ducts: check the sizes of the ducts, the "
                                  "blower's points and the loss of each device");
    }

    void warm_up(units::MassFlow blower) {
        const double cp = air_.returns.specific_heat.si();
        // A blower that moves next to nothing would make air no furnace's limit switch lets out.
        constexpr units::TemperatureDifference hottest{60};
        const units::MassFlow least(machine_.output.si() / (cp * hottest.si()));
        air_.supply_temperature = loads::supply_temperature(machine_.output, std::max(blower, least),
                                                            air_.returns.specific_heat, machine_.returns);
        air_.supply = loads::air_at(air_.supply_temperature, machine_.pressure);
    }

    std::vector<units::MassFlow> first_guess() {
        std::vector<units::MassFlow> flows(wired_.network.links.size());
        for (const bool supply : {true, false})
            for (std::size_t i = 0; i < side(supply).size(); ++i) {
                const units::MassFlow flow = side(supply)[i].flow;
                flows[static_cast<std::size_t>(links(supply).sections[i])] = flow;
                if (const int terminal = links(supply).terminals[i]; terminal != no_link)
                    flows[static_cast<std::size_t>(terminal)] = flow;
            }
        flows[devices_link] = machine_.design_flow;
        return flows;
    }

    // Fittings at the last flows: their loss and its slope by the section's own flow, as a square law and a
    // pressure beside it.
    void set_losses(bool follow_slopes) {
        for (const bool supply : {true, false}) {
            for (std::size_t i = 0; i < side(supply).size(); ++i) set_section(supply, i, follow_slopes);
            for (std::size_t i = 0; i < side(supply).size(); ++i) set_leak(supply, i);
        }
    }

    void set_section(bool supply, std::size_t i, bool follow_slopes) {
        const ducts::SystemSection& section = side(supply)[i];
        Link& duct = link(links(supply).sections[i]);
        const double own = section.flow.si();
        DuctLoss loss{section.section, section.length, air(supply), section.loss_factor, 0};
        const auto [quadratic, beside] = fittings_now(supply, i);
        const double damper = damper_in(house_, side(supply), i) /
                              (2 * air(supply).density.si() * std::pow(section.section.area.si(), 2));
        double& steepest = steepest_[supply ? 0 : 1][i];
        steepest = std::max(steepest, damper + quadratic);
        loss.quadratic = follow_slopes ? damper + quadratic : steepest;
        // With another slope the loss at this flow is still the real one.
        duct.head = beside + units::Pressure((loss.quadratic - damper - quadratic) * own * std::abs(own));
        duct.law = loss;
    }

    struct Fittings {
        double quadratic;        // Pa s2/kg2
        units::Pressure beside;  // helps the flow along
    };
    // A takeoff takes its toll for the trunk's velocity however little air leaves there: at next to no flow
    // the law is a plain square up to a twentieth of the trunk's flow, the same either way, so that it is one
    // curve through zero.
    Fittings fittings_now(bool supply, std::size_t i) const {
        const ducts::Side& sections = supply ? system_.supply : system_.return_side;
        const ducts::SystemSection& section = sections[i];
        if (section.fittings.empty()) return {0, {}};
        constexpr double least = 1e-6, step = 1e-5, little = 0.05;
        const double trunk =
            section.parent < 0 ? 0 : std::abs(sections[static_cast<std::size_t>(section.parent)].flow.si());
        const double flow = std::max({least, little * trunk, std::abs(section.flow.si())});
        const auto loss_at = [&](double own) {
            return section.loss_factor *
                   ducts::fittings_loss(sections, section, units::MassFlow(own), air(supply)).si();
        };
        const double loss = std::max(0.0, loss_at(flow));
        // Air that runs backwards meets the same fittings likewise.
        if (section.flow.si() < flow) return {loss / (flow * flow), {}};
        const double slope = (loss_at(flow * (1 + step)) - loss_at(flow * (1 - step))) / (2 * step * flow);
        const double quadratic = std::max(0.0, slope / (2 * flow));
        return {quadratic, units::Pressure(quadratic * flow * flow - loss)};
    }

    // Static pressure drives a leak.
    void set_leak(bool supply, std::size_t i) {
        const int at = links(supply).leaks[i];
        if (at == no_link) return;
        const ducts::SystemSection& section = side(supply)[i];
        const units::Pressure moving =
            ducts::velocity_pressure(ducts::velocity(section, air(supply)), air(supply));
        link(at).head = (supply ? -1.0 : 1.0) * moving;
    }

    // Takes the flows over into the sections; gives the largest change, as a share of the blower's flow.
    double take(const Solution& solution) {
        double most = 0;
        for (const bool supply : {true, false})
            for (std::size_t i = 0; i < side(supply).size(); ++i) {
                const units::MassFlow flow =
                    solution.flows[static_cast<std::size_t>(links(supply).sections[i])];
                most = std::max(most, std::abs((flow - side(supply)[i].flow).si()));
                side(supply)[i].flow = flow;
            }
        blower_flow_ = solution.flows[devices_link];
        warm_up(blower_flow_);
        return most / std::max(1e-9, std::abs(blower_flow_.si()));
    }

    // What the losses set last miss the real ones by, as a share of the largest of them.
    double unsettled() {
        double most = 0, largest = 1e-6;
        for (const bool supply : {true, false})
            for (std::size_t i = 0; i < side(supply).size(); ++i) {
                const Link& duct = link(links(supply).sections[i]);
                const double own = side(supply)[i].flow.si();
                const auto& law = std::get<DuctLoss>(duct.law);
                const auto [quadratic, beside] = fittings_now(supply, i);
                const double damper = damper_in(house_, side(supply), i) /
                                      (2 * air(supply).density.si() * std::pow(law.section.area.si(), 2));
                const double was = law.quadratic * own * own - duct.head.si();
                const double is = (damper + quadratic) * own * own - beside.si();
                most = std::max(most, std::abs(was - is));
                largest = std::max(largest, std::abs(loss(law, side(supply)[i].flow).pressure.si()));
            }
        return most / largest;
    }

    units::MassFlow leaked(bool supply, const Solution& solution) {
        units::MassFlow sum;
        const auto flow = [&](int at) {
            return at == no_link ? units::MassFlow() : solution.flows[static_cast<std::size_t>(at)];
        };
        for (const int at : links(supply).leaks) sum += flow(at);
        return sum + flow(links(supply).plenum_leak);
    }

    void read(const Solution& solution, OperatingPoint& point) {
        point.outlets.assign(house_.outlets.size(), {});
        for (const bool supply : {true, false})
            for (std::size_t i = 0; i < side(supply).size(); ++i) {
                const int terminal = links(supply).terminals[i];
                if (terminal == no_link) continue;
                const units::MassFlow flow = solution.flows[static_cast<std::size_t>(terminal)];
                const int outlet = side(supply)[i].outlet;
                if (outlet >= 0)
                    point.outlets[static_cast<std::size_t>(outlet)] += flow;
                else if (supply)
                    point.other_rooms += flow;
            }
        point.blower = blower_flow_;
        point.supply_plenum = solution.pressures[supply_plenum];
        point.return_plenum = solution.pressures[return_plenum];
        point.external_static = point.supply_plenum - solution.pressures[blower_inlet];
        point.supply_leak = leaked(true, solution);
        point.return_leak = leaked(false, solution);
        for (const int door : wired_.doors) {
            const bool shut = door != no_link;
            const Link* way = shut ? &link(door) : nullptr;
            point.rooms.push_back(shut ? solution.pressures[static_cast<std::size_t>(way->from)]
                                       : units::Pressure());
            point.door_flows.push_back(shut ? solution.flows[static_cast<std::size_t>(door)]
                                            : units::MassFlow());
        }
        point.supply = air_.supply_temperature;
        point.supply_air = air_.supply;
        point.return_air = air_.returns;
        point.system = std::move(system_);
    }

    const house::House& house_;
    const Machine& machine_;
    ducts::DuctSystem system_;
    Wired wired_;
    SystemAir air_;
    units::MassFlow blower_flow_;
    std::array<std::vector<double>, 2> steepest_;  // of each section's square laws, supply and return
};

}  // namespace

OperatingPoint operating_point(const house::House& house, const ducts::DuctSystem& system,
                               const Machine& machine, Fans fans) {
    OperatingPoint point = Settling(house, system, machine, fans).settle();
    const auto* held = std::get_if<HeldAirflow>(&machine.blower);
    if (!held || held->up_to.si() <= 0 || point.external_static <= held->up_to) return point;
    Machine limited = machine;
    limited.blower = limit_curve(*held);
    return Settling(house, system, limited, fans).settle();
}

}  // namespace network
