// What must hold of all cold glass: a colder night, poorer glass, taller glass never send down less; farther
// away it is never faster; whatever the units.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "registers/against_the_sheet.hpp"
#include "registers/an_outlet.hpp"
#include "registers/draught.hpp"

namespace registers {
namespace {

namespace unit = units::unit;
using an_outlet::room;
using an_outlet::room_air;

constexpr double hair = 1e-12;
constexpr double step_at_near = 1.0043;  // falling_air.hpp: the two pieces do not meet at 0.4 m

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

struct Night {
    units::Length height{between(0.2, 3)};
    units::Transmittance u{between(0.3, 6)};
    units::TemperatureDifference colder_outdoors{between(-10, 60)};

    ColdGlass glass() const { return cold_glass(height, u, units::Resistance(0.12), colder_outdoors); }
};
units::Length any_distance() { return units::Length(between(0, 6)); }

// More of it in every way.
void no_weaker(const ColdGlass& more, const ColdGlass& less) {
    const units::Length distance = any_distance();
    RC_ASSERT(falling_air_speed(more, distance) >= falling_air_speed(less, distance) * (1 - hair));
    RC_ASSERT(falling_air_colder(more, distance) >= falling_air_colder(less, distance) * (1 - hair));
    const FallingSheet of_more = falling_sheet(more, room, room_air),
                       of_less = falling_sheet(less, room, room_air);
    RC_ASSERT(of_more.speed >= of_less.speed * (1 - hair));
    RC_ASSERT(of_more.momentum >= of_less.momentum * (1 - hair));
    RC_ASSERT(of_more.flow >= of_less.flow * (1 - hair));
}

RC_GTEST_PROP(FallingAirLaws, a_colder_night_never_weakens_it, ()) {
    const Night night;
    Night colder = night;
    colder.colder_outdoors += units::TemperatureDifference(between(0, 30));
    no_weaker(colder.glass(), night.glass());
}

RC_GTEST_PROP(FallingAirLaws, better_glass_never_strengthens_it, ()) {
    const Night night;
    Night better = night;
    better.u *= between(0, 1);
    if (night.colder_outdoors.si() >= 0) no_weaker(night.glass(), better.glass());
}

RC_GTEST_PROP(FallingAirLaws, taller_glass_never_weakens_it, ()) {
    const Night night;
    Night taller = night;
    taller.height *= between(1, 3);
    no_weaker(taller.glass(), night.glass());
}

RC_GTEST_PROP(FallingAirLaws, farther_away_never_faster_nor_colder, ()) {
    const ColdGlass glass = Night().glass();
    const units::Length closer = any_distance(), farther = closer + units::Length(between(0, 3));
    const bool over_the_step = closer < units::Length(0.4) && farther >= units::Length(0.4);
    const double allowed = over_the_step ? step_at_near : 1;
    RC_ASSERT(falling_air_speed(glass, farther) <= falling_air_speed(glass, closer) * allowed);
    RC_ASSERT(falling_air_colder(glass, farther) <= falling_air_colder(glass, closer));
}

RC_GTEST_PROP(FallingAirLaws, four_times_the_difference_or_the_height_is_twice_the_speed, ()) {
    const ColdGlass glass{units::Length(between(0.2, 3)), units::TemperatureDifference(between(0.1, 40))};
    const units::Length distance = any_distance();
    const double twice = 2 * falling_air_speed(glass, distance).si();
    const ColdGlass colder{glass.height, 4 * glass.colder}, taller{4 * glass.height, glass.colder};
    RC_ASSERT(std::abs(falling_air_speed(colder, distance).si() - twice) <= hair);
    RC_ASSERT(std::abs(falling_air_speed(taller, distance).si() - twice) <= hair);
}

RC_GTEST_PROP(FallingAirLaws, glass_that_is_just_good_enough_makes_just_that_speed, ()) {
    const units::Velocity limit(between(0.05, 0.5));
    const units::Length height(between(0.2, 3)), distance = any_distance();
    const ColdGlass glass{height, colder_at_most(limit, height, distance)};
    RC_ASSERT(std::abs(falling_air_speed(glass, distance) / limit - 1) <= 1e-9);
    const units::TemperatureDifference outdoors(between(1, 60));
    const units::Resistance film(0.12);
    const auto u = glass_at_most(glass.colder, film, outdoors);
    RC_ASSERT(u.has_value());
    const ColdGlass made = cold_glass(height, *u, film, outdoors);
    // Where even glass as cold as outdoors is good enough, its U is more than any glass has.
    RC_ASSERT(std::abs(made.colder / std::min(glass.colder, outdoors) - 1) <= 1e-9);
}

RC_GTEST_PROP(FallingAirLaws, units_do_not_matter, ()) {
    const double inches = between(10, 100), fahrenheit = between(1, 80), feet = between(0, 20);
    const ColdGlass us{inches * unit::inch, fahrenheit * unit::fahrenheit_degree};
    const ColdGlass si{units::Length(inches * 0.0254), units::TemperatureDifference(fahrenheit / 1.8)};
    const double off =
        falling_air_speed(us, feet * unit::foot) / falling_air_speed(si, units::Length(feet * 0.3048));
    RC_ASSERT(std::abs(off - 1) <= hair);
}

RC_GTEST_PROP(DraughtLaws, faster_or_colder_air_never_pleases_more, ()) {
    const units::Temperature air = unit::celsius(between(5, 36));
    const units::Velocity speed(between(0, 1));
    const double felt = draught(air, speed).dissatisfied;
    RC_ASSERT(felt >= 0 && felt <= 1);
    RC_ASSERT(draught(air, speed + units::Velocity(between(0, 1))).dissatisfied >= felt);
    RC_ASSERT(draught(air - units::TemperatureDifference(between(0, 10)), speed).dissatisfied >= felt);
}

RC_GTEST_PROP(AgainstTheSheetLaws, more_air_or_a_milder_night_never_stops_the_washing, ()) {
    const Jet jet{units::Airflow(between(0, 0.06)), units::Area(between(0.005, 0.05)), between(1, 6)};
    const WindowAbove window{units::Length(between(0, 1)), units::Length(between(0.3, 2)),
                             units::Length(between(0.3, 2)), units::Length(between(-1, 1))};
    const double warmer = between(0, 40), colder = between(0, 30);
    const auto against = [&](double share_of_air, double share_of_cold) {
        Jet blown = jet;
        blown.flow *= share_of_air;
        const ColdGlass glass{window.height, units::TemperatureDifference(share_of_cold * colder)};
        return against_the_sheet({an_outlet::warm(blown, warmer), units::Length(0.25), 22}, window,
                                 falling_sheet(glass, room, room_air));
    };
    const AgainstTheSheet now = against(1, 1);
    RC_ASSERT(now.covered >= 0 && now.covered <= 1);
    if (!now.washes) return;
    RC_ASSERT(against(1, between(0, 1)).washes);
    RC_ASSERT(against(between(1, 3), 1).washes);
}

}  // namespace
}  // namespace registers
