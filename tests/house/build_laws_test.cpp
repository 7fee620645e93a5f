// Laws of build, tried on random houses of up to six rooms in a row, drawn with walls between.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "house/a_survey.hpp"
#include "house/mirrored.hpp"

namespace {

using namespace a_survey;
using house::Room;
using house::Surface;
using house::WallSide;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000; }

// Rooms in a row from west to east, some set off to the north, some with cold walls and windows.
house::Survey any_survey() {
    house::Survey survey = no_room();
    double x = 0;
    const int rooms = *rc::gen::inRange(1, 7);
    for (int i = 0; i < rooms; ++i) {
        const double width = between(2, 6), depth = between(2, 6);
        house::SurveyRoom& room = add_room(survey, ("room " + std::to_string(i)).c_str(),
                                           {m(x), m(between(-1, 1))}, {m(width), m(depth)});
        room.ceiling->value = m(between(2.2, 3));
        room.winter_indoor = at(100 * i + 106, units::unit::celsius(between(15, 25)));
        for (WallSide side : {WallSide::north, WallSide::south, WallSide::east, WallSide::west}) {
            if (*rc::gen::inRange(0, 3) == 0) continue;
            add_wall(room, 100 * i + 110 + static_cast<int>(side), side, "outdoors");
            add_window(room, 100 * i + 120 + static_cast<int>(side), side, m(between(0.6, 1.4)),
                       {m(1), m(1)});
            room.windows.back().name = at(100 * i + 130, "window " + std::to_string(static_cast<int>(side)));
        }
        x += width + between(0, 0.5);
    }
    return survey;
}

// All of a room's surfaces of a kind towards the same place, together: their names change in a mirror.
double area_towards(const Room& room, const Surface& like) {
    double sum = 0;
    for (const Surface& surface : room.surfaces)
        if (surface.kind == like.kind && surface.beyond == like.beyond) sum += surface.area.si();
    return sum;
}

bool same_areas(const house::House& a, const house::House& b) {
    for (std::size_t i = 0; i < a.rooms.size(); ++i)
        for (const Surface& surface : a.rooms[i].surfaces)
            if (std::abs(area_towards(a.rooms[i], surface) - area_towards(b.rooms[i], surface)) > 1e-9)
                return false;
    return true;
}

RC_GTEST_PROP(BuildLaws, a_mirrored_house_has_the_same_areas, ()) {
    const house::Survey survey = any_survey();
    const house::Built as_is = planned(survey);
    for (const house::Survey& image : {mirrored_east_west(survey), mirrored_north_south(survey)}) {
        const house::Built mirrored = planned(image);
        RC_ASSERT(mistakes(mirrored).size() == mistakes(as_is).size());
        RC_ASSERT(same_areas(as_is.house, mirrored.house));
        RC_ASSERT(same_areas(mirrored.house, as_is.house));
    }
}

RC_GTEST_PROP(BuildLaws, what_lies_between_two_rooms_is_one_thing_seen_from_both, ()) {
    const house::House house = planned(any_survey()).house;
    for (const Room& room : house.rooms)
        for (const Surface& surface : room.surfaces) {
            const auto* other = std::get_if<house::RoomId>(&surface.beyond);
            if (!other) continue;
            const Surface* back = find_surface(house.room(*other), "wall to the " + room.name);
            RC_ASSERT(back != nullptr);
            RC_ASSERT(std::get<house::RoomId>(back->beyond) == room.id);
            RC_ASSERT(back->area == surface.area);
            RC_ASSERT(std::get<units::Transmittance>(back->assembly) ==
                      std::get<units::Transmittance>(surface.assembly));
        }
}

RC_GTEST_PROP(BuildLaws, all_walls_of_a_room_add_up_to_its_faces, ()) {
    const house::Survey survey = any_survey();
    const house::House house = planned(survey).house;
    for (const Room& room : house.rooms) {
        if (room.winter_indoor == house.site.winter_indoor) continue;  // then inside walls are left out
        double sum = 0;
        for (const Surface& surface : room.surfaces)
            if (surface.kind != house::SurfaceKind::ceiling && surface.kind != house::SurfaceKind::floor)
                sum += surface.area.si();
        RC_ASSERT(std::abs(sum - (2 * (room.width + room.depth) * room.ceiling).si()) < 1e-9);
    }
}

RC_GTEST_PROP(BuildLaws, an_assumption_is_listed_once_and_used_for_something, ()) {
    const house::Built built = planned(any_survey());
    for (std::size_t i = 0; i < built.assumptions.size(); ++i) {
        RC_ASSERT(!built.assumptions[i].used_for.empty());
        if (i > 0) RC_ASSERT(built.assumptions[i - 1].id < built.assumptions[i].id);
    }
}

RC_GTEST_PROP(BuildLaws, building_twice_gives_the_same, ()) {
    const house::Survey survey = any_survey();
    const house::Built once = planned(survey), twice = planned(survey);
    RC_ASSERT(mistakes(once) == mistakes(twice));
    RC_ASSERT(once.assumptions == twice.assumptions);
    RC_ASSERT(same_areas(once.house, twice.house));
}

}  // namespace
