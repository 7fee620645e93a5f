#include "questions/leftover_ducts.hpp"

#include <gtest/gtest.h>

#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"

namespace {

using questions::Advice;
using questions::LeftoverDuct;
using sheets::with;

questions::BranchAnswer octopus(const std::string& sheet = sheets::a_case("octopus-leftovers")) {
    return questions::answer_branch(sheets::survey(sheet));
}

const LeftoverDuct* leftover(const questions::BranchAnswer& answer, const std::string& name) {
    for (const LeftoverDuct& old : answer.leftovers)
        if (answer.house.ducts[static_cast<std::size_t>(old.duct)].name == name) return &old;
    return nullptr;
}

TEST(LeftoverDucts, a_pipe_that_leads_nowhere_is_blanked) {
    const auto answer = octopus();
    const LeftoverDuct* old = leftover(answer, "old bath leg");
    ASSERT_TRUE(old);
    EXPECT_EQ(old->advice, Advice::blank);
}

TEST(LeftoverDucts, a_long_bare_one_is_sleeved_and_loses_less) {
    const auto answer = octopus();
    const LeftoverDuct* old = leftover(answer, "bedroom leg");
    ASSERT_TRUE(old);
    EXPECT_EQ(old->advice, Advice::sleeve);
    EXPECT_LT(old->sleeved.lost, old->as_it_is.lost);
    EXPECT_GT(old->sleeved.arrives, old->as_it_is.arrives);
}

TEST(LeftoverDucts, one_that_loses_little_is_kept) {
    const std::string sheet =
        with(sheets::a_case("octopus-leftovers"), "shape    = \"10 in\"\nlength   = \"24 ft\"",
             "shape    = \"10 in\"\nlength   = \"3 ft\"\nwrap     = \"R-8\"");
    const auto answer = octopus(sheet);
    const LeftoverDuct* old = leftover(answer, "bedroom leg");
    ASSERT_TRUE(old);
    EXPECT_EQ(old->advice, Advice::keep);
}

// A sleeve is enough for the air it carries: judged as a pipe of its own it is not too small.
TEST(LeftoverDucts, the_sleeve_is_large_enough) {
    const auto answer = octopus();
    const LeftoverDuct* old = leftover(answer, "bedroom leg");
    ASSERT_TRUE(old);
    const std::string sleeve = std::to_string(1000 * old->sleeve.diameter.si()) + " mm";
    const auto sleeved =
        octopus(with(sheets::a_case("octopus-leftovers"), "\"10 in\"", "\"" + sleeve + "\""));
    bool judged = false;
    for (const ducts::JudgedDuct& duct : sleeved.judged)
        if (sleeved.house.ducts[static_cast<std::size_t>(duct.duct)].name == "bedroom leg") {
            EXPECT_NE(duct.size(), ducts::Size::too_small);
            judged = true;
        }
    EXPECT_TRUE(judged);
}

TEST(LeftoverDucts, the_branch_itself_is_none) {
    const auto answer = octopus();
    EXPECT_FALSE(leftover(answer, "new bath run"));
}

}  // namespace
