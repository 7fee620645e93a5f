#include "questions/answer_branch.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "house/cannot_answer.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::answer_branch;
using questions::BranchAnswer;
using questions::BranchFigure;
using questions::BranchTrial;
using questions::Verdict;
using sheets::with;

// Worked out once for each sheet and outlet.
const BranchAnswer& answer(const std::string& sheet, const std::string& outlet = {}) {
    static std::map<std::string, BranchAnswer> known;
    const std::string key = outlet + "\n" + sheet;
    const auto at = known.find(key);
    if (at != known.end()) return at->second;
    return known.emplace(key, answer_branch(sheets::survey(sheet), outlet)).first->second;
}

std::string complaint(const std::string& sheet, const std::string& outlet = {}) {
    try {
        answer(sheet, outlet);
    } catch (const house::AskedWrongly& asked) {
        return asked.what();
    }
    return "answered";
}

double inches(const BranchTrial& trial) {
    return std::get<house::Round>(trial.pipe).diameter / units::unit::inch;
}

TEST(WhichOutlet, the_only_new_one_is_meant) {
    EXPECT_EQ(answer(sheets::bath()).outlet.name, "new register");
}

TEST(WhichOutlet, any_supply_outlet_of_the_planned_house_can_be_named) {
    EXPECT_EQ(answer(sheets::bath(), "bedroom register").outlet.name, "bedroom register");
}

TEST(WhichOutlet, a_sheet_that_plans_none_is_told_how_to) {
    EXPECT_EQ(complaint(sheets::without_the_new(sheets::bath())),
              "the sheet plans no new supply outlet: give a [[duct]] and its [[outlet]] state = \"new\"");
}

TEST(WhichOutlet, of_two_new_ones_one_has_to_be_named) {
    const std::string sheet = with(sheets::bath(), "at = \"18 ft\"", "at = \"18 ft\"\nstate = \"new\"");
    const std::string both =
        with(sheet, "room = \"bedroom\"\n[[duct]]", "room = \"bedroom\"\nstate = \"new\"\n[[duct]]");
    EXPECT_EQ(complaint(both),
              "two new outlets, 'bedroom register' and 'new register': say which with --outlet NAME");
    EXPECT_EQ(answer(both, "new register").outlet.name, "new register");
}

TEST(WhichOutlet, an_unknown_name_gets_the_nearest) {
    EXPECT_EQ(complaint(sheets::bath(), "new registar"),
              "no supply outlet of the planned house is called 'new registar'; did you mean 'new register'?");
    EXPECT_EQ(complaint(sheets::bath(), "chimney"),
              "no supply outlet of the planned house is called 'chimney'");
}

TEST(WhichOutlet, a_return_grille_is_no_supply_outlet) {
    EXPECT_EQ(complaint(sheets::bath(), "grille"),
              "no supply outlet of the planned house is called 'grille'");
}

TEST(AnswerBranch, the_smallest_stock_pipe_that_holds_the_room_is_chosen) {
    const BranchAnswer branch = answer(sheets::bath());
    const auto& sizing = branch.sizing;
    ASSERT_TRUE(sizing.to_size);
    EXPECT_TRUE(sizing.choice().holds());
    ASSERT_GT(sizing.chosen, 0u);
    EXPECT_FALSE(sizing.trials[sizing.chosen - 1].holds());
    EXPECT_LT(inches(sizing.trials[sizing.chosen - 1]), inches(sizing.choice()));
}

TEST(AnswerBranch, the_choice_does_not_depend_on_where_the_search_starts) {
    const BranchAnswer branch = answer(sheets::bath());
    const auto& setting = branch.sizing.setting;
    for (double start : {3, 6, 12}) {
        const house::Round pipe{start * units::unit::inch};
        const BranchTrial first = try_size(branch.house, setting, house::Shape(pipe));
        EXPECT_EQ(inches(choose_pipe(branch.house, setting, first)), inches(branch.sizing.choice())) << start;
    }
}

TEST(AnswerBranch, beside_the_choice_are_smaller_and_larger_pipes_and_a_stack) {
    const BranchAnswer branch = answer(sheets::bath());
    const auto& trials = branch.sizing.trials;
    ASSERT_EQ(trials.size(), 5u);
    for (std::size_t i = 1; i < 4; ++i) {
        EXPECT_LT(inches(trials[i - 1]), inches(trials[i]));
        EXPECT_LT(trials[i - 1].gives, trials[i].gives);
    }
    EXPECT_TRUE(std::holds_alternative<house::Rectangular>(trials[4].pipe));
}

