#include "network/pressure_equations.hpp"

#include <Eigen/OrderingMethods>
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <algorithm>
#include <cstddef>
#include <numeric>
#include <stdexcept>
#include <utility>

namespace network {
namespace {

using Matrix = Eigen::SparseMatrix<double>;
// The matrix is kept in the order of elimination, its upper half only: so Eigen neither orders nor copies it.
using Cholesky = Eigen::SimplicialLDLT<Matrix, Eigen::Upper, Eigen::NaturalOrdering<int>>;

std::size_t index(int i) { return static_cast<std::size_t>(i); }

bool joins_two_nodes(const Ends& ends) {
    return ends.from != ends.to && ends.from != house_air && ends.to != house_air;
}

void refuse_unknown_nodes(int nodes, std::span<const Ends> links) {
    const auto known = [nodes](int node) { return node >= house_air && node < nodes; };
    for (const Ends& ends : links)
        if (!known(ends.from) || !known(ends.to))
            throw std::invalid_argument("a link to a node that is not there");
}

// One node of each part of the network that is not joined to the house air.
std::vector<int> adrift(int nodes, std::span<const Ends> links) {
    std::vector<int> group(index(nodes) + 1);  // of each node, and last of the house air
    std::iota(group.begin(), group.end(), 0);
    const auto root = [&group](int i) {
        while (group[index(i)] != i) i = group[index(i)] = group[index(group[index(i)])];
        return i;
    };
    const auto member = [nodes](int node) { return node == house_air ? nodes : node; };
    for (const Ends& ends : links) group[index(root(member(ends.from)))] = root(member(ends.to));
    std::vector<int> found;
    for (int node = 0; node < nodes; ++node)
        if (root(node) == node && node != root(nodes)) found.push_back(node);
    return found;
}

Matrix pattern(int nodes, std::span<const Ends> links) {
    std::vector<Eigen::Triplet<double>> entries;
    for (int node = 0; node < nodes; ++node) entries.emplace_back(node, node, 1);
    for (const Ends& ends : links) {
        if (!joins_two_nodes(ends)) continue;
        entries.emplace_back(ends.from, ends.to, 1);
        entries.emplace_back(ends.to, ends.from, 1);
    }
    Matrix matrix(nodes, nodes);
    matrix.setFromTriplets(entries.begin(), entries.end());
    return matrix;
}

// The place of each node in the order of elimination.
std::vector<int> elimination_places(const Matrix& whole) {
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> order;
    Eigen::AMDOrdering<int>()(whole, order);
    std::vector<int> place(index(static_cast<int>(whole.rows())));
    for (int i = 0; i < whole.rows(); ++i) place[index(order.indices()[i])] = i;
    return place;
}

int place_of_value(const Matrix& matrix, int a, int b) {
    const int row = std::min(a, b), column = std::max(a, b);
    const int* first = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column];
    const int* last = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column + 1];
    return static_cast<int>(std::lower_bound(first, last, row) - matrix.innerIndexPtr());
}

}  // namespace

struct PressureEquations::Factors {
    // Where the conductance of a link goes among the matrix's values; -1 for an end in the house air.
    struct Places {
        int at_from = -1, at_to = -1, between = -1;
    };

    std::vector<int> place;  // of each node in the order of elimination
    Matrix matrix;
    std::vector<Places> places;  // of each link
    std::vector<int> adrift;
    Cholesky cholesky;
    Eigen::VectorXd inflow, pressures;
};

PressureEquations::PressureEquations(int nodes, std::span<const Ends> links)
    : factors_(std::make_unique<Factors>()) {
    refuse_unknown_nodes(nodes, links);
    Factors& f = *factors_;
    const Matrix whole = pattern(nodes, links);
    f.place = elimination_places(whole);
    const Eigen::Map<const Eigen::VectorXi> place(f.place.data(), nodes);
    Matrix ordered(nodes, nodes);
    ordered = whole.twistedBy(Eigen::PermutationMatrix<Eigen::Dynamic>(place));
    f.matrix = ordered.triangularView<Eigen::Upper>();
    f.matrix.makeCompressed();
    const auto value_at = [&f](int a, int b) {
        return place_of_value(f.matrix, f.place[index(a)], f.place[index(b)]);
    };
    for (const Ends& ends : links) {
        Factors::Places places;
        if (ends.from != ends.to) {
            if (ends.from != house_air) places.at_from = value_at(ends.from, ends.from);
            if (ends.to != house_air) places.at_to = value_at(ends.to, ends.to);
            if (joins_two_nodes(ends)) places.between = value_at(ends.from, ends.to);
        }
        f.places.push_back(places);
    }
    for (const int node : network::adrift(nodes, links)) f.adrift.push_back(value_at(node, node));
    f.inflow.resize(nodes);
    f.pressures.resize(nodes);
    f.cholesky.analyzePattern(f.matrix);
}

PressureEquations::~PressureEquations() = default;
PressureEquations::PressureEquations(PressureEquations&&) noexcept = default;
PressureEquations& PressureEquations::operator=(PressureEquations&&) noexcept = default;

bool PressureEquations::all_joined_to_house_air() const { return factors_->adrift.empty(); }

bool PressureEquations::solve(std::span<const double> conductances, std::span<const double> inflow,
                              std::span<double> pressures) {
    Factors& f = *factors_;
    if (f.place.empty()) return true;
    double* value = f.matrix.valuePtr();
    std::fill(value, value + f.matrix.nonZeros(), 0.0);
    for (std::size_t i = 0; i < f.places.size(); ++i) {
        const Factors::Places& places = f.places[i];
        if (places.at_from >= 0) value[places.at_from] += conductances[i];
        if (places.at_to >= 0) value[places.at_to] += conductances[i];
        if (places.between >= 0) value[places.between] -= conductances[i];
    }
    for (const int tied : f.adrift) value[tied] += 1;
    f.cholesky.factorize(f.matrix);
    if (f.cholesky.info() != Eigen::Success) return false;
    for (std::size_t i = 0; i < f.place.size(); ++i) f.inflow[f.place[i]] = inflow[i];
    f.pressures = f.cholesky.solve(f.inflow);
    if (!f.pressures.allFinite()) return false;
    for (std::size_t i = 0; i < f.place.size(); ++i) pressures[i] = f.pressures[f.place[i]];
    return true;
}

}  // namespace network
