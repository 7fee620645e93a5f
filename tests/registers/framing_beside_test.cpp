#include "registers/framing_beside.hpp"

#include <gtest/gtest.h>

#include "plans/drawn_plan.hpp"
#include "registers/floor_space.hpp"

namespace registers {
namespace {

namespace unit = units::unit;
using house::JoistsRun;
using house::Mount;
using house::WallSide;

Location at(const house::Room& room, Mount mount, WallSide wall, units::Length along) {
    Location location;
    location.mount = mount;
    location.wall = wall;
    location.face = box_at(*room.plan, wall, along, {}, {10 * unit::inch, 4 * unit::inch});
    return location;
}

// 6 ft by 3 ft.
house::Room bare_room() {
    return drawn_plan::room_of({"########", "#......#", "#......#", "#......#", "########"});
}

TEST(FramingBeside, of_a_floor_register_is_the_joists_on_both_sides) {
    house::Room room = bare_room();
    EXPECT_FALSE(framing_beside(*room.plan, at(room, Mount::floor, WallSide::south, 2 * unit::foot)));
    drawn_plan::lay_joists(room, JoistsRun::north_south, 8 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    const auto framing = framing_beside(*room.plan, at(room, Mount::floor, WallSide::south, 32 * unit::inch));
    ASSERT_TRUE(framing);
    EXPECT_FALSE(framing->studs);
    EXPECT_EQ(framing->before, 2);  // at 24 in
    EXPECT_EQ(framing->after, 3);   // at 40 in
}

TEST(FramingBeside, before_the_first_and_beyond_the_last_there_is_one) {
    house::Room room = bare_room();
    drawn_plan::lay_joists(room, JoistsRun::east_west, 8 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    const auto south = framing_beside(*room.plan, at(room, Mount::floor, WallSide::south, 2 * unit::foot)),
               north = framing_beside(*room.plan, at(room, Mount::floor, WallSide::north, 2 * unit::foot));
    ASSERT_TRUE(south && north);
    EXPECT_EQ(south->before, 0);
    EXPECT_EQ(south->after, 1);
    EXPECT_EQ(north->before, 2);  // at 24 of 36 in
    EXPECT_EQ(north->after, 0);
}

TEST(FramingBeside, of_a_wall_register_is_the_studs_and_of_a_ceiling_nothing) {
    house::Room room = bare_room();
    drawn_plan::lay_joists(room, JoistsRun::north_south, 8 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    drawn_plan::stand_studs(room, WallSide::east, 4 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    const auto framing =
        framing_beside(*room.plan, at(room, Mount::low_wall, WallSide::east, 1 * unit::foot));
    ASSERT_TRUE(framing);
    EXPECT_TRUE(framing->studs);
    EXPECT_EQ(framing->before, 1);
    EXPECT_EQ(framing->after, 2);
    EXPECT_FALSE(framing_beside(*room.plan, at(room, Mount::low_wall, WallSide::west, 1 * unit::foot)));
    EXPECT_FALSE(framing_beside(*room.plan, at(room, Mount::ceiling, WallSide::east, 1 * unit::foot)));
}

}  // namespace
}  // namespace registers
