#include "registers/sound.hpp"

#include <gtest/gtest.h>

#include "units/unit.hpp"

namespace registers {
namespace {

using units::unit::foot_per_minute;

TEST(Sound, rises_through_the_words) {
    EXPECT_EQ(supply_sound({}), Sound::quiet);
    EXPECT_EQ(supply_sound(350 * foot_per_minute), Sound::quiet);
    EXPECT_EQ(supply_sound(400 * foot_per_minute), Sound::soft_rush);
    EXPECT_EQ(supply_sound(500 * foot_per_minute), Sound::heard);
    EXPECT_EQ(supply_sound(600 * foot_per_minute), Sound::loud);
}

TEST(Sound, a_return_grille_may_be_a_fifth_faster) {
    EXPECT_EQ(return_sound(400 * foot_per_minute), Sound::quiet);
    EXPECT_EQ(return_sound(600 * foot_per_minute), Sound::heard);
    EXPECT_EQ(return_sound(700 * foot_per_minute), Sound::loud);
}

TEST(Sound, in_words_without_a_number) {
    EXPECT_EQ(in_words(Sound::quiet), "quiet");
    EXPECT_EQ(in_words(Sound::soft_rush), "a soft rush");
    EXPECT_EQ(in_words(Sound::heard), "heard");
    EXPECT_EQ(in_words(Sound::loud), "loud");
}

}  // namespace
}  // namespace registers
