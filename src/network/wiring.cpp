// See wiring.hpp. Nodes: the three about the blower, the far end of every section, then the shut rooms.
#include "network/wiring.hpp"

#include <algorithm>

#include "network/terminals.hpp"

namespace network {
namespace {

class Wiring {
  public:
    Wiring(const house::House& house, const ducts::DuctSystem& system, const Machine& machine)
        : house_(house), system_(system), machine_(machine) {
        wired_.network.nodes =
            first_section_node + static_cast<int>(system.supply.size() + system.return_side.size());
    }

    Wired wired(Fans fans) {
        add(return_plenum, blower_inlet, FixedLoss{0, devices_quadratic(house_, machine_)});
        add_rooms();
        add_side(true);
        add_side(false);
        if (system_.return_side.empty())
            wired_.whole_return =
                add(house_air, return_plenum, FixedLoss{0, whole_return_quadratic(house_, machine_)});
        wired_.network.injected.assign(static_cast<std::size_t>(wired_.network.nodes), {});
        wired_.network.injected[supply_plenum] -= machine_.leaks.supply.taken;
        wired_.network.injected[return_plenum] += machine_.leaks.return_side.taken;
        run_fans(fans);
        put_blower(wired_, machine_.blower);
        return std::move(wired_);
    }

  private:
    int add(int from, int to, Law law) {
        wired_.network.links.push_back({from, to, std::move(law)});
        return static_cast<int>(wired_.network.links.size()) - 1;
    }

    const ducts::Side& side(bool supply) const { return supply ? system_.supply : system_.return_side; }
    int end_node(bool supply, int section) const {
        return first_section_node + section + (supply ? 0 : static_cast<int>(system_.supply.size()));
    }
    int start_node(bool supply, int parent) const {
        if (parent >= 0) return end_node(supply, parent);
        return supply ? supply_plenum : return_plenum;
    }

    // A shut room has a pressure of its own; its air goes out under the door.
    void add_rooms() {
        const house::WholeSystem& whole = *house_.whole_system;
        const loads::Air air = loads::air_at(machine_.returns, machine_.pressure);
        for (const auto& way : whole.ways_out) {
            const bool shut = way && way->shut;
            room_nodes_.push_back(shut ? wired_.network.nodes++ : house_air);
            wired_.doors.push_back(
                shut ? add(room_nodes_.back(), house_air, FixedLoss{0, door_quadratic(*way, air)}) : no_link);
        }
    }

    void run_fans(Fans fans) {
        const loads::Air air = loads::air_at(machine_.returns, machine_.pressure);
        for (const house::ExhaustFan& fan : house_.exhaust_fans) {
            const int node = room_nodes_[static_cast<std::size_t>(fan.room.index)];
            const bool runs = fan.runs == house::FanRuns::always || fans == Fans::on;
            if (runs && node != house_air)
                wired_.network.injected[static_cast<std::size_t>(node)] -= fan.flow * air.density;
        }
    }

    void add_side(bool supply) {
        SideLinks& links = supply ? wired_.supply : wired_.return_side;
        const SideLeak& leak = supply ? machine_.leaks.supply : machine_.leaks.return_side;
        const ducts::Side& sections = side(supply);
        std::vector<bool> is_leaf(sections.size(), true);
        for (const ducts::SystemSection& section : sections)
            if (section.parent >= 0) is_leaf[static_cast<std::size_t>(section.parent)] = false;
        for (std::size_t i = 0; i < sections.size(); ++i) {
            const ducts::SystemSection& section = sections[i];
            const int end = end_node(supply, static_cast<int>(i));
            const int start = start_node(supply, section.parent);
            links.sections.push_back(add(supply ? start : end, supply ? end : start, DuctLoss{}));
            links.terminals.push_back(is_leaf[i] ? add_terminal(supply, section, end) : no_link);
            links.leaks.push_back(
                add_leak(supply, end, leak.per_area * (section.section.perimeter * section.length).si()));
        }
        const int plenum = supply ? supply_plenum : return_plenum;
        links.plenum_leak = add_leak(supply, plenum, leak.at_plenum);
    }

    int add_terminal(bool supply, const ducts::SystemSection& section, int end) {
        const bool blind_end = section.outlet < 0 && section.duct >= 0;
        if (supply && blind_end) return no_link;  // it leads nowhere
        const int room = section.outlet < 0 ? house_air : room_of(section.outlet);
        return supply ? add(end, room, FixedLoss{}) : add(room, end, FixedLoss{});
    }
    int room_of(int outlet) const {
        const house::Outlet& at = house_.outlets[static_cast<std::size_t>(outlet)];
        return room_nodes_[static_cast<std::size_t>(at.room.index)];
    }

    int add_leak(bool supply, int node, double coefficient) {
        if (coefficient <= 0) return no_link;
        const LeakLaw law{coefficient, machine_.leaks.exponent};
        return supply ? add(node, house_air, law) : add(house_air, node, law);
    }

    const house::House& house_;
    const ducts::DuctSystem& system_;
    const Machine& machine_;
    Wired wired_;
    std::vector<int> room_nodes_;
};

}  // namespace

Wired wire(const house::House& house, const ducts::DuctSystem& system, const Machine& machine, Fans fans) {
    return Wiring(house, system, machine).wired(fans);
}

void put_blower(Wired& wired, const BlowerLaw& law) {
    Network& network = wired.network;
    if (const auto* held = std::get_if<HeldAirflow>(&law)) {
        network.injected[blower_inlet] -= held->flow;
        network.injected[supply_plenum] += held->flow;
        return;
    }
    wired.blower = static_cast<int>(network.links.size());
    network.links.push_back({blower_inlet, supply_plenum, std::get<FanCurve>(law)});
}

}  // namespace network
