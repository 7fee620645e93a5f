// Laws that must hold for every tree of ducts, tried on random ones.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "ducts/a_duct_house.hpp"
#include "ducts/airflow_that_holds.hpp"
#include "ducts/friction.hpp"
#include "ducts/friction_rate.hpp"
#include "ducts/size_duct.hpp"
#include "ducts/stock_sizes.hpp"

namespace ducts {
namespace {

using namespace a_duct_house;
namespace unit = units::unit;

double between(double low, double high) {
    constexpr int steps = 10'000'000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}
double spread(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
int any_of(int count) { return *rc::gen::inRange(0, count); }

bool near(double a, double b, double relative) {
    return std::abs(a - b) <= relative * std::max(std::abs(a), std::abs(b));
}

house::Shape any_shape() {
    if (any_of(2) == 0) return round_of(between(4, 16));
    return rectangle_of(between(4, 20), between(4, 12));
}

Names any_fittings() {
    Names names;
    for (int i = any_of(4); i > 0; --i)
        names.emplace_back(
            fittings()[static_cast<std::size_t>(any_of(static_cast<int>(fittings().size())))].name);
    return names;
}

const house::Duct& duct_at(const house::House& house, int i) {
    return house.ducts[static_cast<std::size_t>(i)];
}

bool feeds_ducts(const house::House& house, int i) {
    return std::any_of(house.ducts.begin(), house.ducts.end(),
                       [&](const house::Duct& d) { return d.from == duct_at(house, i).id; });
}

// A duct off a duct of that side that is there already, anywhere along it.
void add_any_branch(house::House& house, int first, int count) {
    const int from = first + any_of(count);
    const double feet = in_feet(duct_at(house, from).length);
    const double at = any_of(4) == 0 ? feet : between(0, feet);
    add_branch(house, from, at, any_shape(), between(1, 40), any_fittings());
}

// Every duct that feeds no other gets an outlet, and some that do.
void add_outlets(house::House& house, int first) {
    for (int i = first; i < static_cast<int>(house.ducts.size()); ++i) {
        if (!feeds_ducts(house, i) || any_of(4) == 0) add_outlet(house, i);
        if (any_of(6) == 0) add_outlet(house, i);
    }
}

// Supply and return with up to seven ducts each.
house::House any_house() {
    house::House house;
    add_root(house, any_shape(), between(1, 60), any_fittings());
    for (int i = 1, last = any_of(7); i <= last; ++i) {
        if (any_of(4) == 0)
            add_root(house, any_shape(), between(1, 60), any_fittings());
        else
            add_any_branch(house, 0, i);
    }
    add_outlets(house, 0);
    const int first = add_return(house, any_shape(), between(1, 40), any_fittings());
    for (int i = 1, last = any_of(4); i <= last; ++i) add_any_branch(house, first, i);
    add_outlets(house, first);
    for (house::Duct& duct : house.ducts) duct.loss_factor = any_of(3) == 0 ? between(1, 2) : 1;
    return house;
}

house::House any_house_with_other_rooms() {
    house::House house = any_house();
    add_other_rooms(house, any_of(8), between(1, 10), between(10, 40));
    return house;
}

DesignFlows any_flows(const house::House& house) {
    DesignFlows flows;
    for (std::size_t i = 0; i < house.outlets.size(); ++i) flows.outlets.emplace_back(spread(0.01, 0.3));
    flows.each_other_outlet = units::MassFlow(spread(0.01, 0.1));
    return flows;
}

FrictionRateBudget budget_of(const house::House& house, const DesignFlows& flows) {
    DesignBlower blower;
    blower.external_static = 0.5 * unit::inch_wc;
    blower.airflow = 1000 * unit::cfm;
    return friction_rate(house, duct_system(house, flows, std::nullopt), blower, reference_air(),
                         reference_air());
}

double effective_length(const house::House& house, const DesignFlows& flows) {
    return budget_of(house, flows).total_effective_length.si();
}

const std::vector<const Side*> both_sides(const DuctSystem& system) {
    return {&system.supply, &system.return_side};
}

// What leaves the tree at this section itself.
double leaves_at(const SystemSection& section, const DesignFlows& flows) {
    if (section.duct == -1) return flows.each_other_outlet.si();
    return section.outlet == -1 ? 0 : flows.outlets[static_cast<std::size_t>(section.outlet)].si();
}

RC_GTEST_PROP(SystemLaws, no_air_is_lost_at_any_section, ()) {
    const house::House house = any_house_with_other_rooms();
    const DesignFlows flows = any_flows(house);
    const DuctSystem system = duct_system(house, flows, std::nullopt);
    for (const Side* side : both_sides(system)) {
        std::vector<double> out(side->size());
        for (std::size_t i = 0; i < side->size(); ++i) {
            const SystemSection& section = (*side)[i];
            out[i] += leaves_at(section, flows);
            RC_ASSERT(near(section.flow.si(), out[i], 1e-12));
            if (section.parent != -1) out[static_cast<std::size_t>(section.parent)] += section.flow.si();
        }
    }
}

RC_GTEST_PROP(SystemLaws, the_roots_carry_all_that_the_outlets_get, ()) {
    const house::House house = any_house_with_other_rooms();
    const DesignFlows flows = any_flows(house);
    const DuctSystem system = duct_system(house, flows, std::nullopt);
    double roots = 0;
    for (const Side* side : both_sides(system))
        for (const SystemSection& section : *side)
            if (section.parent == -1) roots += section.flow.si();
    double outlets = house.other_rooms->outlets * flows.each_other_outlet.si();
    for (units::MassFlow flow : flows.outlets) outlets += flow.si();
    RC_ASSERT(near(roots, outlets, 1e-12));
}

RC_GTEST_PROP(SystemLaws, every_outlet_ends_one_way_from_the_blower, ()) {
    const house::House house = any_house_with_other_rooms();
    const DuctSystem system = system_of(house);
    for (std::size_t i = 0; i < house.outlets.size(); ++i) {
        const int outlet = static_cast<int>(i);
        const auto is_end = [outlet](const SystemSection& s) { return s.outlet == outlet; };
        const auto on_supply = std::count_if(system.supply.begin(), system.supply.end(), is_end);
        const auto on_return = std::count_if(system.return_side.begin(), system.return_side.end(), is_end);
        RC_ASSERT(on_supply + on_return == 1);
        const Side& side = on_supply == 1 ? system.supply : system.return_side;
        const std::vector<int> way = way_to(side, house, outlet);
        RC_ASSERT(at(side, way.front()).parent == -1);
        for (std::size_t k = 1; k < way.size(); ++k) RC_ASSERT(at(side, way[k]).parent == way[k - 1]);
    }
}

// The last place along a duct where something hangs; its whole length where nothing does.
double last_place(const house::House& house, const house::Duct& duct) {
    double last = -1;
    for (const house::Duct& branch : house.ducts)
        if (branch.from == duct.id) last = std::max(last, std::min(branch.at, duct.length).si());
    for (const house::Outlet& outlet : house.outlets)
        if (outlet.duct == duct.id) last = duct.length.si();
    return last < 0 ? duct.length.si() : last;
}

RC_GTEST_PROP(SystemLaws, the_sections_of_a_duct_add_up_to_it, ()) {
    const house::House house = any_house();
    const DuctSystem system = system_of(house);
    std::vector<double> sum(house.ducts.size());
    for (const Side* side : both_sides(system))
        for (const SystemSection& section : *side) {
            RC_ASSERT(section.length.si() >= 0);
            sum[static_cast<std::size_t>(section.duct)] += section.length.si();
        }
    for (std::size_t i = 0; i < sum.size(); ++i)
        RC_ASSERT(std::abs(sum[i] - last_place(house, house.ducts[i])) < 1e-12);
}

RC_GTEST_PROP(SystemLaws, leaves_come_first, ()) {
    const DuctSystem system = system_of(any_house_with_other_rooms());
    for (const Side* side : both_sides(system))
        for (std::size_t i = 0; i < side->size(); ++i)
            RC_ASSERT((*side)[i].parent == -1 || (*side)[i].parent > static_cast<int>(i));
}

RC_GTEST_PROP(SystemLaws, the_order_of_the_sheet_does_not_matter, ()) {
    const house::House house = any_house();
    const DesignFlows flows = any_flows(house);
    house::House shuffled = house;
    for (int i = static_cast<int>(house.ducts.size()) - 1; i > 0; --i)
        std::swap(shuffled.ducts[static_cast<std::size_t>(i)],
                  shuffled.ducts[static_cast<std::size_t>(any_of(i + 1))]);
    RC_ASSERT(near(effective_length(house, flows), effective_length(shuffled, flows), 1e-12));
    const DuctSystem a = duct_system(house, flows, std::nullopt);
    const DuctSystem b = duct_system(shuffled, flows, std::nullopt);
    RC_ASSERT(a.supply.size() == b.supply.size());
    for (const SystemSection& section : a.supply) {
        if (section.outlet == -1) continue;
        const std::vector<int> there = way_to(b.supply, shuffled, section.outlet);
        RC_ASSERT(near(at(b.supply, there.back()).flow.si(), section.flow.si(), 1e-12));
        RC_ASSERT(there.size() == way_to(a.supply, house, section.outlet).size());
    }
}

units::Length through_millimetres(units::Length length) {
    return (length / unit::foot * 304.8) * unit::millimetre;
}

RC_GTEST_PROP(SystemLaws, feet_and_millimetres_are_one_house, ()) {
    const house::House house = any_house();
    const DesignFlows flows = any_flows(house);
    house::House metric = house;
    for (house::Duct& duct : metric.ducts) {
        duct.length = through_millimetres(duct.length);
        duct.at = through_millimetres(duct.at);
        if (auto* round = std::get_if<house::Round>(&*duct.shape))
            round->diameter = through_millimetres(round->diameter);
        if (auto* flat = std::get_if<house::Rectangular>(&*duct.shape))
            *flat = {through_millimetres(flat->width), through_millimetres(flat->height)};
    }
    RC_ASSERT(near(effective_length(house, flows), effective_length(metric, flows), 1e-12));
}

// The duct ends so far along and another goes on with what hung beyond.
void split(house::House& house, int which, units::Length at) {
    const house::Duct whole = duct_at(house, which);
    const int rest = add_branch(house, which, in_feet(at), whole.shape, in_feet(whole.length - at));
    house.ducts.back().loss_factor = whole.loss_factor;
    for (house::Duct& branch : house.ducts) {
        if (branch.id == id_of(rest) || branch.from != whole.id || branch.at <= at) continue;
        branch.from = id_of(rest);
        branch.at -= at;
    }
    for (house::Outlet& outlet : house.outlets)
        if (outlet.duct == whole.id) outlet.duct = id_of(rest);
    house.ducts[static_cast<std::size_t>(which)].length = at;
}

RC_GTEST_PROP(SystemLaws, a_duct_in_two_pieces_is_as_long, ()) {
    const house::House house = any_house();
    const DesignFlows flows = any_flows(house);
    const int which = any_of(static_cast<int>(house.ducts.size()));
    const double last = last_place(house, duct_at(house, which));
    RC_PRE(last > 0.01);
    house::House halves = house;
    split(halves, which, units::Length(between(0, 0.999) * last));
    RC_ASSERT(near(effective_length(house, flows), effective_length(halves, flows), 1e-9));
}

RC_GTEST_PROP(SystemLaws, one_more_fitting_never_raises_the_rate, ()) {
    const house::House house = any_house_with_other_rooms();
    const DesignFlows flows = any_flows(house);
    house::House more = house;
    const int which = any_of(static_cast<int>(house.ducts.size()));
    for (const std::string& name : any_fittings())
        more.ducts[static_cast<std::size_t>(which)].fittings.push_back({name, {}});
    RC_ASSERT(budget_of(more, flows).rate <= budget_of(house, flows).rate * (1 + 1e-12));
}

RC_GTEST_PROP(SystemLaws, a_longer_duct_never_raises_the_rate, ()) {
    const house::House house = any_house();
    const DesignFlows flows = any_flows(house);
    house::House longer = house;
    const int which = any_of(static_cast<int>(house.ducts.size()));
    longer.ducts[static_cast<std::size_t>(which)].length += units::Length(between(0, 20));
    RC_ASSERT(budget_of(longer, flows).rate <= budget_of(house, flows).rate * (1 + 1e-12));
}

RC_GTEST_PROP(SystemLaws, every_sum_of_the_budget_closes, ()) {
    house::House house = any_house_with_other_rooms();
    house.register_drop = units::Pressure(between(0, 20));
    house.grille_drop = units::Pressure(between(0, 20));
    for (int i = any_of(4); i > 0; --i)
        house.devices.push_back({house::DeviceKind::other, "a device", units::Pressure(between(0, 30)),
                                 (any_of(3) == 0 ? 0 : between(400, 2000)) * unit::cfm});
    const FrictionRateBudget budget = budget_of(house, any_flows(house));
    double pascals = budget.available.si();
    for (const PressureLoss& part : budget.taken) pascals += part.loss.si();
    RC_ASSERT(std::abs(pascals - budget.external_static.si()) < 1e-10);
    const double metres = (budget.supply.total() + budget.return_side.total()).si();
    RC_ASSERT(near(metres, budget.total_effective_length.si(), 1e-12));
    const units::Pressure lost = budget.rate * budget.total_effective_length;
    RC_ASSERT(std::abs(lost.si() - std::max(0.0, budget.available.si())) < 1e-10);
}

double effective_length(const Side& side, const SystemSection& section) {
    const units::FrictionRate per_length =
        std::max(least_sensible_rate,
                 friction(section.section, section.flow / reference_air().density, reference_air()));
    const units::Length equivalent = fittings_loss(side, section, reference_air()) / per_length;
    return section.loss_factor * (section.length + equivalent).si();
}

// The way the budget names is one of the tree's, and none is longer.
RC_GTEST_PROP(SystemLaws, the_budget_goes_by_the_longest_way, ()) {
    const house::House house = any_house();
    const Side supply = system_of(house).supply;
    double longest = 0;
    for (const SystemSection& end : supply) {
        if (end.outlet == -1) continue;
        double metres = 0;
        for (int i : way_to(supply, house, end.outlet)) metres += effective_length(supply, at(supply, i));
        longest = std::max(longest, metres);
    }
    RC_ASSERT(near(budget_of(house, some_flows(house)).supply.total().si(), longest, 1e-12));
}

// --- sizes

struct Wanted {
    double cfm = spread(2, 1500);
    double rate = spread(0.02, 0.5);  // in.wc/100 ft
    double fpm = spread(300, 1500);
    house::Round size() const {
        return size_duct(cfm * unit::cfm, {rate * unit::inch_wc_per_100_ft, fpm * unit::foot_per_minute},
                         reference_air());
    }
    units::Length exact() const { return exact_inches(cfm, rate) * unit::inch; }
};

RC_GTEST_PROP(SizeLaws, a_size_is_in_stock_and_not_below_the_exact_one, ()) {
    const Wanted wanted;
    const auto stock = stock_round_pipes();
    RC_ASSERT(std::find(stock.begin(), stock.end(), wanted.size()) != stock.end());
    RC_PRE(wanted.size() < stock.back());
    RC_ASSERT(wanted.size().diameter >= wanted.exact() * (1 - 1e-12));
    const units::Velocity speed = wanted.cfm * unit::cfm / section_of(wanted.size()).area;
    RC_ASSERT(speed <= wanted.fpm * unit::foot_per_minute);
}

RC_GTEST_PROP(SizeLaws, a_size_is_the_next_above_the_exact_one, ()) {
    Wanted wanted;
    wanted.fpm = 1e9;
    const auto stock = stock_round_pipes();
    const auto next = std::find_if(stock.begin(), stock.end(), [&](const house::Round& pipe) {
        return pipe.diameter >= wanted.exact() * (1 - 1e-9);
    });
    RC_ASSERT(wanted.size() == (next == stock.end() ? stock.back() : *next));
}

RC_GTEST_PROP(SizeLaws, more_air_never_needs_a_smaller_pipe, ()) {
    const Wanted wanted;
    Wanted more = wanted;
    more.cfm *= between(1, 3);
    RC_ASSERT(more.size() >= wanted.size());
    RC_ASSERT(more.exact() >= wanted.exact() * (1 - 1e-12));
}

RC_GTEST_PROP(SizeLaws, more_pressure_or_speed_never_needs_a_larger_pipe, ()) {
    const Wanted wanted;
    Wanted more = wanted;
    more.rate *= between(1, 3);
    more.fpm *= between(1, 3);
    RC_ASSERT(more.size() <= wanted.size());
    RC_ASSERT(more.exact() <= wanted.exact() * (1 + 1e-12));
}

// --- air that holds a room

Run any_run() {
    return {units::Length(between(0, 15)), units::Length(between(0.2, 1.5)),
            units::Resistance(spread(0.1, 3)), unit::celsius(between(-20, 20))};
}

struct Heated {
    HeatWay way;
    Supply supply{unit::celsius(between(25, 80)), units::SpecificHeat(1006), units::Pressure(101325),
                  between(0.05, 1)};
    loads::RoomHeatLoss room;
    Heated() {
        for (int i = any_of(4); i > 0; --i) {
            way.shared.push_back(any_run());
            way.shared_flows.emplace_back(between(0.1, 0.8));
        }
        for (int i = any_of(4); i > 0; --i) way.own.push_back(any_run());
        room.inside = unit::celsius(between(15, 24));
        room.conductance = units::HeatLossPerKelvin(spread(1, 300));
        room.balance = unit::celsius(between(-30, 14));
        room.total = room.conductance * (room.inside - room.balance);
    }
    double brings(units::MassFlow flow) const {
        const units::Temperature at = arrival(way, supply, flow);
        return supply.on_time * (flow * supply.specific_heat * (at - room.inside)).si();
    }
};

RC_GTEST_PROP(HoldingLaws, the_air_brings_just_what_the_room_loses, ()) {
    const Heated any;
    const auto holding = airflow_that_holds(any.way, any.supply, any.room);
    RC_PRE(holding.has_value());
    RC_ASSERT(near(any.brings(holding->flow), any.room.total.si(), 1e-9));
    RC_ASSERT(holding->arrival > any.room.inside);
    const units::Temperature reached = room_temperature(any.way, any.supply, any.room, holding->flow);
    RC_ASSERT(abs(reached - any.room.inside).si() < 1e-6);
}

RC_GTEST_PROP(HoldingLaws, without_an_answer_no_flow_is_enough, ()) {
    Heated any;
    any.supply.temperature = unit::celsius(between(0, 30));
    RC_PRE(!airflow_that_holds(any.way, any.supply, any.room));
    RC_ASSERT(any.brings(units::MassFlow(spread(1e-4, 50))) < any.room.total.si());
}

RC_GTEST_PROP(HoldingLaws, less_air_is_too_little_and_more_too_much, ()) {
    const Heated any;
    const auto holding = airflow_that_holds(any.way, any.supply, any.room);
    RC_PRE(holding.has_value());
    RC_ASSERT(any.brings(holding->flow * between(0, 0.999)) < any.room.total.si());
    RC_ASSERT(any.brings(holding->flow * between(1.001, 10)) > any.room.total.si());
}

RC_GTEST_PROP(HoldingLaws, a_better_wrap_never_needs_more_air, ()) {
    const Heated any;
    const auto bare = airflow_that_holds(any.way, any.supply, any.room);
    RC_PRE(bare.has_value());
    HeatWay wrapped = any.way;
    for (Run& run : wrapped.shared) run.resistance += units::Resistance(between(0, 2));
    for (Run& run : wrapped.own) run.resistance += units::Resistance(between(0, 2));
    const auto better = airflow_that_holds(wrapped, any.supply, any.room);
    RC_ASSERT(better.has_value());
    RC_ASSERT(better->flow <= bare->flow * (1 + 1e-9));
}

RC_GTEST_PROP(HoldingLaws, more_air_than_needed_never_leaves_the_room_colder, ()) {
    const Heated any;
    const auto holding = airflow_that_holds(any.way, any.supply, any.room);
    RC_PRE(holding.has_value());
    const units::MassFlow more = holding->flow * between(1, 5);
    RC_ASSERT(room_temperature(any.way, any.supply, any.room, more).si() >= any.room.inside.si() - 1e-6);
}

}  // namespace
}  // namespace ducts
