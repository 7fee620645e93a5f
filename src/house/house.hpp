// One plain house: as found, or as planned. Nothing here is optional for want of a measurement.
//
// Built from a Survey and the defaults by house/build.hpp. Areas are of inside faces, walls net of their
// windows and doors. Lists keep the sheet's order; an id is a position in the sheet and is the same in the
// found and planned house.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "house/bay.hpp"
#include "house/ids.hpp"
#include "house/place.hpp"
#include "house/plan.hpp"
#include "house/reading.hpp"
#include "house/shape.hpp"
#include "house/survey.hpp"
#include "house/whole_system.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace house {

// --- rooms
// -----------------------------------------------------------------------------------------------------------

// Layers from outside to inside, bridged by framing where studs are given (framing 0: nothing is bridged).
struct Layers {
    std::vector<CatalogueName> names;
    double framing = 0;              // share of the face
    units::Resistance unknown = {};  // of the layers nobody knows
    units::Resistance bay = {};      // of a bay open at its ends, or of a filling nobody knows
    units::Length bay_depth = {};    // how thick that bay is; 0: there is none
    std::size_t bay_after = 0;       // how many of the named layers lie outside of it
};
// How a surface is made: a U-factor, a glass by name, or layers.
using Assembly = std::variant<units::Transmittance, CatalogueName, Layers>;

// Of a wall or a floor in the ground.
struct Buried {
    units::Length top, bottom;     // below the ground outside
    units::Length shortest_width;  // of a floor; 0: a wall
    units::Conductivity soil;
};

// A floor on the ground, which loses its heat by way of its edge.
struct Slab {
    units::Length edge;                                          // that is exposed
    std::variant<units::Conductivity, CatalogueName> edge_loss;  // W/(m K), or an edge by name
    std::variant<units::Resistance, CatalogueName> covering = units::Resistance();  // in summer
};

// How the sun meets a window. Made only where there is cooling.
struct Sunlit {
    double azimuth = 0;  // degrees clockwise from true north, of what the window faces
    units::Length height;
    double shgc = 0;                     // solar heat gain coefficient; 0: that of its glass
    std::optional<CatalogueName> glass;  // empty: not known
    bool flat = false;                   // in a slope or a ceiling: counted as lying flat
    bool screen = false;                 // of insects, outside
    std::optional<CatalogueName> shade;  // inside; empty: none
    double shade_closed = 0;             // share of the glass
    units::Length overhang;              // depth; 0: none
    units::Length overhang_above;        // its height above the window's head
};

struct Surface {
    SurfaceKind kind = SurfaceKind::wall;
    std::string name;                    // "north wall", "north window", "ceiling"
    units::Area area;                    // net
    std::variant<Space, RoomId> beyond;  // what lies on the other side
    Assembly assembly;
    std::optional<Sunlit> sun = {};  // of a window that faces outdoors
    std::optional<Buried> buried = {};
    std::optional<Slab> slab = {};
};

struct Room {
    RoomId id;
    std::string name;
    int storey = 1;
    units::Length width, depth;  // west-east, south-north; 0 where only the floor's area is known
    units::Area stated_floor;    // where there is no size
    units::Length ceiling;       // floor to ceiling
    units::Temperature winter_indoor;
    RoomUse use = RoomUse::other;
    bool altered = false;  // the work changes its walls, windows, ceiling or floor
    std::vector<Surface> surfaces;
    std::optional<Plan> plan = {};  // empty of a room without a size, or whose walls are in a list
    units::Area floor_area() const { return stated_floor + width * depth; }
};

// What of a space lies on and in the ground.
struct OnTheGround {
    units::Temperature ground;  // on the design night
    units::Area floor;
    units::Length shortest_width, depth;  // depth: of the floor below the ground outside
    Surface wall;                         // as deep as the floor; made as if it stood outdoors
};

