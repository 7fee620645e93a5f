// Duct friction, sections and heat loss against published and independently derived values.
//
// Not computed here, so not checked: the power-law fits of older charts.
#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <string>
#include <variant>

#include "ducts/fittings.hpp"
#include "ducts/friction.hpp"
#include "ducts/reference_air.hpp"
#include "ducts/run_heat_loss.hpp"
#include "ducts/section.hpp"
#include "published/csv.hpp"

namespace ducts {
namespace {

using published::Row;
using published::Table;
namespace unit = units::unit;

void expect_relative(double value, double expected, double tolerance, const Row& row) {
    EXPECT_LE(std::abs(value - expected), tolerance * std::abs(expected))
        << row.where() << ": " << value << ", expected " << expected;
}

// One unit in the last of so many decimals.
void expect_decimals(double value, double expected, int decimals, const Row& row) {
    EXPECT_NEAR(value, expected, std::pow(10.0, -decimals)) << row.where();
}

Table rows_of(const std::string& file, std::size_t count) {
    Table table = published::read(file);
    EXPECT_EQ(table.size(), count) << file;
    return table;
}

Section pipe(double inches) { return section_of(round_of(inches)); }

// Columns a_in and b_in; a round pipe has no b_in.
house::Shape shape_in(const Row& row) {
    if (!row.has("b_in")) return round_of(row.number("a_in"));
    return rectangle_of(row.number("a_in"), row.number("b_in"));
}

double capacity(const house::Shape& shape, double rate) {
    return airflow_at(section_of(shape), rate * unit::inch_wc_per_100_ft, reference_air()) / unit::cfm;
}

units::Velocity velocity_in(const house::Shape& shape, double cfm) {
    return cfm * unit::cfm / section_of(shape).area;
}

// The loss of C = coefficient, in in.wc.
double loss_of(double coefficient, units::Velocity velocity) {
    return coefficient * (velocity_pressure(velocity, reference_air()) / unit::inch_wc);
}

TEST(PublishedDucts, friction_of_48_pipes) {
    for (const Row& row : rows_of("ducts_friction.csv", 48)) {
        const Section section =
            section_of(round_of(row.number("D_in")), row.number("eps_mm") * unit::millimetre);
        const units::Airflow flow = row.number("Q_cfm") * unit::cfm;
        const double Re = reynolds(section, flow, reference_air());
        const units::FrictionRate drop = friction(section, flow, reference_air());
        expect_relative(Re, row.number("Re"), 1e-9, row);
        expect_relative(friction_factor(Re, section.roughness / section.hydraulic_diameter),
                        row.number("f_darcy"), 1e-9, row);
        expect_relative(drop / unit::pascal_per_metre, row.number("dp_Pa_per_m"), 1e-9, row);
        expect_relative(drop / unit::inch_wc_per_100_ft, row.number("dp_inwg_per_100ft"), 1e-9, row);
        expect_relative(airflow_at(section, drop, reference_air()) / unit::cfm, row.number("Q_cfm"), 1e-10,
                        row);
    }
}

TEST(PublishedDucts, friction_factor_through_the_transition) {
    for (const Row& row : rows_of("ducts_transition.csv", 70)) {
        const double Re = row.number("Re");
        const double tolerance = Re < 2000 || Re > 4000 ? 1e-8 : 1e-6;
        const double f = friction_factor(Re, row.number("eps_over_D"));
        expect_relative(f, row.number("f_blend"), tolerance, row);
        expect_relative(f * Re * Re, row.number("f_Re2"), tolerance, row);
    }
}

TEST(PublishedDucts, equivalent_round_and_hydraulic_diameter) {
    for (const Row& row : rows_of("ducts_equivalent_round.csv", 37)) {
        const house::Rectangular duct = rectangle_of(row.number("a_in"), row.number("b_in"));
        const double round = equivalent_round(duct) / unit::inch;
        EXPECT_NEAR(round, row.number("De_published"), 0.13) << row.where();
        expect_relative(round, row.number("De_formula"), 1e-4, row);
        expect_relative(section_of(duct).hydraulic_diameter / unit::inch, row.number("Dh_4A_over_P"), 1e-4,
                        row);
        expect_relative(section_of(duct).area / unit::square_inch, row.number("area"), 1e-12, row);
    }
}

TEST(PublishedDucts, equivalent_round_of_small_ducts) {
    for (const Row& row : rows_of("ducts_equivalent_round_second.csv", 30)) {
        const double round =
            equivalent_round(rectangle_of(row.number("a_in"), row.number("b_in"))) / unit::inch;
        const std::string printed = row.text("De_published");
        const bool hundredths = printed.size() - printed.find('.') == 3;
        EXPECT_NEAR(round, row.number("De_published"), hundredths ? 0.005 : 0.05) << row.where();
        expect_decimals(round, row.number("De_formula"), 4, row);
    }
}

TEST(PublishedDucts, wall_stacks_as_equivalent_round_and_by_hydraulic_diameter) {
    for (const Row& row : rows_of("ducts_wall_stacks.csv", 6)) {
        const house::Rectangular stack = rectangle_of(row.number("a_in"), row.number("b_in"));
        const double cfm = row.number("Q_cfm");
        const units::Length round = equivalent_round(stack);
        const double as_round = friction_of(house::Round{round}, cfm);
        const double as_stack = friction_of(stack, cfm);
        expect_relative(round / unit::inch, row.number("De_in"), 1e-4, row);
        expect_relative(section_of(stack).hydraulic_diameter / unit::inch, row.number("Dh_in"), 1e-4, row);
        expect_relative(velocity_in(stack, cfm) / unit::foot_per_minute, row.number("V_true_fpm"), 1e-4, row);
        expect_decimals(as_round, row.number("dp_De_inwg_100ft"), 5, row);
        expect_decimals(as_stack, row.number("dp_Dh_inwg_100ft"), 5, row);
        EXPECT_NEAR(100 * (as_stack / as_round - 1), row.number("Dh_vs_De_pct"), 0.1) << row.where();
    }
}

TEST(PublishedDucts, size_tables) {
    for (const Row& row : rows_of("ducts_size_tables.csv", 52)) {
        const double cfm = row.number("Q_cfm");
        const double published = row.number("published_D_in");
        const double exact = exact_inches(cfm, 0.10);
        expect_relative(exact, row.number("exact_D_in"), 1e-4, row);
        expect_relative(friction_of(round_of(published), cfm), row.number("fr_at_published_D"), 1e-4, row);
        expect_relative(velocity_in(round_of(published), cfm) / unit::foot_per_minute,
                        row.number("V_fpm_at_published_D"), 2e-4, row);
        EXPECT_EQ(std::ceil(exact), row.number("ceil_D_in")) << row.where();
        if (row.text("table") == "A") {
            EXPECT_EQ(std::ceil(exact), published) << row.where();
        } else if (cfm > 45) {
            EXPECT_LE(exact, published) << row.where();
        }
    }
}

TEST(PublishedDucts, flat_ovals) {
    for (const Row& row : rows_of("ducts_flat_oval.csv", 51)) {
        const house::FlatOval oval{row.number("major_in") * unit::inch, row.number("minor_in") * unit::inch};
        const double round = equivalent_round(oval) / unit::inch;
        const double exact = exact_inches(row.number("Q_cfm"), 0.10);
        expect_relative(section_of(oval).area / unit::square_inch, row.number("AR_in2"), 1e-4, row);
        expect_relative(section_of(oval).perimeter / unit::inch, row.number("P_in"), 1e-4, row);
        expect_relative(round, row.number("De_in"), 1e-4, row);
        expect_relative(exact, row.number("exact_D_for_0p10"), 1e-4, row);
        expect_relative(friction_of(round_of(round), row.number("Q_cfm")), row.number("fr_at_De"), 2e-4, row);
        EXPECT_GT(round / exact, 1.018 - 0.002) << row.where();
        EXPECT_LT(round / exact, 1.083 + 0.002) << row.where();
    }
    // Course notes (read): 30 x 24 in 27.5, 30 x 26 in 28.4.
    EXPECT_NEAR(equivalent_round(house::FlatOval{30 * unit::inch, 24 * unit::inch}) / unit::inch, 27.5, 0.05);
    EXPECT_NEAR(equivalent_round(house::FlatOval{30 * unit::inch, 26 * unit::inch}) / unit::inch, 28.4, 0.05);
}

TEST(PublishedDucts, flexible_ducts_that_are_not_taut) {
    const Table table = published::read("ducts_flex_compression.csv");
    EXPECT_GE(table.size(), 30u);
    for (const Row& row : table)
        EXPECT_NEAR(
            flex_compression(row.number("D_in") * unit::inch, 1 - row.number("compression_pct") / 100),
            row.number("PDCF"), 1e-5 + 1e-9)
            << row.where();
}

double flexible_capacity(double inches, double rate, double stretch) {
    return airflow_at(section_of(round_of(inches), house::DuctKind::flex, stretch),
                      rate * unit::inch_wc_per_100_ft, reference_air()) /
           unit::cfm;
}

TEST(PublishedDucts, airflow_that_round_pipes_carry) {
    for (const Row& row : rows_of("ducts_round_capacity.csv", 36)) {
        const house::Shape shape = round_of(row.number("D_in"));
        const double cfm = capacity(shape, row.number("fr_inwg_100ft"));
        expect_relative(cfm, row.number("galv_cfm"), 1e-4, row);
        expect_decimals(velocity_in(shape, cfm) / unit::foot_per_minute, row.number("galv_fpm"), 1, row);
        const double inches = row.number("D_in"), rate = row.number("fr_inwg_100ft");
        expect_relative(flexible_capacity(inches, rate, 1), row.number("flex_stretched_cfm"), 1e-4, row);
        expect_relative(flexible_capacity(inches, rate, 0.96), row.number("flex_4pct_cfm"), 1e-4, row);
        if (row.has("flex_15pct_cfm"))
            expect_relative(flexible_capacity(inches, rate, 0.85), row.number("flex_15pct_cfm"), 1e-4, row);
    }
}

TEST(PublishedDucts, airflow_that_rectangular_ducts_carry) {
    for (const Row& row : rows_of("ducts_rectangular_capacity.csv", 29)) {
        const house::Rectangular duct = rectangle_of(row.number("a_in"), row.number("b_in"));
        const house::Round round{equivalent_round(duct)};
        expect_relative(round.diameter / unit::inch, row.number("De_in"), 1e-4, row);
        expect_relative(capacity(round, 0.05), row.number("cfm_0p05"), 1e-4, row);
        expect_relative(capacity(round, 0.08), row.number("cfm_0p08"), 1e-4, row);
        expect_relative(capacity(round, 0.10), row.number("cfm_0p10"), 1e-4, row);
        expect_relative(capacity(duct, 0.08), row.number("cfm_0p08"), 0.02, row);
        expect_decimals(velocity_in(duct, capacity(round, 0.08)) / unit::foot_per_minute,
                        row.number("V_true_fpm_at_0p08"), 1, row);
    }
}

TEST(PublishedDucts, chart_readings) {
    for (const Row& row : rows_of("ducts_chart_readings.csv", 6)) {
        expect_relative(friction_of(round_of(row.number("D_in")), row.number("Q_cfm")),
                        row.number("published_inwg_per_100ft"), 0.12, row);
    }
}

TEST(PublishedDucts, equivalent_length_of_a_unit_coefficient) {
    for (const Row& row : rows_of("ducts_equivalent_length.csv", 14)) {
        const house::Shape shape = shape_in(row);
        const auto* rectangle = std::get_if<house::Rectangular>(&shape);
        const house::Shape round = rectangle ? house::Round{equivalent_round(*rectangle)} : shape;
        const double cfm = row.number("Q_cfm");
        const double loss = loss_of(1, velocity_in(shape, cfm));
        expect_decimals(velocity_in(shape, cfm) / unit::foot_per_minute, row.number("V_fpm"), 1, row);
        expect_decimals(loss, row.number("Vp_inwg"), 5, row);
        expect_decimals(friction_of(round, cfm), row.number("fr_inwg_100ft"), 5, row);
        expect_relative(100 * loss / friction_of(round, cfm), row.number("EL_ft_per_C"), 2e-4, row);
    }
}

TEST(PublishedDucts, velocities_of_worked_examples) {
    for (const Row& row : rows_of("ducts_velocities.csv", 21)) {
        const double fpm = velocity_in(shape_in(row), row.number("Q_cfm")) / unit::foot_per_minute;
        expect_relative(fpm, row.number("recomputed"), 5e-5, row);
        const bool exact = row.text("id").starts_with("W1") || row.text("id").starts_with("W3");
        EXPECT_NEAR(fpm, row.number("printed"), exact ? 0.5 : 0.02 * fpm) << row.where();
    }
}

// Course notes: a plenum, 400 cfm in 10 in, then 280 cfm in 9 in straight on or 120 cfm in 6 in off it.
double path_to_the_takeoff() {
    return loss_of(0.85, velocity_in(round_of(10), 400)) + 0.5 * friction_of(round_of(10), 400);
}
double path_straight_on() { return path_to_the_takeoff() + 0.002 + 0.5 * friction_of(round_of(9), 280); }
double path_off_it() {
    return path_to_the_takeoff() + loss_of(0.48, velocity_in(round_of(10), 400)) +
           2 * loss_of(0.37, velocity_in(round_of(6), 120)) + 0.4 * friction_of(round_of(6), 120);
}

// The value worked out anew, and the printed one within so much.
void expect_worked(const Row& row, double value, double recomputed_relative, double printed_within) {
    expect_relative(value, row.number("recomputed"), recomputed_relative, row);
    EXPECT_NEAR(value, row.number("printed"), printed_within) << row.where();
}

void expect_whole_inch_above(const Row& row, double inches) {
    expect_relative(inches, row.number("recomputed"), 1e-4, row);
    EXPECT_EQ(std::ceil(inches), row.number("printed")) << row.where();
}

double loss_with(double f, double feet, const house::Round& round, double cfm) {
    return loss_of(f * (feet * unit::foot / round.diameter), velocity_in(round, cfm));
}

TEST(PublishedDucts, losses_and_sizes_of_worked_examples) {
    for (const Row& row : rows_of("ducts_worked_examples.csv", 11)) {
        const std::string& id = row.text("id");
        if (id == "W3.1-2") expect_worked(row, path_straight_on(), 1e-4, 0.05 * 0.1155);
        if (id == "W3.1-3") expect_worked(row, path_off_it(), 1e-4, 0.05 * 0.1548);
        if (id == "W5.f") expect_worked(row, friction_factor(337000, 0.0036 / 28), 1e-4, 1e-3 * 0.01545);
        if (id == "W5.dp")
            expect_worked(row, loss_with(0.015441, 80, round_of(28), 6000), 2e-3, 0.02 * 0.064);
        if (id == "W6.J3") expect_worked(row, friction_of(round_of(14.2), 1000), 1e-4, 0.05 * 0.08);
        if (id == "W6.HVp") expect_worked(row, loss_of(1, 1200 * unit::foot_per_minute), 2e-3, 0.005);
        if (id == "W6.IVp") expect_worked(row, loss_of(1, 1028.57 * unit::foot_per_minute), 2e-3, 0.005);
        if (id == "W7.2") expect_whole_inch_above(row, exact_inches(170, 15 / 130.0));
        if (id == "W7.4") expect_whole_inch_above(row, exact_inches(270, 15 / 80.0));
    }
}

TEST(PublishedDucts, sections_of_worked_examples) {
    const house::Rectangular duct{0.5 * unit::metre, 0.35 * unit::metre};
    for (const Row& row : rows_of("ducts_worked_examples.csv", 11)) {
        const units::Length hydraulic = section_of(duct).hydraulic_diameter;
        if (row.text("id") == "W8.Dh") expect_worked(row, hydraulic / unit::metre, 2e-5, 1e-5);
        if (row.text("id") == "W8.hueb") {
            expect_relative(equivalent_round(duct) / unit::metre, row.number("recomputed"), 2e-5, row);
        }
    }
}

TEST(PublishedDucts, temperature_at_the_end_of_a_run) {
    for (const Row& row : rows_of("ducts_run_heat_loss.csv", 6)) {
        const units::Length perimeter = pipe(row.number("D_in")).perimeter;
        const units::MassFlow mass_flow = row.number("Q_cfm") * unit::cfm * units::Density(1.2040973);
        const ducts::Run run{row.number("L_ft") * unit::foot, perimeter,
                             row.number("R_total") * unit::r_value_us,
                             unit::fahrenheit(row.number("Tamb_F"))};
        const units::Temperature entering = unit::fahrenheit(row.number("Tin_F"));
        const units::Temperature out =
            leaving_temperature(run, mass_flow, units::SpecificHeat(1006), entering);
        const units::Power loss = mass_flow * units::SpecificHeat(1006) * (entering - out);
        expect_relative(unit::in_fahrenheit(out), row.number("Tout_F"), 1e-7, row);
        expect_relative(loss / unit::watt, row.number("loss_W"), 3e-6, row);
    }
}

}  // namespace
}  // namespace ducts
