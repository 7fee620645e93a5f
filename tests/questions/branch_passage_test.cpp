// The bays a branch is led through: every one of them counts, and a guess of the clearance may decide.
#include "questions/branch_passage.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using questions::BranchAnswer;
using questions::Verdict;
using sheets::with;
using units::unit::inch;

BranchAnswer answer(const std::string& sheet) { return questions::answer_branch(sheets::survey(sheet)); }

std::string crowded() { return sheets::a_case("crowded-joist-bay"); }
std::string drain_at(const std::string& from_west) {
    return with(crowded(), "from_west = \"1-1/2 in\"", "from_west = \"" + from_west + '"');
}

// The riser led through a bay of its own too.
std::string with_riser_through(const std::string& sheet, const std::string& clear) {
    return with(sheet, "name     = \"bath riser\"\n", "name     = \"bath riser\"\nthrough  = \"wall\"\n") +
           "\n[[bay]]\nname = \"wall\"\nframing = \"studs\"\nclear = " + clear + '\n';
}

std::string name_of(const BranchAnswer& answer, const questions::BayPassage& passage) {
    return answer.house.bays[static_cast<std::size_t>(passage.bay)].name;
}

const questions::Weight* weight_of_clearance(const BranchAnswer& answer) {
    for (const questions::Weight& weight : answer.weighed.weights)
        if (weight.assumption.id == house::DefaultId::pipe_clearance) return &weight;
    return nullptr;
}

TEST(BranchPassage, every_bay_on_the_way_is_looked_at_from_the_trunk_outwards) {
    const BranchAnswer two = answer(with_riser_through(drain_at("0 in"), "[\"14-1/2 in\", \"5-1/2 in\"]"));
    ASSERT_TRUE(two.passage);
    ASSERT_EQ(two.passage->bays.size(), 2u);
    EXPECT_EQ(name_of(two, two.passage->bays[0]), "wall");
    EXPECT_EQ(name_of(two, two.passage->bays[1]), "bay 4");
}

TEST(BranchPassage, the_tightest_bay_stops_it_though_the_other_lets_it_pass) {
    const BranchAnswer free = answer(drain_at("0 in"));
    EXPECT_TRUE(free.passage->passes(free.sizing.chosen));
    // The stack would pass the wall, but not bay 4.
    const BranchAnswer stopped =
        answer(with_riser_through(drain_at("0 in"), "[\"14-1/2 in\", \"4-1/2 in\"]"));
    EXPECT_EQ(stopped.verdict, Verdict::no);
    EXPECT_FALSE(stopped.passage->passes(stopped.sizing.chosen));
    EXPECT_EQ(name_of(stopped, stopped.passage->narrowest()), "wall");
    EXPECT_TRUE(stopped.passage->bays[1].passes(stopped.sizing.chosen));
}

TEST(BranchPassage, a_wide_second_bay_changes_nothing) {
    const BranchAnswer one = answer(crowded());
    const BranchAnswer two = answer(with_riser_through(crowded(), "[\"14-1/2 in\", \"11-1/4 in\"]"));
    EXPECT_EQ(one.verdict, two.verdict);
    EXPECT_EQ(one.sizing.choice().pipe, two.sizing.choice().pipe);
    EXPECT_EQ(name_of(two, two.passage->narrowest()), "bay 4");
    EXPECT_EQ(one.passage->spares, two.passage->spares);
}

TEST(BranchPassage, a_guessed_clearance_that_may_stop_it_allows_no_plain_yes) {
    const BranchAnswer close = answer(drain_at("3/4 in"));
    ASSERT_TRUE(close.passage->passes(close.sizing.chosen));
    ASSERT_NE(weight_of_clearance(close), nullptr);
    EXPECT_FALSE(weight_of_clearance(close)->at_high->passing);
    EXPECT_EQ(weight_of_clearance(close)->at_low->passing, close.sizing.choice().pipe);
    EXPECT_NE(close.verdict, Verdict::yes);
}

TEST(BranchPassage, a_lesser_clearance_may_let_the_wanted_size_pass) {
    const BranchAnswer blocked = answer(drain_at("7/8 in"));
    EXPECT_EQ(blocked.verdict, Verdict::no);
    EXPECT_EQ(weight_of_clearance(blocked)->at_low->passing, house::Shape(house::Round{6 * inch}));
    EXPECT_FALSE(weight_of_clearance(blocked)->at_high->passing);
}

TEST(BranchPassage, a_clearance_the_sheet_gives_is_no_guess) {
    const std::string given =
        with(drain_at("7/8 in"), "between = [4, 5]", "between = [4, 5]\nclearance = \"1/4 in\"");
    const BranchAnswer told = answer(given);
    EXPECT_EQ(weight_of_clearance(told), nullptr);
    EXPECT_TRUE(told.passage->passes(told.sizing.chosen));
}

TEST(BranchPassage, a_duct_that_is_there_has_passed) {
    const std::string there =
        with(crowded(), "name     = \"main trunk\"\n", "name     = \"main trunk\"\nthrough  = \"bay 9\"\n") +
        "\n[[bay]]\nname = \"bay 9\"\nclear = [\"6 in\", \"6 in\"]\n";
    EXPECT_EQ(answer(there).passage->bays.size(), 1u);
}

}  // namespace
