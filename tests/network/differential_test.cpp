// Two thousand random houses, solved as networks and by shooting from the ends of their ducts.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>

#include "network/solve.hpp"
#include "network/tree_house.hpp"

namespace network {
namespace {

// The worst difference over the larger of the flow and a thousandth of the largest one.
double worst_difference(const HouseAsNetwork& other, const Solution& solution) {
    double largest = 0, worst = 0;
    for (const auto& flow : solution.flows) largest = std::max(largest, std::abs(flow.si()));
    for (std::size_t i = 0; i < solution.flows.size(); ++i) {
        if (!other.counterparts[i].flow) continue;
        const double expected = other.counterparts[i].sign * *other.counterparts[i].flow;
        const double scale = std::max(std::abs(expected), 1e-3 * largest);
        worst = std::max(worst, std::abs(solution.flows[i].si() - expected) / scale);
    }
    return worst;
}

TEST(Differential, random_houses_flow_as_by_shooting) {
    int most_steps = 0;
    double steps = 0, worst = 0;
    constexpr int houses = 2000;
    for (std::uint64_t seed = 1; seed <= houses; ++seed) {
        TreeHouse house = random_house(seed);
        shoot(house);
        const HouseAsNetwork as = as_network(house);
        const Solution solution = Solver(as.network).solve(as.network);
        ASSERT_TRUE(solution.converged) << "house " << seed << ", residual " << solution.residual;
        const double difference = worst_difference(as, solution);
        EXPECT_LE(difference, 1e-6) << "house " << seed;
        worst = std::max(worst, difference);
        most_steps = std::max(most_steps, solution.steps);
        steps += solution.steps;
    }
    RecordProperty("most_steps", most_steps);
    RecordProperty("mean_steps", std::to_string(steps / houses));
    RecordProperty("worst_difference_in_1e9", std::to_string(worst * 1e9));
    EXPECT_LE(most_steps, 40);
}

}  // namespace
}  // namespace network
