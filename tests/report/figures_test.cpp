#include "report/figures.hpp"

#include <gtest/gtest.h>

#include "report/counting_units.hpp"
#include "units/unit.hpp"

namespace {

using namespace report;
using units::System;
namespace unit = units::unit;

std::string plain(const std::string& text) { return with_plain_spaces(text); }

TEST(Figures, set_thousands_apart) {
    EXPECT_EQ(with_commas("1570"), "1,570");
    EXPECT_EQ(with_commas("999"), "999");
    EXPECT_EQ(with_commas("-1234567.25"), "-1,234,567.25");
    EXPECT_EQ(with_commas("12 ft 6-1/2 in"), "12 ft 6-1/2 in");
    EXPECT_EQ(plain(figure(1571 * unit::btu_per_hour, System::us)), "1,570 Btu/h");
}

TEST(Figures, do_not_part_from_their_unit) { EXPECT_EQ(figure(52 * unit::cfm, System::us), "52\u00a0cfm"); }

TEST(Figures, name_ducts_as_they_are_sold) {
    EXPECT_EQ(plain(shape_text(house::Round{14 * unit::inch}, System::us)), "14 in");
    EXPECT_EQ(plain(shape_text(house::Rectangular{3.25 * unit::inch, 10 * unit::inch}, System::us)),
              "3-1/4 x 10 in");
    EXPECT_EQ(plain(shape_text(house::Round{6 * unit::inch}, System::si)), "152 mm");
    EXPECT_EQ(plain(with_article(duct_words(house::Round{8 * unit::inch}, System::us))),
              "an 8 in round pipe");
    EXPECT_EQ(plain(with_article(duct_words(house::Round{18 * unit::inch}, System::us))),
              "an 18 in round pipe");
    EXPECT_EQ(
        plain(with_article(duct_words(house::Rectangular{3.25 * unit::inch, 10 * unit::inch}, System::us))),
        "a 3-1/4 x 10 in stack");
}

TEST(Figures, list_things_in_words) {
    EXPECT_EQ(listed({}), "");
    EXPECT_EQ(listed({"a"}), "a");
    EXPECT_EQ(listed({"a", "b", "c"}), "a, b and c");
    EXPECT_EQ(counted(1, "duct"), "1 duct");
    EXPECT_EQ(counted(3, "duct"), "3 ducts");
}

TEST(Figures, of_a_range_are_never_below_zero) {
    EXPECT_EQ(span<units::Airflow>({-0.01, 0.02, 0.03}, System::si), "0-30");
}

TEST(CountingUnits, agree_with_the_units_that_people_write) {
    EXPECT_DOUBLE_EQ(count(units::Density(16.01846337396014), System::us), 1.0);
    EXPECT_NEAR(count(units::SpecificHeat(4186.8), System::us), 1.0, 1e-12);
    EXPECT_NEAR(count(units::MassFlow(0.45359237 / 3600), System::us), 1.0, 1e-12);
    EXPECT_NEAR(count(units::Resistance(0.17611018), System::us), 1.0, 1e-7);
    EXPECT_DOUBLE_EQ(count(unit::fahrenheit(70), System::us), 70.0);
}

}  // namespace
