// "Can the existing system take another outlet?": the whole system as found and as planned, side by side.
//
// Three parts are judged apart. Ducts: no described supply duct that the new outlet makes faster runs beyond
// the limit of its kind (ducts/judge_duct.hpp). Blower: external static pressure and temperature rise against
// the nameplate. Heater: on-time. Over them stands what the rooms get: the new outlet what its room needs
// once every room is held (as `branch`); and with its damper set so that its room is just held, no other room
// falls more than 1 K (which is hardly felt) below what it had, or what it is wanted at where it had more.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "ducts/judge_duct.hpp"
#include "house/survey.hpp"
#include "questions/both_houses.hpp"
#include "questions/size_branch.hpp"
#include "questions/trunk_in_summer.hpp"
#include "questions/trunk_trials.hpp"
#include "questions/try_outlet.hpp"
#include "questions/verdict.hpp"
#include "questions/weigh_assumptions.hpp"

namespace questions {

// In the order of Weighed::ranges: m3/s, K, K, Pa, m3/s.
enum class TrunkFigure { airflow, reaches, spare, external_static, blower };

// What a room, or all rooms not described, got and gets.
struct RoomShare {
    std::optional<house::RoomId> room;    // empty: the rooms not described
    units::Airflow before, after;         // supply air, as it leaves the registers
    std::optional<units::Airflow> needs;  // in the plan; empty: its air arrives too cold
    units::Temperature wanted, reached_before, reached_after;
};

struct DuctSpeed {
    int duct = -1;  // position in the planned house's ducts
    ducts::DuctPart part = ducts::DuctPart::supply_branch;
    units::Velocity before, after;  // at its fastest, a new one at what its room needs; before 0: it is new
    bool too_fast() const { return after > ducts::velocity_limit(part).most; }
    bool made_faster() const { return after > 1.02 * before; }
};

struct BlowerSide {
    units::Pressure external_static;
    units::Airflow airflow;  // of return air
    units::TemperatureDifference rise;
};

struct TrunkAnswer {
    BothHouses both;
    int outlet = 0;  // position in the planned house's outlets
    house::Shape size;
    bool sized_here = true;  // as `branch` chooses it
    BranchSetting plan;      // what rooms need once every room is held
    AtWork before, after;
    std::vector<RoomShare> rooms;  // the biggest loser of temperature first; the outlet's own room last
    std::vector<DuctSpeed> ducts;  // supply, whose shape is known, in the sheet's order
    BlowerSide blower_before, blower_after;
    Verdict ducts_can = Verdict::no, blower_can = Verdict::no, heater_can = Verdict::no;
    Verdict verdict = Verdict::no;
    Weighed weighed;
    Balanced balanced;
    std::vector<TapTrial> taps;
    std::optional<OldKept> old_kept;
    std::optional<DoorShut> door_shut;
    std::optional<TrunkInSummer> in_summer;
    std::vector<ReadingBeside> readings;

    const house::House& house() const { return both.planned.house; }
    const house::Outlet& new_outlet() const { return house().outlets[static_cast<std::size_t>(outlet)]; }
    Range range(TrunkFigure figure) const { return weighed.ranges[static_cast<std::size_t>(figure)]; }
};

// The outlet asked for by name, or the only new one. As answer_branch.
TrunkAnswer answer_trunk(const house::Survey& survey, const std::string& outlet_name = {});

}  // namespace questions
