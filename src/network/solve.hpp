// The air that really flows in a network of ducts, leaks, doors and blowers, and the pressure at every node.
//
//     each link:  p(from) - p(to) + head = loss(m)
//     each node:  injected + sum of m into it = sum of m out of it
//
// m mass flow in kg/s from `from` to `to`, p total pressure in Pa over the house air. A blower with a curve
// is a link with a loss below zero; a blower that holds its airflow, or an exhaust fan, is a flow injected at
// one node and drawn from another.
//
// Newton on flows and pressures together (the global gradient scheme of water networks): each link is
// replaced by its tangent, the node pressures follow from one sparse system, the flows from them. Mass
// balances after the first full step. Because every law rises with the flow, the answer is where a convex
// function of the balanced flows, the content, is least; a step is cut short where going all the way would
// pass that function's lowest point by too much, and doubled where it falls far short. So it comes to the
// answer from any start: a flow of nothing, air that turns around, a shut damper, a leg without length,
// laminar flow and a branch without a way out need no care. A slope below 1e-6 Pa s/kg counts as that on the
// way; the losses, and so the answers, are as the laws say.
//
// Range: 50,000 links and more; slopes from 0 to 1e15 Pa s/kg. Links of no loss side by side share their flow
// in no certain way. Accuracy: the last step moved no flow by more than 1e-10 of the largest flow.
// Source: Todini and Pilati 1988; content: Collins and others 1978 (both memory). Checked against closed
// forms, published networks and another method (tests/network, tests/published).
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "loads/method.hpp"
#include "network/laws.hpp"
#include "network/pressure_equations.hpp"
#include "units/quantity.hpp"

namespace network {

inline constexpr loads::Method network_method{
    "air that flows",
    "each part: pressure before - pressure behind = loss at its flow; each node: as much in as out",
    "mass balance; Todini and Pilati 1988"};

struct Link {
    int from, to;  // nodes, or house_air
    Law law;
    units::Pressure head{};  // helps the flow along: a static pressure, a wind, warm air's rise
};

struct Network {
    int nodes = 0;
    std::vector<Link> links;
    std::vector<units::MassFlow> injected;  // into each node; empty: none
};

struct Solution {
    std::vector<units::MassFlow> flows;      // of each link
    std::vector<units::Pressure> pressures;  // of each node
    int steps = 0;
    // The larger of: what a link's pressures miss its loss by, over the largest pressure, loss or head; what
    // a node's flows miss balance by, over the largest flow; these counted as 1e-6 Pa and 1e-9 kg/s at least.
    double residual = 0;
    // False where the equations have no answer (a part not joined to the house air, numbers that are none),
    // or none was found. Flows and pressures are then the last ones tried, never NaN.
    bool converged = false;
};

// Solves networks of one shape many times: what depends only on which nodes are joined is worked out once.
// One thread at a time.
class Solver {
  public:
    explicit Solver(const Network& shape);  // std::invalid_argument for a link to a node that is not there
    ~Solver();
    Solver(Solver&&) noexcept;
    Solver& operator=(Solver&&) noexcept;

    // start: a guess of each link's flow; empty, or zero where there is none. A network of another shape than
    // the last is welcome, and takes longer.
    Solution solve(const Network& network, std::span<const units::MassFlow> start = {});

  private:
    struct Work;
    std::unique_ptr<Work> work_;
};

}  // namespace network
