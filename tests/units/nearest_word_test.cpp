#include "units/nearest_word.hpp"

#include <gtest/gtest.h>

#include <array>

namespace units {
namespace {

constexpr std::array<std::string_view, 5> fittings{"elbow", "boot", "wye", "takeoff", "reducer"};

TEST(NearestWord, FindsWhatASlipMissed) {
    EXPECT_EQ(nearest_word("elbw", fittings), "elbow");    // left out
    EXPECT_EQ(nearest_word("elboww", fittings), "elbow");  // put in
    EXPECT_EQ(nearest_word("elbaw", fittings), "elbow");   // changed
    EXPECT_EQ(nearest_word("eblow", fittings), "elbow");   // swapped
    EXPECT_EQ(nearest_word("rducr", fittings), "");        // two slips in five letters
    EXPECT_EQ(nearest_word("rduceer", fittings), "reducer");
}

TEST(NearestWord, CaseDoesNotMatter) { EXPECT_EQ(nearest_word("TAKEOF", fittings), "takeoff"); }

TEST(NearestWord, AKnownWordIsItsOwnNearest) { EXPECT_EQ(nearest_word("wye", fittings), "wye"); }

TEST(NearestWord, TiesKeepTheirOrder) {
    constexpr std::array<std::string_view, 2> words{"cat", "car"};
    EXPECT_EQ(nearest_word("cab", words), "cat");
}

TEST(NearestWord, NothingIsNearWhenNothingIs) {
    EXPECT_EQ(nearest_word("chimney", fittings), "");
    EXPECT_EQ(nearest_word("", fittings), "");
    EXPECT_EQ(nearest_word("elbow", {}), "");
}

TEST(NearestWord, OneLetterWordsWithoutACommonLetterAreNotNear) {
    constexpr std::array<std::string_view, 2> words{"m", "in"};
    EXPECT_EQ(nearest_word("q", words), "");
    EXPECT_EQ(nearest_word("n", words), "in");
}

TEST(NearestWord, LongTextsAreCutShort) {
    const std::string endless(100000, 'e');
    EXPECT_EQ(nearest_word(endless, fittings), "");
    EXPECT_EQ(nearest_words(endless, fittings, 1).size(), 1U);
}

TEST(NearestWords, AreInOrderOfNearness) {
    const std::vector<std::string> expected{"boot", "elbow"};
    EXPECT_EQ(nearest_words("boo", fittings, 2), expected);
    EXPECT_EQ(nearest_words("chimney", fittings, 99).size(), fittings.size());
    EXPECT_TRUE(nearest_words("boot", fittings, 0).empty());
}

}  // namespace
}  // namespace units
