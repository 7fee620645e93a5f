// Laws that must hold for every network, tried on random houses.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <variant>
#include <vector>

#include "network/solve.hpp"
#include "network/tree_house.hpp"

namespace network {
namespace {

HouseAsNetwork any_house() {
    return as_network(random_house(*rc::gen::inRange<std::uint64_t>(1, 1'000'000)));
}

Solution solution_of(const Network& net) {
    Solution solution = Solver(net).solve(net);
    RC_ASSERT(solution.converged);
    return solution;
}

double largest(const Solution& solution) {
    double most = 0;
    for (const auto& flow : solution.flows) most = std::max(most, std::abs(flow.si()));
    return most;
}

// The blower is the last link, if it is one.
bool has_fan(const Network& net) { return std::holds_alternative<FanCurve>(net.links.back().law); }

// More loss by the square in a run.
void damp(Law& law, double quadratic) {
    if (auto* duct = std::get_if<DuctLoss>(&law)) duct->quadratic += quadratic;
}

RC_GTEST_PROP(NetworkLaws, what_comes_into_a_node_goes_out_of_it, ()) {
    const Network net = any_house().network;
    const Solution solution = solution_of(net);
    std::vector<double> left;
    for (const auto& each : net.injected) left.push_back(each.si());
    for (std::size_t i = 0; i < net.links.size(); ++i) {
        const auto add = [&left](int node, double flow) {
            if (node != house_air) left[static_cast<std::size_t>(node)] += flow;
        };
        add(net.links[i].from, -solution.flows[i].si());
        add(net.links[i].to, solution.flows[i].si());
    }
    for (const double each : left) RC_ASSERT(std::abs(each) <= 1e-10 * largest(solution));
}

RC_GTEST_PROP(NetworkLaws, every_link_loses_what_its_pressures_say, ()) {
    const Network net = any_house().network;
    const Solution solution = solution_of(net);
    const auto p = [&solution](int node) {
        return node == house_air ? units::Pressure(0) : solution.pressures[static_cast<std::size_t>(node)];
    };
    double scale = 1;
    for (const auto& each : solution.pressures) scale = std::max(scale, std::abs(each.si()));
    for (std::size_t i = 0; i < net.links.size(); ++i) {
        const Link& link = net.links[i];
        const units::Pressure lost = loss(link.law, solution.flows[i]).pressure;
        RC_ASSERT(abs(p(link.from) - p(link.to) + link.head - lost).si() <= 1e-8 * scale);
    }
}

RC_GTEST_PROP(NetworkLaws, closing_a_damper_helps_all_others, ()) {
    const HouseAsNetwork house = any_house();
    const std::size_t which = *rc::gen::elementOf(house.supply_mouths);
    const Solution before = solution_of(house.network);
    Network damped = house.network;
    damp(damped.links[which].law, 5e4);
    const Solution after = solution_of(damped);
    const double noise = 1e-9 * largest(before);
    for (const std::size_t mouth : house.supply_mouths) {
        const double gain = (after.flows[mouth] - before.flows[mouth]).si();
        // Where a fan draws or blows air the wrong way, the damper holds that back too.
        const double along = before.flows[which].si() < 0 ? -1 : 1;
        RC_ASSERT((mouth == which ? -1 : 1) * along * gain >= -noise);
    }
}

RC_GTEST_PROP(NetworkLaws, one_more_outlet_takes_from_all_others, ()) {
    const HouseAsNetwork house = any_house();
    const std::size_t beside = *rc::gen::elementOf(house.supply_mouths);
    const Solution before = solution_of(house.network);
    const int node = house.network.links[beside].from;
    RC_PRE(before.pressures[static_cast<std::size_t>(node)].si() > 0);
    Network larger = house.network;
    larger.links.push_back({node, house_air, FixedLoss{0, 5000}});
    const Solution after = solution_of(larger);
    const double noise = 1e-9 * largest(before);
    for (const std::size_t mouth : house.supply_mouths)
        RC_ASSERT((after.flows[mouth] - before.flows[mouth]).si() <= noise);
    // Link 0 is the blower's devices.
    const double more = (after.flows[0] - before.flows[0]).si();
    const bool held = !has_fan(house.network);
    RC_ASSERT((held ? -std::abs(more) : more) >= -noise);
}

void expect_same(const Solution& a, const Solution& b, std::size_t links) {
    for (std::size_t i = 0; i < links; ++i) RC_ASSERT(abs(a.flows[i] - b.flows[i]).si() <= 1e-9 * largest(a));
}

RC_GTEST_PROP(NetworkLaws, a_section_in_two_halves_is_the_same_section, ()) {
    const HouseAsNetwork house = any_house();
    Network halved = house.network;
    const std::size_t links = halved.links.size();
    for (std::size_t i = 0; i < links; ++i) {
        auto* duct = std::get_if<DuctLoss>(&halved.links[i].law);
        if (!duct) continue;
        duct->length *= 0.5;
        duct->quadratic /= 2;
        const int middle = halved.nodes++;
        halved.injected.emplace_back();
        Link second = halved.links[i];
        second.from = middle;
        halved.links[i].to = middle;
        halved.links.push_back(second);
    }
    expect_same(solution_of(house.network), solution_of(halved), links);
}

RC_GTEST_PROP(NetworkLaws, neither_order_nor_names_nor_direction_matter, ()) {
    const Network net = any_house().network;
    Network other = net;
    std::reverse(other.links.begin(), other.links.end());
    std::reverse(other.injected.begin(), other.injected.end());
    for (Link& link : other.links) {
        for (int* end : {&link.from, &link.to})
            if (*end != house_air) *end = net.nodes - 1 - *end;
        if (!std::holds_alternative<FanCurve>(link.law)) std::swap(link.from, link.to);
    }
    const Solution solution = solution_of(net);
    Solution mirrored = solution_of(other);
    std::reverse(mirrored.flows.begin(), mirrored.flows.end());
    for (std::size_t i = 0; i < net.links.size(); ++i)
        if (!std::holds_alternative<FanCurve>(net.links[i].law)) mirrored.flows[i] = -mirrored.flows[i];
    expect_same(solution, mirrored, net.links.size());
}

// So many times the flow for the same pressure everywhere: other units of mass, and so many times all flows.
RC_GTEST_PROP(NetworkLaws, flows_in_other_units_are_the_same_flows, ()) {
    Network net = any_house().network;
    const double times = *rc::gen::element(0.001, 0.1, 7.0, 2204.6);
    if (has_fan(net)) net.links.pop_back();
    for (Link& link : net.links)
        if (auto* duct = std::get_if<DuctLoss>(&link.law)) link.law = FixedLoss{3, 100 + duct->quadratic};
    Network scaled = net;
    for (Link& link : scaled.links) {
        if (auto* fixed = std::get_if<FixedLoss>(&link.law)) {
            fixed->linear /= times;
            fixed->quadratic /= times * times;
        } else if (auto* leak = std::get_if<LeakLaw>(&link.law)) {
            leak->coefficient *= times;
        }
    }
    const auto with_fan = [](Network& to, double flows) {
        const FanPoint points[] = {{units::MassFlow(0.1 * flows), units::Pressure(200)},
                                   {units::MassFlow(0.4 * flows), units::Pressure(120)},
                                   {units::MassFlow(0.7 * flows), units::Pressure(10)}};
        to.links.push_back({1, 0, FanCurve(points)});
        for (auto& each : to.injected) each *= flows;
    };
    with_fan(net, 1);
    with_fan(scaled, times);
    Solution back = solution_of(scaled);
    for (auto& flow : back.flows) flow = flow / times;
    expect_same(solution_of(net), back, net.links.size());
}

}  // namespace
}  // namespace network
