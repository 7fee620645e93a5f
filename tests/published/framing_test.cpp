// What passes a bay, and what may be cut from joists and studs: published and derived rows.
#include <gtest/gtest.h>

#include "published/csv.hpp"
#include "routes/bay_section.hpp"
#include "routes/framing_limits.hpp"
#include "units/unit.hpp"

namespace {

using published::Row;
using units::unit::inch;

house::Bay bay_of(const Row& row) {
    house::Bay bay;
    bay.width = row.number("W") * inch;
    bay.depth = row.number("H") * inch;
    bay.clearance = row.number("gap") * inch;
    if (row.number("d2") > 0) {  // the drain in a corner, as far out of the way as it goes
        house::BayPipe drain;
        drain.outside = row.number("d2") * inch;
        bay.pipes.push_back(drain);
    }
    return bay;
}

house::Shape duct_of(const Row& row) {
    if (row.text("b").empty()) return house::Round{row.number("a") * inch};
    return house::Rectangular{row.number("a") * inch, row.number("b") * inch};
}

TEST(PublishedFraming, what_passes_a_bay) {
    const published::Table rows = published::read("framing_fit.csv");
    ASSERT_EQ(rows.size(), 22u);
    for (const Row& row : rows) {
        const units::Length spare = routes::spare(bay_of(row), duct_of(row));
        EXPECT_NEAR(spare / inch, row.number("margin"), 0.001) << row.where();
        EXPECT_EQ(routes::passes(spare), row.text("verdict") == "fits") << row.where();
    }
}

TEST(PublishedFraming, holes_and_notches_in_joists) {
    const published::Table rows = published::read("framing_lumber.csv");
    ASSERT_GT(rows.size(), 10u);
    for (const Row& row : rows) {
        const routes::JoistLimits limits = routes::joist_limits(row.number("depth") * inch);
        EXPECT_NEAR(limits.hole / inch, row.number("hole_max"), 0.001) << row.where();
        EXPECT_NEAR(limits.notch_depth / inch, row.number("notch_depth"), 0.001) << row.where();
        EXPECT_NEAR(limits.notch_length / inch, row.number("notch_len"), 0.001) << row.where();
        EXPECT_NEAR(limits.end_notch / inch, row.number("end_notch"), 0.001) << row.where();
    }
}

TEST(PublishedFraming, holes_and_notches_in_studs) {
    for (const Row& row : published::read("framing_studs.csv")) {
        const units::Length width = row.number("width") * inch;
        const routes::StudLimits bearing = routes::stud_limits(width, true),
                                 other = routes::stud_limits(width, false);
        EXPECT_NEAR(bearing.notch / inch, row.number("notch_bearing"), 0.001) << row.where();
        EXPECT_NEAR(other.notch / inch, row.number("notch_nonbearing"), 0.001) << row.where();
        EXPECT_NEAR(bearing.hole / inch, row.number("bore_bearing"), 0.001) << row.where();
        EXPECT_NEAR(bearing.hole_if_doubled / inch, row.number("bore_bearing_doubled"), 0.001) << row.where();
        EXPECT_NEAR(other.hole / inch, row.number("bore_nonbearing"), 0.001) << row.where();
    }
}

}  // namespace
