#include "registers/locations.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "plans/drawn_plan.hpp"

namespace registers {
namespace {

namespace unit = units::unit;
using drawn_plan::Drawing;
using drawn_plan::lay_joists;
using drawn_plan::mirrored;
using drawn_plan::room_of;
using drawn_plan::stand_studs;
using house::JoistsRun;
using house::Mount;

const Drawing bath{"==D=====",  //
                   "=......#",  //
                   "=......#",  //
                   "=OO....#",  //
                   "=OO....#",  //
                   "=...TTT#",  //
                   "=...TTT#",  //
                   "###WW###"};

Looked all_of(const house::Room& room) {
    Looked looked;
    looked.face = looked.wall_face = {10 * unit::inch, 4 * unit::inch};
    looked.from = inner_corner(*room.plan);
    return looked;
}

std::vector<Location> of(const std::vector<Location>& all, Where where) {
    std::vector<Location> some;
    for (const Location& location : all)
        if (location.where == where) some.push_back(location);
    return some;
}

TEST(Locations, stand_under_and_beside_the_window_at_its_height_of_the_wall) {
    const house::Room room = room_of(bath);
    const auto found = locations(room, all_of(room));
    const auto under = of(found, Where::under_window);
    ASSERT_EQ(under.size(), 1u);
    EXPECT_NEAR(under[0].along / unit::foot, 3, 1e-9);  // the window is from 2 to 4 ft
    EXPECT_NEAR(under[0].face.south / unit::inch, 2, 1e-9);
    EXPECT_NEAR(under[0].face.north / unit::inch, 6, 1e-9);
    EXPECT_EQ(of(found, Where::beside_window).size(), 2u);
}

TEST(Locations, under_the_tub_is_told_with_the_tub) {
    const house::Room room = room_of(bath);
    for (const Location& location : of(locations(room, all_of(room)), Where::under_window)) {
        ASSERT_TRUE(location.stopped);  // the register is 31 to 41 in from the west, the tub begins at 36
        EXPECT_EQ(location.stopped->by, Stop::fixture);
        EXPECT_EQ(location.stopped->name, "tub");
    }
}

TEST(Locations, a_joist_in_the_boots_way_is_told_and_cleared) {
    house::Room room = room_of(bath);
    room.plan->fixtures.clear();
    lay_joists(room, JoistsRun::north_south, 36 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    const auto under = of(locations(room, all_of(room)), Where::under_window);
    ASSERT_EQ(under.size(), 2u);
    ASSERT_TRUE(under[0].stopped);
    EXPECT_EQ(under[0].stopped->by, Stop::joist);
    EXPECT_EQ(under[0].stopped->member, 1);
    // Centre 36 in, joist 35-1/4 to 36-3/4: the boot, 10 in wide with 1/4 in to spare, clears it 6 in aside.
    EXPECT_FALSE(under[1].stopped);
    EXPECT_NEAR(std::abs(under[1].off_centre / unit::inch), 6, 1e-9);
}

TEST(Locations, joists_along_the_wall_move_the_register_out_from_it) {
    house::Room room = room_of(bath);
    room.plan->fixtures.clear();
    lay_joists(room, JoistsRun::east_west, 3 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    const auto under = of(locations(room, all_of(room)), Where::under_window);
    ASSERT_EQ(under.size(), 2u);
    EXPECT_EQ(under[0].stopped->by, Stop::joist);
    EXPECT_NEAR(under[1].off_centre.si(), 0, 1e-12);
    EXPECT_NEAR(under[1].face.south / unit::inch, 4, 1e-9);  // joist to 3-3/4 in, 1/4 in left
}

TEST(Locations, no_register_stands_behind_a_doors_swing) {
    house::Room room = room_of({"====", "=..#", "=..#", "#WW#"});
    room.plan->doors.push_back({house::WallSide::south, house::Stretch{house::WallSide::south, {}, {}},
                                house::DoorHanging::in,
                                house::DoorSwing{{}, {}, 2 * unit::foot, true, true}});
    const auto under = of(locations(room, all_of(room)), Where::under_window);
    ASSERT_EQ(under.size(), 1u);
    ASSERT_TRUE(under[0].stopped);
    EXPECT_EQ(under[0].stopped->by, Stop::door_swing);
}

// Hinged at its east end, it opens into the room and stands along the east wall.
TEST(Locations, no_register_stands_behind_an_open_door) {
    house::Room room = room_of({"==D==", "=...=", "=...=", "#####"});
    room.plan->doors[0].swing =
        house::DoorSwing{2.5 * unit::foot, 3 * unit::foot, 1.5 * unit::foot, false, false};
    for (const Location& location : locations(room, all_of(room)))
        if (location.wall == house::WallSide::east && !location.stopped) {
            EXPECT_LT(location.face.north / unit::foot, 1.5 + 1e-9);
        }
}

TEST(Locations, a_shower_splashes_what_is_near_it) {
    const house::Room room = room_of({"========", "=SS....=", "=SS....=", "###WW###"});
    const auto under = of(locations(room, all_of(room)), Where::under_window);
    ASSERT_FALSE(under.empty());
    ASSERT_TRUE(under[0].stopped);
    EXPECT_EQ(under[0].stopped->by, Stop::splash);
}

TEST(Locations, a_room_without_an_outside_wall_has_its_inside_ones_and_the_ceiling) {
    const house::Room room = room_of({"==D=", "=..=", "=..=", "===="});
    const auto found = locations(room, all_of(room));
    EXPECT_EQ(of(found, Where::inside_wall).size(), 4u);
    EXPECT_EQ(of(found, Where::ceiling).size(), 1u);
    EXPECT_EQ(found.size(), 5u);
}

TEST(Locations, inside_walls_keep_clear_of_doors) {
    const house::Room room = room_of({"=DD.DD=", "=.....=", "#######"});
    for (const Location& location : of(locations(room, all_of(room)), Where::inside_wall)) {
        if (location.wall != house::WallSide::north) continue;
        EXPECT_FALSE(location.stopped);
        EXPECT_NEAR(location.along / unit::foot, 2.5, 0.1);  // the foot between the two doors
    }
}

TEST(Locations, a_vanity_has_a_toe_kick_that_looks_into_the_room) {
    const house::Room room = room_of({"======", "=...V=", "=...V=", "######"});
    const auto kicks = of(locations(room, all_of(room)), Where::toe_kick);
    ASSERT_EQ(kicks.size(), 1u);
    EXPECT_EQ(kicks[0].mount, Mount::toe_kick);
    EXPECT_LT(kicks[0].middle.east, 3 * unit::foot);
    EXPECT_EQ(kicks[0].name, "vanity");
}

TEST(Locations, are_narrowed_by_mount_and_a_high_wall_comes_only_so) {
    const house::Room room = room_of(bath);
    Looked looked = all_of(room);
    for (const Location& location : locations(room, looked)) EXPECT_NE(location.mount, Mount::high_wall);
    looked.mount = Mount::high_wall;
    const auto high = locations(room, looked);
    ASSERT_FALSE(high.empty());
    for (const Location& location : high) EXPECT_EQ(location.mount, Mount::high_wall);
}

// Whether a stack has room there for its insulation is the wall's matter, not the plan's.
TEST(Locations, a_low_register_in_an_outside_wall_is_among_them) {
    const house::Room room = room_of(bath);
    Looked looked = all_of(room);
    looked.mount = Mount::low_wall;
    EXPECT_EQ(of(locations(room, looked), Where::outside_wall).size(), 2u);  // east and south
}

TEST(Locations, a_wall_register_stands_between_studs) {
    house::Room room = room_of({"=D======", "=......=", "=......=", "========"});
    const Looked looked = all_of(room);
    stand_studs(room, house::WallSide::south, 8 * unit::inch, 16 * unit::inch, 1.5 * unit::inch);
    for (const Location& location : of(locations(room, looked), Where::inside_wall)) {
        if (location.wall != house::WallSide::south) continue;
        EXPECT_FALSE(location.stopped);
        const units::Length half = 0.5 * looked.wall_face.width;
        for (const house::Stud& stud : room.plan->wall(house::WallSide::south).studs)
            EXPECT_TRUE(location.along + half <= stud.from || location.along - half >= stud.to);
    }
}

TEST(Locations, studs_too_near_each_other_stop_every_wall_register_between_them) {
    house::Room room = room_of({"=D======", "=......=", "=......=", "========"});
    for (const house::WallSide side : {house::WallSide::north, house::WallSide::south})
        stand_studs(room, side, 4 * unit::inch, 9 * unit::inch, 1.5 * unit::inch);
    const auto found = locations(room, all_of(room));
    const auto south = std::find_if(found.begin(), found.end(), [](const Location& location) {
        return location.wall == house::WallSide::south;
    });
    ASSERT_NE(south, found.end());
    ASSERT_TRUE(south->stopped);
    EXPECT_EQ(south->stopped->by, Stop::stud);
    EXPECT_GT(south->stopped->member, 0);
    // So it is where the wanted place is stopped by a door as well.
    const auto north = std::find_if(found.begin(), found.end(), [](const Location& location) {
        return location.wall == house::WallSide::north && location.where == Where::inside_wall;
    });
    ASSERT_TRUE(north != found.end() && north->stopped);
    EXPECT_EQ(north->stopped->by, Stop::stud);
}

TEST(Locations, are_narrowed_to_a_window) {
    const house::Room room = room_of({"#WW#", "#..#", "#..#", "#WW#"});
    Looked looked = all_of(room);
    looked.window = "south window";
    for (const Location& location : of(locations(room, looked), Where::under_window))
        EXPECT_EQ(location.name, "south window");
}

TEST(InnerCorner, is_the_one_farthest_from_the_outside_walls) {
    const Spot corner = inner_corner(*room_of(bath).plan);
    EXPECT_NEAR(corner.east.si(), 0, 1e-12);  // east and south are outside
    EXPECT_NEAR(corner.north / unit::foot, 6, 1e-9);
}

// --- laws

// Whether two places are the same seen in the mirror between west and east.
bool is_mirrored(const Location& a, const Location& b, units::Length width) {
    return a.mount == b.mount && a.where == b.where && a.stopped.has_value() == b.stopped.has_value() &&
           std::abs((a.middle.east + b.middle.east - width).si()) < 1e-9 &&
           std::abs((a.middle.north - b.middle.north).si()) < 1e-9;
}

TEST(LocationLaws, a_mirrored_room_has_mirrored_places) {
    for (const Drawing& drawing :
         {bath, Drawing{"=D======", "=......#", "=V....BB", "=V....B#", "=......W", "###WW###"},
          Drawing{"#WW#D===", "#......=", "W.SS...=", "W.SS..V=", "###WWW#="}}) {
        const house::Room room = room_of(drawing), turned = room_of(mirrored(drawing));
        const auto here = locations(room, all_of(room)), there = locations(turned, all_of(turned));
        ASSERT_EQ(here.size(), there.size());
        for (const Location& location : here)
            EXPECT_TRUE(
                std::any_of(there.begin(), there.end(),
                            [&](const Location& other) { return is_mirrored(location, other, room.width); }))
                << static_cast<int>(location.where) << " at " << location.middle.east / unit::foot << ", "
                << location.middle.north / unit::foot;
    }
}

TEST(LocationLaws, no_place_that_can_be_built_meets_a_joist_or_a_fixture) {
    for (int shift = 0; shift < 16; ++shift) {
        house::Room room = room_of(bath);
        lay_joists(room, shift % 2 ? JoistsRun::north_south : JoistsRun::east_west, shift * unit::inch,
                   16 * unit::inch, 1.75 * unit::inch);
        for (const Location& location : locations(room, all_of(room))) {
            if (location.stopped || location.mount != Mount::floor) continue;
            for (const house::Fixture& fixture : room.plan->fixtures)
                EXPECT_FALSE(house::overlap(fixture.box, location.face));
            for (const house::Joist& joist : room.plan->floor->joists) {
                const bool by_east = room.plan->floor->run == JoistsRun::north_south;
                const units::Length from = by_east ? location.face.west : location.face.south;
                const units::Length to = by_east ? location.face.east : location.face.north;
                EXPECT_TRUE(to <= joist.from || from >= joist.to);
            }
        }
    }
}

}  // namespace
}  // namespace registers