// A space whose temperature follows from what it gains and loses (loads/buffer_space.hpp).
struct BufferSpace {
    Space space = Space::attic;
    units::Area floor_area;      // over or under the heated rooms; 0 of one that lies beside them
    std::vector<Surface> outer;  // its roof and walls, towards outdoors
    units::Airflow outdoor_air;  // through it
    std::optional<OnTheGround> on_the_ground;
    units::Power heat;  // given off in it
};

// How a leaky or a tight house shares the outdoor air that leaks in (loads/leakage_shares.hpp).
enum class LeakageSharing { by_surface, by_volume };

// Mechanical, all the time.
struct Ventilation {
    units::Airflow supply, exhaust;
    double recovery = 0;    // share of the heat
    int fans_at_times = 0;  // exhaust fans that are in no load
    bool runs() const { return supply > units::Airflow() || exhaust > units::Airflow(); }
};

// What the runs to rooms not described leave: the trunks there are, the plenum, or one duct.
enum class UsualStart { trunks, plenum };
using OthersLeave = std::variant<UsualStart, DuctId>;

// The rooms nobody described, as one lump at the house's temperature.
struct OtherRooms {
    units::Area floor_area;  // 0 where only the heat loss was given
    std::optional<units::Power>
        heat_loss;        // as stated in the sheet; empty: estimated from the rooms that are
    double exposure = 1;  // correction on the estimated exposed surface
    int outlets = 0;
    units::Length pipe;                           // round
    units::Length shortest_reach, longest_reach;  // of their runs, from trunk or plenum to the outlet
    Turns turns;
    OthersLeave leave = UsualStart::trunks;
};

// --- the machine
// -----------------------------------------------------------------------------------------------------

inline constexpr units::Temperature heat_pump_rating = units::unit::fahrenheit(47);  // of its plate output

struct Heater {
    HeaterKind kind = HeaterKind::unknown;
    // Output at sea level, or, where nothing of the heater is known, the share of time it is on in the design
    // night.
    std::variant<units::Power, double> capacity;
    double output_lost_per_metre = 0;   // of elevation: thinner air burns less gas; 0 where it does not apply
    double output_lost_per_kelvin = 0;  // of cold, a heat pump's below its rating; 0 where it does not apply
    units::TemperatureDifference least_rise, most_rise;  // nameplate
    units::Pressure max_static;     // nameplate external static pressure; 0 where not given
    double duct_loss = 0;           // heat the ducts lose outside the rooms, as a share of the rooms' loss
    std::string shares_space_with;  // "gas water heater"; empty for none
};

struct Blower {
    BlowerKind kind = BlowerKind::falling;
    std::vector<BlowerPoint> points;  // maker's table, static rising; empty where there is none
    // What fixes its airflow: a measured airflow, an external static pressure, or a temperature rise of the
    // heater.
    std::variant<units::Airflow, units::Pressure, units::TemperatureDifference> known_by;
    units::Pressure external_static;  // used where no table gives it
    bool static_measured = false;
};

struct Device {
    DeviceKind kind = DeviceKind::other;
    std::string name;
    units::Pressure drop;
    units::Airflow at;  // 0: the drop holds at the design airflow
};

// --- ducts
// -----------------------------------------------------------------------------------------------------------

struct Duct {
    DuctId id;
    Place place;
    std::string name;
    DuctSide side = DuctSide::supply;
    State state = State::found;
    std::optional<DuctId> from;  // the duct it leaves (supply) or joins (return); empty: plenum or blower
    units::Length at;            // how far along that duct
    std::optional<Shape> shape;  // empty: to be sized
    DuctKind kind = DuctKind::metal;
    double stretch = 1;  // of a flexible duct, as a share of its full length
    units::Length length;
    std::vector<CatalogueName> fittings;
    double damper = 0;           // degrees from open
    std::optional<int> through;  // position in House::bays
    // Of the air around it in the design night: a temperature, or that of a space.
    std::variant<units::Temperature, Space> surroundings;
    units::Resistance wrap;        // of the insulation around it; 0: bare
    units::Resistance resistance;  // from duct air to surroundings, on the duct's inner face
    double loss_factor = 1;        // on its whole pressure loss, for a duct nobody has seen
};

