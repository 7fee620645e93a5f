#include "ducts/loss_laws.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

namespace ducts {
namespace {

constexpr double square_from = 75;  // degrees

struct Knot {
    double at, value;
};

double between(std::span<const Knot> knots, double at) {
    if (at <= knots.front().at) return knots.front().value;
    for (std::size_t i = 1; i < knots.size(); ++i) {
        const Knot &a = knots[i - 1], &b = knots[i];
        if (at <= b.at) return a.value + (b.value - a.value) * (at - a.at) / (b.at - a.at);
    }
    return knots.back().value;
}

// 0 below the band, 1 above it, smooth between.
double beyond(double x, double low, double high) {
    const double t = std::clamp((x - low) / (high - low), 0.0, 1.0);
    return t * t * (3 - 2 * t);
}
double bridged(double below, double above, double share) { return below + share * (above - below); }

double cosine(double angle) { return std::cos(angle * std::numbers::pi / 180); }

double slanting_whole(double q, double A) {
    const double narrow = bridged(1.1 - 0.7 * q, 0.85, beyond(q, 0.35, 0.45));
    const double wide = bridged(1 - 0.6 * q, 0.6, beyond(q, 0.55, 0.65));
    return bridged(narrow, wide, beyond(A, 0.30, 0.40));
}

constexpr Knot elbow_shares[] = {{0, 0},    {20, 0.31},  {30, 0.45},  {45, 0.60},  {60, 0.78}, {75, 0.90},
                                 {90, 1.0}, {110, 1.13}, {130, 1.20}, {150, 1.28}, {180, 1.40}};
constexpr Knot mitres[] = {{0, 0}, {20, 0.08}, {30, 0.16}, {45, 0.34}, {60, 0.55}, {75, 0.81}, {90, 1.2}};
constexpr Knot dampers[] = {{0, 0.04}, {5, 0.24}, {10, 0.52}, {20, 1.54}, {40, 10.8}, {60, 118}};
constexpr Knot contractions[] = {{1, 0}, {2, 0.26}, {4, 0.41}, {6, 0.42}, {10, 0.43}};

}  // namespace

DividingFactors dividing_factors(Branching at, double angle) {
    const double q = std::clamp(at.flow_share, 0.0, 1.0), A = at.area_ratio;
    if (angle < square_from) return {slanting_whole(q, A), 1, 2};
    const double wide = beyond(A, 7.0 / 18, 0.5);  // a band about 4/9
    const double whole = bridged(1, 1 + 0.3 * q * q, beyond(A, 0.60, 2.2 / 3));
    return {whole, bridged(1, 0.3, wide), bridged(2, 0, wide)};
}

double dividing_coefficient(Branching at, double angle) {
    const DividingFactors factors = dividing_factors(at, angle);
    const double s = at.flow_share / at.area_ratio;
    return factors.whole * (1 + factors.branch * s * s - factors.drawn * s * cosine(angle));
}

double joining_coefficient(Branching at, double angle) {
    const double q = at.flow_share, A = at.area_ratio;
    const double s = q / A;
    const double wide = bridged(0.9 * (1 - q), 0.55, beyond(q, 0.35, 0.45));
    const double whole = bridged(1, wide, beyond(A, 0.30, 0.40));
    return whole * (1 + s * s - 2 * (1 - q) * (1 - q) - 2 * cosine(angle) * q * s);
}

double elbow_share(double angle) { return between(elbow_shares, angle); }
double mitre_coefficient(double angle) { return between(mitres, angle); }
double contraction_coefficient(double area_ratio) { return between(contractions, area_ratio); }

double damper_coefficient(double angle) {
    Knot in_logarithms[std::size(dampers)];
    std::transform(std::begin(dampers), std::end(dampers), in_logarithms, [](Knot knot) {
        return Knot{knot.at, std::log(knot.value)};
    });
    return std::exp(between(in_logarithms, angle));
}

}  // namespace ducts
