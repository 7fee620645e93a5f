#include "network/laws.hpp"

#include <algorithm>
#include <cmath>

#include "ducts/friction.hpp"

namespace network {
namespace {

constexpr double least_leak_pressure = 1e-4;  // Pa, where a leak's cubic ends
constexpr double of_no_leak = 1e15;           // Pa s/kg

Loss made_of(double pressure, double slope) { return {units::Pressure(pressure), LossPerFlow(slope)}; }

Loss loss_of(const FixedLoss& law, double m) {
    const double rising = law.quadratic * std::abs(m);
    return made_of((law.linear + rising) * m, law.linear + 2 * rising);
}

Loss loss_of(const DuctLoss& law, double m) {
    const auto friction =
        ducts::friction_and_slope(law.section, units::MassFlow(m) / law.air.density, law.air);
    const units::Length length = law.length * law.factor;
    const double rising = law.quadratic * std::abs(m);
    return {friction.rate * length + units::Pressure(rising * m),
            friction.slope * length / law.air.density + LossPerFlow(2 * rising)};
}

// Below the flow at which the power law has come down to its least pressure, p = least (a x + b x^3) with
// x = m / that flow; a and b so that it meets the power law with its slope, 1 / exponent.
Loss loss_of(const LeakLaw& law, double m) {
    if (!(law.coefficient > 0)) return made_of(of_no_leak * m, of_no_leak);
    const double inverse = 1 / law.exponent;
    const double least_flow = law.coefficient * std::pow(least_leak_pressure, law.exponent);
    const double x = m / least_flow;
    if (std::abs(x) < 1) {
        const double b = (inverse - 1) / 2;
        const double a = 1 - b;
        return made_of(least_leak_pressure * x * (a + b * x * x),
                       least_leak_pressure / least_flow * (a + 3 * b * x * x));
    }
    const double p = std::copysign(std::pow(std::abs(m) / law.coefficient, inverse), m);
    return made_of(p, inverse * p / m);
}

Loss loss_of(const FanCurve& law, double m) { return law.loss(units::MassFlow(m)); }

}  // namespace

Loss loss(const Law& law, units::MassFlow flow) {
    return std::visit([m = flow.si()](const auto& one) { return loss_of(one, m); }, law);
}

}  // namespace network
