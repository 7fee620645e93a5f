// Laws that must hold for every duct, tried on random ones.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "ducts/a_fitting_place.hpp"
#include "ducts/fittings.hpp"
#include "ducts/friction.hpp"
#include "ducts/reference_air.hpp"
#include "ducts/run_heat_loss.hpp"
#include "ducts/stock_sizes.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;
using units::Airflow;
using units::FrictionRate;
using units::Length;
using units::Velocity;

double between(double low, double high) {
    constexpr int steps = 10'000'000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

// As likely between 1 and 10 as between 10 and 100.
double spread(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }

house::Shape any_shape() {
    if (*rc::gen::arbitrary<bool>()) return round_of(between(2, 30));
    return rectangle_of(between(2, 30), between(2, 30));
}

Section any_section() { return section_of(any_shape(), spread(1e-6, 3e-3) * unit::metre); }

Airflow flow_at_reynolds(double Re, const Section& section) {
    const double at_one = reynolds(section, unit::cubic_metre_per_second, reference_air());
    return Re / at_one * unit::cubic_metre_per_second;
}

FrictionRate friction_at(double Re, const Section& section) {
    return friction(section, flow_at_reynolds(Re, section), reference_air());
}

bool near(double a, double b, double relative) {
    return std::abs(a - b) <= relative * std::max(std::abs(a), std::abs(b));
}

RC_GTEST_PROP(FrictionLaws, rises_strictly_with_the_flow, ()) {
    const Section section = any_section();
    const double Re = spread(1e-3, 1e7);
    RC_ASSERT(friction_at(Re, section) < friction_at(Re * (1 + spread(1e-9, 1.0)), section));
}

RC_GTEST_PROP(FrictionLaws, rises_strictly_through_the_transition, ()) {
    const Section section = any_section();
    const double Re = between(1990, 4010);
    RC_ASSERT(friction_at(Re, section) < friction_at(Re + spread(1e-6, 100), section));
}

// d ln drop / d ln flow from one side, by a difference of second order.
double log_slope(double Re, double step, double e_D) {
    const auto ln_f = [e_D](double ln_Re) { return std::log(friction_factor(std::exp(ln_Re), e_D)); };
    const double at = std::log(Re);
    return 2 + (4 * ln_f(at + step) - 3 * ln_f(at) - ln_f(at + 2 * step)) / (2 * step);
}

RC_GTEST_PROP(FrictionLaws, has_no_kink_where_the_regimes_meet, ()) {
    const double e_D = spread(1e-7, 0.06);
    for (const double Re : {2000.0, 4000.0}) {
        RC_ASSERT(std::abs(log_slope(Re, 1e-4, e_D) - log_slope(Re, -1e-4, e_D)) < 1e-4);
    }
}

// Against a difference of fourth order; not across a place where two regimes meet, where only the slope is
// smooth.
RC_GTEST_PROP(FrictionLaws, slope_is_the_derivative, ()) {
    const Section section = any_section();
    const double Re = *rc::gen::arbitrary<bool>() ? spread(1, 1e7) : between(1900, 4100);
    constexpr double h = 1e-3;
    RC_PRE(std::abs(Re / 2000 - 1) > 2 * h && std::abs(Re / 4000 - 1) > 2 * h);
    const auto rise = [&](double step) {
        return friction_at(Re * (1 + step), section) - friction_at(Re * (1 - step), section);
    };
    const Airflow flow = flow_at_reynolds(Re, section);
    const auto slope = (8 * rise(h) - rise(2 * h)) / (12 * h * flow);
    RC_ASSERT(near(friction_and_slope(section, flow, reference_air()).slope / slope, 1, 1e-8));
}

RC_GTEST_PROP(FrictionLaws, falls_with_the_diameter, ()) {
    const double inches = between(1, 30);
    const double cfm = spread(1e-3, 1e5);
    RC_ASSERT(friction_of(round_of(inches * (1 + spread(1e-6, 1.0))), cfm) <
              friction_of(round_of(inches), cfm));
}

RC_GTEST_PROP(FrictionLaws, airflow_is_the_inverse, ()) {
    const Section section = any_section();
    const Airflow flow = flow_at_reynolds(spread(1e-3, 1e8), section);
    const Airflow back = airflow_at(section, friction(section, flow, reference_air()), reference_air());
    RC_ASSERT(near(back / flow, 1, 1e-10));
}

RC_GTEST_PROP(FrictionLaws, airflow_is_the_inverse_in_the_transition, ()) {
    const Section section = any_section();
    const Airflow flow = flow_at_reynolds(between(1990, 4010), section);
    const Airflow back = airflow_at(section, friction(section, flow, reference_air()), reference_air());
    RC_ASSERT(near(back / flow, 1, 1e-10));
}

RC_GTEST_PROP(FrictionLaws, airflow_loses_the_rate, ()) {
    const Section section = any_section();
    const FrictionRate rate(spread(1e-9, 1e4));
    RC_ASSERT(near(friction(section, airflow_at(section, rate, reference_air()), reference_air()) / rate, 1,
                   1e-10));
}

RC_GTEST_PROP(FrictionLaws, a_larger_stock_pipe_never_loses_more, ()) {
    const auto stock = stock_round_pipes();
    const double cfm = spread(1e-3, 1e5);
    for (std::size_t i = 1; i < stock.size(); ++i) {
        RC_ASSERT(friction_of(stock[i], cfm) < friction_of(stock[i - 1], cfm));
    }
}

RC_GTEST_PROP(FrictionLaws, inches_and_millimetres_are_one_duct, ()) {
    const double a = between(2, 30);
    const double b = between(2, 30);
    const double cfm = spread(1e-2, 1e4);
    const house::Rectangular metric{25.4 * a * unit::millimetre, 25.4 * b * unit::millimetre};
    const Airflow metric_flow = 0.4719474432 * cfm * unit::litre_per_second;
    const FrictionRate drop = friction(section_of(metric), metric_flow, reference_air());
    RC_ASSERT(near(drop / unit::inch_wc_per_100_ft, friction_of(rectangle_of(a, b), cfm), 1e-12));
}

RC_GTEST_PROP(FrictionLaws, equivalent_round_carries_the_same, ()) {
    const house::Rectangular duct = rectangle_of(between(4, 20), between(4, 20));
    RC_PRE(std::max(duct.width / duct.height, duct.height / duct.width) < 4);
    const double cfm = spread(200, 2000);
    const double as_round = friction_of(house::Round{equivalent_round(duct)}, cfm);
    RC_ASSERT(near(friction_of(duct, cfm), as_round, 0.03));
}

Fitting any_fitting() { return fittings()[*rc::gen::inRange<std::size_t>(0, fittings().size())]; }

// A branch with part of its trunk's flow.
FittingPlace any_place() {
    const double ratio = between(0.05, 1.2);
    const double share = between(0, 1);
    const double trunk = between(0.5, 8);
    return place_of(Velocity(share * trunk / ratio), Velocity(trunk), ratio);
}

FittingPlace with_flows(FittingPlace place, double branch, double trunk) {
    place.flow *= branch;
    place.trunk_flow *= trunk;
    return place;
}

units::Pressure loss(const Fitting& fitting, const FittingPlace& place) {
    return fitting_loss(fitting, place, reference_air());
}

RC_GTEST_PROP(FittingLaws, loss_is_continuous_in_flows_and_never_a_gain, ()) {
    const Fitting fitting = any_fitting();
    const FittingPlace place = any_place();
    const units::Pressure here = loss(fitting, place);
    const double scale =
        (loss(named("C 1"), place) + velocity_pressure(place.trunk_flow / place.trunk.area, reference_air()))
            .si();
    RC_ASSERT(here >= units::Pressure(0));
    for (const auto& [branch, trunk] : {std::pair(1e-6, 0.0), std::pair(0.0, 1e-6)}) {
        const units::Pressure beside = loss(fitting, with_flows(place, 1 + branch, 1 + trunk));
        RC_ASSERT(abs(beside - here).si() < 2e-5 * scale);
    }
}

RC_GTEST_PROP(FittingLaws, loss_is_continuous_in_the_ratio_of_areas, ()) {
    const Fitting fitting = any_fitting();
    const double ratio = between(0.05, 1.2), trunk = between(0.5, 8), share = between(0, 1);
    const auto at = [&](double a) {
        const FittingPlace place = place_of(Velocity(share * trunk / a), Velocity(trunk), a);
        return loss(fitting, place) / velocity_pressure(Velocity(trunk), reference_air());
    };
    RC_ASSERT(std::abs(at(ratio * (1 + 1e-7)) - at(ratio)) < 1e-5 * (1 + at(ratio)));
}

RC_GTEST_PROP(FittingLaws, loss_grows_with_the_square_of_all_flows, ()) {
    const Fitting fitting = any_fitting();
    const FittingPlace place = any_place();
    const units::Pressure once = loss(fitting, place);
    RC_PRE(once.si() > 1e-6);
    RC_ASSERT(near(loss(fitting, with_flows(place, 2, 2)) / once, 4, 1e-9));
}

RC_GTEST_PROP(FittingLaws, equivalent_length_times_friction_is_the_loss, ()) {
    const Fitting fitting = any_fitting();
    const FittingPlace place = with_flows(any_place(), 1, 1);
    RC_PRE(place.flow.si() > 1e-4);
    const FrictionRate rate = friction(place.duct, place.flow, reference_air());
    Fitting as_length = named("1 ft");
    as_length.length = loss(fitting, place) / rate;
    RC_ASSERT(near(loss(as_length, place).si(), loss(fitting, place).si(), 1e-12));
}

RC_GTEST_PROP(FittingLaws, an_angle_costs_more_the_further_it_turns, ()) {
    const int angle = *rc::gen::inRange(1, 90);
    const auto C = [](const char* before, int degrees, const char* after) {
        return named(before + std::to_string(degrees) + after).coefficient;
    };
    RC_ASSERT(C("round elbow ", angle, ", smooth") < C("round elbow ", angle + 1, ", smooth"));
    RC_ASSERT(C("round elbow ", angle, ", mitred") < C("round elbow ", angle + 1, ", mitred"));
    RC_ASSERT(C("damper, ", angle * 59 / 90, " degrees") < C("damper, ", angle * 59 / 90 + 1, " degrees"));
}

// A duct run with air in it.
struct Case {
    Run run;
    units::MassFlow flow;
    units::Temperature entering;
    units::Temperature leaving(double length_factor = 1) const {
        Run part = run;
        part.length *= length_factor;
        return leaving_temperature(part, flow, units::SpecificHeat(1006), entering);
    }
};

Case any_case() {
    const Run run{between(0.1, 50) * unit::metre, between(0.2, 3) * unit::metre,
                  units::Resistance(between(0.1, 3)), unit::celsius(between(-30, 60))};
    return {run, units::MassFlow(between(0.01, 1)), unit::celsius(between(-10, 70))};
}

RC_GTEST_PROP(RunLossLaws, leaves_between_entering_and_surroundings, ()) {
    const Case any = any_case();
    const auto [low, high] = std::minmax(any.entering, any.run.surroundings);
    RC_ASSERT(low.si() - 1e-9 <= any.leaving().si());
    RC_ASSERT(any.leaving().si() <= high.si() + 1e-9);
}

RC_GTEST_PROP(RunLossLaws, a_longer_run_comes_nearer_to_its_surroundings, ()) {
    const Case any = any_case();
    const auto off = [&any](double factor) { return abs(any.leaving(factor) - any.run.surroundings).si(); };
    RC_ASSERT(off(2) <= off(1) + 1e-9);
}

RC_GTEST_PROP(RunLossLaws, two_halves_make_a_whole, ()) {
    const Case whole = any_case();
    Case second = whole;
    second.entering = whole.leaving(0.5);
    RC_ASSERT(near(second.leaving(0.5).si(), whole.leaving().si(), 1e-12));
}

RC_GTEST_PROP(RunLossLaws, no_difference_no_loss, ()) {
    Case any = any_case();
    any.entering = any.run.surroundings;
    RC_ASSERT(any.leaving() == any.run.surroundings);
}

}  // namespace
}  // namespace ducts
