#include "questions/branch_ducts.hpp"

#include <gtest/gtest.h>

#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"

namespace {

using ducts::Size;
using questions::answer_branch;
using sheets::with;

Size size_of(const questions::BranchAnswer& answer, const std::string& duct) {
    for (const ducts::JudgedDuct& judged : answer.judged)
        if (answer.house.ducts[static_cast<std::size_t>(judged.duct)].name == duct) return judged.size();
    ADD_FAILURE() << duct;
    return Size::fair;
}

TEST(BranchDucts, a_trunk_that_is_choked_is_too_small_and_a_huge_one_larger_than_needed) {
    const auto trunk = [](const std::string& shape) {
        return size_of(answer_branch(sheets::survey(with(sheets::bath(), "8 x 16 in", shape))), "trunk");
    };
    EXPECT_EQ(trunk("8 x 8 in"), Size::too_small);
    EXPECT_EQ(trunk("8 x 60 in"), Size::larger_than_needed);
}

TEST(BranchDucts, a_new_duct_that_is_sized_here_is_not_judged) {
    const auto answer = answer_branch(sheets::survey(sheets::bath()));
    for (const ducts::JudgedDuct& judged : answer.judged)
        EXPECT_NE(answer.house.ducts[static_cast<std::size_t>(judged.duct)].name, "new run");
}

}  // namespace
