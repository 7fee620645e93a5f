// What else could be done about a new outlet: dampers that hold every room, other taps, the old outlet kept,
// the door shut; and what was measured beside what the model says.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "house/survey.hpp"
#include "questions/both_houses.hpp"
#include "questions/try_outlet.hpp"

namespace questions {

// One outlet, its size, and the house as it stands with both: what every trial starts from.
struct TrialSetting {
    const HouseAtWork& planned;
    int outlet = 0;
    house::Shape size;
};

// Dampers set one after the other, in rounds until no handle moves, each so that its room just reaches what
// it is wanted at.
struct DamperSet {
    house::RoomId room;
    double degrees = 0;      // of every supply outlet of the room
    units::Airflow airflow;  // of the room then
    units::Temperature reaches;
};
struct Balanced {
    std::vector<DamperSet> dampers;            // of rooms with a damper to set, in the sheet's order
    std::optional<house::RoomId> falls_short;  // the described room farthest below, by more than 0.5 K
    units::Temperature reaches;                // of that room
    AtWork work;
};
// Beyond this a damper is a source of noise.
inline constexpr double most_set_damper = 60;
Balanced balance(const TrialSetting& setting);
// The damper of the new outlet alone, so that its room just reaches what it is wanted at; 0 where it does
// not.
double damper_that_holds(const TrialSetting& setting);

struct TapTrial {
    Tap tap;
    units::Airflow airflow;
    units::Temperature reaches;
    house::RoomId loser;  // the other described room that gives up most
    units::Airflow loser_airflow;
    bool has_loser = false;
};
// Along the duct it leaves, from the other runs half-way, and at the plenum, with the same run of pipe.
std::vector<TapTrial> other_taps(const TrialSetting& setting, const AtWork& before, const HouseAtWork& found);

struct OldKept {
    std::vector<std::string> outlets;  // the ones to be removed
    units::Airflow airflow, old_airflow;
    units::Temperature reaches;
};
// As planned, but with what is to be removed kept; empty where no supply outlet is.
std::optional<OldKept> old_kept(const house::Survey& survey, const TrialSetting& setting);

struct DoorShut {
    units::Pressure pressure;  // of the room over the rest of the house
    units::Airflow supply;
    // With its exhaust fans on; inflow under the door.
    bool has_fan = false;
    units::Airflow fan, inflow;
    units::Pressure pressure_with_fan;
};
// Empty where the door is shut anyway, or nothing is known of the room's way out.
std::optional<DoorShut> door_shut(const TrialSetting& setting);

struct ReadingBeside {
    house::Reading reading;
    std::variant<units::Airflow, units::Pressure, units::TemperatureDifference, units::Temperature> predicted;
    std::string at;  // "bedroom register", "supply plenum"
};
std::vector<ReadingBeside> readings_beside(const HouseAtWork& found, const AtWork& before);

}  // namespace questions
