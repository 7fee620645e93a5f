// Laws of the plan of a room, tried on random rooms in a row over one floor of joists.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "house/a_survey.hpp"
#include "house/mirrored.hpp"

namespace {

using namespace a_survey;
using house::Box;
using house::JoistsRun;
using house::Plan;
using house::WallSide;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000; }

void furnish(house::SurveyRoom& room) {
    const auto& [width, depth] = room.size->value;
    for (const double west : {0.0, 0.5})  // side by side, each in its half of the room
        add_fixture(room, 120, house::FixtureKind::wardrobe,
                    {between(west, west + 0.2) * width, between(0, 0.6) * depth},
                    {between(0.1, 0.3) * width, between(0.1, 0.4) * depth});
    add_wall(room, 110, WallSide::west, "outdoors");
    add_window(room, 112, WallSide::west, between(0.4, 0.6) * depth, {0.5 * depth, m(1)});
    for (const WallSide side : {WallSide::north, WallSide::east}) {
        house::SurveyDoor& door = add_door(room, 130, side, m(0.8));
        door.centre = at(132, between(0.3, 0.7) * (side == WallSide::north ? width : depth));
        const bool first = *rc::gen::arbitrary<bool>();
        const WallSide along_x = first ? WallSide::west : WallSide::east,
                       along_y = first ? WallSide::south : WallSide::north;
        door.swings =
            at(133, house::SurveySwing{house::DoorHanging::in, side == WallSide::north ? along_x : along_y});
    }
}

house::Survey any_survey() {
    house::Survey survey = no_room();
    double x = between(-5, 5);
    for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
        const double width = between(2, 5);
        furnish(add_room(survey, ("room " + std::to_string(i)).c_str(), {m(x), m(between(-1, 1))},
                         {m(width), m(between(2, 5))}));
        x += width + between(0, 0.3);
    }
    house::SurveyFloor& floor =
        add_floor(survey, *rc::gen::arbitrary<bool>() ? JoistsRun::north_south : JoistsRun::east_west);
    floor.first->value = m(between(0.0123, 0.3987));
    add_sister(floor, 2, floor.joists_run->value == JoistsRun::north_south ? WallSide::east : WallSide::south,
               m(0.04));
    return survey;
}

bool near(units::Length a, units::Length b) { return std::abs((a - b).si()) < 1e-9; }

// Seen in the mirror between west and east.
Box turned(const Box& box, units::Length width) {
    return {width - box.east, box.south, width - box.west, box.north};
}
bool same(const Box& a, const Box& b) {
    return near(a.west, b.west) && near(a.south, b.south) && near(a.east, b.east) && near(a.north, b.north);
}

bool mirror_each_other(const house::DoorSwing& a, const house::DoorSwing& b, units::Length width) {
    return near(a.hinge_east, width - b.hinge_east) && near(a.hinge_north, b.hinge_north) &&
           near(a.leaf, b.leaf) && a.towards_east != b.towards_east && a.towards_north == b.towards_north;
}

bool mirror_each_other(const house::JoistFloor& a, const house::JoistFloor& b, units::Length width) {
    if (a.joists.size() != b.joists.size()) return false;
    for (std::size_t i = 0; i < a.joists.size(); ++i) {
        const bool across = a.run == JoistsRun::north_south;
        const house::Joist &one = a.joists[i], &other = b.joists[across ? a.joists.size() - 1 - i : i];
        if (across ? !near(one.from, width - other.to) || !near(one.to, width - other.from)
                   : !near(one.from, other.from) || !near(one.to, other.to))
            return false;
    }
    return true;
}

RC_GTEST_PROP(PlanLaws, a_mirrored_room_has_a_mirrored_plan, ()) {
    const house::Survey survey = any_survey();
    const house::Built as_is = planned(survey), mirrored = planned(mirrored_east_west(survey));
    RC_ASSERT(mistakes(as_is).empty());
    RC_ASSERT(mistakes(mirrored).empty());
    for (std::size_t i = 0; i < as_is.house.rooms.size(); ++i) {
        const Plan &a = *as_is.house.rooms[i].plan, &b = *mirrored.house.rooms[i].plan;
        RC_ASSERT(a.wall(WallSide::west).beyond == b.wall(WallSide::east).beyond);
        for (std::size_t k = 0; k < a.fixtures.size(); ++k)
            RC_ASSERT(same(a.fixtures[k].box, turned(b.fixtures[k].box, a.width)));
        RC_ASSERT(near(a.windows[0].stretch->from, b.windows[0].stretch->from));
        for (std::size_t k = 0; k < a.doors.size(); ++k)
            RC_ASSERT(mirror_each_other(*a.doors[k].swing, *b.doors[k].swing, a.width));
        RC_ASSERT(mirror_each_other(*a.floor, *b.floor, a.width));
    }
}

RC_GTEST_PROP(PlanLaws, mirrored_twice_it_is_the_same, ()) {
    const house::Survey survey = any_survey();
    const house::House once = planned(survey).house,
                       twice = planned(mirrored_north_south(mirrored_north_south(survey))).house;
    for (std::size_t i = 0; i < once.rooms.size(); ++i) {
        const auto &a = once.rooms[i].plan->floor->joists, &b = twice.rooms[i].plan->floor->joists;
        RC_ASSERT(a.size() == b.size());
        for (std::size_t k = 0; k < a.size(); ++k)
            RC_ASSERT(a[k].number == b[k].number && near(a[k].from, b[k].from) && near(a[k].to, b[k].to));
    }
}

RC_GTEST_PROP(PlanLaws, what_stands_in_a_room_lies_within_it, ()) {
    for (const house::Room& room : planned(any_survey()).house.rooms)
        for (const house::Fixture& fixture : room.plan->fixtures) {
            const Box& box = fixture.box;
            RC_ASSERT(box.west >= units::Length() && box.south >= units::Length());
            RC_ASSERT(box.east <= room.plan->width && box.north <= room.plan->depth);
        }
}

}  // namespace
