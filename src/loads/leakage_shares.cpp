#include "loads/leakage_shares.hpp"

#include <algorithm>
#include <cmath>

#include "loads/infiltration.hpp"

namespace loads {
namespace {

constexpr double flow_exponent = 0.65;

std::size_t storey_index(const house::Room& room) {
    return static_cast<std::size_t>(std::clamp(room.storey, 1, most_storeys_shared) - 1);
}

ByStorey described_surface(const house::House& house) {
    ByStorey sum{};
    for (const house::Room& room : house.rooms) sum[storey_index(room)] += exposed_surface(room).si();
    return sum;
}

// Of the rooms not described, on the storeys of the house.
ByStorey other_surface(const house::House& house, const ByStorey& described, double others) {
    const std::size_t storeys = static_cast<std::size_t>(std::clamp(house.storeys, 1, most_storeys_shared));
    const ByStorey box = box_surface_by_storey(house);
    ByStorey rest{};
    double sum = 0;
    for (std::size_t i = 0; i < storeys; ++i) sum += rest[i] = std::max(0.0, box[i] - described[i]);
    for (std::size_t i = 0; i < storeys; ++i)
        rest[i] = others * (sum > 0 ? rest[i] / sum : 1.0 / static_cast<double>(storeys));
    return rest;
}

}  // namespace

ByStorey stack_inflow(int storeys) {
    const double neutral = storeys / 2.0;
    const auto below = [&](double height) {
        return std::pow(std::max(0.0, neutral - height), flow_exponent + 1) / (flow_exponent + 1);
    };
    ByStorey inflow{};
    for (int i = 0; i < std::min(storeys, most_storeys_shared); ++i)
        inflow[static_cast<std::size_t>(i)] = below(i) - below(i + 1);
    return inflow;
}

double LeakageShares::inflow_of(const house::Room& room) const { return inflow[storey_index(room)]; }

double share_by_volume(const LeakageShares& shares, const house::Room& room) {
    return shares.volume > units::Volume() ? room.floor_area() * room.ceiling / shares.volume : 0;
}

double share_of(const LeakageShares& shares, const house::Room& room) {
    if (shares.by_volume) return share_by_volume(shares, room);
    if (shares.exposed <= units::Area()) return 0;
    const units::Area exposed = exposed_surface(room);
    if (!shares.less_upstairs) return exposed / shares.exposed;
    const double stack = exposed.si() * shares.inflow_of(room) / shares.surface_inflow;
    return shares.wind * (exposed / shares.exposed) + (1 - shares.wind) * stack;
}

LeakageShares leakage_shares(const house::House& house, const Leaks& leaks) {
    LeakageShares shares;
    shares.volume = leaks.volume;
    shares.exposed = leaks.exposed;
    shares.wind = leaks.wind;
    shares.by_volume = house.leakage_sharing == house::LeakageSharing::by_volume;
    if (shares.by_volume || house.storeys < 2) return shares;
    shares.inflow = stack_inflow(house.storeys);
    const ByStorey described = described_surface(house);
    double others = leaks.exposed.si();
    for (const double area : described) others -= area;
    ByStorey& all = shares.surface;
    all = described;
    if (house.other_rooms) {
        const ByStorey rest = other_surface(house, described, std::max(0.0, others));
        for (std::size_t i = 0; i < all.size(); ++i) all[i] += rest[i];
    }
    for (std::size_t i = 0; i < all.size(); ++i) shares.surface_inflow += all[i] * shares.inflow[i];
    shares.less_upstairs = shares.surface_inflow > 0;
    return shares;
}

}  // namespace loads
