// What must hold of every surface: between inside and beyond, never colder for a better make, never wet
// sooner for a warmer night, whatever the units.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "loads/a_house.hpp"
#include "loads/surface_temperature.hpp"

namespace loads {
namespace {

using a_house::surface;
namespace unit = units::unit;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

struct Night {
    units::Temperature inside = unit::celsius(between(10, 28));
    units::Temperature outdoors = inside - units::TemperatureDifference(between(0.5, 70));
    units::Transmittance glass{between(0.2, 6)};

    ColdestSurface coldest() const {
        house::House made = a_house::bare();
        made.site.winter_indoor = inside;
        made.site.winter_outdoor = outdoors;
        made.space_winter.fill(outdoors);
        a_house::add_room(made, "a room").surfaces = {
            surface(10, a_house::u(0.1)),
            surface(1, glass, house::Space::outdoors, house::SurfaceKind::window)};
        return coldest_surface(made.rooms[0], house_heat_loss(made).rooms[0]).value();
    }
};

RC_GTEST_PROP(SurfaceTemperatureLaws, a_surface_is_between_inside_and_beyond, ()) {
    const Night night;
    const ColdestSurface coldest = night.coldest();
    RC_ASSERT(coldest.temperature < night.inside);
    RC_ASSERT(coldest.temperature >= night.outdoors);
    RC_ASSERT(coldest.sweats_above > 0);
    RC_ASSERT(coldest.sweats_above < 1);
}

RC_GTEST_PROP(SurfaceTemperatureLaws, better_glass_is_never_colder, ()) {
    const Night night;
    Night better = night;
    better.glass = night.glass * between(0.2, 1);
    RC_ASSERT(better.coldest().temperature >= night.coldest().temperature);
    RC_ASSERT(better.coldest().sweats_above >= night.coldest().sweats_above);
}

RC_GTEST_PROP(SurfaceTemperatureLaws, a_warmer_night_never_sweats_sooner, ()) {
    const Night night;
    Night warmer = night;
    warmer.outdoors = night.outdoors + between(0, 0.99) * (night.inside - night.outdoors);
    RC_ASSERT(warmer.coldest().sweats_above >= night.coldest().sweats_above * (1 - 1e-12));
}

RC_GTEST_PROP(SurfaceTemperatureLaws, units_do_not_matter, ()) {
    const double outdoors = between(-40, 50), inside = between(55, 80), u_us = between(0.05, 1);
    Night us, si;
    us.inside = unit::fahrenheit(inside), us.outdoors = unit::fahrenheit(outdoors);
    us.glass = u_us * unit::btu_per_hour_square_foot_fahrenheit;
    si.inside = unit::celsius((inside - 32) / 1.8), si.outdoors = unit::celsius((outdoors - 32) / 1.8);
    si.glass = units::Transmittance(u_us * 5.678263341113488);
    RC_ASSERT(std::abs((us.coldest().temperature - si.coldest().temperature).si()) < 1e-9);
    RC_ASSERT(std::abs(us.coldest().sweats_above - si.coldest().sweats_above) < 1e-9);
}

}  // namespace
}  // namespace loads