// Where in its room an outlet is; Nowhere where the sheet does not say.
struct Nowhere {};
struct UnderWindow {
    std::string window;
};
struct OnWall {
    WallSide wall = WallSide::north;
    units::Length centre;  // from the wall's west or south end
};
struct AtPoint {
    units::Length from_west, from_south;
};
using Spot = std::variant<Nowhere, UnderWindow, OnWall, AtPoint>;

struct Outlet {
    OutletId id;
    Place place;
    std::string name;
    DuctId duct;
    RoomId room;
    std::optional<Rectangular> face;       // empty: to be chosen, or not looked at
    std::optional<units::Area> free_area;  // of the face; empty: not known
    std::optional<Mount> mount;            // empty: any
    Spot spot;
    double damper = 0;  // degrees from open
    State state = State::found;
};

struct Site {
    units::Length elevation;
    units::Temperature winter_outdoor, winter_indoor;
};

// The cooling season, where there is cooling.
struct Summer {
    units::Temperature outdoor, indoor;  // on the design day; all rooms alike
    units::TemperatureDifference daily_range;
    double latitude = 0;  // degrees, south below zero
    double north = 0;     // of the plan, degrees clockwise from true north
    int bedrooms = 0;
    double lived_in_share =
        0;  // of its floor: kitchen and living rooms, at least; 0: all of them are described
    std::variant<double, CatalogueName> roof;  // absorptance, or a roof by name
    std::variant<units::Temperature, double>
        moisture;               // wet bulb outdoors; or kg/kg more outdoors than inside
    units::Temperature supply;  // leaving the coil
    units::Airflow airflow;     // at the blower's cooling speed; 0: not known
};

struct House {
    std::string name;
    int built = 0;  // year; 0 where the sheet does not say
    int storeys = 1;
    Site site;
    std::variant<double, units::LeakageTest>
        air_leakage;  // cm2 of leak per m2 of exposed surface (a ratio x 1e-4), or a test
    LeakageSharing leakage_sharing = LeakageSharing::by_surface;
    Ventilation ventilation;
    std::vector<ExhaustFan> exhaust_fans;
    std::optional<RoomId> thermostat;  // its room; empty: not known, or one nobody described
    std::array<units::Temperature, 8>
        space_winter{};                      // by Space, of those that are in no balance of their own
    std::vector<BufferSpace> buffer_spaces;  // the others
    units::Resistance empty_bay;             // of a stud bay with nothing in it
    std::vector<Room> rooms;
    std::optional<OtherRooms> other_rooms;
    Heater heater;
    Blower blower;
    bool cooling = false;
    std::optional<Summer> summer;                // where there is cooling
    std::vector<Device> devices;                 // only those outside the maker's curve
    units::Pressure register_drop, grille_drop;  // at an outlet whose face is not described
    units::Length return_length;                 // total effective length where no return duct is described
    double fitting_losses = 1;                   // against the table of fittings
    std::vector<Duct> ducts;
    std::vector<Outlet> outlets;
    std::vector<Bay> bays;
    std::vector<ZoneDevice> zone_devices;
    std::vector<Reading> readings;            // at what stands at this stage
    std::optional<WholeSystem> whole_system;  // where the question is about all ducts at once

    units::Temperature winter(Space space) const { return space_winter[static_cast<std::size_t>(space)]; }
    const BufferSpace* buffer_space(Space space) const;  // nullptr where it is in no balance of its own
    const Room& room(RoomId id) const { return rooms[static_cast<std::size_t>(id.index)]; }
    const Duct* duct(DuctId id) const;  // nullptr where this house does not have it
    bool is_supply(const Outlet& outlet) const;
    // Some storey has no room and nothing stands for the rest: rooms may have been forgotten.
    bool lacks_a_storey() const;
};

}  // namespace house
