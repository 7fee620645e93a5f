// Symbols: m flow, p pressure, r what is left of a link's equation, dm and dp a step.

#include "network/solve.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <stdexcept>
#include <utility>

namespace network {
namespace {

constexpr int most_steps = 200;
constexpr double settled = 1e-10;        // of the largest flow
constexpr double no_flow = 1e-14;        // kg/s, for a network in which nothing flows
constexpr double least_pressure = 1e-6;  // Pa, and
constexpr double least_flow = 1e-9;      // kg/s: what misses are weighed by in still air
constexpr double good_residual = 1e-8;   // what the last step may leave
constexpr double least_slope = 1e-6;     // Pa s/kg
constexpr double guessed_flow = 0.1;     // kg/s, where neither start nor injection gives an idea

using Numbers = std::vector<double>;

std::vector<Ends> ends_of(const Network& network) {
    std::vector<Ends> ends;
    ends.reserve(network.links.size());
    for (const Link& link : network.links) ends.push_back({link.from, link.to});
    return ends;
}

double largest_of(const Numbers& numbers) {
    double largest = 0;
    for (const double number : numbers) largest = std::max(largest, std::abs(number));
    return largest;
}

bool all_finite(const Numbers& numbers) {
    return std::all_of(numbers.begin(), numbers.end(), [](double number) { return std::isfinite(number); });
}

}  // namespace

// The numbers of one solution, kept between solutions so that nothing is allocated again.
struct Solver::Work {
    std::vector<Ends> ends;
    int nodes;
    PressureEquations equations;
    Numbers m, p, injected;          // where the iteration is
    Numbers loss, slope;             // of each link, there
    Numbers tried, conductance, dm;  // of each link, of the step
    Numbers excess, dp;              // of each node: flow in less flow out, step

    explicit Work(const Network& network)
        : ends(ends_of(network)), nodes(network.nodes), equations(network.nodes, ends) {}

    void begin(const Network& network, std::span<const units::MassFlow> start);
    void evaluate(const Network& network, double t);
    void take_chords(const Network& network, std::span<const units::MassFlow> start);
    bool find_step(const Network& network);
    double step_length(const Network& network);
    double downhill(const Network& network, double t);
    void find_excess();
    double rest(const Network& network, std::size_t i) const;
    double residual(const Network& network);
    double pressure_at(int node) const { return node == house_air ? 0 : p[static_cast<std::size_t>(node)]; }
};

// What the pressures leave over for link i after its loss.
double Solver::Work::rest(const Network& network, std::size_t i) const {
    return pressure_at(ends[i].from) - pressure_at(ends[i].to) + network.links[i].head.si() - loss[i];
}

void Solver::Work::begin(const Network& network, std::span<const units::MassFlow> start) {
    const std::size_t links = ends.size(), count = static_cast<std::size_t>(nodes);
    for (Numbers* of_links : {&m, &loss, &slope, &tried, &conductance, &dm}) of_links->assign(links, 0);
    for (Numbers* of_nodes : {&p, &injected, &excess, &dp}) of_nodes->assign(count, 0);
    for (std::size_t i = 0; i < std::min(links, start.size()); ++i)
        if (is_finite(start[i])) m[i] = start[i].si();
    for (std::size_t i = 0; i < std::min(count, network.injected.size()); ++i)
        injected[i] = network.injected[i].si();
    evaluate(network, 0);
}

// Loss and slope of each link t of the step further on.
void Solver::Work::evaluate(const Network& network, double t) {
    for (std::size_t i = 0; i < ends.size(); ++i) {
        tried[i] = m[i] + t * dm[i];
        const Loss at = network::loss(network.links[i].law, units::MassFlow(tried[i]));
        loss[i] = at.pressure.si();
        slope[i] = at.slope.si();
    }
}

// A link nobody guessed a flow for begins with the chord to a flow of the network's size: a tangent at no
// flow would let it take everything.
void Solver::Work::take_chords(const Network& network, std::span<const units::MassFlow> start) {
    double size = std::max(largest_of(m), largest_of(injected));
    if (!(size > 0)) size = guessed_flow;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        if (i < start.size() && m[i] != 0) continue;
        const double chord = network::loss(network.links[i].law, units::MassFlow(size)).pressure.si() / size;
        slope[i] = std::max(slope[i], chord);
    }
}

void Solver::Work::find_excess() {
    excess = injected;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        if (ends[i].from != house_air) excess[static_cast<std::size_t>(ends[i].from)] -= m[i];
        if (ends[i].to != house_air) excess[static_cast<std::size_t>(ends[i].to)] += m[i];
    }
}

