// Flows where the loss of one link follows from the flow in another too: a takeoff's from the trunk's, a
// leak's from the velocity in its duct; private to this folder.
//
//     each link:  p(from) - p(to) = loss(its flow, the flows it follows from)
//     each node:  as much in as out
//
// Newton on all flows and pressures at once, each step cut back until the losses are missed by less. Unlike
// solve.hpp's content such losses have no function that is least at the answer, so it wants a start not far
// off, and its caller tries again from elsewhere where it comes to none. Accuracy: the last step moved no
// flow by more than 1e-11 of the largest; steps that no longer miss by less end it too. Source: Newton with
// backtracking, any textbook of numerical methods.
#pragma once

#include <functional>
#include <vector>

#include "network/solve.hpp"

namespace network {

// d (loss of a link) / d (flow in another), Pa s/kg.
struct CrossSlope {
    int link, by;
    double slope;
};
struct LinkLosses {
    std::vector<double> pressure, slope;  // by link: Pa, heads taken off; by its own flow, Pa s/kg
    std::vector<CrossSlope> cross;        // always of the same links in the same order
};
// The losses at these flows, kg/s.
using LossesAt = std::function<void(const std::vector<double>& flows, LinkLosses& losses)>;

// From a start whose nodes balance. Solution::residual is with the losses given.
Solution solve_coupled(const Network& network, const LossesAt& losses_at, const Solution& start);

}  // namespace network
