// The solved network against closed forms, loops, a whole supply side and blowers, worked out elsewhere.
#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <map>
#include <numbers>
#include <sstream>
#include <string>
#include <vector>

#include "network/a_network.hpp"
#include "network/solve.hpp"
#include "published/csv.hpp"

namespace network {
namespace {

using published::Row;
namespace unit = units::unit;

std::vector<std::string> split(const std::string& text) {
    std::vector<std::string> parts;
    std::istringstream in(text);
    for (std::string part; std::getline(in, part, '|');) parts.push_back(part);
    return parts;
}

void expect_share(double value, double expected, double share, const Row& row) {
    EXPECT_NEAR(value / expected, 1, share) << row.where();
}

// Flows in m3/s at a density of 1 kg/m3 are mass flows. The blower is 220 Pa behind a loss of its own.
TEST(PublishedNetwork, trunk_and_branches) {
    for (const Row& row : published::read("network_quadratic.csv")) {
        Network net{3, {fan(220), {0, 1, quadratic(300)}, {1, 2, quadratic(row.number("Rs"))}}, {}};
        for (const auto& R : split(row.text("R_branches")))
            net.links.push_back({2, house_air, quadratic(std::stod(R))});
        const Solution solution = solved(net);
        expect_share(flow(solution, 0), row.number("Q"), 1e-8, row);
        expect_share(solution.pressures[2].si(), row.number("dp_branches"), 1e-8, row);
        expect_share(solution.pressures[1].si(), row.number("P_blower"), 1e-8, row);
        const auto q = split(row.text("q_branches"));
        for (std::size_t i = 0; i < q.size(); ++i)
            expect_share(flow(solution, i + 3), std::stod(q[i]), 1e-8, row);
    }
}

TEST(PublishedNetwork, loops) {
    for (const Row& row : published::read("network_loop.csv")) {
        const auto R = [&row](const char* name) { return quadratic(row.number(std::string("R_") + name)); };
        const Network net{3,
                          {fan(100),
                           {0, 1, R("SA")},
                           {0, 2, R("SB")},
                           {1, 2, R("AB")},
                           {1, house_air, R("AO")},
                           {2, house_air, R("BO")}},
                          {}};
        const Solution solution = solved(net);
        std::size_t i = 1;
        for (const char* name : {"q_SA", "q_SB", "q_AB", "q_AO", "q_BO"}) {
            const double q = row.number(name);
            EXPECT_NEAR(flow(solution, i++), q, q == 0 ? 1e-7 : 1e-7 * std::abs(q))
                << row.where() << " " << name;
        }
        expect_share(solution.pressures[1].si(), row.number("P_A"), 1e-7, row);
        expect_share(solution.pressures[2].si(), row.number("P_B"), 1e-7, row);
    }
}

// A blower's table by mass flow of air of that density.
std::vector<FanPoint> blower_table(const std::string& name, units::Density density) {
    std::vector<FanPoint> points;
    for (const Row& row : published::read("ducts_blower.csv"))
        if (row.text("blower") == name)
            points.insert(points.begin(),
                          {row.number("cfm") * unit::cfm * density, row.number("esp_inwc") * unit::inch_wc});
    return points;
}

TEST(PublishedNetwork, where_a_blower_meets_its_ducts) {
    const units::Density density(1);
    for (const Row& row : published::read("ducts_operating_point.csv")) {
        const double q0 = (row.number("q0_cfm") * unit::cfm).si();
        const double p0 = (row.number("p0_inwc") * unit::inch_wc).si();
        const FanCurve curve(blower_table(row.text("blower"), density), Between::straight_lines);
        const Solution solution =
            solved({1, {{house_air, 0, curve}, {0, house_air, quadratic(p0 / (q0 * q0))}}, {}});
        expect_share(solution.flows[0] / density / unit::cfm, row.number("Q_cfm"), 1e-5, row);
        expect_share(solution.pressures[0] / unit::inch_wc, row.number("esp_inwc"), 1e-5, row);
    }
}

// --- The whole supply side
// -----------------------------------------------------------------------------------

double quadratic_of(double C, units::Area area) {
    return C / (2 * reference_air().density.si() * area.si() * area.si());
}

Link branch(int node, double inches, double feet, double C) {
    const ducts::Section section =
        ducts::section_of(house::Round{inches * unit::inch}, 0.09144 * unit::millimetre);
    return {node, house_air,
            DuctLoss{section, feet * unit::foot, reference_air(), 1, quadratic_of(C, section.area)}};
}

// Friction as in the round duct of equal friction, fittings at the true velocity.
Link rectangle(int from, int to, house::Rectangular size, double feet, double C) {
    const ducts::Section section =
        ducts::section_of(house::Round{ducts::equivalent_round(size)}, 0.09144 * unit::millimetre);
    return {
        from, to,
        DuctLoss{section, feet * unit::foot, reference_air(), 1, quadratic_of(C, size.width * size.height)}};
}

house::Rectangular inches(double width, double height) { return {width * unit::inch, height * unit::inch}; }

struct Branch {
    int node;
    double inches, feet, C;
};
const std::map<std::string, Branch> branches{
    {"R1", {2, 6, 22, 3}},   {"R2", {2, 7, 14, 2.6}},  {"R3", {3, 6, 18, 3}},   {"R4", {3, 5, 12, 2.8}},
    {"R5", {4, 7, 26, 3.2}}, {"R6", {4, 8, 10, 2.6}},  {"R7", {4, 6, 30, 3.4}}, {"R8", {3, 8, 16, 2.6}},
    {"R9", {2, 7, 20, 2.8}}, {"R10", {4, 7, 18, 2.8}}, {"R11", {4, 6, 20, 3}},
};

// Nodes: 0 before the coil, 1 supply plenum, 2 to 4 the trunk's ends, 5 return plenum. The house air is drawn
// in by the return.
TEST(PublishedNetwork, a_whole_supply_side) {
    const units::Density density = reference_air().density;
    const FanCurve blower(blower_table("psc half hp medium high", density), Between::straight_lines);
    const double devices = 55 / std::pow(0.5 * density.si(), 2);
    for (const Row& row : published::read("network_house.csv")) {
        const bool choked = row.text("case") == "return_C_x3";
        const bool damped = row.text("case") == "R6_damper_C30";
        Network net{6,
                    {{5, 0, blower},
                     {0, 1, quadratic(devices)},
                     rectangle(house_air, 5, inches(24, 10), 16, choked ? 7.5 : 2.5),
                     rectangle(1, 2, inches(24, 8), 8, 0.8),
                     rectangle(2, 3, inches(20, 8), 12, 0.15),
                     rectangle(3, 4, inches(14, 8), 12, 0.15)},
                    {}};
        const auto carried = split(row.text("branch_cfm"));
        for (const auto& name_and_cfm : carried) {
            const std::string name = name_and_cfm.substr(0, name_and_cfm.find(':'));
            const Branch& one = branches.at(name);
            net.links.push_back(branch(one.node, one.inches, one.feet, damped && name == "R6" ? 30 : one.C));
        }
        const Solution solution = solved(net);
        const auto cfm = [&](std::size_t link) { return solution.flows[link] / density / unit::cfm; };
        expect_share(cfm(0), row.number("Q_total_cfm"), 1e-5, row);
        expect_share((solution.pressures[0] - solution.pressures[5]) / unit::inch_wc, row.number("esp_inwc"),
                     1e-5, row);
        for (std::size_t i = 0; i < 3; ++i)
            expect_share(solution.pressures[i + 2].si(), row.number("P_T" + std::to_string(i + 1) + "_Pa"),
                         1e-5, row);
        for (std::size_t i = 0; i < carried.size(); ++i)
            expect_share(cfm(i + 6), std::stod(carried[i].substr(carried[i].find(':') + 1)), 1e-5, row);
    }
}

}  // namespace
}  // namespace network
