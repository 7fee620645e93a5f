// Eight whole houses solved by another program, network_1.json to network_8.json: its two methods agree to
// 1e-8. Each file says what it reckons with. Mark: derived. Tolerance: as in each file, 1e-6 of flows and
// pressures; no duct of them comes near the transition, where that program's bridge differs from ours.
#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <numbers>
#include <string>
#include <vector>

#include "network/a_network.hpp"
#include "network/solve.hpp"

namespace network {
namespace {

using nlohmann::json;

json read_json(int number) {
    std::ifstream in(SILLFLOW_SOURCE_DIR "/tests/published/network_" + std::to_string(number) + ".json");
    EXPECT_TRUE(in.good());
    return json::parse(in);
}

house::Shape shape_of(const json& section) {
    const auto metres = [&section](const char* key) { return units::Length(section.at(key).get<double>()); };
    const std::string shape = section.at("shape");
    if (shape == "rect") return house::Rectangular{metres("width"), metres("height")};
    if (shape == "oval") return house::FlatOval{metres("major_axis"), metres("minor_axis")};
    return house::Round{metres("diameter")};
}

units::Length equivalent_diameter(const house::Shape& shape) {
    if (const auto* rectangle = std::get_if<house::Rectangular>(&shape))
        return ducts::equivalent_round(*rectangle);
    if (const auto* oval = std::get_if<house::FlatOval>(&shape)) return ducts::equivalent_round(*oval);
    return std::get<house::Round>(shape).diameter;
}

struct Variant {
    bool leaks_by_total = false;
    Between between = Between::smooth;
};

// One of the files as a network. Flows are counted away from the blower on the supply side, towards it on the
// return side; node 0 is before the devices, 1 the supply plenum, 2 the return plenum, then each section's
// far end.
class PublishedHouse {
  public:
    PublishedHouse(const json& file, Variant variant) : file_(file), variant_(variant) {
        const json& air = file.at("air");
        air_ = {units::Density(air.at("density").get<double>()), units::SpecificHeat(1006),
                units::Viscosity(air.at("viscosity").get<double>())};
        net_.nodes = 3;
        add_blower();
        add_side("supply", 1);
        add_side("return", 2);
        net_.injected.resize(static_cast<std::size_t>(net_.nodes));
        if (file.at("blower").at("type") == "constant_flow") {
            const units::MassFlow held =
                units::Airflow(file.at("blower").at("flow").get<double>()) * air_.density;
            net_.injected[0] += held;
            net_.injected[2] -= held;
        }
    }

    // Leaks see static pressure: the velocity pressure of their section is a head of theirs, found again
    // until it stays.
    Solution solve() {
        Solver solver(net_);
        Solution solution = solver.solve(net_);
        double change = 1;
        for (int i = 0; i < 60 && !variant_.leaks_by_total && change > 1e-11; ++i) {
            change = 0;
            for (const Leak& leak : leaks_) {
                const double V = solution.flows[leak.of].si() / air_.density.si() / leak.area;
                const double head = leak.sign * air_.density.si() * V * V / 2;
                units::Pressure& was = net_.links[leak.link].head;
                change = std::max(change, std::abs(head - was.si()));
                was = units::Pressure(head);
            }
            solution = solver.solve(net_, std::vector<units::MassFlow>(solution.flows));
        }
        EXPECT_TRUE(solution.converged);
        return solution;
    }

    double airflow(const Solution& solution, std::size_t link) const {
        return (solution.flows[link] / air_.density).si();
    }
    std::map<std::string, std::size_t> links;  // of sections, leaks as "leak s0", terminals
    std::map<std::string, std::size_t> nodes;  // at the far ends of sections
    std::vector<std::size_t> blower_and_devices() const { return devices_; }

  private:
    struct Leak {
        std::size_t link, of;
        double area;
        double sign;  // velocity lessens what drives air out of a supply duct, and adds to what draws it into
                      // a return
    };

    std::size_t add(int from, int to, Law law) {
        net_.links.push_back({from, to, std::move(law)});
        return net_.links.size() - 1;
    }

    void add_blower() {
        const json& blower = file_.at("blower");
        const double density = air_.density.si();
        if (blower.at("type") == "table") {
            std::vector<FanPoint> points;
            for (std::size_t i = 0; i < blower.at("flow").size(); ++i)
                points.push_back({units::MassFlow(blower.at("flow")[i].get<double>() * density),
                                  units::Pressure(blower.at("external_static_pressure")[i].get<double>() *
                                                  density / blower.at("rated_density").get<double>())});
            add(2, 0, FanCurve(points, variant_.between));
        }
        FixedLoss devices;
        for (const json& device : file_.at("internal")) {
            devices.linear += device.at("a").get<double>() / density;
            devices.quadratic +=
                device.at("b").get<double>() / density / device.at("rated_density").get<double>();
        }
        devices_.push_back(add(0, 1, devices));
    }

