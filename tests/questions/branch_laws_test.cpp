// Laws of answer_branch, tried on random houses of one described room and the rest as a lump.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "house/cannot_answer.hpp"
#include "house/mirrored.hpp"
#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_branch;
using questions::branch_setting;
using questions::BranchAnswer;
using questions::BranchTrial;
using questions::try_size;
using sheets::OneRoom;

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000; }

OneRoom any_room() {
    OneRoom room;
    room.width = between(2.5, 6);
    room.depth = between(2.5, 6);
    room.window_width = between(0.5, 2);
    room.window_height = between(0.5, 2);
    room.wall_u = between(0.3, 2);
    room.window_u = between(2, 5);  // no window is better than its wall
    room.outdoors = between(-30, 5);
    room.other_floor = between(40, 200);
    room.other_loss = between(2000, 9000);
    room.output = between(9000, 25'000);
    room.airflow = between(0.35, 0.7);
    room.run = between(1, 20);
    room.max_static = between(80, 250);
    room.surroundings = between(-10, 20);
    room.wrap = between(0.1, 2);
    return room;
}

house::House planned(const OneRoom& room) {
    return build(sheets::survey(room.sheet()), {}, house::Stage::planned).house;
}

// A 6 in pipe to the room.
BranchTrial six_inch(const OneRoom& room) {
    const house::House house = planned(room);
    return try_size(house, branch_setting(house, house::OutletId{0}),
                    house::Shape(house::Round{6 * units::unit::inch}));
}

// Endless where no airflow holds the room.
double needs_kg_s(const BranchTrial& trial) {
    return trial.needs ? trial.needs->flow.si() : std::numeric_limits<double>::infinity();
}

bool not_below(double a, double b) { return a >= b * (1 - 1e-9); }
bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * std::max({std::abs(a), std::abs(b), 1e-6}); }

RC_GTEST_PROP(BranchLaws, whatever_makes_the_room_lose_more_never_lowers_its_need, ()) {
    const OneRoom room = any_room();
    const double need = needs_kg_s(six_inch(room));
    OneRoom worse = room;
    worse.window_width = std::min(room.width, room.window_width * between(1, 1.5));
    RC_ASSERT(not_below(needs_kg_s(six_inch(worse)), need));
    worse = room;
    worse.window_u += between(0, 3);
    RC_ASSERT(not_below(needs_kg_s(six_inch(worse)), need));
    worse = room;
    worse.wall_u += between(0, 2);
    RC_ASSERT(not_below(needs_kg_s(six_inch(worse)), need));
}

// While others lose what is stated for that night, or while their share of the loss stays: as air leakage
// does by surface, and by volume does not.
RC_GTEST_PROP(BranchLaws, colder_outdoors_never_lowers_the_need, ()) {
    OneRoom room = any_room();
    if (*rc::gen::arbitrary<bool>()) room.other_loss = 0;
    room.leakage = "leaky";
    OneRoom colder = room;
    colder.outdoors -= between(0, 15);
    // the basement under the floor stays as warm as it is, so a share of the room's loss does not grow
    RC_ASSERT(needs_kg_s(six_inch(colder)) >= 0.999 * needs_kg_s(six_inch(room)));
}

RC_GTEST_PROP(BranchLaws, a_longer_run_never_needs_less_nor_carries_more, ()) {
    const OneRoom room = any_room();
    OneRoom longer = room;
    longer.run += between(0.1, 15);
    const BranchTrial here = six_inch(room), there = six_inch(longer);
    RC_ASSERT(not_below(needs_kg_s(there), needs_kg_s(here)));
    RC_ASSERT(not_below(here.carries.si(), there.carries.si()));
    RC_ASSERT(there.rate <= here.rate);
}

