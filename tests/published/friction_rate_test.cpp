// Friction rate, blowers, temperature rise and grilles against published examples and tables.
#include "ducts/friction_rate.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "ducts/a_duct_house.hpp"
#include "ducts/blower.hpp"
#include "ducts/terminal.hpp"
#include "published/csv.hpp"

namespace ducts {
namespace {

using published::Row;
namespace unit = units::unit;

using Points = std::vector<house::BlowerPoint>;

// Half a unit in the last of so many decimals.
void expect_printed(double value, double expected, int decimals, const Row& row) {
    EXPECT_NEAR(value, expected, 0.5000001 * std::pow(10.0, -decimals)) << row.where();
}
int decimals_of(const std::string& printed) {
    return static_cast<int>(printed.size() - printed.find('.') - 1);
}
double or_none(const Row& row, const std::string& column) { return row.has(column) ? row.number(column) : 0; }

// A straight supply duct and an assumed return of the example's lengths.
house::House house_of(const Row& row) {
    house::House house;
    a_duct_house::add_outlet(house,
                             a_duct_house::add_root(house, a_duct_house::six_inch, row.number("supply_ft")));
    house.return_length = row.number("return_ft") * unit::foot;
    house.register_drop = row.number("register") * unit::inch_wc;
    house.grille_drop = row.number("grille") * unit::inch_wc;
    house.devices = {{house::DeviceKind::coil, "coil", or_none(row, "coil") * unit::inch_wc, {}},
                     {house::DeviceKind::filter, "filter", or_none(row, "filter") * unit::inch_wc, {}}};
    return house;
}

TEST(PublishedFrictionRate, examples) {
    int examples = 0;
    for (const Row& row : published::read("ducts_friction_rate.csv")) {
        const house::House house = house_of(row);
        DesignBlower blower;
        blower.external_static = row.number("external_static") * unit::inch_wc;
        blower.airflow = 1000 * unit::cfm;
        const FrictionRateBudget budget =
            friction_rate(house, a_duct_house::system_of(house), blower, reference_air(), reference_air());
        EXPECT_NEAR(budget.available / unit::inch_wc, row.number("available"), 1e-12) << row.where();
        EXPECT_NEAR(budget.total_effective_length / unit::foot, row.number("total_ft"), 1e-9) << row.where();
        const double rate = budget.rate / unit::inch_wc_per_100_ft;
        expect_printed(rate, row.number("recomputed_rate"), decimals_of(row.text("recomputed_rate")), row);
        expect_printed(rate, row.number("printed_rate"), decimals_of(row.text("printed_rate")), row);
        ++examples;
    }
    EXPECT_EQ(examples, 3);
}

// Trade-association example: 1000 cfm for 28,000 Btu/h, a room of 3000; printed 107 cfm.
TEST(PublishedFrictionRate, a_rooms_share_of_the_blower) {
    house::House house;
    for (int room : {0, 1})
        a_duct_house::add_outlet(house, a_duct_house::add_root(house, a_duct_house::six_inch, 20), room);
    loads::HouseHeatLoss loss;
    loss.rooms.resize(2);
    loss.rooms[0].total = 3000 * unit::btu_per_hour;
    loss.rooms[1].total = 25'000 * unit::btu_per_hour;
    const units::Density density = reference_air().density;
    const DesignFlows flows = design_flows(house, loss, 1000 * unit::cfm * density);
    EXPECT_NEAR(flows.outlets.at(0) / density / unit::cfm, 107, 0.5);
    EXPECT_NEAR(flows.outlets.at(0) / density / unit::cfm, 107.143, 5e-4);
}

std::map<std::string, Points> blowers() {
    std::map<std::string, Points> tables;
    for (const Row& row : published::read("ducts_blower.csv"))
        tables[row.text("blower")].push_back(
            {row.number("esp_inwc") * unit::inch_wc, row.number("cfm") * unit::cfm});
    return tables;
}

void expect_points_and_middles(const std::string& name, const Points& points) {
    for (std::size_t i = 0; i < points.size(); ++i) {
        const units::Pressure external_static = points[i].external_static;
        EXPECT_NEAR(airflow_at_static(points, external_static) / points[i].airflow, 1, 1e-12) << name;
        if (i == 0) continue;
        const units::Pressure middle = 0.5 * (external_static + points[i - 1].external_static);
        const units::Airflow mean = 0.5 * (points[i].airflow + points[i - 1].airflow);
        EXPECT_NEAR(airflow_at_static(points, middle) / mean, 1, 1e-12) << name;
        if (name.starts_with("constant")) continue;
        EXPECT_NEAR(static_pressure_at(points, points[i].airflow) / external_static, 1, 1e-12) << name;
        EXPECT_NEAR(static_pressure_at(points, mean) / middle, 1, 1e-12) << name;
    }
}

TEST(PublishedBlowers, points_and_the_middles_between_them) {
    const auto tables = blowers();
    EXPECT_EQ(tables.size(), 10u);
    for (const auto& table : tables) {
        EXPECT_EQ(table.second.size(), 8u) << table.first;
        expect_points_and_middles(table.first, table.second);
    }
}

TEST(PublishedBlowers, where_they_meet_a_duct_system) {
    const auto tables = blowers();
    int met = 0;
    for (const Row& row : published::read("ducts_operating_point.csv")) {
        const Points& points = tables.at(row.text("blower"));
        const double cfm = row.number("Q_cfm");
        const double in_wc = row.number("esp_inwc");
        EXPECT_NEAR(static_pressure_at(points, cfm * unit::cfm) / unit::inch_wc / in_wc, 1, 1e-5)
            << row.where();
        EXPECT_NEAR(airflow_at_static(points, in_wc * unit::inch_wc) / unit::cfm / cfm, 1, 1e-5)
            << row.where();
        ++met;
    }
    EXPECT_EQ(met, 6);
}

TEST(PublishedBlowers, temperature_rise_of_furnaces) {
    int furnaces = 0;
    for (const Row& row : published::read("ducts_temperature_rise.csv")) {
        const units::Airflow airflow = row.number("cfm") * unit::cfm;
        const units::Power input = row.number("input_Btuh") * unit::btu_per_hour;
        const auto rise = row.number("published_rise_F") * unit::fahrenheit_degree;
        house::Blower blower;
        blower.known_by = airflow;
        const double share = rise / design_blower(blower, input, reference_air()).rise;
        EXPECT_GE(share, 0.85) << row.where();
        EXPECT_LE(share, 0.93) << row.where();
        EXPECT_NEAR(share / row.number("implied_output_fraction"), 1, 5e-3) << row.where();
        blower.known_by = rise;
        const DesignBlower back = design_blower(blower, share * input, reference_air());
        EXPECT_NEAR(back.airflow / airflow, 1, 1e-12) << row.where();
        ++furnaces;
    }
    EXPECT_EQ(furnaces, 7);
}

// A grille of so much free share on a return that brings this velocity to its face.
TEST(PublishedGrilles, loss_by_free_share) {
    int rows = 0;
    for (const Row& row : published::read("ducts_grille.csv")) {
        const double C = grid_coefficient(row.number("free_area_ratio"));
        const units::Velocity speed = row.number("V_face_fpm") * unit::foot_per_minute;
        const double pressure = velocity_pressure(speed, reference_air()) / unit::inch_wc;
        EXPECT_NEAR(C / row.number("C_face"), 1, 1e-4) << row.where();
        expect_printed(pressure, row.number("Vp_inwg"), 5, row);
        expect_printed(C * pressure, row.number("loss_inwg"), 5, row);
        expect_printed((C + 1) * pressure, row.number("loss_plus_exit_inwg"), 5, row);
        ++rows;
    }
    EXPECT_EQ(rows, 36);
}

TEST(PublishedGrilles, a_return_grille_of_the_usual_free_share) {
    int rows = 0;
    for (const Row& row : published::read("ducts_grille.csv")) {
        if (row.number("free_area_ratio") != usual_free_share) continue;
        house::House house;
        a_duct_house::add_outlet(house, a_duct_house::add_return(house, a_duct_house::trunk_shape, 10));
        house.outlets[0].face = rectangle_of(20, 14);
        const units::Area face = house.outlets[0].face->width * house.outlets[0].face->height;
        DesignFlows flows;
        flows.outlets = {row.number("V_face_fpm") * unit::foot_per_minute * face * reference_air().density};
        const DuctSystem system = duct_system(house, flows, std::nullopt);
        const units::Pressure loss = grille_loss(house, system.return_side, reference_air());
        expect_printed(loss / unit::inch_wc, row.number("loss_inwg"), 5, row);
        ++rows;
    }
    EXPECT_EQ(rows, 6);
}

}  // namespace
}  // namespace ducts
