// "Can the system take another outlet?", asked of whole sheets.
#include "questions/answer_trunk.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "house/cannot_answer.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_trunk;
using questions::RoomShare;
using questions::TrunkAnswer;
using questions::TrunkFigure;
using questions::Verdict;
using sheets::with;

TrunkAnswer answer(const std::string& sheet, const std::string& outlet = {}) {
    return answer_trunk(sheets::survey(sheet), outlet);
}

const TrunkAnswer& of_the_bath() {
    static const TrunkAnswer trunk = answer(sheets::bath());
    return trunk;
}

std::string blower_line(const std::string& more) {
    return with(sheets::bath(), "includes = [\"filter\"]", "includes = [\"filter\"]\n" + more);
}

TEST(AnswerTrunk, the_only_new_outlet_is_meant_and_any_supply_outlet_can_be_named) {
    EXPECT_EQ(of_the_bath().new_outlet().name, "new register");
    EXPECT_EQ(answer(sheets::bath(), "bedroom register").new_outlet().name, "bedroom register");
    EXPECT_THROW(answer(sheets::bath(), "new registar"), house::AskedWrongly);
    EXPECT_THROW(answer(sheets::without_the_new(sheets::bath())), house::AskedWrongly);
}

TEST(AnswerTrunk, lists_every_room_that_has_air_and_its_own_last) {
    const TrunkAnswer& trunk = of_the_bath();
    ASSERT_EQ(trunk.rooms.size(), 3u);
    EXPECT_EQ(trunk.rooms.back().room, house::RoomId{0});
    EXPECT_EQ(trunk.rooms.back().before.si(), 0);
    double lost = INFINITY;
    for (std::size_t i = 0; i + 1 < trunk.rooms.size(); ++i) {
        const RoomShare& share = trunk.rooms[i];
        EXPECT_LT(share.after, share.before);
        EXPECT_LE((share.reached_before - share.reached_after).si(), lost);
        lost = (share.reached_before - share.reached_after).si();
    }
}

TEST(AnswerTrunk, what_the_rooms_get_is_what_the_blower_moves_less_what_leaks) {
    const TrunkAnswer& trunk = of_the_bath();
    for (const auto* work : {&trunk.before, &trunk.after}) {
        double supplied = (work->point.other_rooms + work->point.supply_leak).si();
        for (std::size_t i = 0; i < work->point.outlets.size(); ++i) {
            const auto& house = work == &trunk.before ? trunk.both.found.house : trunk.both.planned.house;
            if (house.is_supply(house.outlets[i])) supplied += work->point.outlets[i].si();
        }
        EXPECT_NEAR(supplied, work->point.blower.si(), 1e-8);
        EXPECT_LT(work->point.residual, 1e-9);
    }
}

TEST(AnswerTrunk, a_measured_airflow_or_rise_is_what_the_house_moves_before) {
    const TrunkAnswer measured = answer(blower_line("measured = \"900 cfm\""));
    EXPECT_EQ(measured.both.known_by, network::AirflowKnown::measured);
    EXPECT_NEAR(measured.blower_before.airflow / units::unit::cfm, 900, 1e-4);
    const std::string reading = "\n[[reading]]\nwhat = \"temperature rise\"\nvalue = \"55 F\"\n";
    const TrunkAnswer rise = answer(sheets::bath() + reading);
    EXPECT_EQ(rise.both.known_by, network::AirflowKnown::by_rise);
    EXPECT_NEAR(rise.blower_before.rise.si(), 55 / 1.8, 1e-6);
    EXPECT_EQ(of_the_bath().both.known_by, network::AirflowKnown::by_table);
}

TEST(AnswerTrunk, each_part_says_no_by_itself) {
    const std::string weak = with(sheets::bath(), "output = \"64000 Btu/h\"", "output = \"20000 Btu/h\"");
    const TrunkAnswer cold = answer(weak);
    EXPECT_EQ(cold.heater_can, Verdict::no);
    EXPECT_EQ(cold.verdict, Verdict::no);
    const TrunkAnswer hot = answer(blower_line("measured = \"500 cfm\""));
    EXPECT_EQ(hot.blower_can, Verdict::no);
    EXPECT_EQ(hot.verdict, Verdict::no);
    const TrunkAnswer narrow = answer(with(sheets::bath(), "shape = \"8 x 16 in\"", "shape = \"8 in\""));
    EXPECT_EQ(narrow.ducts_can == Verdict::no,
              std::any_of(narrow.ducts.begin(), narrow.ducts.end(), [](const questions::DuctSpeed& speed) {
                  return speed.made_faster() && speed.too_fast();
              }));
}

