// What passes a bay, and what may be cut from joists and studs: published and derived rows.
#include <gtest/gtest.h>

#include <cmath>

#include "house/build.hpp"
#include "house/pipe_sizes.hpp"
#include "published/csv.hpp"
#include "routes/bay_section.hpp"
#include "routes/framing_limits.hpp"
#include "sheet/read.hpp"
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

std::string floor_sheet(const Row& row) {
    const auto inches = [&](const std::string& column) { return '"' + row.text(column) + " in\""; };
    const double plies = row.number("plies_in_bay");
    std::string sisters;
    if (plies >= 1) sisters += "{ joist = 2, side = \"east\", add = " + inches("ply_thick") + " }";
    if (plies >= 2) sisters += ", { joist = 3, side = \"west\", add = " + inches("ply_thick") + " }";
    return "sheet = 1\n[[floor]]\nname = \"floor\"\nspacing = " + inches("spacing") + "\njoist = [" +
           inches("joist_thick") + ", \"9-1/4 in\"]\nsisters = [" + sisters +
           "]\n[[bay]]\nname = \"bay\"\nfloor = \"floor\"\nbetween = [2, 3]\n";
}

TEST(PublishedFraming, clear_width_between_joists_and_sisters) {
    const published::Table rows = published::read("framing_bays.csv");
    ASSERT_EQ(rows.size(), 36u);
    for (const Row& row : rows) {
        const sheet::Read read = sheet::read(floor_sheet(row));
        const house::Built built = house::build(read.survey, {}, house::Stage::planned);
        ASSERT_EQ(built.house.bays.size(), 1u) << row.where();
        EXPECT_NEAR(built.house.bays[0].width / inch, row.number("clear_width"), 1e-9) << row.where();
    }
}

// PVC and ABS are one row there and two here.
std::vector<std::string> trade_names(const Row& row) {
    const std::string size = row.text("nominal") + " in ";
    if (row.text("kind") == "PVC or ABS DWV") return {size + "PVC", size + "ABS"};
    return {size + row.text("kind")};
}

TEST(PublishedFraming, outsides_of_pipes_by_trade_name) {
    std::size_t pipes = 0;
    for (const Row& row : published::read("framing_pipes.csv")) {
        constexpr double bead = 0.06;
        const double widest = row.has("hub_od") ? row.number("hub_od") : row.number("barrel_od") + bead;
        for (const std::string& name : trade_names(row)) {
            const house::PipeSize* const pipe = house::pipe_size_named(name);
            ASSERT_NE(pipe, nullptr) << name;
            EXPECT_NEAR(pipe->outside / inch, widest, 1e-9) << row.where();
            ++pipes;
        }
    }
    EXPECT_EQ(pipes, house::pipe_sizes().size());
}

TEST(PublishedFraming, a_sloping_drain_through_joists_in_a_row) {
    const published::Table rows = published::read("framing_drain_through_joists.csv");
    ASSERT_EQ(rows.size(), 8u);
    for (const Row& row : rows) {
        const double depth = row.number("depth"), hole = row.number("hole");
        const double most = routes::joist_limits(depth * inch).hole / inch;
        EXPECT_NEAR(most, row.number("hole_max"), 1e-5) << row.where();
        EXPECT_EQ(hole <= most, row.number("allowed") == 1) << row.where();
        const double step = row.number("slope") * row.number("spacing") / 12;
        EXPECT_NEAR(step, row.number("step"), 1e-5) << row.where();
        const double band = depth - 2 * 2 - hole;  // that the hole's top may fall through
        const double joists = hole <= most ? std::floor(band / step + 1e-9) + 1 : 0;
        EXPECT_EQ(joists, row.number("joists")) << row.where();
    }
}

}  // namespace
