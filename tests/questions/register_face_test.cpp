// The register from the shelf: large enough, quiet enough, and with a boot from its pipe.
#include "questions/register_face.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "ducts/stock_boots.hpp"
#include "questions/sheets.hpp"
#include "registers/sound.hpp"
#include "units/unit.hpp"

namespace {

using ducts::Stock;
using house::Mount;
using questions::any_length;
using questions::register_face;
using questions::RegisterFace;
using questions::RunEnd;
using units::unit::cfm;
using units::unit::inch;
using units::unit::square_inch;

house::Rectangular face(double width, double height) { return {width * inch, height * inch}; }
units::Area area(const house::Rectangular& face) { return face.width * face.height; }

RunEnd pipe_with(double inches, double flow) { return {house::Round{inches * inch}, flow * cfm}; }

RegisterFace in_floor(const RunEnd& end, units::Length longest = any_length) {
    return register_face({}, Mount::floor, end, longest);
}

TEST(RegisterFace, is_the_smallest_with_a_boot_from_its_pipe) {
    const RegisterFace chosen = in_floor(pipe_with(6, 60));
    EXPECT_EQ(chosen.face, face(2.25, 14));
    EXPECT_NEAR(chosen.free / (0.75 * 2.25 * 14 * square_inch), 1, 1e-12);
    EXPECT_TRUE(chosen.has_boot);
    EXPECT_TRUE(chosen.large_enough);
    EXPECT_EQ(in_floor(pipe_with(5, 30)).face, face(2.25, 10));
    // 10 x 4 in is as large as a 7 in pipe and quiet enough, but has its boot from 5 or 6 in.
    EXPECT_EQ(register_face({}, Mount::high_wall, pipe_with(7, 60)).face, face(14, 4));
}

TEST(RegisterFace, is_larger_where_the_air_would_be_heard) {
    const RegisterFace chosen = in_floor(pipe_with(6, 120));
    EXPECT_EQ(chosen.face, face(4, 14));
    EXPECT_LE(registers::softly_through(120 * cfm), chosen.free);
}

TEST(RegisterFace, keeps_to_what_is_short_enough_where_it_can) {
    EXPECT_EQ(in_floor(pipe_with(6, 120), 12 * inch).face, face(6, 10));
    EXPECT_EQ(in_floor(pipe_with(6, 120), 8 * inch).face, face(4, 14));
}

TEST(RegisterFace, whose_boot_no_shop_has_is_the_smallest_that_is_large_enough) {
    const RegisterFace chosen = in_floor(pipe_with(4, 100));
    EXPECT_EQ(chosen.face, face(4, 12));
    EXPECT_FALSE(chosen.has_boot);
    EXPECT_TRUE(chosen.large_enough);
}

TEST(RegisterFace, is_the_largest_where_none_is_large_enough) {
    const RegisterFace chosen = in_floor(pipe_with(10, 300));
    EXPECT_EQ(chosen.face, face(6, 12));
    EXPECT_TRUE(chosen.has_boot);
    EXPECT_FALSE(chosen.large_enough);
}

TEST(RegisterFace, of_the_sheet_is_as_open_as_the_sheet_says_or_as_its_mount_is) {
    house::Outlet outlet;
    outlet.face = face(10, 6);
    RegisterFace chosen = register_face(outlet, Mount::low_wall, pipe_with(6, 80));
    EXPECT_TRUE(chosen.of_the_sheet);
    EXPECT_TRUE(chosen.has_boot);
    EXPECT_NEAR(chosen.free / (42 * square_inch), 1, 1e-12);
    outlet.free_area = 33 * square_inch;
    chosen = register_face(outlet, Mount::low_wall, pipe_with(9, 80));
    EXPECT_EQ(chosen.free, 33 * square_inch);
    EXPECT_FALSE(chosen.has_boot);
    // Led to another mount it is another register.
    outlet.mount = Mount::low_wall;
    chosen = register_face(outlet, Mount::floor, pipe_with(6, 60));
    EXPECT_FALSE(chosen.of_the_sheet);
    EXPECT_EQ(chosen.face, face(2.25, 14));
}

TEST(RegisterFace, of_a_stack_is_as_long_as_the_stack_is_wide) {
    const RunEnd stack{face(3.25, 10), 60 * cfm};
    EXPECT_EQ(register_face({}, Mount::high_wall, stack).face, face(10, 4));
    EXPECT_EQ(register_face({}, Mount::floor, stack).face, face(4, 10));
}

TEST(RunEnd, is_the_shape_of_the_sheet_else_the_pipe_tried_else_the_stack_it_goes_on_in) {
    house::House house =
        build(sheets::survey(sheets::without_the_new(sheets::bath())), {}, house::Stage::planned).house;
    const auto supply = std::find_if(house.outlets.begin(), house.outlets.end(),
                                     [&](const house::Outlet& each) { return house.is_supply(each); });
    ASSERT_NE(supply, house.outlets.end());
    auto last = std::find_if(house.ducts.begin(), house.ducts.end(),
                             [&](const house::Duct& duct) { return duct.id == supply->duct; });
    questions::BranchTrial trial;
    trial.pipe = house::Round{6 * inch};
    trial.gives = 70 * cfm;
    const auto end = [&](Stock stock = Stock::us) { return run_end(house, *supply, trial, stock); };
    last->shape = house::Shape(house::Round{7 * inch});
    last->fittings.clear();
    EXPECT_EQ(end().duct, house::Shape(house::Round{7 * inch}));
    EXPECT_EQ(end().gives, 70 * cfm);
    last->shape.reset();
    EXPECT_EQ(end().duct, trial.pipe);
    last->fittings.push_back({"round-to-stack boot, 90", {}});
    EXPECT_EQ(end().duct, house::Shape(face(3.25, 10)));
    EXPECT_EQ(end(Stock::metric).duct, trial.pipe);
}

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000; }

