#include "questions/sweating_branch.hpp"

#include <gtest/gtest.h>

#include "questions/answer_branch.hpp"
#include "questions/sheets.hpp"

namespace {

using questions::BranchInSummer;
using sheets::with;

std::string cooled(const std::string& run) {
    std::string sheet = sheets::a_case("crawlspace-long-run");
    sheet = with(sheet, "winter_indoor  = \"70 F\"\n",
                 "winter_indoor  = \"70 F\"\nsummer_outdoor = \"92 F\"\nsummer_wet_bulb = \"76 F\"\n"
                 "latitude = \"35 deg\"\n");
    sheet = with(sheet, "[heater]\n", "[cooling]\nkind = \"coil\"\n[heater]\n");
    return with(sheet, "runs_in  = \"crawl\"\nstate    = \"new\"", run + "\nstate = \"new\"");
}
std::optional<BranchInSummer> in_summer(const std::string& run) {
    return questions::answer_branch(sheets::survey(cooled(run))).in_summer;
}

TEST(SweatingBranch, a_bare_run_in_a_damp_crawl_space_sweats_and_insulation_ends_it) {
    const auto bare = in_summer("runs_in = \"crawl\"");
    ASSERT_TRUE(bare);
    EXPECT_TRUE(bare->sweats());
    ASSERT_TRUE(bare->needed);
    EXPECT_GT(*bare->needed, units::Resistance());
    const auto wrapped = in_summer("runs_in = \"crawl\"\nwrap = \"R-8\"");
    ASSERT_TRUE(wrapped);
    EXPECT_FALSE(wrapped->sweats());
    EXPECT_LT(*wrapped->needed, units::Resistance(8 * 0.1761101838));
}

TEST(SweatingBranch, is_asked_only_with_cooling_and_outside_the_heated_rooms) {
    EXPECT_FALSE(in_summer("runs_in = \"heated rooms\""));
    EXPECT_FALSE(questions::answer_branch(sheets::survey(sheets::a_case("crawlspace-long-run"))).in_summer);
}

}  // namespace
