// Whole houses drawn at random: one to three trunks with runs anywhere along them and runs on the runs, named
// fittings, dampers, dead ends, doors, fans, leaks and every kind of blower.
#include <cmath>
#include <random>

#include "network/a_whole_house.hpp"

namespace network {
namespace {

class Draw {
  public:
    explicit Draw(std::uint64_t seed) : engine_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(engine_() >> 11) * 0x1p-53;
    }
    double spread(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
    bool chance(double share) { return between(0, 1) < share; }
    int number(int low, int high) { return std::min(high, static_cast<int>(between(low, high + 1))); }
    template <std::size_t n>
    const char* one_of(const char* const (&names)[n]) {
        return names[static_cast<std::size_t>(number(0, static_cast<int>(n) - 1))];
    }

  private:
    std::mt19937_64 engine_;
};

constexpr const char* takeoffs[] = {"side takeoff, straight",
                                    "side takeoff, 45 degree entry",
                                    "top takeoff",
                                    "round wye, 45 degrees",
                                    "bullhead tee",
                                    "trunk reducer, abrupt",
                                    "trunk increaser, tapered",
                                    "straight past a takeoff"};
constexpr const char* joinings[] = {"joins the trunk, straight", "joins the trunk, 45 degrees",
                                    "panned bay into the trunk", "bullhead tee"};
constexpr const char* plain[] = {"round elbow 90, adjustable", "stackhead",          "12 ft",
                                 "floor boot, end entry",      "damper, 20 degrees", "C 0.7"};

class Builder {
  public:
    Builder(std::uint64_t seed, const Drawn& drawn) : draw_(seed), drawn_(drawn) {
        made_.house = with_rooms(draw_.number(1, 8));
        made_.house.register_drop = units::Pressure(draw_.between(0, 20));
        made_.house.grille_drop = units::Pressure(draw_.between(0, 20));
        made_.house.return_length = units::Length(draw_.between(0, 60));
    }

    RandomHouse build() {
        side(house::DuctSide::supply);
        if (house().outlets.empty()) add_outlet(0);
        if (draw_.chance(0.8)) side(house::DuctSide::return_side);
        if (draw_.chance(0.5)) a_duct_house::add_other_rooms(made_.house, draw_.number(1, 9), 3, 25);
        for (int i = draw_.number(0, 2); i > 0; --i) add_device();
        if (drawn_.doors) add_doors();
        add_machine();
        return std::move(made_);
    }

  private:
    house::House& house() { return made_.house; }

    house::Shape shape(double least, double most) {
        const double inches =
            drawn_.usual ? draw_.between(least, most)
                         : draw_.spread(draw_.chance(0.1) ? 1 : least, draw_.chance(0.1) ? 60 : most);
        if (draw_.chance(0.6)) return house::Round{inches * units::unit::inch};
        return house::Rectangular{inches * units::unit::inch, draw_.between(3, 12) * units::unit::inch};
    }

    a_duct_house::Names fittings(bool supply, bool root) {
        a_duct_house::Names names;
        if (drawn_.only_fixed_fittings) {
            for (int i = draw_.number(0, 3); i > 0; --i)
                names.push_back("C " + std::to_string(draw_.number(1, 20) * 0.1));
            return names;
        }
        if (!root) names.emplace_back(supply ? draw_.one_of(takeoffs) : draw_.one_of(joinings));
        for (int i = draw_.number(0, 3); i > 0; --i) names.emplace_back(draw_.one_of(plain));
        return names;
    }

    double length() {
        return drawn_.usual ? draw_.between(3, 40) : draw_.chance(0.1) ? 0.02 : draw_.spread(1, 120);
    }

    double place_along(const house::Duct& on) {
        const double feet = on.length / units::unit::foot;
        if (draw_.chance(0.15)) return 0;
        return draw_.chance(0.2) ? feet : draw_.between(0, feet);
    }

    void side(house::DuctSide at) {
        const bool supply = at == house::DuctSide::supply;
        for (int roots = draw_.number(1, supply ? 3 : 2); roots > 0; --roots) {
            const int root =
                supply ? a_duct_house::add_root(house(), shape(6, 20), length(), fittings(supply, true))
                       : a_duct_house::add_return(house(), shape(8, 24), length(), fittings(supply, true));
            finish(root, 0);
        }
    }

