// The linear equations for the pressures of a network's nodes.
//
//     for each node: sum over its links of conductance x (pressure here - pressure beyond) = inflow
//
// The reference beyond has pressure 0. Symmetric and positive definite; solved by sparse L D L'. The order in
// which nodes are eliminated is found once, in the constructor: on a tree it begins at the leaves and nothing
// fills in. A part that no link joins to the reference has no pressure of its own; one node of it is tied
// there, so that the rest can be solved.
//
// Accuracy: that of double arithmetic, for conductances that lie up to some 1e12 apart.
// Source: linear algebra by Eigen; least degree ordering Amestoy, Davis, Duff 1996.
#pragma once

#include <memory>
#include <span>
#include <vector>

namespace network {

inline constexpr int house_air = -1;  // the reference, 0 Pa

struct Ends {
    int from, to;  // nodes, or house_air
    bool operator==(const Ends&) const = default;
};

class PressureEquations {
  public:
    // std::invalid_argument for a link to a node that is not there.
    PressureEquations(int nodes, std::span<const Ends> links);
    ~PressureEquations();
    PressureEquations(PressureEquations&&) noexcept;
    PressureEquations& operator=(PressureEquations&&) noexcept;

    bool all_joined_to_house_air() const;
    // One conductance for each link, over zero and finite; inflow and pressures for each node. False, and the
    // pressures as they were, if the numbers are too far apart to be solved.
    bool solve(std::span<const double> conductances, std::span<const double> inflow,
               std::span<double> pressures);

  private:
    struct Factors;
    std::unique_ptr<Factors> factors_;
};

}  // namespace network
