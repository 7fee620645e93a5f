// The plan of one room, as a register is placed in it: its walls, the windows and doors in them, what stands
// on its floor, and the joists under it.
//
// Plain geometry in metres from the inside of the room's south-west corner: x runs east, y north. Stretches
// of a wall run from its west or south end. As exact as the sheet's tape; a wall that moves by this stage
// moves what is measured from it, so that windows, fixtures and joists stay where they are in the house.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

struct Box {
    units::Length west, south, east, north;
};
bool overlap(const Box& a, const Box& b);  // by more than they may touch: a centimetre of measuring slack

struct Stretch {
    WallSide wall = WallSide::north;
    units::Length from, to;
};

// Faces of one joist or stud across its run, sisters included: from the west, or from the south.
struct Member {
    int number = 1;  // counted as in the sheet
    units::Length from, to;
};
using Joist = Member;
using Stud = Member;

struct PlanWall {
    units::Length length;
    Space beyond = Space::heated_rooms;  // or another room
    // How much of its length faces that space. Less than all of it where the sheet gives an area: which part
    // it is the sheet does not say.
    units::Length faces_it;
    std::vector<Stud> studs;   // along the wall; empty where the sheet does not place them
    units::Length stud_depth;  // across the wall; 0: not known
};

// In any wall of the four. The stretch is empty where the sheet does not say where it is.
struct PlanWindow {
    std::string name;
    WallSide wall = WallSide::north;
    std::optional<Stretch> stretch;
    units::Length width, height;
    std::optional<units::Length> sill;  // above the floor
};

// What a door's leaf sweeps: a quarter of a circle round its hinge, towards one corner of the compass.
struct DoorSwing {
    units::Length hinge_east, hinge_north;  // of the room's corner
    units::Length leaf;                     // radius
    bool towards_east = false, towards_north = false;
};
bool sweeps(const DoorSwing& swing, const Box& box);  // touching is not sweeping

struct PlanDoor {
    WallSide wall = WallSide::north;
    std::optional<Stretch> stretch;
    std::optional<DoorHanging> hanging;  // empty: not known
    std::optional<DoorSwing> swing;      // of one that opens into this room
};

struct Fixture {
    FixtureKind kind = FixtureKind::other;
    std::string name;  // or its kind
    Box box;
};

struct JoistFloor {
    JoistsRun run = JoistsRun::north_south;
    units::Length depth;  // of the joists; 0: not known
    // Those that lie under the room, in their order; empty where the sheet does not place them or the room.
    std::vector<Joist> joists;
};

struct Plan {
    units::Length width, depth;     // west-east, south-north
    std::array<PlanWall, 4> walls;  // by WallSide
    std::vector<PlanWindow> windows;
    std::vector<PlanDoor> doors;
    std::vector<Fixture> fixtures;
    std::optional<JoistFloor> floor;
    const PlanWall& wall(WallSide side) const { return walls[static_cast<std::size_t>(side)]; }
};

}  // namespace house
