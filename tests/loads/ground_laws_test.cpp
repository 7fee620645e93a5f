// Laws of what lies in the ground or on it, and of layers nobody knows.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "loads/a_house.hpp"
#include "loads/below_grade.hpp"
#include "loads/slab_edges.hpp"
#include "loads/transmittance.hpp"

namespace loads {
namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

units::Length m(double metres) { return units::Length(metres); }

constexpr units::Resistance still_bay{0.16};

RC_GTEST_PROP(GroundLaws, the_deeper_a_wall_the_less_each_foot_of_it_loses, ()) {
    const units::Resistance resistance(between(0.05, 4));
    const units::Conductivity soil(between(0.5, 2.5));
    const double top = between(0, 2), height = between(0.1, 2), more = between(0.01, 2);
    const auto wall = [&](double from, double to) {
        return below_grade_wall(m(from), m(to), resistance, soil);
    };
    RC_ASSERT(wall(top, top + height + more) < wall(top, top + height));
    RC_ASSERT(wall(top + more, top + more + height) < wall(top, top + height));
    // At the surface the soil adds nothing: never more than the wall by itself.
    RC_ASSERT(wall(top, top + height) < 1 / resistance);
}

RC_GTEST_PROP(GroundLaws, a_wall_cut_in_two_loses_the_same, ()) {
    const units::Resistance resistance(between(0.05, 4));
    const units::Conductivity soil(between(0.5, 2.5));
    const units::Length top = m(between(0, 1)), middle = top + m(between(0.1, 1)),
                        bottom = middle + m(between(0.1, 1));
    const auto per_metre = [&](units::Length from, units::Length to) {
        return ((to - from) * below_grade_wall(from, to, resistance, soil)).si();
    };
    const double whole = per_metre(top, bottom);
    RC_ASSERT(std::abs(per_metre(top, middle) + per_metre(middle, bottom) - whole) < 1e-12 * whole);
}

RC_GTEST_PROP(GroundLaws, insulation_and_dry_soil_never_lose_more, ()) {
    const units::Resistance resistance(between(0.05, 4)), better = resistance + units::Resistance(0.1);
    const units::Conductivity soil(between(0.5, 2)), wetter = soil + units::Conductivity(0.2);
    const units::Length depth = m(between(0.2, 3)), width = m(between(2, 12));
    RC_ASSERT(below_grade_wall(m(0), depth, better, soil) < below_grade_wall(m(0), depth, resistance, soil));
    RC_ASSERT(below_grade_wall(m(0), depth, resistance, wetter) >
              below_grade_wall(m(0), depth, resistance, soil));
    RC_ASSERT(below_grade_floor(width, depth, better, soil) <
              below_grade_floor(width, depth, resistance, soil));
    RC_ASSERT(below_grade_floor(width + m(1), depth, resistance, soil) <
              below_grade_floor(width, depth, resistance, soil));
}

RC_GTEST_PROP(GroundLaws, a_thicker_covering_cools_a_room_less, ()) {
    const units::Resistance covering(between(0, 1));
    RC_ASSERT(slab_gain(covering + units::Resistance(0.05)) > slab_gain(covering));
}

TEST(BuriedSurface, has_its_layers_and_the_inside_film_before_the_soil) {
    house::Surface wall =
        a_house::surface(10, a_house::layers({"concrete, 200 mm", "R-0.5"}, 0), house::Space::ground);
    wall.buried = house::Buried{m(0), m(1.8), {}, units::Conductivity(1.4)};
    const units::Resistance layers(0.12 + 0.2 / 1.95 + 0.5 / 5.678263);
    EXPECT_NEAR(to_the_soil(wall, still_bay).si(), layers.si(), 1e-6);
    EXPECT_NEAR(transmittance(wall, still_bay).si(),
                below_grade_wall(m(0), m(1.8), layers, units::Conductivity(1.4)).si(), 1e-6);
    wall.buried->shortest_width = m(7);
    EXPECT_NEAR(transmittance(wall, still_bay).si(),
                below_grade_floor(m(7), m(1.8), layers, units::Conductivity(1.4)).si(), 1e-6);
}

TEST(BuriedSurface, a_u_given_outright_is_that_of_the_wall_to_the_soil) {
    house::Surface wall = a_house::surface(10, a_house::u(1 / 0.259), house::Space::ground);
    wall.buried = house::Buried{m(0), m(1.8), {}, units::Conductivity(1.4)};
    // ASHRAE Handbook-Fundamentals 2021 ch. 18, table 22: 1.075 at 1.8 m, without insulation.
    EXPECT_NEAR(transmittance(wall, still_bay).si(), 1.075, 0.005 * 1.075);
}

TEST(UnknownLayers, count_on_both_paths_and_an_unknown_bay_between_the_studs) {
    house::Layers wall = a_house::layers({"lap siding"}, 0.25);
    wall.unknown = units::Resistance(0.14);
    wall.bay = units::Resistance(0.3);
    wall.bay_depth = units::Length(0.092);
    const Paths made = paths(wall, units::Resistance(0.15), still_bay);
    EXPECT_NEAR(made.through_bay.si(), 0.15 + 0.14 + 0.14 + 0.3, 1e-12);
    EXPECT_NEAR(made.through_wood.si(), 0.15 + 0.14 + 0.14 + 0.092 / 0.115, 1e-12);
    wall.framing = 0;
    EXPECT_EQ(paths(wall, units::Resistance(0.15), still_bay).through_wood, made.through_bay);
}

}  // namespace
}  // namespace loads
