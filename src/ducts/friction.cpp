// Symbols: Re Reynolds number, f Darcy friction factor, x = 1/sqrt(f), a and b Colebrook's two terms,
// t = how far ln Re is from ln 2000 (0) to ln 4000 (1).

#include "ducts/friction.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ducts {
namespace {

constexpr double laminar_end = 2000;
constexpr double turbulent_start = 4000;
constexpr double ln_2 = std::numbers::ln2;  // ln(4000 / 2000)
constexpr double ln_2000 = 7.6009024595420824;
constexpr double two_over_ln_10 = 2 / std::numbers::ln10;

// Colebrook's two terms: x = -2 log10(a + b x) with b = 2.51 / Re.
constexpr double a_of(double relative_roughness) { return relative_roughness / 3.7; }
constexpr double smooth = 2.51;

// Rougher than 0.06 is outside what the equation was fitted to, and is taken as 0.06: a trial size in a
// search may be as small as it likes.
double relative_roughness_of(const Section& section) {
    return std::min(section.roughness / section.hydraulic_diameter, 0.06);
}

// Newton on x + 2 log10(a + b x) = 0, whose slope is over 1 and falls with x: from below it climbs to the
// root and cannot overshoot, and a step of 1e-7 leaves an error under 1e-15.
double colebrook_x(double Re, double a) {
    const double b = smooth / Re;
    double x = 7;
    for (int i = 0; i < 10; ++i) {
        const double inside = a + b * x;
        const double step = (x + two_over_ln_10 * std::log(inside)) / (1 + two_over_ln_10 * b / inside);
        x -= step;
        if (std::abs(step) < 1e-7) break;
    }
    return x;
}

// d ln f / d ln Re on Colebrook's curve.
double colebrook_slope(double Re, double a, double x) {
    const double b = smooth / Re;
    const double q = two_over_ln_10 * b / (a + b * x);
    return -2 * q / (1 + q);
}

// The bridge over the transition: ln f = ((p3 t + p2) t + p1) t + p0, a cubic that meets 64/Re and Colebrook
// with their slopes.
struct Bridge {
    double p0, p1, p2, p3;
    double at(double t) const { return ((p3 * t + p2) * t + p1) * t + p0; }
    double slope(double t) const { return (3 * p3 * t + 2 * p2) * t + p1; }
};

Bridge bridge(double relative_roughness) {
    const double a = a_of(relative_roughness);
    const double x = colebrook_x(turbulent_start, a);
    const double start = std::log(64 / laminar_end);
    const double rise = -2 * std::log(x) - start;
    const double first = -ln_2;
    const double last = colebrook_slope(turbulent_start, a, x) * ln_2;
    return {start, first, 3 * rise - 2 * first - last, first + last - 2 * rise};
}

struct Factor {
    double f;
    double log_slope;  // d ln f / d ln Re
};

Factor factor_at(double Re, double relative_roughness) {
    if (Re <= laminar_end) return {64 / Re, -1};
    if (Re < turbulent_start) {
        const Bridge ln_f = bridge(relative_roughness);
        const double t = std::log(Re / laminar_end) / ln_2;
        return {std::exp(ln_f.at(t)), ln_f.slope(t) / ln_2};
    }
    const double a = a_of(relative_roughness);
    const double x = colebrook_x(Re, a);
    return {1 / (x * x), colebrook_slope(Re, a, x)};
}

// The Re in the transition at which ln(f Re^2) is so much. That rises strictly with t; Newton, and halving
// where Newton would leave the bracket.
double transition_reynolds(const Bridge& ln_f, double ln_f_reynolds_squared) {
    const double p = ln_f_reynolds_squared - 2 * ln_2000;
    double low = 0;
    double high = 1;
    double t = 0.5;
    for (int i = 0; i < 60; ++i) {
        const double excess = ln_f.at(t) + 2 * ln_2 * t - p;
        (excess < 0 ? low : high) = t;
        const double newton = t - excess / (ln_f.slope(t) + 2 * ln_2);
        const double next = newton >= low && newton <= high ? newton : (low + high) / 2;
        const bool settled = std::abs(next - t) < 1e-12;
        t = next;
        if (settled) break;
    }
    return laminar_end * std::exp(ln_2 * t);
}

// The Re at which f Re^2 is so much. In turbulent flow Re sqrt(f) is then known and Colebrook's equation
// gives x outright.
double reynolds_at(double f_reynolds_squared, double relative_roughness) {
    if (f_reynolds_squared <= 64 * laminar_end) return f_reynolds_squared / 64;
    const double root = std::sqrt(f_reynolds_squared);
    const double turbulent = -two_over_ln_10 * root * std::log(a_of(relative_roughness) + smooth / root);
    if (turbulent >= turbulent_start) return turbulent;
    return transition_reynolds(bridge(relative_roughness), std::log(f_reynolds_squared));
}

}  // namespace

double reynolds(const Section& section, units::Airflow flow, const loads::Air& air) {
    const units::Velocity velocity = flow / section.area;
    return air.density * velocity * section.hydraulic_diameter / air.viscosity;
}

double friction_factor(double Re, double relative_roughness) { return factor_at(Re, relative_roughness).f; }

// In laminar flow f x Re is 64, so that neither the drop nor its slope needs a division by the flow.
FrictionAndSlope friction_and_slope(const Section& section, units::Airflow flow, const loads::Air& air) {
    const units::Length D = section.hydraulic_diameter;
    const double Re = std::abs(reynolds(section, flow, air));
    const bool laminar = Re <= laminar_end;
    const Factor factor = laminar ? Factor{} : factor_at(Re, relative_roughness_of(section));
    const double f_reynolds = laminar ? 64 : factor.f * Re;
    const double over_viscous = section.compression * f_reynolds / 2;
    return {over_viscous * (air.viscosity * (flow / section.area) / (D * D)),
            over_viscous * (laminar ? 1 : 2 + factor.log_slope) * (air.viscosity / (D * D * section.area))};
}

units::FrictionRate friction(const Section& section, units::Airflow flow, const loads::Air& air) {
    return friction_and_slope(section, flow, air).rate;
}

units::Airflow airflow_at(const Section& section, units::FrictionRate rate, const loads::Air& air) {
    if (rate <= units::FrictionRate(0)) return units::Airflow(0);
    const units::Length D = section.hydraulic_diameter;
    const double f_reynolds_squared =
        2 * (rate / section.compression * air.density * (D * D * D)) / (air.viscosity * air.viscosity);
    const double Re = reynolds_at(f_reynolds_squared, relative_roughness_of(section));
    return Re * air.viscosity / (air.density * D) * section.area;
}

}  // namespace ducts
