// Surveys for the tests of house/build, made in C++ as if read from a sheet, and what came of them as short
// texts.
//
// Lines of the imagined sheet: [site] 10, [house] 20, room i from 100 (i + 1), duct i from 1000 + 100 i,
// outlet i from 2000 + 100 i; within a room name +1, storey +2, corner +3, size +4, ceiling +5.
#pragma once

#include <gmock/gmock.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "house/build.hpp"
#include "units/unit.hpp"

namespace a_survey {

using house::Stage;
using testing::ElementsAre;
using testing::IsEmpty;

inline house::Place on_line(int line) { return {line, 1, 2}; }

template <class T>
house::Given<T> at(int line, T value) {
    return {std::move(value), on_line(line)};
}
inline house::Given<std::string> at(int line, const char* text) { return {text, on_line(line)}; }

inline units::Length m(double metres) { return units::Length(metres); }
inline units::Length ft(double feet) { return feet * units::unit::foot; }

// One storey, 20 C inside, -10 C outside, at the sea, nothing else.
inline house::Survey no_room() {
    house::Survey survey;
    survey.site.place = on_line(10);
    survey.site.winter_outdoor = at(11, units::unit::celsius(-10));
    survey.site.winter_indoor = at(12, units::unit::celsius(20));
    survey.site.elevation = at(13, m(0));
    survey.house_place = on_line(20);
    survey.storeys = at(21, 1);
    return survey;
}

// A room whose corner, size and ceiling are known.
inline house::SurveyRoom& add_room(house::Survey& to, const char* name, house::Two corner, house::Two size) {
    const int line = 100 * static_cast<int>(to.rooms.size() + 1);
    house::SurveyRoom room;
    room.place = on_line(line);
    room.name = at(line + 1, name);
    room.storey = at(line + 2, 1);
    room.corner = at(line + 3, corner);
    room.size = at(line + 4, size);
    room.ceiling = at(line + 5, m(2.5));
    to.rooms.push_back(room);
    return to.rooms.back();
}

// One room of 4 x 3 x 2.5 m.
inline house::Survey one_room() {
    house::Survey survey = no_room();
    add_room(survey, "bath", {m(0), m(0)}, {m(4), m(3)});
    return survey;
}

inline house::SurveyWall& add_wall(house::SurveyRoom& to, int line, house::WallSide side, const char* faces) {
    house::SurveyWall wall;
    wall.side = side;
    wall.place = on_line(line);
    wall.faces = at(line, faces);
    to.walls.push_back(wall);
    return to.walls.back();
}

// Studs of 0.04 x 0.09 m at 0.4 m.
inline void add_studs(house::SurveyWall& to, double first) {
    const int line = to.place.line;
    to.studs = {at(line + 1, house::Two{m(0.04), m(0.09)}), at(line + 2, m(0.4)), at(line + 3, m(first))};
}

inline house::SurveyWindow& add_window(house::SurveyRoom& to, int line, house::WallSide side,
                                       units::Length centre, house::Two size) {
    house::SurveyWindow window;
    window.place = on_line(line);
    window.name = at(line, "window");
    window.wall = at(line, side);
    window.centre = at(line, centre);
    window.size = at(line, size);
    to.windows.push_back(window);
    return to.windows.back();
}

inline house::SurveyDoor& add_door(house::SurveyRoom& to, int line, house::WallSide side,
                                   units::Length width) {
    house::SurveyDoor door;
    door.place = on_line(line);
    door.wall = at(line, side);
    door.width = at(line + 1, width);
    to.doors.push_back(door);
    return to.doors.back();
}

inline house::SurveyFixture& add_fixture(house::SurveyRoom& to, int line, house::FixtureKind kind,
                                         house::Two corner, house::Two size) {
    house::SurveyFixture fixture;
    fixture.place = on_line(line);
    fixture.kind = at(line, kind);
    fixture.corner = at(line + 1, corner);
    fixture.size = at(line + 2, size);
    to.fixtures.push_back(fixture);
    return to.fixtures.back();
}

// Joists of 0.05 x 0.2 m at 0.4 m under the first storey, the first at 0.2 m.
inline house::SurveyFloor& add_floor(house::Survey& to, house::JoistsRun run) {
    const int line = 800 + 10 * static_cast<int>(to.floors.size());
    house::SurveyFloor floor;
    floor.place = on_line(line);
    floor.under = at(line + 1, 1);
    floor.joists_run = at(line + 2, run);
    floor.first = at(line + 3, m(0.2));
    floor.spacing = at(line + 4, m(0.4));
    floor.joist = at(line + 5, house::Two{m(0.05), m(0.2)});
    to.floors.push_back(floor);
    return to.floors.back();
}
inline void add_sister(house::SurveyFloor& to, int joist, house::WallSide side, units::Length add) {
    to.sisters.push_back(
        {at(to.place.line + 6, joist), at(to.place.line + 6, side), at(to.place.line + 6, add)});
}

// From the plenum (or to the blower), 5 m long, a pipe of 6 in, with one fitting.
inline house::SurveyDuct& add_duct(house::Survey& to, const char* name, const char* other_end = nullptr,
                                   house::DuctSide side = house::DuctSide::supply) {
    const int line = 1000 + 100 * static_cast<int>(to.ducts.size());
    const bool supply = side == house::DuctSide::supply;
    house::SurveyDuct duct;
    duct.place = on_line(line);
    duct.name = at(line + 1, name);
    duct.side = at(line + 2, side);
    (supply ? duct.from : duct.to) = at(line + 3, other_end ? other_end : supply ? "plenum" : "blower");
    duct.length = at(line + 4, m(5));
    duct.shape = at(line + 5, house::Shape(house::Round{6 * units::unit::inch}));
    duct.fittings = {at(line + 6, "stackhead")};
    to.ducts.push_back(duct);
    return to.ducts.back();
}

// In the first room.
inline house::SurveyOutlet& add_outlet(house::Survey& to, const char* name, const char* duct) {
    const int line = 2000 + 100 * static_cast<int>(to.outlets.size());
    house::SurveyOutlet outlet;
    outlet.place = on_line(line);
    outlet.name = at(line + 1, name);
    outlet.duct = at(line + 2, duct);
    outlet.room = at(line + 3, to.rooms.front().name->value);
    to.outlets.push_back(outlet);
    return to.outlets.back();
}

inline house::SurveyOtherRooms& add_other_rooms(house::Survey& to) {
    house::SurveyOtherRooms rooms;
    rooms.place = on_line(700);
    rooms.floor_area = at(701, units::Area(100));
    rooms.outlets = at(702, 8);
    to.other_rooms = rooms;
    return *to.other_rooms;
}

// Cooling, and what it has to know: 35 C on 40 degrees north.
inline void cool(house::Survey& survey) {
    survey.cooling = at(940, house::CoolingKind::coil);
    survey.site.latitude = at(14, units::Angle{40});
    survey.site.summer_outdoor = at(15, units::unit::celsius(35));
}

// A construction that is a U-factor.
inline void add_construction(house::Survey& to, const char* name, double u) {
    house::SurveyConstruction construction;
    construction.name = name;
    construction.place = on_line(50);
    construction.u = at(51, units::Transmittance(u));
    to.constructions.push_back(construction);
}

inline house::Built planned(const house::Survey& survey, const house::Defaults& defaults = {}) {
    return build(survey, defaults, Stage::planned);
}
inline house::Built found(const house::Survey& survey) { return build(survey, {}, Stage::found); }

// "104: the bath has no floor (under the mark) -> remedy, see 103", one for each mistake.
inline std::vector<std::string> mistakes(const house::Built& built) {
    std::vector<std::string> texts;
    for (const house::Mistake& mistake : built.mistakes) {
        std::string text = std::to_string(mistake.place.line) + ": " + mistake.text;
        if (!mistake.under.empty()) text += " (" + mistake.under + ")";
        if (!mistake.remedy.empty()) text += " -> " + mistake.remedy;
        if (mistake.second) text += ", see " + std::to_string(mistake.second->line);
        texts.push_back(text);
    }
    return texts;
}
inline std::vector<std::string> mistakes(const house::Survey& survey) { return mistakes(planned(survey)); }

// What a default was taken for; empty where it was not taken.
inline std::vector<std::string> taken_for(const house::Built& built, house::DefaultId id) {
    for (const house::Assumption& assumption : built.assumptions)
        if (assumption.id == id) return assumption.used_for;
    return {};
}

inline const house::Surface* find_surface(const house::Room& room, const std::string& name) {
    const auto is_it = [&](const house::Surface& surface) { return surface.name == name; };
    const auto at = std::find_if(room.surfaces.begin(), room.surfaces.end(), is_it);
    return at == room.surfaces.end() ? nullptr : &*at;
}
// 0 where the room has no such surface.
inline double area(const house::Built& built, std::size_t room, const std::string& name) {
    const house::Surface* surface = find_surface(built.house.rooms[room], name);
    return surface ? surface->area.si() : 0;
}
// The U-factor given to a surface; -1 where it is made some other way.
inline double u(const house::Built& built, std::size_t room, const std::string& name) {
    const house::Surface* surface = find_surface(built.house.rooms[room], name);
    const auto* given = surface ? std::get_if<units::Transmittance>(&surface->assembly) : nullptr;
    return given ? given->si() : -1;
}

}  // namespace a_survey