TEST(AnswerBranch, ranges_are_in_order_and_the_margin_is_what_it_gives_less_what_it_needs) {
    const BranchAnswer branch = answer(sheets::bath());
    ASSERT_EQ(branch.weighed.ranges.size(), 4u);
    for (const questions::Range& range : branch.weighed.ranges) {
        EXPECT_LE(range.low, range.value);
        EXPECT_LE(range.value, range.high);
        EXPECT_LT(range.low, range.high);
    }
    EXPECT_NEAR(branch.range(BranchFigure::margin).value,
                branch.range(BranchFigure::gives).value - branch.range(BranchFigure::needs).value, 1e-12);
    EXPECT_EQ(branch.range(BranchFigure::needs).value, branch.sizing.choice().needs->airflow.si());
}

TEST(AnswerBranch, the_verdict_follows_from_the_margin) {
    const BranchAnswer branch = answer(sheets::bath());
    ASSERT_TRUE(branch.weighed.always_answered);
    EXPECT_EQ(branch.verdict, questions::verdict(branch.range(BranchFigure::margin)));
}

TEST(AnswerBranch, with_just_the_air_it_needs_the_room_is_as_warm_as_wanted) {
    const BranchAnswer branch = answer(sheets::bath());
    const units::Temperature reached =
        ducts::room_temperature(branch.sizing.way, branch.sizing.setting.supply, branch.sizing.setting.asked,
                                branch.sizing.choice().needs->flow);
    EXPECT_NEAR(reached.si(), units::unit::fahrenheit(74).si(), 1e-7);
    EXPECT_GE(branch.sizing.choice().reaches.si(), reached.si());
}

TEST(AnswerBranch, a_shape_that_is_given_is_kept_and_judged) {
    const BranchAnswer branch =
        answer(with(sheets::bath(), "length = \"17 ft\"", "length = \"17 ft\"\nshape = \"3 in\""));
    EXPECT_FALSE(branch.sizing.to_size);
    ASSERT_EQ(branch.sizing.trials.size(), 1u);
    EXPECT_NEAR(inches(branch.sizing.choice()), 3, 1e-12);
    EXPECT_FALSE(branch.sizing.choice().holds());
    EXPECT_FALSE(holds(branch.verdict));
    EXPECT_FALSE(branch.cooler);
}

TEST(AnswerBranch, a_given_shape_is_judged_as_the_same_size_tried) {
    const BranchTrial chosen = answer(sheets::bath()).sizing.choice();
    const std::string shape = "\nshape = \"" + std::to_string(std::lround(inches(chosen))) + " in\"";
    const BranchTrial given =
        answer(with(sheets::bath(), "length = \"17 ft\"", "length = \"17 ft\"" + shape)).sizing.choice();
    // Of a size that is sought the blower's air is found with a first pipe in its place.
    EXPECT_NEAR(given.gives.si(), chosen.gives.si(), 1e-3 * chosen.gives.si());
    EXPECT_NEAR(given.needs->airflow.si(), chosen.needs->airflow.si(), 1e-3 * chosen.needs->airflow.si());
}

TEST(AnswerBranch, a_room_wanted_warmer_is_also_answered_at_the_houses_temperature) {
    const BranchAnswer branch = answer(sheets::bath());
    ASSERT_TRUE(branch.cooler);
    EXPECT_NEAR(units::unit::in_fahrenheit(branch.cooler->temperature), 70, 1e-9);
    EXPECT_LE(inches(branch.cooler->choice), inches(branch.sizing.choice()));
    EXPECT_LT(branch.cooler->choice.needs->airflow.si(), branch.sizing.choice().needs->airflow.si());
    EXPECT_GE(branch.cooler->electric.si(), 0);
    EXPECT_FALSE(answer(with(sheets::bath(), "winter_indoor = \"74 F\"", "winter_indoor = \"70 F\"")).cooler);
}

// What the electric heater adds and what the air brings cover what the room loses at the wanted temperature.
TEST(AnswerBranch, the_electric_heater_makes_up_for_the_smaller_pipe) {
    const std::string sheet = with(sheets::bath(), "winter_indoor = \"74 F\"", "winter_indoor = \"78 F\"");
    const BranchAnswer branch = answer(sheet);
    ASSERT_TRUE(branch.cooler);
    const auto& setting = branch.sizing.setting;
    const BranchTrial there = try_size(branch.house, setting, branch.cooler->choice.pipe);
    if (there.reaches >= units::unit::fahrenheit(78)) {
        EXPECT_EQ(branch.cooler->electric.si(), 0);
        return;
    }
    const double flow = there.gives_mass.si();
    const double brought = setting.supply.on_time * flow * setting.supply.specific_heat.si() *
                           (there.arrives - units::unit::fahrenheit(78)).si();
    EXPECT_NEAR(branch.cooler->electric.si(), setting.asked.total.si() - brought,
                0.02 * setting.asked.total.si());
}

