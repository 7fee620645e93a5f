#include "questions/trunk_in_summer.hpp"

#include <gtest/gtest.h>

#include "questions/answer_trunk.hpp"
#include "questions/sheets.hpp"
#include "units/unit.hpp"

namespace {

using sheets::with;

std::string cooled(const std::string& airflow) {
    return with(with(sheets::bath(), "[site]",
                     "[cooling]\nkind = \"coil\"\n" +
                         (airflow.empty() ? airflow : "airflow = \"" + airflow + "\"\n") + "[site]"),
                "winter_outdoor", "summer_outdoor = \"91 F\"\nlatitude = \"42 deg\"\nwinter_outdoor");
}

TEST(TrunkInSummer, says_nothing_where_there_is_no_cooling) {
    EXPECT_FALSE(questions::answer_trunk(sheets::survey(sheets::bath())).in_summer);
}

TEST(TrunkInSummer, the_blower_moves_what_its_cooling_speed_is_said_to) {
    const auto answer = questions::answer_trunk(sheets::survey(cooled("900 cfm")));
    ASSERT_TRUE(answer.in_summer);
    EXPECT_TRUE(answer.in_summer->own_speed);
    EXPECT_NEAR(answer.in_summer->blower / units::unit::cfm, 900, 1e-6);
}

// More air needs more pressure, and every register gives more.
TEST(TrunkInSummer, a_faster_speed_gives_every_room_more) {
    const auto slow = questions::answer_trunk(sheets::survey(cooled("600 cfm"))).in_summer;
    const auto fast = questions::answer_trunk(sheets::survey(cooled("900 cfm"))).in_summer;
    ASSERT_TRUE(slow && fast);
    EXPECT_GT(fast->external_static, slow->external_static);
    ASSERT_EQ(slow->rooms.size(), fast->rooms.size());
    ASSERT_FALSE(slow->rooms.empty());
    for (std::size_t i = 0; i < slow->rooms.size(); ++i) {
        EXPECT_GT(fast->rooms[i].after, slow->rooms[i].after);
        EXPECT_EQ(fast->rooms[i].needs, slow->rooms[i].needs);
    }
}

TEST(TrunkInSummer, without_a_cooling_speed_it_moves_what_the_heating_speed_does) {
    const auto answer = questions::answer_trunk(sheets::survey(cooled("")));
    ASSERT_TRUE(answer.in_summer);
    EXPECT_FALSE(answer.in_summer->own_speed);
    EXPECT_NEAR(answer.in_summer->blower / answer.blower_after.airflow, 1, 0.1);
}

}  // namespace
