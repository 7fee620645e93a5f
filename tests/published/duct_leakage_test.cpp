// What ducts leak by class, what flexible duct insulation is worth, and a furnace manual's sizing example.
#include <gtest/gtest.h>

#include <cmath>

#include "ducts/friction.hpp"
#include "ducts/leakage.hpp"
#include "ducts/reference_air.hpp"
#include "ducts/run_heat_loss.hpp"
#include "published/csv.hpp"

namespace ducts {
namespace {

using published::Row;
namespace unit = units::unit;

LeakageClass class_of(const std::string& name) {
    if (name == "EN_A") return leakage_class(Airtightness::a);
    if (name == "EN_B") return leakage_class(Airtightness::b);
    if (name == "EN_C") return leakage_class(Airtightness::c);
    if (name == "EN_D") return leakage_class(Airtightness::d);
    return leakage_class(std::stod(name.substr(3)));
}

TEST(PublishedLeakage, of_ducts_by_class) {
    const published::Table rows = published::read("ducts_leakage.csv");
    ASSERT_EQ(rows.size(), 40u);
    for (const Row& row : rows) {
        const LeakageClass made = class_of(row.text("class"));
        const units::Pressure pressure =
            row.has("P_inwc") ? row.number("P_inwc") * unit::inch_wc : units::Pressure(row.number("p_Pa"));
        const double per_m2 = leakage(made, unit::square_metre, pressure) / unit::litre_per_second;
        const double per_100_ft2 = leakage(made, 100 * unit::square_foot, pressure) / unit::cfm;
        EXPECT_NEAR(per_m2 / row.number("L_s_m2"), 1, 1e-5) << row.where();
        EXPECT_NEAR(per_100_ft2 / row.number("cfm_100ft2"), 1, 1e-5) << row.where();
    }
}

// Conversion, derived: the same exponent makes it one factor at every pressure.
TEST(PublishedLeakage, european_classes_as_north_american) {
    EXPECT_NEAR(north_american(leakage_class(Airtightness::a)), 19.19, 0.005);
    EXPECT_NEAR(north_american(leakage_class(Airtightness::b)), 6.40, 0.005);
    EXPECT_NEAR(north_american(leakage_class(Airtightness::c)), 2.13, 0.005);
    EXPECT_NEAR(north_american(leakage_class(Airtightness::d)), 0.711, 0.0005);
}

TEST(PublishedLeakage, insulation_of_flexible_duct_on_its_inner_face) {
    const published::Table rows = published::read("ducts_flexible_insulation.csv");
    ASSERT_EQ(rows.size(), 2u);
    for (const Row& row : rows) {
        const units::Length inside = row.number("D_in") * unit::inch;
        const units::Resistance rated = row.number("R_nominal") * unit::r_value_us;
        const double bare = row.number("R_true_no_films");
        EXPECT_NEAR(flexible_insulation(rated, inside) / unit::r_value_us, bare, 0.005 * bare) << row.where();
        const double films = row.number("films_R");
        const units::Resistance all = insulated_resistance(
            films * unit::r_value_us, rated, house::DuctKind::flex, section_of(house::Round{inside}));
        EXPECT_NEAR(all / unit::r_value_us, bare + films, 0.005 * bare) << row.where();
    }
}

// The manual's own fit: in.wc of so many ft at so many cfm in a pipe of so many inches; and its inverse.
double fitted_loss(double feet, double cfm, double inches) {
    return 0.00123174 * feet * std::pow(cfm, 1.82) / std::pow(inches, 4.86);
}
double fitted_diameter(double feet, double cfm, double loss) {
    return std::pow(0.00123174 * feet * std::pow(cfm, 1.82) / loss, 0.2058);
}

TEST(PublishedExample, every_segment_of_the_furnace_manual) {
    const published::Table rows = published::read("ducts_furnace_example.csv");
    ASSERT_EQ(rows.size(), 15u);
    for (const Row& row : rows) {
        const double feet = row.number("L_ft"), cfm = row.number("Q_cfm"), printed = row.number("printed");
        const bool is_loss = row.has("D_in");
        const double fitted = is_loss ? fitted_loss(feet, cfm, row.number("D_in"))
                                      : fitted_diameter(feet, cfm, row.number("loss_inwc"));
        EXPECT_NEAR(fitted, printed, 0.005 * printed) << row.where();
        // The friction used here loses less than the fit, in any of its segments.
        const double inches = is_loss ? row.number("D_in") : printed;
        const double exact = friction_of(round_of(inches), cfm) * feet / 100;
        const double share = exact / fitted_loss(feet, cfm, inches);
        EXPECT_GT(share, 0.88) << row.where();
        EXPECT_LT(share, 0.97) << row.where();
    }
}

}  // namespace
}  // namespace ducts
