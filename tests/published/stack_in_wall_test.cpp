// A stack's metal at rest, against the temperature factors of walls whose inside film is 0.25 m2 K/W.
#include "registers/stack_in_wall.hpp"

#include <gtest/gtest.h>

#include "published/csv.hpp"

namespace {

namespace unit = units::unit;
using registers::stack_in_wall;

TEST(PublishedStackInWall, temperature_factors) {
    int compared = 0;
    for (const published::Row& row : published::read("loads_temperature_factor.csv")) {
        if (row.number("Rsi") != registers::stack_covered_film.si()) continue;
        const units::Resistance behind = units::Resistance(1 / row.number("U")) -
                                         registers::stack_covered_film - registers::stack_outside_film;
        const registers::StackInWall stack = stack_in_wall({{behind, registers::stack_depth},
                                                            units::Area(0.1),
                                                            unit::celsius(row.number("Ti")),
                                                            unit::celsius(row.number("To")),
                                                            unit::celsius(45)});
        EXPECT_NEAR(unit::in_celsius(stack.at_rest), row.number("Tsi"), 0.05) << row.where();
        EXPECT_EQ(row.number("rh") > 100 * stack.sweats_above, row.number("condenses") == 1) << row.where();
        ++compared;
    }
    EXPECT_EQ(compared, 4);
}

}  // namespace
