#include "routes/plain_way.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using registers::Spot;
using routes::plain_way;

Spot at(double east, double north) { return {units::Length(east), units::Length(north)}; }

TEST(PlainWay, is_as_long_as_its_two_sides_and_its_height) {
    const auto way = plain_way(at(0, 0), at(3, -4), units::Length(2.4));
    EXPECT_DOUBLE_EQ(way.length.si(), 3 + 4 + 2.4);
    EXPECT_EQ(way.turns, 2);
    EXPECT_EQ(plain_way(at(1, 1), at(5, 1), units::Length()).turns, 0);
    EXPECT_EQ(plain_way(at(1, 1), at(1, 1), units::Length()).length.si(), 0);
}

double any() { return *rc::gen::inRange(-1000, 1001) / 100.0; }

// Nothing shorter is right-angled, and a place farther out along both ways is never nearer.
RC_GTEST_PROP(PlainWayLaws, farther_is_never_shorter_and_the_way_back_as_long, ()) {
    const Spot from = at(any(), any()), to = at(any(), any());
    const double farther = 1 + *rc::gen::inRange(0, 100) / 100.0;
    const Spot beyond{from.east + farther * (to.east - from.east),
                      from.north + farther * (to.north - from.north)};
    const units::Length none;
    RC_ASSERT(plain_way(from, beyond, none).length >= plain_way(from, to, none).length);
    RC_ASSERT(plain_way(from, to, none).length == plain_way(to, from, none).length);
    const double straight = std::hypot((to.east - from.east).si(), (to.north - from.north).si());
    RC_ASSERT(plain_way(from, to, none).length.si() >= straight * (1 - 1e-12));
}

}  // namespace