// A shelf and a mount, an airflow, and how long a floor register may be.
struct Asked {
    Stock stock = *rc::gen::element(Stock::us, Stock::metric);
    Mount mount = *rc::gen::element(Mount::floor, Mount::toe_kick, Mount::low_wall, Mount::ceiling);
    units::Airflow flow = between(5, 400) * cfm;
    units::Length longest = between(6, 30) * inch;

    RegisterFace chosen(const house::Round& pipe, units::Airflow gives) const {
        return register_face({}, mount, {pipe, gives}, longest, stock);
    }
};

// Which alone may keep a smaller pipe from a register that a larger one gets: 2-1/4 x 14 in has no boot from
// 5 in.
RC_GTEST_PROP(RegisterFaceLaws, a_larger_pipe_never_gets_a_smaller_register_to_which_the_smaller_has_a_boot,
              ()) {
    const Asked asked;
    const auto pipes = ducts::stock_round_pipes(asked.stock);
    for (std::size_t i = 1; i < pipes.size(); ++i) {
        const house::Rectangular before = asked.chosen(pipes[i - 1], asked.flow).face;
        const house::Rectangular now = asked.chosen(pipes[i], asked.flow).face;
        RC_ASSERT(area(now) >= area(before) ||
                  !ducts::joins_register(pipes[i - 1], now, asked.mount, asked.stock));
    }
}

RC_GTEST_PROP(RegisterFaceLaws, more_air_never_gets_a_smaller_register, ()) {
    const Asked asked;
    for (const house::Round& pipe : ducts::stock_round_pipes(asked.stock))
        RC_ASSERT(area(asked.chosen(pipe, between(1, 2) * asked.flow).face) >=
                  area(asked.chosen(pipe, asked.flow).face));
}

RC_GTEST_PROP(RegisterFaceLaws, a_chosen_register_is_quiet_or_the_largest_and_has_the_boot_it_says, ()) {
    const Asked asked;
    for (const house::Round& pipe : ducts::stock_round_pipes(asked.stock)) {
        const RegisterFace chosen = asked.chosen(pipe, asked.flow);
        const bool quiet = chosen.free >= registers::softly_through(asked.flow);
        RC_ASSERT(quiet || !chosen.large_enough);
        RC_ASSERT(chosen.has_boot == ducts::joins_register(pipe, chosen.face, asked.mount, asked.stock));
    }
}

}  // namespace
