// One place for a register and what it is worth; the cold air it is held against.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "questions/both_houses.hpp"
#include "questions/size_branch.hpp"
#include "registers/against_the_sheet.hpp"
#include "registers/cooled_air.hpp"
#include "registers/locations.hpp"
#include "registers/sound.hpp"
#include "registers/stack_in_wall.hpp"
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
    // The same nearer and farther, where nobody is known to stand anywhere.
    std::optional<double> dissatisfied_near, dissatisfied_far;
    bool tested = true;  // false: outside the range that share was tested in
};

// How much a register at the window is worth.
enum class WindowSide { needed, useful, indifferent };

enum class RuledOut { no, stopped, too_little_air, stays_up, cold_wall, loud };

struct WarmAirThere {
    units::Length throw_length;                          // to 0.25 m/s
    std::optional<registers::AgainstTheSheet> at_glass;  // of one under or beside a window
    registers::WashingJet washing;                       // the jet of that one, and
    std::string_view blades;                             // how its blades stand
    std::optional<registers::FromHighUp> from_high_up;   // of one in the ceiling or high on a wall
    units::Length rise;                                  // of one low on a wall, over the run of its throw
};

// While the coil is on.
struct CooledPlace {
    units::Airflow gives;  // as it leaves the coil
    registers::CooledAirThere air;
};

units::Length sill_of(const house::PlanWindow& window);  // the usual 3 ft where the sheet gives none

struct PlaceFigures {
    BranchTrial trial;  // supply air, need, arrival, what the room reaches
    units::Length run;  // all that is new of it
    units::Length led;  // its last duct, which is led to the place
    int turns = 0;
    units::Power lost_on_the_way;
    registers::Sound sound = registers::Sound::quiet;
    units::Velocity face_speed;  // through what is open of its face
    WarmAirThere warm;
    std::optional<CooledPlace> cooled;                   // where there is cooling
    std::optional<registers::StackInWall> in_cold_wall;  // of one in an outside wall
    bool washes = false;                                 // the window whose air is felt most
    bool surely_washes = false;                          // by more than the accuracy of both streams
    std::optional<units::Length> from_water;             // to the nearest tub, shower or toilet
    std::string water;                                   // its name
};

struct Place {
    registers::Location location;
    std::optional<PlaceFigures> figures;  // none of one that cannot be built
    RuledOut ruled_out = RuledOut::no;
};

inline constexpr units::Length stands_near{0.3}, usually_stands{0.6}, stands_far{1.2};  // from the glass

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

// outside_walls.cpp: what lies behind a register in an outside wall; empty of one that is not in any.
std::optional<loads::OutsideTheBay> outside_of(const house::Room& room, const registers::Location& location);
// Those whose bay no stack passes are stopped.
void stop_in_shallow_walls(const house::Room& room, std::vector<registers::Location>& locations);

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

Washes washes_by(const PlaceFigures& figures);

// sill_taken.cpp: of the window whose air is felt most, where the sheet gives it no sill; what another would
// do.
inline constexpr units::Length lowest_usual_sill{2 * units::unit::foot},
    highest_usual_sill{4 * units::unit::foot};  // common practice
struct SillTaken {
    std::string window;
    units::Length sill;
    std::vector<units::Length> moves_the_choice;  // the lowest, the highest, both or neither
};
std::optional<SillTaken> sill_taken(const RunToRoom& run, const std::vector<Place>& places,
                                    const std::vector<FallingAir>& falling,
                                    std::optional<std::size_t> chosen);

// place_in_summer.cpp: heating and cooling are told apart.
struct PlaceInSummer {
    units::Airflow needs;               // of this outlet, as it leaves the coil
    std::optional<std::size_t> chosen;  // for cooling alone; empty: none brings enough
};
// Empty where there is no cooling.
std::optional<PlaceInSummer> place_in_summer(const RunToRoom& run, const std::vector<Place>& places);

}  // namespace questions
