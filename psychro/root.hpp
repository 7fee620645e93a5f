// Root of an increasing function by Newton's method kept inside a bracket.
//
// Method: Newton's step is taken only when it stays inside the bracket and is at most half the step before
// it; otherwise the bracket is halved. (The safeguard is the usual one of numerical textbooks: memory.)
// Every step therefore halves either the step or the bracket, so the loop always ends, whatever the
// function. Once close, Newton's quadratic convergence takes over.
// Range: the function must be negative below the root and positive above it; the slope only steers, so a
// zero or wrong slope costs steps, not the answer. A root outside the bracket gives the nearer end.
// Accuracy: the last step is at most root_tolerance; after a Newton step the error is far smaller.
#pragma once

#include <cmath>

#include "psychro/out_of_range.hpp"

namespace psychro {

// In the unit of the unknown: a nanokelvin for a temperature.
inline constexpr double root_tolerance = 1e-9;

struct Residual {
    double value;
    double slope;
};

template <class Function>
double increasing_root(const Function& residual, Range bracket) {
    double x = 0.5 * (bracket.low + bracket.high);
    double step = bracket.high - bracket.low;
    while (std::abs(step) > root_tolerance) {
        const Residual at = residual(x);
        (at.value < 0.0 ? bracket.low : bracket.high) = x;
        const double newton = -at.value / at.slope;
        const bool inside = x + newton >= bracket.low && x + newton <= bracket.high;
        const bool shrinking = std::abs(newton) <= 0.5 * std::abs(step);
        step = inside && shrinking ? newton : 0.5 * (bracket.low + bracket.high) - x;
        x += step;
    }
    return x;
}

}  // namespace psychro
