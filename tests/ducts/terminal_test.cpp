#include "ducts/terminal.hpp"

#include <gtest/gtest.h>

#include "ducts/a_duct_house.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
namespace unit = units::unit;

// Two grilles on a return drop, 0.05 and 0.06 kg/s.
house::House two_grilles() {
    house::House house;
    const int drop = add_return(house, trunk_shape, 10);
    add_outlet(house, add_branch(house, drop, 5, trunk_shape, 6));
    add_outlet(house, add_branch(house, drop, 10, trunk_shape, 6));
    house.grille_drop = 0.02 * unit::inch_wc;
    return house;
}

units::Pressure loss_in(const house::House& house) {
    return grille_loss(house, system_of(house).return_side, reference_air());
}

// C of a face three quarters free, worked by hand: (0.707 x 0.5 + 0.25)^2 / 0.5625.
units::Pressure expected(double kg_s, const house::Rectangular& face) {
    constexpr double coefficient = 0.6035 * 0.6035 / 0.5625;
    const double density = reference_air().density.si();
    const double speed = kg_s / density / (face.width.si() * face.height.si());
    return units::Pressure(coefficient * density / 2 * speed * speed);
}

TEST(GridCoefficient, falls_with_the_free_share) {
    EXPECT_EQ(grid_coefficient(1), 0);
    EXPECT_NEAR(grid_coefficient(usual_free_share), 0.6475, 5e-5);
    EXPECT_GT(grid_coefficient(0.5), grid_coefficient(0.6));
}

TEST(GrilleLoss, is_the_assumed_drop_where_no_face_is_described) {
    EXPECT_EQ(loss_in(two_grilles()), 0.02 * unit::inch_wc);
}

TEST(GrilleLoss, is_the_assumed_drop_where_no_return_is_described) {
    house::House house = two_branches();
    house.grille_drop = units::Pressure(6);
    house.outlets[0].face = rectangle_of(4, 10);  // a register is no grille
    EXPECT_EQ(loss_in(house), units::Pressure(6));
}

TEST(GrilleLoss, is_that_of_the_worst_face) {
    house::House house = two_grilles();
    house.outlets[0].face = rectangle_of(10, 6);
    house.outlets[1].face = rectangle_of(20, 20);
    EXPECT_NEAR(loss_in(house) / expected(0.05, rectangle_of(10, 6)), 1, 1e-12);
    house.outlets[1].face = rectangle_of(8, 4);
    EXPECT_NEAR(loss_in(house) / expected(0.06, rectangle_of(8, 4)), 1, 1e-12);
}

TEST(GrilleLoss, is_larger_where_less_of_the_face_is_free) {
    house::House house = two_grilles();
    house.outlets[0].face = rectangle_of(10, 6);
    const units::Pressure usual = loss_in(house);
    house.outlets[0].free_area = 30 * unit::square_inch;
    EXPECT_NEAR(loss_in(house) / usual, grid_coefficient(0.5) / grid_coefficient(0.75), 1e-12);
}

TEST(GrilleLoss, counts_only_described_faces_once_there_is_one) {
    house::House house = two_grilles();
    house.outlets[1].face = rectangle_of(20, 20);
    EXPECT_NEAR(loss_in(house) / expected(0.06, rectangle_of(20, 20)), 1, 1e-12);
}

TEST(GrilleLoss, of_two_grilles_at_the_end_of_one_duct_takes_the_air_of_each) {
    house::House house;
    const int drop = add_return(house, trunk_shape, 10);
    add_outlet(house, drop);
    add_outlet(house, drop);
    house.outlets[0].face = house.outlets[1].face = rectangle_of(10, 6);
    EXPECT_NEAR(loss_in(house) / expected(0.06, rectangle_of(10, 6)), 1, 1e-12);
}

}  // namespace
}  // namespace ducts