    void add_side(const std::string& name, int plenum) {
        const bool supply = name == "supply";
        std::map<std::string, double> areas;
        const auto link = [&](int inner, int outer, Law law) {
            return supply ? add(inner, outer, std::move(law)) : add(outer, inner, std::move(law));
        };
        for (const json& section : file_.at(name).at("sections")) {
            const house::Shape shape = shape_of(section);
            const units::Length roughness(section.at("roughness").get<double>());
            const double area = ducts::section_of(shape, roughness).area.si();
            const bool equivalent = file_.at("model").at("noncircular_basis") == "equivalent";
            const ducts::Section friction_in = ducts::section_of(
                equivalent ? house::Shape(house::Round{equivalent_diameter(shape)}) : shape, roughness);
            double k = 0;
            for (const json& fitting : section.at("fittings")) k += fitting.at("k").get<double>();
            const int end = net_.nodes++;
            const json& parent = section.at("parent");
            const int begin =
                parent.is_null() ? plenum : static_cast<int>(nodes.at(parent.get<std::string>()));
            const std::string id = section.at("id");
            nodes[id] = static_cast<std::size_t>(end);
            links[id] = link(begin, end,
                             DuctLoss{friction_in, units::Length(section.at("length").get<double>()), air_,
                                      section.at("friction_multiplier").get<double>(), coefficient(k, area)});
            const double leak_c = section.at("leak_c").get<double>() * air_.density.si();
            if (leak_c > 0) {
                links["leak " + id] =
                    link(end, house_air, LeakLaw{leak_c, section.at("leak_n").get<double>()});
                leaks_.push_back({links["leak " + id], links[id], area, supply ? -1.0 : 1.0});
            }
        }
        for (const json& terminal : file_.at(name).at("terminals")) {
            const double k = terminal.at("k").get<double>() + terminal.at("k_damper").get<double>();
            const int node = static_cast<int>(nodes.at(terminal.at("section").get<std::string>()));
            links[terminal.at("id")] =
                link(node, house_air, FixedLoss{0, coefficient(k, terminal.at("face_area").get<double>())});
        }
    }

    double coefficient(double k, double area) const { return k / (2 * air_.density.si() * area * area); }

    const json& file_;
    Variant variant_;
    loads::Air air_;
    Network net_;
    std::vector<Leak> leaks_;
    std::vector<std::size_t> devices_;
};

void expect_near(double value, const json& expected, double scale, const std::string& what) {
    EXPECT_NEAR(value, expected.get<double>(), 1e-6 * std::max(scale, std::abs(expected.get<double>())))
        << what;
}

// A leak out of a return is one inwards; of what hardly flows, 1e-6 of the blower's flow is asked.
void expect_side(const json& answer, const PublishedHouse& house, const Solution& solution, double sign) {
    for (const json& section : answer.at("sections")) {
        const std::string id = section.at("id");
        expect_near(house.airflow(solution, house.links.at(id)), section.at("flow"), 0, id);
        expect_near(sign * solution.pressures[house.nodes.at(id)].si(),
                    section.at("total_pressure_at_far_end"), 0, id);
        if (house.links.count("leak " + id))
            expect_near(house.airflow(solution, house.links.at("leak " + id)), section.at("leak"), 1e-4,
                        "leak " + id);
    }
    for (const json& terminal : answer.at("terminals"))
        expect_near(house.airflow(solution, house.links.at(terminal.at("id"))), terminal.at("flow"), 0,
                    terminal.at("id"));
}

class PublishedHouses : public testing::TestWithParam<int> {};

TEST_P(PublishedHouses, flow_as_another_program_says) {
    const json file = read_json(GetParam());
    PublishedHouse house(file, {});
    const Solution solution = house.solve();
    const json& answer = file.at("answer");
    expect_near(house.airflow(solution, house.blower_and_devices()[0]), answer.at("blower_flow"), 0,
                "blower");
    expect_near((solution.pressures[0] - solution.pressures[2]).si(), answer.at("external_static_pressure"),
                0, "blower's pressure");
    expect_near(solution.pressures[1].si(), answer.at("supply").at("plenum_total_pressure"), 0,
                "supply plenum");
    expect_near(-solution.pressures[2].si(), answer.at("return").at("plenum_total_pressure"), 0,
                "return plenum");
    expect_side(answer.at("supply"), house, solution, 1);
    expect_side(answer.at("return"), house, solution, -1);
}

TEST_P(PublishedHouses, and_so_with_other_assumptions) {
    const json file = read_json(GetParam());
    const std::map<std::string, Variant> variants{
        {"leak_driven_by_total_pressure", {true, Between::smooth}},
        {"blower_table_by_straight_lines", {false, Between::straight_lines}},
        {"leak_total_and_straight_lines", {true, Between::straight_lines}},
        {"laminar_below_2300_else_colebrook", {}},
    };
    for (const auto& [name, answer] : file.at("variants").items()) {
        PublishedHouse house(file, variants.at(name));
        const Solution solution = house.solve();
        expect_near(house.airflow(solution, house.blower_and_devices()[0]), answer.at("blower_flow"), 0,
                    name);
        for (const auto& [side, letter] : {std::pair("supply", "st"), std::pair("return", "rt")}) {
            const json& flows = answer.at(std::string(side) + "_terminal_flow");
            for (std::size_t i = 0; i < flows.size(); ++i)
                expect_near(house.airflow(solution, house.links.at(letter + std::to_string(i))), flows[i], 0,
                            name);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(AllFiles, PublishedHouses, testing::Range(1, 9));

}  // namespace
}  // namespace network
