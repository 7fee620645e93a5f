// Walls and floors in the ground against the handbook's tables.
#include "loads/below_grade.hpp"

#include <gtest/gtest.h>

#include "published/csv.hpp"

namespace loads {
namespace {

using published::Row;

void expect_both(double u, double table_tolerance, const Row& row) {
    EXPECT_NEAR(u, row.number("u_formula"), 0.0005 * row.number("u_formula")) << row.where();
    EXPECT_NEAR(u, row.number("u_table"), table_tolerance * row.number("u_table")) << row.where();
}

TEST(PublishedBelowGrade, walls) {
    const published::Table table = published::read("loads_below_grade_walls.csv");
    EXPECT_EQ(table.size(), 32u);
    for (const Row& row : table) {
        const units::Resistance r = bare_concrete + units::Resistance(row.number("r_added"));
        expect_both(below_grade_wall({}, units::Length(row.number("depth_m")), r, usual_soil).si(), 0.005,
                    row);
    }
}

TEST(PublishedBelowGrade, floors) {
    const published::Table table = published::read("loads_below_grade_floors.csv");
    EXPECT_EQ(table.size(), 28u);
    for (const Row& row : table)
        expect_both(below_grade_floor(units::Length(row.number("width_m")),
                                      units::Length(row.number("depth_m")), bare_concrete, usual_soil)
                        .si(),
                    0.015, row);
}

}  // namespace
}  // namespace loads
