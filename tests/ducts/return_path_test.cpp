#include "ducts/return_path.hpp"

#include <gtest/gtest.h>

#include "ducts/reference_air.hpp"
#include "published/csv.hpp"

namespace ducts {
namespace {

namespace unit = units::unit;

double square_inches_for(double cfm) {
    return opening_for(cfm * unit::cfm, closed_door_limit, reference_air()) / unit::square_inch;
}

// The report's transfer openings; its grilles have three quarters of their face free, its undercut is 32 x
// 0.5 in.
TEST(ReturnPath, published_openings) {
    constexpr double undercut = 16, free_share = 0.75;
    int rows = 0;
    for (const auto& row : published::read("ducts_return_path.csv")) {
        const double area = square_inches_for(row.number("Q_cfm"));
        EXPECT_NEAR(area, row.number("A_pub"), 0.06) << row.where();
        EXPECT_NEAR(area - undercut, row.number("A_less_undercut_pub"), 0.06) << row.where();
        for (const auto& [column, width] :
             {std::pair("h10_pub", 10), std::pair("h12_pub", 12), std::pair("h14_pub", 14)})
            EXPECT_NEAR((area - undercut) / free_share / width, row.number(column), 0.15) << row.where();
        EXPECT_NEAR(2 * std::sqrt((area - undercut) / std::acos(-1.0)), row.number("jump_D_pub"), 0.06)
            << row.where();
        ++rows;
    }
    EXPECT_EQ(rows, 13);
}

// 32 in door, half an inch: 29.65 cfm at 3 Pa (same report's formula).
TEST(ReturnPath, undercut_of_a_door) {
    const units::Area gap = 32 * unit::inch * (0.5 * unit::inch);
    EXPECT_NEAR(through_opening(gap, closed_door_limit, reference_air()) / unit::cfm, 29.65, 0.1);
    EXPECT_NEAR(opening_for(through_opening(gap, closed_door_limit, reference_air()), closed_door_limit,
                            reference_air()) /
                    gap,
                1, 1e-12);
}

// Home energy magazine (read): 200 ft/min on the whole face; a pair of grilles 0.65 free lets 226 through.
TEST(ReturnPath, a_transfer_grille_is_the_200_feet_a_minute_rule) {
    const units::Area face = transfer_grille_for(100 * unit::cfm, 0.65, reference_air());
    EXPECT_NEAR(100 * unit::cfm / face / unit::foot_per_minute, 226, 1.5);
}

// By area alone 100 cfm would take 7 in: with grilles, bends and friction it is one or two sizes more.
TEST(ReturnPath, a_jump_duct_is_larger_than_its_area_alone) {
    const JumpDuct jump{14 * unit::inch * (8 * unit::inch), 0.75, 10 * unit::foot, 1.2};
    const auto duct = jump_duct_for(100 * unit::cfm, jump, 0.96, reference_air());
    ASSERT_TRUE(duct);
    EXPECT_GE(duct->diameter, 8 * unit::inch);
    EXPECT_LE(duct->diameter, 10 * unit::inch);
    const auto slack = jump_duct_for(100 * unit::cfm, jump, 0.70, reference_air());
    ASSERT_TRUE(slack);
    EXPECT_GE(*slack, *duct);
    EXPECT_FALSE(jump_duct_for(900 * unit::cfm, jump, 0.96, reference_air()));
}

TEST(ReturnPath, faces_keep_their_velocity) {
    EXPECT_NEAR(face_for(1200 * unit::cfm, filter_face) / unit::square_foot, 4, 1e-9);
    EXPECT_NEAR(face_for(400 * unit::cfm, return_grille_face) / unit::square_foot, 1, 1e-9);
}

}  // namespace
}  // namespace ducts
