#include "ducts/section.hpp"

#include <gtest/gtest.h>

#include "ducts/reference_air.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

TEST(Section, of_a_round_pipe) {
    const Section section = section_of(round_of(6));
    EXPECT_NEAR(section.area / unit::square_inch, 28.274333882308139, 1e-12);
    EXPECT_NEAR(section.hydraulic_diameter / unit::inch, 6, 1e-12);
    EXPECT_NEAR(section.perimeter / unit::inch, 18.849555921538759, 1e-12);
}

TEST(Section, of_a_wall_stack) {
    const Section section = section_of(rectangle_of(3.25, 10));
    EXPECT_NEAR(section.area / unit::square_inch, 32.5, 1e-12);
    EXPECT_NEAR(section.perimeter / unit::inch, 26.5, 1e-12);
    EXPECT_NEAR(section.hydraulic_diameter / unit::inch, 4 * 32.5 / 26.5, 1e-12);
}

TEST(Section, roughness_is_that_of_galvanized_pipe_unless_given) {
    EXPECT_NEAR(section_of(round_of(6)).roughness / unit::millimetre, 0.09144, 1e-12);
    EXPECT_EQ(section_of(round_of(6), 3 * unit::millimetre).roughness, 3 * unit::millimetre);
}

TEST(Section, turning_a_rectangle_on_its_side_changes_nothing) {
    const Section lying = section_of(rectangle_of(8, 16));
    const Section standing = section_of(rectangle_of(16, 8));
    EXPECT_EQ(lying.area, standing.area);
    EXPECT_EQ(lying.hydraulic_diameter, standing.hydraulic_diameter);
    EXPECT_EQ(equivalent_round(rectangle_of(8, 16)), equivalent_round(rectangle_of(16, 8)));
}

TEST(Section, a_wall_stack_is_a_six_inch_pipe) {
    EXPECT_NEAR(equivalent_round(rectangle_of(3.25, 10)) / unit::inch, 6.0, 0.005);
}

}  // namespace
}  // namespace ducts