// At the same measured airflow, where the ducts lose nothing and the room is as warm as the house.
RC_GTEST_PROP(BranchLaws, twice_the_heater_is_on_half_the_time_and_the_room_stays_as_it_is, ()) {
    OneRoom room = any_room();
    room.surroundings = room.indoors;
    room.wrap = 500;
    room.output = between(16'000, 20'000);
    room.airflow = between(1, 2);
    OneRoom twice = room;
    twice.output *= 2;
    const house::House house = planned(room), house_with_twice = planned(twice);
    const auto setting = branch_setting(house, house::OutletId{0});
    const auto with_twice = branch_setting(house_with_twice, house::OutletId{0});
    RC_PRE(setting.on_time.holds());
    RC_ASSERT(near(with_twice.on_time.share, setting.on_time.share / 2));
    const BranchTrial once_tried = six_inch(room), twice_tried = six_inch(twice);
    RC_ASSERT(once_tried.needs.has_value());
    RC_ASSERT(near(needs_kg_s(once_tried), needs_kg_s(twice_tried)));
}

void expect_consistent(const BranchAnswer& branch) {
    for (const questions::Range& range : branch.weighed.ranges) {
        RC_ASSERT(range.low <= range.value);
        RC_ASSERT(range.value <= range.high);
    }
    const auto& sizing = branch.sizing;
    RC_ASSERT(sizing.chosen < sizing.trials.size());
    if (sizing.choice().holds() && sizing.chosen > 0) RC_ASSERT(!sizing.trials[sizing.chosen - 1].holds());
    for (const BranchTrial& trial : sizing.trials)
        if (trial.needs) RC_ASSERT(trial.needs->flow <= sizing.setting.blower.mass_flow * (1 + 1e-9));
    if (branch.verdict == questions::Verdict::yes) RC_ASSERT(sizing.choice().holds());
    if (!sizing.choice().holds()) RC_ASSERT(!holds(branch.verdict));
}

RC_GTEST_PROP(BranchLaws, the_smallest_pipe_that_holds_is_chosen_and_the_verdict_agrees, ()) {
    expect_consistent(answer_branch(sheets::survey(any_room().sheet())));
}

bool same(const BranchAnswer& a, const BranchAnswer& b) {
    if (a.verdict != b.verdict || a.sizing.trials.size() != b.sizing.trials.size()) return false;
    if (a.sizing.chosen != b.sizing.chosen) return false;
    for (std::size_t i = 0; i < a.weighed.ranges.size(); ++i) {
        const questions::Range &ra = a.weighed.ranges[i], &rb = b.weighed.ranges[i];
        if (!near(ra.low, rb.low) || !near(ra.value, rb.value) || !near(ra.high, rb.high)) return false;
    }
    for (std::size_t i = 0; i < a.sizing.trials.size(); ++i) {
        const BranchTrial &ta = a.sizing.trials[i], &tb = b.sizing.trials[i];
        if (!near(ta.gives.si(), tb.gives.si()) || !near(ta.reaches.si(), tb.reaches.si())) return false;
    }
    return true;
}

RC_GTEST_PROP(BranchLaws, one_house_written_in_either_kind_of_units_gets_one_answer, ()) {
    const OneRoom room = any_room();
    RC_ASSERT(same(answer_branch(sheets::survey(room.sheet(true))),
                   answer_branch(sheets::survey(room.sheet(false)))));
}

RC_GTEST_PROP(BranchLaws, the_order_of_ducts_and_outlets_in_the_sheet_does_not_matter, ()) {
    static const BranchAnswer as_written = answer_branch(sheets::survey(sheets::bath()));
    sheets::Pieces pieces = sheets::pieces_of(sheets::bath());
    for (std::size_t i = pieces.ducts_and_outlets.size(); i > 1; --i)
        std::swap(pieces.ducts_and_outlets[i - 1],
                  pieces.ducts_and_outlets[*rc::gen::inRange<std::size_t>(0, i)]);
    const std::string sheet =
        std::accumulate(pieces.ducts_and_outlets.begin(), pieces.ducts_and_outlets.end(), pieces.top);
    RC_ASSERT(same(as_written, answer_branch(sheets::survey(sheet))));
}

TEST(BranchLaws, a_mirrored_house_gets_the_same_answer) {
    for (const char* name : {"upstairs-bath", "si-flat-at-1650-m"}) {
        const house::Survey survey = sheets::survey(sheets::a_case(name));
        const BranchAnswer as_is = answer_branch(survey);
        EXPECT_TRUE(same(as_is, answer_branch(a_survey::mirrored_east_west(survey)))) << name;
        EXPECT_TRUE(same(as_is, answer_branch(a_survey::mirrored_north_south(survey)))) << name;
    }
}

}  // namespace
