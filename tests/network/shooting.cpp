// The other method: see tree_house.hpp.
#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "ducts/friction.hpp"
#include "network/tree_house.hpp"

namespace network {
namespace {

struct Point {
    double x, y;
};

// Between two points of unlike sign: quadratic through the last three where that is safe, else the middle
// (Chandrupatla 1997, memory). Calls f last where it says the root is.
template <class F>
double root_between(F f, Point a, Point b, double accuracy) {
    Point c = b;
    double t = 0.5;
    for (int i = 0; i < 200; ++i) {
        const double x = a.x + t * (b.x - a.x);
        const Point next{x, f(x)};
        if ((next.y > 0) == (a.y > 0)) {
            c = a;
        } else {
            c = b;
            b = a;
        }
        a = next;
        const double tolerance = accuracy * std::abs(a.x) + 1e-17;
        if (a.y == 0 || std::abs(b.x - a.x) < 2 * tolerance) break;
        const double xi = (a.x - b.x) / (c.x - b.x), phi = (a.y - b.y) / (c.y - b.y);
        t = 0.5;
        if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)
            t = a.y / (b.y - a.y) * c.y / (b.y - c.y) +
                (c.x - a.x) / (b.x - a.x) * a.y / (c.y - a.y) * b.y / (c.y - b.y);
        const double least = tolerance / std::abs(b.x - a.x);
        t = std::clamp(t, least, 1 - least);
    }
    return a.x;
}

// Where a rising function is zero: steps out from a guess until the sign changes.
template <class F>
double root(F f, double guess, double step, double accuracy) {
    Point here{guess, f(guess)};
    const double away = here.y < 0 ? 1 : -1;
    for (int i = 0; i < 200; ++i, step *= 4) {
        if (here.y == 0) return here.x;
        const double x = here.x + away * step;
        const Point next{x, f(x)};
        if ((next.y > 0) != (here.y > 0)) return root_between(f, next, here, accuracy);
        here = next;
    }
    throw std::runtime_error("no bracket");
}

class Shooter {
  public:
    explicit Shooter(TreeHouse& house) : house_(house) {}

    void solve() {
        if (house_.blower.empty()) {
            for (Trunk* side : {&house_.supply, &house_.returns}) top_with_flow(*side, house_.held_flow);
            return;
        }
        const FanCurve curve(house_.blower, house_.between);
        root(
            [&](double end) {
                const double supply = to_top(house_.supply, end);
                const double flow = house_.supply.piece.flow;
                return supply + top_with_flow(house_.returns, flow) - curve.gain(units::MassFlow(flow)).si();
            },
            10, 10, 1e-12);
    }

  private:
    double lost(const Piece& piece, double m) const {
        const double friction =
            piece.linear > 0
                ? 0
                : ducts::friction(piece.section, units::MassFlow(m) / house_.air.density, house_.air).si() *
                      piece.length * piece.factor;
        return friction + piece.linear * m + piece.quadratic * m * std::abs(m);
    }

    double out_of(Mouth& mouth, double p) {
        const auto over = [&](double m) {
            const double through = m - mouth.drawn;
            return lost(mouth.run, m) + mouth.door * through * std::abs(through) - p;
        };
        double& m = mouth.run.flow;
        return m = root(over, m, std::max(0.02 * std::abs(m), 1e-5), 1e-13);
    }

    // The power law the other way about from the library's; below its least pressure the cubic, bracketed.
    static double out_of(Hole& hole, double p) {
        if (!(hole.coefficient > 0)) return 0;
        constexpr double least = 1e-4;
        if (std::abs(p) >= least)
            return hole.flow = std::copysign(hole.coefficient * std::pow(std::abs(p), hole.exponent), p);
        const double b = (1 / hole.exponent - 1) / 2;
        const auto over = [&](double x) { return x * (1 - b + b * x * x) - p / least; };
        return hole.flow = root(over, 0, 0.5, 1e-14) * hole.coefficient * std::pow(least, hole.exponent);
    }

    // Pressure at the trunk's beginning with so much at the end of the chain that its last trunks make.
    double to_top(Trunk& trunk, double end) {
        double p = end, m = 0;
        const bool last = trunk.trunks.empty();
        if (!last) {
            p = to_top(trunk.trunks.back(), end);
            m = trunk.trunks.back().piece.flow;
        }
        m += out_of(trunk.hole, p);
        for (Mouth& mouth : trunk.mouths) m += out_of(mouth, p);
        for (std::size_t i = 0; i + 1 < trunk.trunks.size(); ++i) m += into(trunk.trunks[i], p);
        trunk.piece.flow = m;
        return p + lost(trunk.piece, m);
    }

    double into(Trunk& trunk, double p) {
        root([&](double end) { return to_top(trunk, end) - p; }, p / 2, std::max(std::abs(p) / 4, 1e-3),
             1e-13);
        return trunk.piece.flow;
    }

    // The pressure at the beginning of a side that carries so much.
    double top_with_flow(Trunk& side, double flow) {
        double top = 0;
        const auto over = [&](double end) { return top = to_top(side, end), side.piece.flow - flow; };
        side.end = root(over, side.end, step_from(side.end), 1e-12);
        return top;
    }

    static double step_from(double last) { return std::max(0.02 * std::abs(last), 1e-3); }

    TreeHouse& house_;
};

}  // namespace

void shoot(TreeHouse& house) { Shooter(house).solve(); }

}  // namespace network