TEST(AnswerTrunk, zones_are_not_covered_and_the_device_is_named) {
    try {
        answer(sheets::bath() + "\n[[device]]\nkind = \"zone damper\"\nname = \"upstairs damper\"\n");
        ADD_FAILURE() << "answered";
    } catch (const house::CannotAnswer& why) {
        EXPECT_THAT(why.what(), testing::HasSubstr("upstairs damper splits the system in zones"));
        EXPECT_THAT(why.what(), testing::HasSubstr("not covered"));
        EXPECT_GT(why.place().line, 0);
    }
}

TEST(AnswerTrunk, a_room_that_loses_its_only_outlet_pays_for_it) {
    std::string sheet = with(sheets::bath(), "duct = \"bedroom run\"\nroom = \"bedroom\"",
                             "duct = \"bedroom run\"\nroom = \"bedroom\"\nstate = \"removed\"");
    sheet = with(sheet, "at = \"18 ft\"", "at = \"18 ft\"\nstate = \"removed\"");
    const TrunkAnswer trunk = answer(sheet);
    ASSERT_EQ(trunk.rooms.size(), 3u);
    EXPECT_EQ(trunk.rooms.front().room, house::RoomId{1});
    EXPECT_EQ(trunk.rooms.front().after.si(), 0);
    EXPECT_FALSE(questions::holds(trunk.verdict));
}

TEST(AnswerTrunk, a_house_that_has_nothing_yet_is_answered_without_a_before) {
    const std::string sheet = R"(sheet = 1
[house]
built = 1990
storeys = 1
[site]
winter_outdoor = "3 F"
winter_indoor = "70 F"
[[room]]
name = "studio"
size = ["12 ft", "12 ft"]
ceiling = "8 ft"
[heater]
kind = "furnace"
output = "30000 Btu/h"
[[duct]]
name = "run"
side = "supply"
from = "plenum"
length = "15 ft"
state = "new"
[[outlet]]
name = "register"
duct = "run"
room = "studio"
state = "new"
)";
    const TrunkAnswer trunk = answer(sheet);
    EXPECT_FALSE(trunk.both.found_is_supplied);
    EXPECT_TRUE(trunk.sized_here);
    EXPECT_GT(trunk.rooms.back().after.si(), 0);
    EXPECT_TRUE(trunk.taps.empty());
    EXPECT_TRUE(trunk.readings.empty());
}

TEST(AnswerTrunk, weighs_its_guesses_and_is_the_same_every_time) {
    const TrunkAnswer &once = of_the_bath(), again = answer(sheets::bath());
    for (const TrunkFigure figure :
         {TrunkFigure::airflow, TrunkFigure::reaches, TrunkFigure::spare, TrunkFigure::blower}) {
        const questions::Range range = once.range(figure);
        EXPECT_LE(range.low, range.value);
        EXPECT_LE(range.value, range.high);
        EXPECT_EQ(range.low, again.range(figure).low);
    }
    EXPECT_NEAR(once.range(TrunkFigure::airflow).value, once.rooms.back().after.si(), 1e-12);
    EXPECT_FALSE(once.weighed.weights.empty());
}

// The damper of the room in which the thermostat hangs holds nothing: closing it makes all others warmer.
TEST(AnswerTrunk, the_thermostats_own_room_keeps_its_damper_open) {
    const std::string sheet = with(sheets::bath(), "[[room]]\nname = \"bath\"",
                                   "[thermostat]\nroom = \"bath\"\n[[room]]\nname = \"bath\"");
    const TrunkAnswer trunk = answer(sheet);
    EXPECT_EQ(trunk.balanced.dampers.front().room, house::RoomId{0});
    EXPECT_EQ(trunk.balanced.dampers.front().degrees, 0);
    EXPECT_NEAR(trunk.rooms.back().reached_after.si(), trunk.rooms.back().wanted.si(), 1e-6);
}

}  // namespace