TEST(AnswerBranch, two_outlets_share_their_room_equally) {
    const std::string second =
        "[[duct]]\nname = \"second run\"\nside = \"supply\"\nfrom = \"trunk\"\nshape = \"5 in\"\nlength = "
        "\"9 ft\"\n"
        "turns = \"1 square\"\n[[outlet]]\nname = \"second register\"\nduct = \"second run\"\nroom = "
        "\"bath\"\n";
    const BranchAnswer one = answer(sheets::bath()), two = answer(sheets::bath() + second);
    EXPECT_EQ(two.sizing.setting.outlets_in_room, 2);
    EXPECT_NEAR(two.sizing.setting.asked.total.si(), one.sizing.setting.asked.total.si() / 2, 1e-9);
    EXPECT_LE(inches(two.sizing.choice()), inches(one.sizing.choice()));
}

TEST(AnswerBranch, a_heater_too_small_is_on_all_the_time_and_never_gives_a_yes) {
    const BranchAnswer branch =
        answer(with(sheets::bath(), "output = \"64000 Btu/h\"", "output = \"24000 Btu/h\""));
    EXPECT_GT(branch.sizing.setting.on_time.wanted, 1);
    EXPECT_EQ(branch.sizing.setting.on_time.share, 1);
    EXPECT_FALSE(branch.sizing.setting.on_time.holds());
    EXPECT_FALSE(questions::holds(branch.verdict));
}

// A plan that comes to nothing is no airflow: what the blower moves is told by its temperature rise.
TEST(AnswerBranch, a_plan_with_nothing_left_for_the_ducts_is_no_verdict) {
    const BranchAnswer branch =
        answer(with(sheets::bath(), "max_static = \"0.50 in.wc\"", "max_static = \"0.02 in.wc\""));
    EXPECT_LT(branch.sizing.budget.available.si(), 0);
    EXPECT_EQ(branch.sizing.choice().carries.si(), 0);
    EXPECT_GT(branch.sizing.choice().gives.si(), 0);
    EXPECT_TRUE(is_finite(branch.sizing.choice().reaches));
}

TEST(AnswerBranch, supply_air_colder_than_the_room_holds_it_at_no_airflow) {
    const std::string weak = with(sheets::bath(), "output = \"64000 Btu/h\"", "output = \"3000 Btu/h\"");
    const BranchAnswer branch = answer(with(weak, "[blower]", "[blower]\nmeasured = \"1100 cfm\""));
    EXPECT_FALSE(branch.sizing.choice().needs);
    EXPECT_FALSE(branch.sizing.choice().holds());
    EXPECT_LT(branch.sizing.choice().margin().si(), 0);
    EXPECT_FALSE(branch.weighed.always_answered);
    EXPECT_EQ(branch.verdict, Verdict::no);
}

TEST(AnswerBranch, a_heater_whose_air_would_scorch_is_refused) {
    const std::string sheet = with(sheets::bath(), "[blower]", "[blower]\nmeasured = \"300 cfm\"");
    EXPECT_THROW(answer(sheet), house::CannotAnswer);
}

TEST(AnswerBranch, a_blower_beyond_its_table_moves_no_air_and_is_refused) {
    const std::string sheet = with(sheets::bath(), "max_static = \"0.50 in.wc\"", "max_static = \"5 in.wc\"");
    EXPECT_THROW(answer(sheet), house::CannotAnswer);
}

TEST(AnswerBranch, the_loss_before_is_told_where_the_work_changes_it) {
    EXPECT_FALSE(answer(sheets::bath()).loss_before);
    const std::string sheet = with(sheets::bath(), "construction = \"wall\"\n[[room.window]]",
                                   "construction = \"wall\"\nbecomes = \"filled\"\n[[room.window]]");
    const BranchAnswer branch = answer(sheet);
    ASSERT_TRUE(branch.loss_before);
    EXPECT_GT(branch.loss_before->si(), branch.sizing.setting.asked.total.si());
    EXPECT_LT(branch.sizing.choice().needs->airflow.si(),
              answer(sheets::bath()).sizing.choice().needs->airflow.si());
}

TEST(AnswerBranch, every_case_is_answered) {
    for (const char* name : {"least-sheet", "si-flat-at-1650-m", "upstairs-bath"}) {
        const BranchAnswer branch = answer(sheets::a_case(name));
        EXPECT_TRUE(branch.sizing.choice().needs) << name;
        EXPECT_TRUE(branch.sizing.choice().holds()) << name;
        EXPECT_TRUE(holds(branch.verdict)) << name;
    }
}

}  // namespace
