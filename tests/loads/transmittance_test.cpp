#include "loads/transmittance.hpp"

#include <gtest/gtest.h>

#include "house/cannot_answer.hpp"
#include "loads/a_house.hpp"

namespace loads {
namespace {

using a_house::layers;
using a_house::surface;
using house::Space;
using house::SurfaceKind;

constexpr units::Resistance still_bay{0.16};

double u_of(const house::Surface& of) { return transmittance(of, still_bay).si(); }

TEST(Transmittance, a_given_u_is_taken_as_it_stands) {
    EXPECT_DOUBLE_EQ(u_of(surface(10, a_house::u(1.3))), 1.3);
}

TEST(Transmittance, a_glass_by_name) {
    EXPECT_DOUBLE_EQ(u_of(surface(1, house::CatalogueName{"single + storm", {}})), 2.87);
}

TEST(Transmittance, a_bare_wall_by_hand) {
    const auto wall = layers({"0.14 m2K/W", "0.165 m2K/W", "empty stud bay, 92 mm", "0.07 m2K/W"}, 0.25);
    const double rest = 0.12 + 0.03 + 0.14 + 0.165 + 0.07;
    EXPECT_NEAR(u_of(surface(10, wall)), 0.25 / (rest + 0.092 / 0.115) + 0.75 / (rest + 0.16), 1e-12);
}

TEST(Transmittance, the_open_bay_of_a_balloon_frame_loses_more) {
    const auto wall = surface(10, layers({"lap siding", "empty stud bay, 3-5/8 in"}, 0.25));
    EXPECT_GT(transmittance(wall, units::Resistance(0.10)), transmittance(wall, still_bay));
}

TEST(Transmittance, without_framing_nothing_is_bridged) {
    const Paths made = paths(layers({"dense cellulose, 79 mm"}, 0), units::Resistance(0.15), still_bay);
    EXPECT_NEAR(made.through_bay.si(), 2.15, 1e-12);
    EXPECT_EQ(made.through_wood, made.through_bay);
    EXPECT_NEAR(made.u.si(), 1 / 2.15, 1e-12);
}

TEST(Transmittance, framing_with_nothing_between_the_studs_changes_nothing) {
    const auto made = [](double framing) {
        return u_of(surface(10, layers({"stucco, 1 in", "R-2"}, framing)));
    };
    EXPECT_NEAR(made(0.25), made(0), 1e-12);
}

TEST(Films, by_the_way_the_heat_goes_and_what_is_beyond) {
    const auto film = [](SurfaceKind kind, const a_house::Beyond& beyond) {
        return films(surface(1, a_house::u(1), beyond, kind)).si();
    };
    EXPECT_DOUBLE_EQ(film(SurfaceKind::wall, Space::outdoors), 0.15);
    EXPECT_DOUBLE_EQ(film(SurfaceKind::wall, Space::garage), 0.24);
    EXPECT_DOUBLE_EQ(film(SurfaceKind::ceiling, Space::outdoors), 0.14);
    EXPECT_DOUBLE_EQ(film(SurfaceKind::ceiling, Space::attic), 0.22);
    EXPECT_DOUBLE_EQ(film(SurfaceKind::floor, Space::basement), 0.32);
    EXPECT_DOUBLE_EQ(film(SurfaceKind::floor, Space::outdoors), 0.19);
}

TEST(Films, two_rooms_see_the_same_films_from_above_and_below) {
    const auto seen_as = [](SurfaceKind kind) {
        return films(surface(1, a_house::u(1), house::RoomId{0}, kind));
    };
    EXPECT_EQ(seen_as(SurfaceKind::floor), seen_as(SurfaceKind::ceiling));
    EXPECT_DOUBLE_EQ(seen_as(SurfaceKind::floor).si(), 0.24);
}

template <class Assembly>
void expect_cannot(const Assembly& made, const std::string& why) {
    try {
        u_of(surface(1, made));
        FAIL() << "no error: " << why;
    } catch (const house::CannotAnswer& error) {
        EXPECT_EQ(error.what(), why);
        EXPECT_EQ(error.place(), (house::Place{7, 2, 9}));
    }
}

TEST(Transmittance, a_name_that_no_table_holds_is_blamed_at_its_place) {
    house::Layers wall;
    wall.names.push_back({"dense cellulose", {7, 2, 9}});
    expect_cannot(wall, "'dense cellulose' needs a thickness: write dense cellulose, 3-1/2 in");
    expect_cannot(house::CatalogueName{"tripel", {7, 2, 9}},
                  "no glass is called 'tripel': did you mean 'triple'?");
}

}  // namespace
}  // namespace loads
