// What else could be done about a new outlet.
#include "questions/trunk_trials.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "questions/answer_trunk.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_trunk;
using questions::TrunkAnswer;
using sheets::with;

TrunkAnswer answer(const std::string& sheet) { return answer_trunk(sheets::survey(sheet)); }
const TrunkAnswer& of_the_bath() {
    static const TrunkAnswer trunk = answer(sheets::bath());
    return trunk;
}

// A door with half an inch under it and a fan that runs at times.
std::string with_a_fan() {
    return with(sheets::bath(), "[[room]]\nname = \"bedroom\"",
                "[[room.exhaust_fan]]\nflow = \"80 cfm\"\nruns = \"at times\"\n[[room]]\nname = \"bedroom\"");
}

TEST(Balance, dampers_that_hold_every_room_do_so_when_solved_again) {
    for (const std::string& sheet :
         {sheets::bath(), with(sheets::bath(), "length = \"17 ft\"", "length = \"6 ft\"")}) {
        const TrunkAnswer trunk = answer(sheet);
        questions::Proposal proposal{trunk.size, {}, {}, false, network::Fans::off};
        const house::House& house = trunk.house();
        for (std::size_t i = 0; i < house.outlets.size(); ++i)
            for (const questions::DamperSet& set : trunk.balanced.dampers)
                if (house.is_supply(house.outlets[i]) && house.outlets[i].room == set.room)
                    proposal.dampers.push_back({static_cast<int>(i), set.degrees});
        const auto again = questions::try_outlet(trunk.both.planned, trunk.outlet, proposal);
        bool any_short = false;
        for (const questions::DamperSet& set : trunk.balanced.dampers) {
            const auto reaches = again.work.night.rooms[static_cast<std::size_t>(set.room.index)];
            EXPECT_NEAR(reaches.si(), set.reaches.si(), 1e-6);
            const double above = (reaches - house.room(set.room).winter_indoor).si();
            any_short = any_short || above < -0.5;
            if (set.degrees > 1 && set.degrees < questions::most_set_damper - 1) {
                EXPECT_NEAR(above, 0, 0.6);
            }
        }
        EXPECT_EQ(any_short, trunk.balanced.falls_short.has_value());
    }
}

TEST(Taps, are_the_trunks_places_the_other_runs_and_the_plenum_each_once) {
    const TrunkAnswer& trunk = of_the_bath();
    ASSERT_GE(trunk.taps.size(), 3u);
    EXPECT_FALSE(trunk.taps.back().tap.duct);
    for (std::size_t i = 0; i < trunk.taps.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(trunk.taps[i].tap.duct == trunk.taps[j].tap.duct &&
                         trunk.taps[i].tap.at == trunk.taps[j].tap.at);
    for (const questions::TapTrial& tap : trunk.taps) {
        EXPECT_GT(tap.airflow.si(), 0);
        EXPECT_TRUE(tap.has_loser);
    }
}

TEST(Taps, of_a_trunk_of_one_foot_stay_on_it) {
    std::string sheet = with(sheets::bath(), "length = \"22 ft\"", "length = \"9 in\"");
    sheet = with(sheet, "at = \"18 ft\"", "at = \"3 in\"");
    const TrunkAnswer trunk = answer(with(sheet, "at = \"20 ft\"", "at = \"6 in\""));
    for (const questions::TapTrial& tap : trunk.taps)
        if (tap.tap.duct) {
            EXPECT_LE(tap.tap.at, trunk.house().duct(*tap.tap.duct)->length);
        }
}

// The same taps with the same air, whatever stands first in the sheet.
TEST(Taps, do_not_follow_from_the_order_of_the_sheet) {
    const sheets::Pieces pieces = sheets::pieces_of(sheets::bath());
    std::string turned = pieces.top;
    for (std::size_t i = pieces.ducts_and_outlets.size(); i-- > 0;) turned += pieces.ducts_and_outlets[i];
    const TrunkAnswer &a = of_the_bath(), b = answer(turned);
    ASSERT_EQ(a.taps.size(), b.taps.size());
    const auto airflows = [](const TrunkAnswer& trunk) {
        std::vector<double> all;
        for (const auto& tap : trunk.taps) all.push_back(tap.airflow.si());
        std::sort(all.begin(), all.end());
        return all;
    };
    for (std::size_t i = 0; i < a.taps.size(); ++i) EXPECT_NEAR(airflows(a)[i], airflows(b)[i], 1e-9);
}

TEST(OldKept, only_where_an_outlet_is_removed) {
    EXPECT_FALSE(of_the_bath().old_kept);
    const std::string sheet = with(sheets::bath(), "duct = \"bedroom run\"\nroom = \"bedroom\"",
                                   "duct = \"bedroom run\"\nroom = \"bath\"\nstate = \"removed\"");
    const TrunkAnswer trunk = answer(with(sheet, "at = \"18 ft\"", "at = \"18 ft\"\nstate = \"removed\""));
    ASSERT_TRUE(trunk.old_kept);
    EXPECT_THAT(trunk.old_kept->outlets, testing::ElementsAre("bedroom register"));
    EXPECT_GT(trunk.old_kept->old_airflow.si(), 0);
    EXPECT_LT(trunk.old_kept->airflow, trunk.rooms.back().after);
    EXPECT_GT(trunk.old_kept->reaches, trunk.rooms.back().reached_after);
}

TEST(DoorShut, lifts_the_rooms_pressure_and_a_fan_turns_it) {
    const TrunkAnswer trunk = answer(with_a_fan());
    ASSERT_TRUE(trunk.door_shut);
    const questions::DoorShut& door = *trunk.door_shut;
    EXPECT_GT(door.pressure.si(), 0);
    EXPECT_LT(door.supply, trunk.rooms.back().after);
    ASSERT_TRUE(door.has_fan);
    EXPECT_NEAR(door.fan / units::unit::cfm, 80, 1e-9);
    EXPECT_LT(door.pressure_with_fan, door.pressure);
    // What the fan draws no longer goes out under the door.
    EXPECT_GT(door.inflow, -1.0 * door.supply);
    EXPECT_LT(door.inflow, door.fan);
    EXPECT_FALSE(of_the_bath().door_shut->has_fan);
}

TEST(Readings, stand_beside_what_is_predicted) {
    const std::string sheet =
        sheets::bath() +
        "\n[[reading]]\nwhat = \"airflow\"\nat = \"bedroom register\"\nvalue = \"70 cfm\"\n"
        "[[reading]]\nwhat = \"static\"\nat = \"supply plenum\"\nvalue = \"0.2 in.wc\"\n"
        "[[reading]]\nwhat = \"temperature\"\nat = \"bedroom\"\nvalue = \"66 F\"\n";
    const TrunkAnswer trunk = answer(sheet);
    ASSERT_EQ(trunk.readings.size(), 3u);
    EXPECT_EQ(trunk.readings[0].at, "bedroom register");
    EXPECT_EQ(std::get<units::Airflow>(trunk.readings[0].predicted),
              questions::airflow_of(trunk.both.found, trunk.before, 0));
    EXPECT_EQ(std::get<units::Pressure>(trunk.readings[1].predicted), trunk.before.point.supply_plenum);
    EXPECT_EQ(std::get<units::Temperature>(trunk.readings[2].predicted), trunk.before.night.rooms[1]);
}

}  // namespace
