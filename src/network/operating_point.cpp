// See operating_point.hpp. First rounds with every fitting as a square of its own flow, which come near from
// any start; from there network/coupled.hpp with the real losses. Where that comes to nothing, another round.
#include "network/operating_point.hpp"

#include <algorithm>
#include <cmath>

#include "house/cannot_answer.hpp"
#include "network/real_losses.hpp"

namespace network {
namespace {

class Settling {
  public:
    Settling(const house::House& house, const ducts::DuctSystem& system, const Machine& machine, Fans fans)
        : house_(house),
          machine_(machine),
          system_(system),
          wired_(wire(house, system, machine, fans)),
          losses_(house, machine, system_, wired_) {}

    OperatingPoint settle() {
        constexpr int least_rounds = 1, most_rounds = 60;
        OperatingPoint point;
        Solver solver(wired_.network);
        flows_ = first_guess();
        const LossesAt real = [this](const std::vector<double>& flows, LinkLosses& losses) {
            losses_.at(flows, losses);
        };
        for (point.loops = 1; point.loops <= most_rounds; ++point.loops) {
            const Solution rough = round(solver);
            point.steps += rough.steps;
            if (point.loops < least_rounds) continue;
            const Solution solution = solve_coupled(wired_.network, real, rough);
            point.steps += solution.steps;
            if (!solution.converged) continue;
            point.residual = solution.residual;
            read(solution, point);
            return point;
        }
        fail();
    }

  private:
    ducts::Side& side(bool supply) { return supply ? system_.supply : system_.return_side; }
    SideLinks& links(bool supply) { return supply ? wired_.supply : wired_.return_side; }
    Link& link(int at) { return wired_.network.links[static_cast<std::size_t>(at)]; }

    [[noreturn]] void fail() const {
        throw house::CannotAnswer({},
                                  "no airflow settles in these ducts: check the sizes of the ducts, the "
                                  "blower's points and the loss of each device");
    }

    // Fittings as squares at the last flows; half-way to what these give, so that rounds do not swing.
    Solution round(Solver& solver) {
        losses_.take(flows_);
        losses_.set_squares();
        std::vector<units::MassFlow> start;
        for (const double flow : flows_) start.emplace_back(flow);
        Solution solution = solver.solve(wired_.network, start);
        for (std::size_t i = 0; i < flows_.size(); ++i)
            flows_[i] = 0.5 * (flows_[i] + solution.flows[i].si());
        return solution;
    }

    std::vector<double> first_guess() {
        std::vector<double> flows(wired_.network.links.size());
        for (const bool supply : {true, false})
            for (std::size_t i = 0; i < side(supply).size(); ++i) {
                const double flow = side(supply)[i].flow.si();
                flows[static_cast<std::size_t>(links(supply).sections[i])] = flow;
                if (const int terminal = links(supply).terminals[i]; terminal != no_link)
                    flows[static_cast<std::size_t>(terminal)] = flow;
            }
        flows[devices_link] = machine_.design_flow.si();
        return flows;
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
        point.blower = solution.flows[devices_link];
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
        point.supply = losses_.air().supply_temperature;
        point.supply_air = losses_.air().supply;
        point.return_air = losses_.air().returns;
        point.system = std::move(system_);
    }

    const house::House& house_;
    const Machine& machine_;
    ducts::DuctSystem system_;
    Wired wired_;
    RealLosses losses_;
    std::vector<double> flows_;
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
