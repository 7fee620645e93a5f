// The sheet as written: what the user said, nothing more, each value with its place.
//
// A Survey holds the house as found and as planned at once (state found, new or removed; a wall `becomes`
// another). Whatever the sheet leaves out is an empty Maybe here; house/build.hpp fills it from the defaults
// or asks for it.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "house/place.hpp"
#include "house/shape.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"
#include "units/read.hpp"

namespace house {

using Two = std::pair<units::Length, units::Length>;

struct SurveySite {
    Maybe<units::Length> elevation;
    Maybe<units::Temperature> winter_outdoor, winter_indoor;
    Maybe<units::Angle> latitude;
    Maybe<units::Temperature> summer_outdoor, summer_indoor, summer_wet_bulb;
    Maybe<units::TemperatureDifference> daily_range;
    Place place;
};

struct SurveyConstruction {
    std::string name;
    Place place;
    std::vector<Given<std::string>> layers;  // outside to inside
    Maybe<units::Length> studs;              // centre to centre
    Maybe<double> framing;                   // share of the face that is framing
    Maybe<units::Transmittance> u;
    Maybe<units::Resistance> r;
};

struct SurveyWall {
    WallSide side = WallSide::north;
    Place place;
    Maybe<std::string> faces, construction, becomes;
};

struct SurveyHorizontal {  // what lies above or below a room
    Place place;
    Maybe<std::string> space, construction, becomes;
};

struct SurveyWindow {
    Place place;
    Maybe<std::string> name, glass, becomes;
    Maybe<WallSide> wall;
    Maybe<units::Length> centre, sill;
    Maybe<Two> size;
    Maybe<units::Transmittance> u;
    Maybe<double> shgc;  // solar heat gain coefficient
    Maybe<bool> screen;  // of insects, outside
    Maybe<std::string> shade;
    Maybe<double> shade_closed;                     // share of the glass
    Maybe<units::Length> overhang, overhang_above;  // depth; height above the window's head
};

struct SurveyDoor {
    Place place;
    Maybe<WallSide> wall;
    Maybe<units::Length> centre, width, height;
    Maybe<units::Transmittance> u;
};

struct SurveyRoom {
    Place place;
    Maybe<std::string> name;
    Maybe<int> storey;
    Maybe<RoomUse> use;
    Maybe<Two> corner, size;
    Maybe<units::Length> ceiling;
    Maybe<units::Temperature> winter_indoor;
    std::optional<SurveyHorizontal> above, below;
    std::vector<SurveyWall> walls;
    std::vector<SurveyWindow> windows;
    std::vector<SurveyDoor> doors;
};

// Whether the work changes the room's walls, windows, ceiling or floor.
bool is_altered(const SurveyRoom& room);

// "3 square", "2 rounded": when the fittings' names are not known.
struct Turns {
    int count = 0;
    bool square = true;
};

struct SurveyOtherRooms {
    Place place;
    Maybe<units::Area> floor_area;
    Maybe<units::Power> heat_loss;
    Maybe<int> outlets;
    Maybe<units::Length> pipe;
    Maybe<Two> reach;
    Maybe<Turns> turns;
};

struct SurveyHeater {
    Place place;
    Maybe<HeaterKind> kind;
    Maybe<units::Power> input, output;
    Maybe<double> efficiency;
    Maybe<std::pair<units::TemperatureDifference, units::TemperatureDifference>> rise;
    Maybe<units::Pressure> max_static;
    Maybe<bool> adjusted_for_elevation;
    Maybe<std::string> shares_space_with;
};

struct BlowerPoint {
    units::Pressure external_static;
    units::Airflow airflow;
};

struct SurveyBlower {
    Place place;
    std::vector<Given<BlowerPoint>> points;
    Maybe<units::Airflow> measured;
    std::vector<Given<DeviceKind>> includes;
};

struct SurveyDevice {
    Place place;
    Maybe<std::string> name;
    Maybe<DeviceKind> kind;
    Maybe<units::Pressure> drop;
    Maybe<units::Airflow> at;
};

struct SurveyDuct {
    Place place;
    Maybe<std::string> name, from, to;
    Maybe<DuctSide> side;
    Maybe<units::Length> at, length, around;
    Maybe<Shape> shape;
    Maybe<DuctKind> kind;
    Maybe<double> stretch;  // of a flexible duct, as a share of its full length
    std::vector<Given<std::string>> fittings;
    Maybe<Turns> turns;
    Maybe<Space> runs_in;
    Maybe<units::Resistance> wrap;
    Maybe<bool> hidden;
    Maybe<State> state;
};

struct SurveyOutlet {
    Place place;
    Maybe<std::string> name, duct, room;
    Maybe<Two> face;
    Maybe<units::Area> free_area;  // of the face, of a return grille
    Maybe<Mount> mount;
    Maybe<std::string> under;  // place = { under = "north window" }
    Maybe<WallSide> wall;      // place = { wall = "north", centre = "3 ft 9 in" }
    Maybe<units::Length> centre;
    Maybe<Two> point;  // place = { point = ["6 ft 8 in", "1 ft"] }
    Maybe<State> state;
};

struct Survey {
    Maybe<std::string> house_name;
    Maybe<int> built, storeys, bedrooms;
    Maybe<units::Angle> north;  // of the plan, clockwise from true north
    Maybe<std::string> roof;    // "asphalt, medium"
    Maybe<Frame> frame;
    std::optional<Given<std::variant<LeakageClass, units::LeakageTest>>> air_leakage;
    Place house_place;
    SurveySite site;
    Maybe<std::string> thermostat_room;
    std::vector<SurveyConstruction> constructions;
    std::map<Space, Given<units::Temperature>> space_winter;  // [space.basement] winter = "58 F"
    std::vector<SurveyRoom> rooms;
    std::optional<SurveyOtherRooms> other_rooms;
    std::optional<SurveyHeater> heater;
    std::optional<SurveyBlower> blower;
    Maybe<CoolingKind> cooling;
    std::vector<SurveyDevice> devices;
    std::vector<SurveyDuct> ducts;
    std::vector<SurveyOutlet> outlets;
};

}  // namespace house
