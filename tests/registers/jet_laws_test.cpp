// What must hold of all jets: throw with the flow, against the root of the area and the speed; warmth helps
// up, hinders down, bends one way as cold bends the other; whatever the units.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "registers/an_outlet.hpp"
#include "registers/sound.hpp"
#include "registers/stays_up.hpp"

namespace registers {
namespace {

namespace unit = units::unit;
using an_outlet::warm;

constexpr double hair = 1e-12;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

Jet any_jet() {
    return {units::Airflow(between(0.001, 0.15)), units::Area(between(0.003, 0.1)), between(1, 6)};
}
units::Length any_distance() { return units::Length(between(0.01, 6)); }
// One the jet has somewhere.
units::Velocity any_speed(const Jet& jet) { return between(0.05, 0.5) * outlet_speed(jet); }
void same(units::Length got, units::Length expected) {
    RC_ASSERT(std::abs(got.si() - expected.si()) <= hair * (1 + std::abs(expected.si())));
}

RC_GTEST_PROP(JetLaws, carries_as_far_as_its_flow, ()) {
    const Jet jet = any_jet();
    const units::Velocity speed = any_speed(jet);
    Jet more = jet;
    const double times = between(0.6, 3);
    more.flow *= times;
    same(distance_to(more, speed), times * distance_to(jet, speed));
}

RC_GTEST_PROP(JetLaws, carries_against_the_root_of_its_area, ()) {
    const Jet jet = any_jet();
    const units::Velocity speed = any_speed(jet);
    Jet wider = jet;
    const double times = between(0.3, 1.9);
    wider.area *= times;
    same(distance_to(wider, speed), distance_to(jet, speed) / std::sqrt(times));
}

RC_GTEST_PROP(JetLaws, carries_against_the_speed, ()) {
    const Jet jet = any_jet();
    const units::Velocity speed = any_speed(jet);
    const double times = between(0.1, 1.9);
    same(distance_to(jet, times * speed), distance_to(jet, speed) / times);
}

RC_GTEST_PROP(JetLaws, has_the_speed_where_it_is_said_to, ()) {
    const Jet jet = any_jet();
    const units::Velocity speed = any_speed(jet);
    RC_ASSERT(std::abs(speed_at(jet, distance_to(jet, speed)) / speed - 1) <= hair);
}

RC_GTEST_PROP(JetLaws, never_faster_farther_away, ()) {
    const Jet jet = any_jet();
    const units::Length closer = any_distance();
    RC_ASSERT(speed_at(jet, closer + any_distance()) <= speed_at(jet, closer));
}

RC_GTEST_PROP(BuoyantJetLaws, warm_air_is_faster_straight_up_and_slower_straight_down, ()) {
    const Jet jet = any_jet();
    const WarmJet any = warm(jet, between(0.1, 60));
    const units::Length distance = any_distance();
    RC_ASSERT(speed_at(any, Blows::up, distance) > speed_at(jet, distance));
    RC_ASSERT(speed_at(any, Blows::down, distance) < speed_at(jet, distance));
}

RC_GTEST_PROP(BuoyantJetLaws, cold_air_down_is_as_warm_air_up, ()) {
    const Jet jet = any_jet();
    const double kelvin = between(-60, 60);
    const units::Length distance = any_distance();
    RC_ASSERT(speed_at(warm(jet, kelvin), Blows::up, distance) ==
              speed_at(warm(jet, -kelvin), Blows::down, distance));
}

RC_GTEST_PROP(BuoyantJetLaws, bends_down_by_cold_as_up_by_warmth, ()) {
    const Jet jet = any_jet();
    const double kelvin = between(-60, 60);
    const units::Length distance = any_distance();
    RC_ASSERT(rise(warm(jet, kelvin), distance) == -rise(warm(jet, -kelvin), distance));
}

RC_GTEST_PROP(BuoyantJetLaws, warmer_air_rises_no_less_and_stops_no_lower, ()) {
    const Jet jet = any_jet();
    const double kelvin = between(0.1, 30), more = kelvin + between(0, 30);
    const units::Length distance = any_distance();
    RC_ASSERT(rise(warm(jet, more), distance) >= rise(warm(jet, kelvin), distance));
    RC_ASSERT(stops_at(warm(jet, more), Blows::down).value() <=
              stops_at(warm(jet, kelvin), Blows::down).value());
}

RC_GTEST_PROP(BuoyantJetLaws, more_air_rises_no_more_and_stops_no_higher, ()) {
    const WarmJet any = warm(any_jet(), between(0.1, 60));
    WarmJet more = any;
    more.jet.flow *= between(1, 3);
    const units::Length distance = any_distance();
    RC_ASSERT(rise(more, distance) <= rise(any, distance));
    RC_ASSERT(stops_at(more, Blows::down).value() >= stops_at(any, Blows::down).value());
}

RC_GTEST_PROP(StaysUpLaws, more_air_or_milder_air_never_stays_up_where_less_or_hotter_came_down, ()) {
    HighOutlet outlet{warm(any_jet(), between(0, 50)), *rc::gen::element(Blows::across, Blows::down),
                      units::Length(between(1, 4)), units::Length(between(0, 6))};
    if (from_high_up(outlet).warm_air == WarmAir::stays_up) return;
    HighOutlet more = outlet, milder = outlet;
    more.jet.jet.flow *= between(1, 3);
    milder.jet.warmer *= between(0, 1);
    RC_ASSERT(from_high_up(more).warm_air != WarmAir::stays_up);
    RC_ASSERT(from_high_up(milder).warm_air != WarmAir::stays_up);
}

RC_GTEST_PROP(SoundLaws, faster_air_is_never_quieter_and_a_return_never_louder, ()) {
    const units::Velocity speed(between(0, 5));
    RC_ASSERT(supply_sound(speed + units::Velocity(between(0, 2))) >= supply_sound(speed));
    RC_ASSERT(return_sound(speed) <= supply_sound(speed));
}

RC_GTEST_PROP(JetLaws, units_do_not_matter, ()) {
    const double cfm = between(10, 200), square_inches = between(5, 100), fahrenheit = between(-40, 100);
    const WarmJet us{{cfm * unit::cfm, square_inches * unit::square_inch, 4.7},
                     fahrenheit * unit::fahrenheit_degree,
                     unit::fahrenheit(70)};
    const WarmJet si{{units::Airflow(cfm * 0.00047194745), units::Area(square_inches * 0.00064516), 4.7},
                     units::TemperatureDifference(fahrenheit / 1.8),
                     unit::celsius(38 / 1.8)};
    const double off = throw_of(us.jet).si() - throw_of(si.jet).si();
    RC_ASSERT(std::abs(off) <= 1e-7 * throw_of(us.jet).si());
    const units::Length distance = any_distance();
    RC_ASSERT(std::abs((rise(us, distance) - rise(si, distance)).si()) <=
              1e-7 * std::abs(rise(us, distance).si()));
}

}  // namespace
}  // namespace registers