    // What hangs on a duct: runs, or an outlet, or both, or nothing.
    void finish(int at, int depth) {
        duct(house(), at).loss_factor = draw_.chance(0.2) ? draw_.between(1, 3) : 1;
        if (draw_.chance(0.1)) duct(house(), at).damper = draw_.between(0, drawn_.usual ? 45 : 90);
        const int branches = depth == 0                         ? draw_.number(0, 6)
                             : depth == 1 && draw_.chance(0.15) ? draw_.number(1, 2)
                                                                : 0;
        const bool supply = duct(house(), at).side == house::DuctSide::supply;
        for (int i = 0; i < branches; ++i) {
            const double along = place_along(duct(house(), at));
            finish(
                a_duct_house::add_branch(house(), at, along, shape(4, 9), length(), fittings(supply, false)),
                depth + 1);
        }
        if (branches > 0 ? draw_.chance(0.2) : drawn_.usual || draw_.chance(0.9)) add_outlet(at);
    }

    void add_outlet(int at) {
        const int room = draw_.number(0, static_cast<int>(house().rooms.size()) - 1);
        house::Outlet& made = outlet(house(), a_duct_house::add_outlet(house(), at, room));
        if (draw_.chance(0.3))
            made.face = house::Rectangular{draw_.between(6, 24) * units::unit::inch,
                                           draw_.between(3, 12) * units::unit::inch};
        if (draw_.chance(0.2))
            made.damper = drawn_.usual ? draw_.between(0, 45) : draw_.chance(0.3) ? 90 : draw_.between(0, 90);
    }

    void add_device() {
        house::Device device;
        device.drop = units::Pressure(draw_.between(0, 60));
        if (draw_.chance(0.5)) device.at = units::Airflow(draw_.between(0.2, 0.6));
        house().devices.push_back(device);
    }

    void add_doors() {
        for (const house::Room& room : house().rooms) {
            if (draw_.chance(0.3)) continue;
            house::WayOut way;
            way.undercut = units::Area(draw_.chance(0.2) ? 0 : draw_.between(0, 0.02));
            if (draw_.chance(0.2)) way.transfer = units::Area(draw_.between(0.01, 0.06));
            way.shut = draw_.chance(0.5);
            house().whole_system->ways_out[static_cast<std::size_t>(room.id.index)] = way;
            if (draw_.chance(0.2))
                house().exhaust_fans.push_back(
                    {room.id, units::Airflow(draw_.between(0.01, 0.06)),
                     draw_.chance(0.5) ? house::FanRuns::always : house::FanRuns::at_times});
        }
    }

    void add_machine() {
        const double flow = drawn_.usual ? draw_.between(0.2, 0.8) : draw_.spread(0.02, 3);
        made_.machine = planned_for(house(), holding(flow));
        Machine& machine = made_.machine;
        machine.output = units::Power(flow * draw_.between(0, 40'000));
        if (drawn_.leaks && draw_.chance(0.8)) {
            machine.leaks.supply = {draw_.spread(1e-6, 3e-3),
                                    draw_.chance(0.2) ? draw_.spread(1e-5, 1e-2) : 0};
            machine.leaks.return_side = {draw_.spread(1e-6, 3e-3), draw_.chance(0.2) ? 1e-3 : 0};
        }
        if (drawn_.held || draw_.chance(0.2)) return;
        const units::Pressure gain(draw_.between(50, 250));
        if (draw_.chance(0.3))
            machine.blower = HeldAirflow{units::MassFlow(flow), gain};
        else if (draw_.chance(0.5))
            machine.blower = falling_curve(units::MassFlow(flow), gain, draw_.between(5e-4, 5e-3));
        else {
            const house::BlowerPoint points[] = {{units::Pressure(25), units::Airflow(flow)},
                                                 {units::Pressure(100), units::Airflow(0.85 * flow)},
                                                 {units::Pressure(200), units::Airflow(0.5 * flow)}};
            machine.blower = table_curve(points, loads::air_at(machine.returns, machine.pressure));
        }
    }

    Draw draw_;
    const Drawn& drawn_;
    RandomHouse made_;
};

}  // namespace

RandomHouse random_whole_house(std::uint64_t seed, const Drawn& drawn) {
    return Builder(seed, drawn).build();
}

double worst_imbalance(const OperatingPoint& point) {
    double worst = 0;
    for (const ducts::Side* side : {&point.system.supply, &point.system.return_side}) {
        std::vector<double> beyond(side->size());
        double roots = 0;
        for (std::size_t i = 0; i < side->size(); ++i) {  // leaves first
            const ducts::SystemSection& section = (*side)[i];
            const bool leaf = beyond[i] == 0 && section.outlet >= 0;
            if (leaf) beyond[i] = point.outlets[static_cast<std::size_t>(section.outlet)].si();
            if (leaf || beyond[i] != 0) worst = std::max(worst, std::abs(section.flow.si() - beyond[i]));
            (section.parent < 0 ? roots : beyond[static_cast<std::size_t>(section.parent)]) +=
                section.flow.si();
        }
        if (!side->empty()) worst = std::max(worst, std::abs(point.blower.si() - roots));
    }
    return worst / std::max(1e-9, point.blower.si());
}

}  // namespace network
