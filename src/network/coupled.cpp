// See coupled.hpp. Unknowns: flows of the links, then pressures of the nodes.
#include "network/coupled.hpp"

#include <Eigen/Sparse>
#include <Eigen/SparseLU>
#include <algorithm>
#include <cmath>

namespace network {
namespace {

using Vector = Eigen::VectorXd;
using Matrix = Eigen::SparseMatrix<double>;

constexpr double settled = 1e-11, rounding = 1e-10;

class Coupled {
  public:
    Coupled(const Network& network, const LossesAt& losses_at)
        : network_(network), losses_at_(losses_at), links_(static_cast<int>(network.links.size())) {}

    Solution solve(const Solution& start) {
        Vector at(links_ + network_.nodes);
        for (int i = 0; i < links_; ++i) at(i) = start.flows[static_cast<std::size_t>(i)].si();
        for (int n = 0; n < network_.nodes; ++n)
            at(links_ + n) = start.pressures[static_cast<std::size_t>(n)].si();
        Solution solution;
        Vector missed = missed_at(at);
        constexpr int most_steps = 40;
        while (solution.steps < most_steps && !solution.converged) {
            ++solution.steps;
            const Vector step = newton_step(missed, 0);
            if (!step.allFinite() || !go(at, missed, step, solution.converged)) break;
        }
        if (!solution.converged) drift(at, missed, solution);
        solution.residual = residual(at, missed);
        solution.converged = solution.converged && solution.residual < rounding;
        for (int i = 0; i < links_; ++i) solution.flows.emplace_back(at(i));
        for (int n = 0; n < network_.nodes; ++n) solution.pressures.emplace_back(at(links_ + n));
        return solution;
    }

  private:
    double pressure(const Vector& at, int node) const { return node == house_air ? 0 : at(links_ + node); }

    // Of each link what its pressures miss its loss by; of each node what comes in too much.
    Vector missed_at(const Vector& at) {
        flows_.assign(at.data(), at.data() + links_);
        losses_at_(flows_, losses_);
        Vector missed = Vector::Zero(at.size());
        for (int i = 0; i < links_; ++i) {
            const Link& link = network_.links[static_cast<std::size_t>(i)];
            missed(i) = pressure(at, link.from) - pressure(at, link.to) -
                        losses_.pressure[static_cast<std::size_t>(i)];
            if (link.from != house_air) missed(links_ + link.from) -= at(i);
            if (link.to != house_air) missed(links_ + link.to) += at(i);
        }
        for (std::size_t n = 0; n < network_.injected.size(); ++n)
            missed(links_ + static_cast<int>(n)) += network_.injected[n].si();
        return missed;
    }

    // As the air itself finds its way, slowed by a mass that is less the less is missed: a takeoff that loses
    // less the more air it takes has flows that no tangent leads to.
    void drift(Vector& at, Vector& missed, Solution& solution) {
        constexpr int most_steps = 200;
        const double largest = std::max(1e-9, at.head(links_).lpNorm<Eigen::Infinity>());
        for (int i = 0; i < most_steps && !solution.converged; ++i) {
            ++solution.steps;
            const double mass = missed.head(links_).lpNorm<Eigen::Infinity>() / (0.05 * largest);
            const Vector step = newton_step(missed, mass);
            if (!step.allFinite()) return;
            at += step;
            missed = missed_at(at);
            solution.converged = residual(at, missed) < rounding;
        }
    }

    Vector newton_step(const Vector& missed, double mass) {
        entries_.clear();
        constexpr double least_slope = 1e-6;  // as in solve.hpp
        for (int i = 0; i < links_; ++i) {
            const Link& link = network_.links[static_cast<std::size_t>(i)];
            const double slope = losses_.slope[static_cast<std::size_t>(i)];
            entries_.emplace_back(i, i, mass + (std::abs(slope) < least_slope ? least_slope : slope));
            for (const auto& [node, sign] : {std::pair{link.from, -1.0}, {link.to, 1.0}}) {
                if (node == house_air) continue;
                entries_.emplace_back(i, links_ + node, sign);
                entries_.emplace_back(links_ + node, i, -sign);
            }
        }
        for (const CrossSlope& cross : losses_.cross)
            entries_.emplace_back(cross.link, cross.by, cross.slope);
        Matrix tangent(missed.size(), missed.size());
        tangent.setFromTriplets(entries_.begin(), entries_.end());
        if (!analysed_) lu_.analyzePattern(tangent);
        analysed_ = true;
        lu_.factorize(tangent);
        if (lu_.info() != Eigen::Success) return Vector::Constant(missed.size(), std::nan(""));
        return lu_.solve(missed);
    }

    // As far along the step as the losses are missed by less. False where they are not.
    bool go(Vector& at, Vector& missed, const Vector& step, bool& converged) {
        const double moves = step.head(links_).lpNorm<Eigen::Infinity>();
        const double largest = std::max(1e-9, at.head(links_).lpNorm<Eigen::Infinity>());
        const double before = missed.head(links_).norm();
        constexpr double least_share = 1.0 / 4096;
        for (double share = 1; share >= least_share; share /= 2) {
            const Vector there = at + share * step;
            const Vector missed_there = missed_at(there);
            const double now = missed_there.head(links_).norm();
            const bool last = moves <= settled * largest && now <= 2 * before + 1e-9;
            if (!(now < (1 - 1e-4 * share) * before) && !last) continue;
            at = there;
            missed = missed_there;
            converged = moves <= settled * largest;
            return true;
        }
        missed = missed_at(at);
        converged = residual(at, missed) < rounding;
        return converged;
    }

    double residual(const Vector& at, const Vector& missed) const {
        double pressures = 1e-6;
        for (int i = links_; i < at.size(); ++i) pressures = std::max(pressures, std::abs(at(i)));
        for (const double loss : losses_.pressure) pressures = std::max(pressures, std::abs(loss));
        const double flows = std::max(1e-9, at.head(links_).lpNorm<Eigen::Infinity>());
        return std::max(missed.head(links_).lpNorm<Eigen::Infinity>() / pressures,
                        missed.tail(network_.nodes).lpNorm<Eigen::Infinity>() / flows);
    }

    const Network& network_;
    const LossesAt& losses_at_;
    int links_;
    std::vector<double> flows_;
    LinkLosses losses_;
    std::vector<Eigen::Triplet<double>> entries_;
    Eigen::SparseLU<Matrix, Eigen::COLAMDOrdering<int>> lu_;
    bool analysed_ = false;
};

}  // namespace

Solution solve_coupled(const Network& network, const LossesAt& losses_at, const Solution& start) {
    return Coupled(network, losses_at).solve(start);
}

}  // namespace network
