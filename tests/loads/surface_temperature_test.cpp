#include "loads/surface_temperature.hpp"

#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "loads/a_house.hpp"

namespace loads {
namespace {

using a_house::surface;
using a_house::u;
using house::Space;
using house::SurfaceKind;
namespace unit = units::unit;

// A room at 20 C with these surfaces, -10 C outdoors.
std::optional<ColdestSurface> coldest_of(const std::vector<house::Surface>& surfaces) {
    house::House made = a_house::bare();
    a_house::add_room(made, "a room").surfaces = surfaces;
    return coldest_surface(made.rooms[0], house_heat_loss(made).rooms[0]);
}

house::Surface named(house::Surface surface, const std::string& name) {
    surface.name = name;
    return surface;
}

TEST(SurfaceTemperature, by_hand) {
    const auto coldest = coldest_of(
        {surface(10, u(1.0)), named(surface(1, u(2.5), Space::outdoors, SurfaceKind::window), "window")});
    ASSERT_TRUE(coldest);
    EXPECT_EQ(coldest->surface.surface, "window");
    EXPECT_DOUBLE_EQ(coldest->film.si(), 0.12);
    EXPECT_NEAR(unit::in_celsius(coldest->temperature), 20 - 2.5 * 0.12 * 30, 1e-9);  // 11 C
    // 11 C saturates at 1313 Pa, 20 C at 2339 Pa.
    EXPECT_NEAR(coldest->sweats_above, 0.5613, 0.0005);
}

TEST(SurfaceTemperature, the_film_is_that_of_its_position) {
    const auto at = [](SurfaceKind kind) {
        return unit::in_celsius(coldest_of({surface(5, u(1), Space::outdoors, kind)})->temperature);
    };
    EXPECT_NEAR(at(SurfaceKind::wall), 20 - 0.12 * 30, 1e-9);
    EXPECT_NEAR(at(SurfaceKind::ceiling), 20 - 0.11 * 30, 1e-9);
    EXPECT_NEAR(at(SurfaceKind::floor), 20 - 0.16 * 30, 1e-9);
}

TEST(SurfaceTemperature, below_freezing_it_is_frost_over_ice) {
    EXPECT_NEAR(saturation_pressure(unit::celsius(-10)).si(), 259.9, 0.1);  // over water it would be 286.5 Pa
}

TEST(SurfaceTemperature, no_surface_is_colder_than_what_lies_beyond) {
    EXPECT_DOUBLE_EQ(temperature_factor(units::Transmittance(20), units::Resistance(0.12)), 0);
    EXPECT_NEAR(unit::in_celsius(coldest_of({surface(1, u(20))})->temperature), -10, 1e-9);
}

TEST(SurfaceTemperature, walls_to_heated_rooms_do_not_count) {
    EXPECT_FALSE(coldest_of({}));
    EXPECT_FALSE(coldest_of({surface(5, u(2), Space::heated_rooms)}));
    house::House made = a_house::bare();
    a_house::add_room(made, "warm");
    a_house::add_room(made, "cool").winter_indoor = unit::celsius(12);
    a_house::add_partition(made, 0, 1, surface(8, u(2)));
    EXPECT_FALSE(coldest_surface(made.rooms[0], house_heat_loss(made).rooms[0]));
}

TEST(SurfaceTemperature, a_space_warmer_than_the_room_cools_nothing) {
    house::House made = a_house::bare();
    made.space_winter[static_cast<std::size_t>(Space::basement)] = unit::celsius(25);
    a_house::add_room(made, "a room").surfaces = {surface(5, u(2), Space::basement, SurfaceKind::floor)};
    EXPECT_FALSE(coldest_surface(made.rooms[0], house_heat_loss(made).rooms[0]));
}

TEST(SurfaceTemperature, beyond_the_range_of_the_pressures_is_no_answer) {
    EXPECT_THROW(saturation_pressure(unit::celsius(-120)), house::CannotAnswer);
}

}  // namespace
}  // namespace loads
