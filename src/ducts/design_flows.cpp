// The blower's air shared by the rooms' heat losses: the plan from which velocities and equivalent lengths
// are taken.
#include <algorithm>

#include "ducts/duct_system.hpp"

namespace ducts {

DesignFlows design_flows(const house::House& house, const loads::HouseHeatLoss& loss, units::MassFlow total) {
    const auto& outlets = house.outlets;
    std::vector<double> weight(outlets.size());
    double all = 0;
    int grilles = 0;
    const auto supply_outlets_of = [&](house::RoomId room) {
        return std::count_if(outlets.begin(), outlets.end(),
                             [&](const house::Outlet& o) { return o.room == room && house.is_supply(o); });
    };
    for (std::size_t i = 0; i < outlets.size(); ++i) {
        if (!house.is_supply(outlets[i])) {
            ++grilles;
            continue;
        }
        const units::Power room_loss = loss.rooms[static_cast<std::size_t>(outlets[i].room.index)].total;
        weight[i] = std::max(0.0, room_loss.si()) / static_cast<double>(supply_outlets_of(outlets[i].room));
        all += weight[i];
    }
    const int others = house.other_rooms ? house.other_rooms->outlets : 0;
    const double other_weight = others > 0 ? std::max(0.0, loss.other_rooms.si()) / others : 0;
    all += other_weight * others;
    DesignFlows flows;
    flows.outlets.resize(outlets.size());
    for (std::size_t i = 0; i < outlets.size(); ++i)
        flows.outlets[i] = house.is_supply(outlets[i]) ? total * (all > 0 ? weight[i] / all : 0)
                                                       : total / std::max(1, grilles);
    flows.each_other_outlet = total * (all > 0 ? other_weight / all : 0);
    return flows;
}

}  // namespace ducts
