#include "house/ledger.hpp"

#include <gtest/gtest.h>

#include "house/a_survey.hpp"

namespace {

using namespace a_survey;
using house::DefaultId;
using house::Ledger;

TEST(Ledger, a_default_is_listed_once_with_all_it_is_used_for) {
    const house::Defaults defaults;
    Ledger ledger(defaults);
    EXPECT_EQ(ledger.take(DefaultId::window, "a"), 2.87);
    ledger.take(DefaultId::elevation, "b");
    ledger.take(DefaultId::window, "c");
    ledger.take(DefaultId::window, "a");
    const std::vector<house::Assumption> listed = std::move(ledger).assumptions();
    EXPECT_THAT(listed, ElementsAre(house::Assumption{DefaultId::elevation, {"b"}},
                                    house::Assumption{DefaultId::window, {"a", "c"}}));
}

TEST(Ledger, what_is_given_takes_no_default) {
    const house::Defaults defaults;
    Ledger ledger(defaults);
    const house::Maybe<units::Length> given = at(1, m(2)), silent;
    EXPECT_EQ(ledger.or_default(given, DefaultId::ceiling_height, "a"), m(2));
    EXPECT_NEAR(ledger.or_default(silent, DefaultId::ceiling_height, "b").si(), ft(8).si(), 1e-12);
    EXPECT_THAT(std::move(ledger).assumptions(),
                ElementsAre(house::Assumption{DefaultId::ceiling_height, {"b"}}));
}

TEST(Ledger, mistakes_come_in_the_sheets_order_and_those_of_one_place_as_they_were_found) {
    const house::Defaults defaults;
    Ledger ledger(defaults);
    EXPECT_TRUE(ledger.clean());
    ledger.blame({7, 4, 5}, "third");
    ledger.blame({7, 1, 2}, "first");
    ledger.blame({7, 1, 2}, "second");
    ledger.blame({2, 9, 10}, "before all", "mend it");
    EXPECT_FALSE(ledger.clean());
    std::vector<std::string> texts;
    for (const house::Mistake& mistake : std::move(ledger).mistakes()) texts.push_back(mistake.text);
    EXPECT_THAT(texts, ElementsAre("before all", "first", "second", "third"));
}

TEST(Ledger, what_is_missing_is_asked_for_by_example) {
    const house::Defaults defaults;
    Ledger ledger(defaults);
    EXPECT_EQ(ledger.required(house::Maybe<int>(at(3, 5)), on_line(1), "the count", "count = 3"), 5);
    EXPECT_EQ(ledger.required(house::Maybe<int>(), on_line(1), "the count", "count = 3"), 0);
    const std::vector<house::Mistake> mistakes = std::move(ledger).mistakes();
    ASSERT_EQ(mistakes.size(), 1u);
    EXPECT_EQ(mistakes[0].text, "the count is missing");
    EXPECT_EQ(mistakes[0].remedy, "write count = 3");
    EXPECT_EQ(mistakes[0].place, on_line(1));
    EXPECT_TRUE(mistakes[0].may_follow);
}

TEST(Ledger, what_is_wrong_in_itself_follows_from_nothing_else) {
    const house::Defaults defaults;
    Ledger ledger(defaults);
    ledger.blame(on_line(1), "the bath has no floor");
    EXPECT_FALSE(std::move(ledger).mistakes().front().may_follow);
}

}  // namespace
