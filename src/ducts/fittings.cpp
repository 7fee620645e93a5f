// What a fitting loses where it sits. Looking it up by its name: fitting_names.cpp.
#include "ducts/fittings.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "ducts/friction.hpp"
#include "ducts/loss_laws.hpp"

namespace ducts {
namespace {

Branching branching(const FittingPlace& place) {
    return {place.flow / place.trunk_flow, place.duct.area / place.trunk.area};
}

// The branch pays for the trunk's velocity as well as its own, but for the part of it that it takes along:
// a right angle takes none. In velocities rather than their ratio, so that it holds down to no flow.
units::Pressure takeoff_loss(const Fitting& fitting, const FittingPlace& place, const loads::Air& air) {
    const units::Velocity branch = place.flow / place.duct.area;
    const units::Velocity trunk = place.trunk_flow / place.trunk.area;
    const DividingFactors factors = dividing_factors(branching(place), fitting.angle);
    const double along = factors.drawn / 2 * std::cos(fitting.angle * std::numbers::pi / 180);
    return factors.whole * (velocity_pressure(trunk, air) + factors.branch * velocity_pressure(branch, air) -
                            along * (air.density * trunk * branch));
}

units::Pressure joining_loss(const Fitting& fitting, const FittingPlace& place, const loads::Air& air) {
    const double C = std::max(0.0, joining_coefficient(branching(place), fitting.angle));
    return C * velocity_pressure(place.trunk_flow / place.trunk.area, air);
}

// A step lies between the two sizes, whichever way the air goes: the fitting's name tells that.
units::Velocity in_the_smaller(const FittingPlace& place) {
    return place.flow / std::min(place.duct.area, place.trunk.area);
}
units::Velocity in_the_larger(const FittingPlace& place) {
    return place.flow / std::max(place.duct.area, place.trunk.area);
}

units::Pressure reducer_loss(const FittingPlace& place, const loads::Air& air) {
    const units::Velocity behind = in_the_smaller(place);
    const double ratio =
        std::max(place.trunk.area, place.duct.area) / std::min(place.trunk.area, place.duct.area);
    return contraction_coefficient(ratio) * velocity_pressure(behind, air);
}

units::Pressure widening_loss(const Fitting& fitting, const FittingPlace& place, const loads::Air& air) {
    return fitting.coefficient *
           (velocity_pressure(in_the_smaller(place), air) - velocity_pressure(in_the_larger(place), air));
}

units::Pressure loss_by_the_table(const Fitting& fitting, const FittingPlace& place, const loads::Air& air) {
    const bool at_a_trunk = place.trunk_flow > units::Airflow(0);
    const units::Pressure of_its_own =
        fitting.coefficient * velocity_pressure(place.flow / place.duct.area, air);
    switch (fitting.law) {
        case LossLaw::takeoff:
            return at_a_trunk ? takeoff_loss(fitting, place, air) : of_its_own;
        case LossLaw::joining:
            return at_a_trunk ? joining_loss(fitting, place, air) : of_its_own;
        case LossLaw::split:
            return at_a_trunk
                       ? fitting.coefficient * velocity_pressure(place.trunk_flow / place.trunk.area, air)
                       : of_its_own;
        case LossLaw::reducer:
            return at_a_trunk ? reducer_loss(place, air) : of_its_own;
        case LossLaw::widening:
            return at_a_trunk ? widening_loss(fitting, place, air) : units::Pressure();
        case LossLaw::length:
            return friction(place.duct, place.flow, air) * fitting.length;
        case LossLaw::fixed:
        case LossLaw::elbow:
        case LossLaw::mitre:
        case LossLaw::damper:
            break;
    }
    return of_its_own;
}

}  // namespace

units::Pressure fitting_loss(const Fitting& fitting, const FittingPlace& place, const loads::Air& air) {
    return fitting.factor * loss_by_the_table(fitting, place, air);
}

LossRange fitting_loss_range(const Fitting& fitting, const FittingPlace& place, const loads::Air& air) {
    constexpr double formula_is_good_to = 0.3;
    const units::Pressure loss = fitting_loss(fitting, place, air);
    const bool by_a_formula =
        fitting.law == LossLaw::takeoff || fitting.law == LossLaw::joining || fitting.law == LossLaw::reducer;
    if (by_a_formula && place.trunk_flow > units::Airflow(0))
        return {(1 - formula_is_good_to) * loss, (1 + formula_is_good_to) * loss};
    if (fitting.coefficient <= 0) return {loss, loss};
    return {fitting.low / fitting.coefficient * loss, fitting.high / fitting.coefficient * loss};
}

units::Pressure velocity_pressure(units::Velocity velocity, const loads::Air& air) {
    return 0.5 * (air.density * velocity * velocity);
}

}  // namespace ducts
