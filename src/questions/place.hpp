// One place for a register and what it is worth; the cold air it is held against.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "questions/both_houses.hpp"
#include "questions/size_branch.hpp"
#include "registers/against_the_sheet.hpp"
#include "registers/locations.hpp"
#include "registers/sound.hpp"
#include "registers/stays_up.hpp"

namespace questions {

// Of air that falls off a window, where someone stands.
struct FallingAir {
    std::string window;
    units::Temperature glass;  // inside, its mean
    double sweats_above = 0;   // relative humidity of the room's air at which it does
    units::Length distance;    // from the glass to where one stands
    std::string at;            // "tub"; empty: nobody is known to stand nearer than 0.6 m
    units::Velocity speed;     // over the floor there
    units::Temperature air;    // that moves there
    double dissatisfied = 0;   // share of clothed, dry people who feel it
    bool tested = true;        // false: outside the range that share was tested in
};

// How much a register at the window is worth.
enum class WindowSide { needed, useful, indifferent };

enum class RuledOut { no, stopped, too_little_air, stays_up, loud };

struct WarmAirThere {
    units::Length throw_length;                          // to 0.25 m/s
    std::optional<registers::AgainstTheSheet> at_glass;  // of one under or beside a window
    std::optional<registers::FromHighUp> from_high_up;   // of one in the ceiling or high on a wall
    units::Length rise;                                  // of one low on a wall, over the run of its throw
    // Cooled air blown up: how high it comes before it falls back; only where there is cooling.
    std::optional<units::Length> cooled_reaches;
    // Cooled air blown across: how far it drops over its throw; likewise.
    std::optional<units::Length> cooled_drops;
};

struct PlaceFigures {
    BranchTrial trial;  // supply air, need, arrival, what the room reaches
    units::Length run;  // all that is new of it
    units::Length led;  // its last duct, which is led to the place
    int turns = 0;
    units::Power lost_on_the_way;
    registers::Sound sound = registers::Sound::quiet;
    units::Velocity face_speed;  // through what is open of its face
    WarmAirThere warm;
    bool washes = false;                      // the window whose air is felt most
    bool surely_washes = false;               // by more than the accuracy of both streams
    std::optional<units::Length> from_water;  // to the nearest tub, shower or toilet
    std::string water;                        // its name
};

struct Place {
    registers::Location location;
    std::optional<PlaceFigures> figures;  // none of one that cannot be built
    RuledOut ruled_out = RuledOut::no;
};

// falling_at_windows.cpp: off every window of a room in the outside walls of its plan, in the plan's order,
// felt in front of the fixture nearest to it, or 0.6 m from it.
std::vector<FallingAir> falling_at_windows(const house::House& house, const loads::RoomHeatLoss& loss);
// The one that is felt most; nullptr where no air falls.
const FallingAir* felt_most(const std::vector<FallingAir>& falling);
WindowSide window_side(const std::vector<FallingAir>& falling);

// A run on its way to a room, and the place the sheet leads it to.
struct RunToRoom {
    const HouseAtWork& planned;
    int outlet = 0;              // position in House::outlets
    registers::Spot from, base;  // where it comes from; where the sheet leads it
    house::Shape size;
    bool to_size = true;
    units::Length longest;  // that a floor register may be, to stand between joists
};

// led_run.cpp: the house with the run led to a place by the plain way: its outlet's duct longer or shorter,
// an elbow more or less, the boot of the mount.
house::House led_to(const RunToRoom& run, const registers::Location& location);

// place_figures.cpp; of a place that can be built. `falling`: of the room in that house.
PlaceFigures place_figures(const RunToRoom& run, const registers::Location& location,
                           const std::vector<FallingAir>& falling);

// choose_place.cpp
RuledOut ruled_out(const Place& place);
struct Choice {
    std::optional<std::size_t> chosen;
    std::vector<std::size_t> as_good;
};
// Of the window whose air is felt most; surely: by more than the accuracy of both streams.
enum class Washes { no, just, surely };
// `washes`: by place. The order of the places does not matter.
Choice choose_place(const std::vector<Place>& places, WindowSide side, const std::vector<Washes>& washes);

}  // namespace questions
