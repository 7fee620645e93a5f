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
#include "house/survey_machine.hpp"
#include "house/survey_plan.hpp"
#include "house/survey_reading.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"
#include "units/read.hpp"

namespace house {

struct SurveySite {
    Maybe<units::Length> elevation;
    Maybe<units::Temperature> winter_outdoor, winter_indoor;
    Maybe<units::Angle> latitude;
    Maybe<units::Temperature> summer_outdoor, summer_indoor, summer_wet_bulb;
    Maybe<units::TemperatureDifference> daily_range;
    Maybe<units::Temperature> ground;  // on the design night
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

// How a wall or a floor lies in the ground.
struct SurveyGround {
    Maybe<units::Length> depth, depth_from;  // below the ground outside: of its bottom, of a wall's top
    Maybe<units::Length> exposed_edge;       // of a slab
    Maybe<std::string> edge, covering;       // of a slab: how its edge is insulated, what lies on it
};

// An unheated space beside the heated rooms: [space.attic] and the like.
struct SurveySpace {
    Place place;
    Maybe<units::Temperature> winter;
    std::optional<Given<std::variant<units::AirChange, units::Airflow>>> ventilation;  // outdoor air
    Maybe<bool> vented;                        // a crawl space: vents that stay open
    Maybe<units::Area> floor_area, roof_area;  // roof_area: along the slope
    Maybe<units::Area> outer_area;             // walls and glass towards outdoors
    Maybe<units::Length> height, perimeter;    // of an attic up to the ridge
    Maybe<units::Length> above_ground;         // how much of the height stands out of the ground
    Maybe<std::string> construction, roof;     // of what faces outdoors or ground, and of the roof
    Maybe<units::Power> heat;                  // given off in it
};

// [ventilation]: what runs all the time.
struct SurveyVentilation {
    Place place;
    Maybe<units::Airflow> supply, exhaust;
    Maybe<double> recovery;  // share of the heat
};

struct SurveyFan {  // [[room.exhaust_fan]]
    Place place;
    Maybe<units::Airflow> flow;
    Maybe<FanRuns> runs;
};

struct SurveyStuds {               // of an opened wall
    Maybe<Two> stud;               // thickness, depth
    Maybe<units::Length> spacing;  // centre to centre
    Maybe<units::Length> first;    // the first stud's centre, from the wall's west or south end
};

struct SurveyWall {
    WallSide side = WallSide::north;
    Place place;
    Maybe<std::string> faces, construction, becomes;
    Maybe<units::Area> area;          // of the part that faces so, openings included; empty: the whole side
    Maybe<units::Length> room_grows;  // outwards, by the work; below zero: furred in
    SurveyGround ground = {};
    SurveyStuds studs = {};
};

struct SurveyHorizontal {  // what lies above or below a room
    Place place;
    Maybe<std::string> space, construction, becomes;
    SurveyGround ground = {};
};

// One of a list that describes what the four sides of a box cannot.
struct SurveySurface {
    Place place;
    Maybe<std::string> name, faces, construction, becomes;
    Maybe<SurfaceKind> kind;
    Maybe<units::Length> length, height;
    Maybe<units::Area> area;    // openings included
    Maybe<units::Angle> looks;  // clockwise from the plan's north
    SurveyGround ground = {};
};

struct SurveyWindow {
    Place place;
    Maybe<std::string> name, glass, becomes;
    Maybe<WallSide> wall;
    Maybe<std::string> surface;  // instead of wall: the listed surface it is in
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
    Maybe<std::string> surface;
    Maybe<units::Length> centre, width, height;
    Maybe<units::Transmittance> u;
    Maybe<units::Length> undercut;  // of an inside door
    Maybe<bool> shut;               // at night, as a rule
    Maybe<SurveySwing> swings;
};

struct SurveyRoom {
    Place place;
    Maybe<std::string> name;
    Maybe<int> storey;
    Maybe<RoomUse> use;
    Maybe<Two> corner, size;
    Maybe<units::Area> floor_area;  // instead of size
    Maybe<units::Length> ceiling;
    Maybe<units::Temperature> winter_indoor;
    std::optional<SurveyHorizontal> above, below;
    std::vector<SurveyWall> walls;
    std::vector<SurveySurface> surfaces;
    std::vector<SurveyWindow> windows;
    std::vector<SurveyDoor> doors;
    std::vector<SurveyFixture> fixtures;
    std::vector<SurveyFan> exhaust_fans;
    Maybe<Two> transfer;                    // face of an opening or a grille through to the rest of the house
    Maybe<units::Area> transfer_free_area;  // of that face
};

// Whether the work changes the room's surfaces or windows, or makes it larger or smaller.
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
    Maybe<std::string> from;  // "plenum" or a duct: what their runs leave
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
    Maybe<std::string> through;  // a bay
    Maybe<units::Resistance> wrap;
    Maybe<bool> hidden;
    Maybe<double> damper;  // degrees from open
    Maybe<State> state;
};

struct SurveyOutlet {
    Place place;
    Maybe<std::string> name, duct, room;
    Maybe<Two> face;
    Maybe<units::Area> free_area;  // of the face
    Maybe<Mount> mount;
    Maybe<std::string> under;  // place = { under = "north window" }
    Maybe<WallSide> wall;      // place = { wall = "north", centre = "3 ft 9 in" }
    Maybe<units::Length> centre;
    Maybe<Two> point;      // place = { point = ["6 ft 8 in", "1 ft"] }
    Maybe<double> damper;  // degrees from open
    Maybe<State> state;
};

// Joists side by side; a sister is a board added to one face of one of them.
struct SurveySister {
    Maybe<int> joist;      // counted from the west or south end, the first is 1
    Maybe<WallSide> side;  // the face it stands on
    Maybe<units::Length> add;
};

struct SurveyFloor {
    Place place;
    Maybe<std::string> name;
    Maybe<units::Length> spacing;  // centre to centre
    Maybe<Two> joist;              // thickness, depth
    std::vector<SurveySister> sisters;
    Maybe<int> under;  // a storey
    Maybe<JoistsRun> joists_run;
    Maybe<units::Length> first;  // the first joist's centre, from the inside of the west or south wall
};

struct SurveyBayPipe {
    Place place;
    Maybe<std::string> name;
    Maybe<units::Length> outside;   // its widest: over the hub
    Maybe<std::string> size;        // or its trade name, "3 in PVC"
    Maybe<WallSide> from;           // the side of the bay it is measured from
    Maybe<units::Length> distance;  // from that side to the pipe
    Maybe<Two> top, bottom;         // below the bay's top, above its bottom; at its two ends
    Maybe<bool> across;             // runs from side to side
};

struct SurveyBay {
    Place place;
    Maybe<std::string> name, floor;
    Maybe<Two> clear;                    // width between the framing, depth
    Maybe<std::pair<int, int>> between;  // joists of the floor
    Maybe<units::Length> clearance;      // between duct and pipe
    Maybe<Framing> framing;
    std::vector<SurveyBayPipe> pipes;
};

struct Survey {
    Maybe<std::string> house_name;
    Maybe<int> built, storeys, bedrooms;
    Maybe<units::Angle> north;  // of the plan, clockwise from true north
    Maybe<std::string> roof;    // "asphalt, medium"
    Maybe<Frame> frame;
    Maybe<Two> house_size;  // outside, west-east and south-north
    std::optional<Given<std::variant<LeakageClass, units::LeakageTest>>> air_leakage;
    Place house_place;
    SurveySite site;
    Maybe<std::string> thermostat_room;
    std::vector<SurveyConstruction> constructions;
    std::map<Space, SurveySpace> spaces;
    std::optional<SurveyVentilation> ventilation;
    std::vector<SurveyRoom> rooms;
    std::optional<SurveyOtherRooms> other_rooms;
    std::optional<SurveyHeater> heater;
    std::optional<SurveyBlower> blower;
    Maybe<CoolingKind> cooling;
    Maybe<units::Airflow> cooling_airflow;  // at the blower's cooling speed
    std::vector<SurveyDevice> devices;
    std::optional<SurveyDuctLeakage> duct_leakage;
    std::vector<SurveyDuct> ducts;
    std::vector<SurveyOutlet> outlets;
    std::vector<SurveyFloor> floors;
    std::vector<SurveyBay> bays;
    std::vector<SurveyReading> readings;
};

}  // namespace house
