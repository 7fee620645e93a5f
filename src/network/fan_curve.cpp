// Symbols: h width of a piece, s its mean slope, t how far along it (0 to 1).

#include "network/fan_curve.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <stdexcept>

namespace network {
namespace {

// At a point between two pieces.
double inner_slope(double h0, double s0, double h1, double s1) {
    if (s0 * s1 <= 0) return 0;
    const double w0 = h0 + 2 * h1;
    const double w1 = 2 * h0 + h1;
    return (w0 + w1) / (w0 / s0 + w1 / s1);
}

// At the first point, or by symmetry the last: three points' parabola, held to what stays monotone.
double end_slope(double h0, double s0, double h1, double s1) {
    const double parabola = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
    if (parabola * s0 <= 0) return 0;
    if (s0 * s1 <= 0 && std::abs(parabola) > 3 * std::abs(s0)) return 3 * s0;
    return parabola;
}

}  // namespace

FanCurve::FanCurve(std::span<const FanPoint> points, Between between) : between_(between) {
    if (points.empty()) throw std::invalid_argument("a fan curve without points");
    for (const FanPoint& point : points) {
        double flow = point.flow.si();
        if (!knots_.empty()) {
            const Knot& last = knots_.back();
            if (!(point.gain.si() <= last.gain) || !(flow >= last.flow * (1 - 2e-6)))
                throw std::invalid_argument("a fan curve that rises");
            flow = std::max(flow, last.flow + 1e-6 * std::max(std::abs(last.flow), 1e-6));
        }
        knots_.push_back({flow, point.gain.si(), 0});
    }
    const std::size_t pieces = knots_.size() - 1;
    if (pieces == 0) return;
    const auto h = [this](std::size_t i) { return knots_[i + 1].flow - knots_[i].flow; };
    const auto s = [this, h](std::size_t i) { return (knots_[i + 1].gain - knots_[i].gain) / h(i); };
    for (std::size_t i = 1; i < pieces; ++i) knots_[i].slope = inner_slope(h(i - 1), s(i - 1), h(i), s(i));
    const std::size_t end = pieces - 1;
    const bool straight = between == Between::straight_lines || pieces == 1;
    first_slope_ = straight ? s(0) : end_slope(h(0), s(0), h(1), s(1));
    last_slope_ = straight ? s(end) : end_slope(h(end), s(end), h(end - 1), s(end - 1));
    knots_.front().slope = first_slope_;
    knots_.back().slope = last_slope_;
}

Loss FanCurve::loss(units::MassFlow flow) const {
    const double m = flow.si();
    const auto straight = [m](const Knot& from, double slope) {
        return Loss{units::Pressure(-(from.gain + slope * (m - from.flow))), LossPerFlow(-slope)};
    };
    if (m <= knots_.front().flow) return straight(knots_.front(), first_slope_);
    if (m >= knots_.back().flow) return straight(knots_.back(), last_slope_);
    const auto above = std::upper_bound(knots_.begin(), knots_.end(), m,
                                        [](double value, const Knot& knot) { return value < knot.flow; });
    const Knot& a = *(above - 1);
    const Knot& b = *above;
    const double h = b.flow - a.flow;
    const double s = (b.gain - a.gain) / h;
    if (between_ == Between::straight_lines) return straight(a, s);
    const double t = (m - a.flow) / h;
    const double c2 = 3 * s - 2 * a.slope - b.slope;
    const double c3 = a.slope + b.slope - 2 * s;
    const double gain = a.gain + h * t * (a.slope + t * (c2 + t * c3));
    const double slope = a.slope + t * (2 * c2 + 3 * t * c3);
    return {units::Pressure(-gain), LossPerFlow(-std::min(slope, 0.0))};
}

}  // namespace network