// The Newton step, and the pressures after it. In increments, so that what rounding left out of balance in
// one step is put right in the next. False if there is none.
bool Solver::Work::find_step(const Network& network) {
    find_excess();
    for (std::size_t i = 0; i < ends.size(); ++i) {
        conductance[i] = 1 / std::max(slope[i], least_slope);
        dm[i] = conductance[i] * rest(network, i);
        if (ends[i].from != house_air) excess[static_cast<std::size_t>(ends[i].from)] -= dm[i];
        if (ends[i].to != house_air) excess[static_cast<std::size_t>(ends[i].to)] += dm[i];
    }
    if (!equations.solve(conductance, excess, dp)) return false;
    const auto dp_at = [this](int node) {
        return node == house_air ? 0 : dp[static_cast<std::size_t>(node)];
    };
    for (std::size_t i = 0; i < ends.size(); ++i)
        dm[i] += conductance[i] * (dp_at(ends[i].from) - dp_at(ends[i].to));
    if (!all_finite(dm)) return false;
    for (std::size_t i = 0; i < p.size(); ++i) p[i] += dp[i];
    return true;
}

// How fast the content falls along the step, t of it further on: under zero while it still does. The step is
// balanced, so that any pressures may be counted in; with those after the step little is lost to rounding.
double Solver::Work::downhill(const Network& network, double t) {
    evaluate(network, t);
    double sum = 0;
    for (std::size_t i = 0; i < ends.size(); ++i) sum -= rest(network, i) * dm[i];
    return sum;
}

// How much of the step to take. The losses are then those there.
double Solver::Work::step_length(const Network& network) {
    double begin = 0;
    for (std::size_t i = 0; i < ends.size(); ++i) begin -= dm[i] * dm[i] / conductance[i];
    const double enough = -begin / 2;
    double low = 0, high = 1;
    double at_low = begin, at_high = downhill(network, 1);
    if (at_high < begin / 5) {  // a slope that vanishes where the flow does halves the flow for ever
        const double at_two = downhill(network, 2);
        if (std::abs(at_two) < -at_high) return 2;
        evaluate(network, 1);
        return 1;
    }
    if (at_high <= enough) return 1;
    for (int i = 0; i < 60; ++i) {
        // Secant on the bracket, kept off its ends; every third time halved, for a curve that bends sharply.
        const double secant = (low * at_high - high * at_low) / (at_high - at_low);
        const double margin = (high - low) / 50;
        const double t = i % 3 == 2 ? (low + high) / 2 : std::clamp(secant, low + margin, high - margin);
        const double at = downhill(network, t);
        if (std::abs(at) <= enough || !std::isfinite(at)) return t;
        (at < 0 ? low : high) = t;
        (at < 0 ? at_low : at_high) = at;
    }
    return tried == m ? 0 : low;
}

double Solver::Work::residual(const Network& network) {
    double scale = std::max({least_pressure, largest_of(p), largest_of(loss)}), missed = 0;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        scale = std::max(scale, std::abs(network.links[i].head.si()));
        missed = std::max(missed, std::abs(rest(network, i)));
    }
    find_excess();
    const double flow = std::max({least_flow, largest_of(m), largest_of(injected)});
    return std::max(missed / scale, largest_of(excess) / flow);
}

Solver::Solver(const Network& shape) : work_(std::make_unique<Work>(shape)) {}
Solver::~Solver() = default;
Solver::Solver(Solver&&) noexcept = default;
Solver& Solver::operator=(Solver&&) noexcept = default;

Solution Solver::solve(const Network& network, std::span<const units::MassFlow> start) {
    if (network.nodes != work_->nodes || ends_of(network) != work_->ends)
        work_ = std::make_unique<Work>(network);
    Work& work = *work_;
    Solution solution;
    work.begin(network, start);
    work.take_chords(network, start);
    bool at_rest = false;
    while (!at_rest && solution.steps < most_steps && work.find_step(network)) {
        ++solution.steps;
        const double longest = largest_of(work.dm);
        const double flow = largest_of(work.m);
        double t = 1;
        if (solution.steps == 1 || longest <= 10 * settled * flow)
            work.evaluate(network, t);
        else
            t = work.step_length(network);
        work.m = work.tried;
        at_rest = longest <= settled * largest_of(work.m) + no_flow;
    }
    solution.residual = work.residual(network);
    solution.converged =
        at_rest && solution.residual <= good_residual && work.equations.all_joined_to_house_air();
    solution.flows.assign(work.m.size(), {});
    std::transform(work.m.begin(), work.m.end(), solution.flows.begin(),
                   [](double m) { return units::MassFlow(m); });
    solution.pressures.assign(work.p.size(), {});
    std::transform(work.p.begin(), work.p.end(), solution.pressures.begin(),
                   [](double p) { return units::Pressure(p); });
    return solution;
}

}  // namespace network
