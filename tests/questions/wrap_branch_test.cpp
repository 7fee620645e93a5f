#include "questions/wrap_branch.hpp"

#include <gtest/gtest.h>

#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"

namespace {

using questions::answer_branch;
using questions::WrapEffect;
using sheets::with;

std::optional<WrapEffect> wrap(const std::string& sheet) { return answer_branch(sheets::survey(sheet)).wrap; }

std::string run_in(const std::string& space, const std::string& more = {}) {
    const std::string fittings =
        "fittings = [\"top takeoff\", \"round elbow 90, adjustable\", \"floor boot, end entry\"]";
    return with(sheets::bath(), fittings, fittings + "\nruns_in = \"" + space + "\"\n" + more);
}

TEST(Wrap, keeps_heat_on_the_way_and_so_less_air_will_do) {
    const auto effect = wrap(run_in("crawl"));
    ASSERT_TRUE(effect);
    EXPECT_GT(effect->wrapped.arrival, effect->bare.arrival);
    EXPECT_LT(effect->wrapped.needs, effect->bare.needs);
    EXPECT_LT(effect->wrapped.lost, effect->bare.lost);
    EXPECT_GT(effect->wrapped.lost, units::Power());
}

TEST(Wrap, is_not_spoken_of_where_the_run_is_wrapped_or_lies_in_heated_rooms) {
    EXPECT_FALSE(wrap(run_in("crawl", "wrap = \"R-6\"")));
    EXPECT_FALSE(wrap(run_in("heated rooms")));
}

TEST(Wrap, bare_is_what_the_table_says_of_the_chosen_pipe) {
    const auto answer = answer_branch(sheets::survey(run_in("crawl")));
    ASSERT_TRUE(answer.wrap);
    ASSERT_TRUE(answer.sizing.choice().needs);
    EXPECT_NEAR(answer.wrap->bare.needs.si(), answer.sizing.choice().needs->airflow.si(), 1e-6);
    EXPECT_NEAR(answer.wrap->bare.arrival.si(), answer.sizing.choice().needs->arrival.si(), 1e-4);
}

}  // namespace
