#include "ducts/section.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "ducts/friction.hpp"
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

TEST(Section, a_round_oval_is_a_pipe) {
    const Section oval = section_of(house::FlatOval{6 * unit::inch, 6 * unit::inch});
    EXPECT_NEAR(oval.area / section_of(round_of(6)).area, 1, 1e-12);
    EXPECT_NEAR(oval.hydraulic_diameter / unit::inch, 6, 1e-12);
}

TEST(Section, every_kind_of_duct_has_its_roughness) {
    for (const auto& word : house::words<house::DuctKind>()) {
        const auto rows = roughnesses();
        EXPECT_EQ(std::count_if(rows.begin(), rows.end(),
                                [&](const Roughness& row) { return row.kind == word.value; }),
                  1)
            << word.text;
    }
    for (const Roughness& row : roughnesses()) {
        EXPECT_LE(row.low, row.value) << row.source;
        EXPECT_LE(row.value, row.high) << row.source;
        EXPECT_EQ(section_of(rectangle_of(8, 16), row.kind, 1).roughness,
                  row.kind == house::DuctKind::flex ? galvanized_roughness : row.value)
            << row.source;
    }
}

// 15 % short, a 6 in flexible duct loses 5.09 times what it loses taut.
TEST(Section, a_flexible_duct_loses_more_the_less_it_is_stretched) {
    const Section taut = section_of(round_of(6), house::DuctKind::flex, 1);
    const Section slack = section_of(round_of(6), house::DuctKind::flex, 0.85);
    EXPECT_EQ(taut.compression, 1);
    EXPECT_NEAR(slack.compression, 5.08501, 1e-5);
    const units::Airflow flow = 100 * unit::cfm;
    EXPECT_NEAR(friction(slack, flow, reference_air()) / friction(taut, flow, reference_air()), 5.08501,
                1e-5);
    EXPECT_NEAR(airflow_at(slack, friction(slack, flow, reference_air()), reference_air()) / flow, 1, 1e-10);
}

TEST(Section, what_is_not_round_is_no_flexible_duct) {
    EXPECT_EQ(section_of(rectangle_of(3.25, 10), house::DuctKind::flex, 0.8).compression, 1);
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
