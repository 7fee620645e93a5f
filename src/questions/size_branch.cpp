#include "questions/size_branch.hpp"

#include <algorithm>
#include <span>

#include "ducts/friction.hpp"
#include "ducts/plenum.hpp"
#include "ducts/size_duct.hpp"
#include "ducts/stock_sizes.hpp"
#include "house/cannot_answer.hpp"
#include "questions/try_outlet.hpp"
#include "units/unit.hpp"

namespace questions {
namespace {

constexpr house::Round largest_branch{12 * units::unit::inch};  // anything wider is a trunk

int position_of(const house::House& house, house::OutletId outlet) {
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].id == outlet) return static_cast<int>(i);
    throw house::CannotAnswer({}, "that outlet is not in the house");
}

int supply_outlets_in(const house::House& house, house::RoomId room) {
    return static_cast<int>(
        std::count_if(house.outlets.begin(), house.outlets.end(),
                      [&](const house::Outlet& o) { return o.room == room && house.is_supply(o); }));
}

// The whole branch carries what its tightest duct carries at the friction rate; of a duct that ends in
// several registers, this outlet's share.
units::Airflow carried(const ducts::Side& supply, const std::vector<int>& way, units::FrictionRate rate,
                       const loads::Air& air) {
    const ducts::SystemSection& end = supply[static_cast<std::size_t>(way.back())];
    units::Airflow least{1e9};
    for (int at : way) {
        const ducts::SystemSection& section = supply[static_cast<std::size_t>(at)];
        const bool shared_end = section.duct == end.duct;
        const bool own = section.flow <= end.flow * (1 + 1e-9);
        if (!own && !shared_end) continue;  // a trunk
        const double share = own ? 1 : end.flow / section.flow;
        least = std::min(least, share * ducts::airflow_at(section.section, rate / section.loss_factor, air));
    }
    return least;
}

struct Tried {
    BranchTrial trial;
    ducts::FrictionRateBudget budget;
    ducts::HeatWay way;
};

// What the blower moves with a first pipe in place, and how warm that makes the supply air.
void take_real_blower(BranchSetting& setting) {
    const HouseAtWork& whole = *setting.whole;
    const network::OperatingPoint point = network::operating_point(
        whole.house, network::planned_ducts(whole.house, whole.machine, house::Shape(first_try)),
        whole.machine);
    setting.moved = point.blower;
    setting.supply.temperature = point.supply;
    setting.supply_air = point.supply_air;
}

// What the outlet really gets; nothing where the air would run backwards.
void prove(const BranchSetting& setting, const std::optional<house::Shape>& pipe, BranchTrial& trial) {
    const house::Shape size =
        pipe ? *pipe : house::Shape(first_try);  // of other new ducts, where there are any
    const units::MassFlow made_for = trial.needs ? trial.needs->flow : units::MassFlow();
    const OutletTrial there =
        try_outlet(*setting.whole, setting.outlet, {size, {}, {}, false, network::Fans::off, made_for});
    trial.gives = std::max(units::Airflow(), there.airflow);
    trial.gives_mass =
        std::max(units::MassFlow(), there.work.point.outlets[static_cast<std::size_t>(setting.outlet)]);
}

Tried try_whole(const house::House& house, const BranchSetting& setting,
                const std::optional<house::Shape>& pipe) {
    Tried tried;
    BranchTrial& trial = tried.trial;
    ducts::DesignFlows flows = setting.flows;
    ducts::DuctSystem system = setting.system;
    if (pipe) ducts::give_shape(system, *pipe);
    const std::vector<int>& way = setting.way;
    tried.way = ducts::heat_way(system.supply, way);
    trial.needs = ducts::airflow_that_holds(tried.way, setting.supply, setting.asked);
    const units::MassFlow all_there_is = setting.moved * (1 + 1e-9);  // a room may need just that
    if (trial.needs && trial.needs->flow > all_there_is) trial.needs.reset();
    if (trial.needs) {  // the branch's own fittings are judged at the airflow it needs
        flows.outlets[static_cast<std::size_t>(setting.outlet)] = trial.needs->flow;
        ducts::set_flows(system, flows);
    }
    tried.budget =
        ducts::friction_rate(house, system, setting.blower, setting.supply_air, setting.return_air);
    trial.rate = tried.budget.rate;

    const auto& end = system.supply[static_cast<std::size_t>(way.back())];
    trial.pipe =
        pipe ? *pipe : *house.duct(house.outlets[static_cast<std::size_t>(setting.outlet)].duct)->shape;
    const units::Temperature arriving = trial.needs ? trial.needs->arrival : setting.supply.temperature;
    const loads::Air air = loads::air_at(arriving, setting.supply.pressure);
    const units::MassFlow carried_mass =
        std::min(carried(system.supply, way, trial.rate, air) * air.density, all_there_is);
    trial.carries = carried_mass / air.density;
    trial.gives = trial.carries;
    trial.gives_mass = carried_mass;
    if (setting.whole) prove(setting, pipe, trial);
    trial.arrives = ducts::arrival(tried.way, setting.supply, trial.gives_mass);
    trial.reaches = ducts::room_temperature(tried.way, setting.supply, setting.asked, trial.gives_mass);
    trial.speed = trial.gives / end.section.area;
    if (trial.needs) trial.speed_needed = trial.needs->airflow / end.section.area;
    trial.quiet = trial.speed_needed <= ducts::branch_velocity_limit;
    return tried;
}

std::size_t place_in_stock(std::span<const house::Round> stock, const house::Round& pipe) {
    std::size_t i = 0;
    while (i + 1 < stock.size() && stock[i] < pipe) ++i;
    return i;
}

// Whether some duct from the plenum to the outlet has no shape yet.
bool has_unsized_way(const house::House& house, const house::Outlet& outlet) {
    for (const house::Duct* duct = house.duct(outlet.duct); duct;
         duct = duct->from ? house.duct(*duct->from) : nullptr)
        if (!duct->shape) return true;
    return false;
}

// The widest pipe from the shelf that what the run leaves can take: of no more area than that.
house::Round largest_from(const house::House& house, const BranchSetting& setting) {
    const house::Duct* from = house.duct(house.outlets[static_cast<std::size_t>(setting.outlet)].duct);
    while (from && !from->shape) from = from->from ? house.duct(*from->from) : nullptr;
    if (!from) return largest_branch;
    const units::Area most = ducts::section_of(*from->shape).area;
    house::Round largest = ducts::stock_round_pipes(setting.stock).front();
    for (const house::Round& pipe : ducts::stock_round_pipes(setting.stock))
        if (pipe <= largest_branch && ducts::section_of(pipe).area <= (1 + 1e-9) * most) largest = pipe;
    return largest;
}

// The flattest stack that holds the room, to offer beside the pipes.
std::optional<BranchTrial> stack_beside(const house::House& house, const BranchSetting& setting) {
    std::optional<BranchTrial> last;
    for (const house::Rectangular& stack : ducts::stock_wall_stacks(setting.stock)) {
        last = try_size(house, setting, house::Shape(stack));
        if (last->holds()) return last;
    }
    return last;
}

}  // namespace

loads::RoomHeatLoss part_of(loads::RoomHeatLoss loss, int parts) {
    loss.total = loss.total / parts;
    loss.conductance = loss.conductance / parts;
    return loss;
}

units::Airflow BranchTrial::margin() const {
    return needs ? gives - needs->airflow : -(gives + units::unit::cfm);
}

BranchSetting branch_setting(const house::House& house, house::OutletId outlet, ducts::Stock stock,
                             std::shared_ptr<const HouseAtWork> whole) {
    BranchSetting setting;
    setting.stock = stock;
    setting.whole = std::move(whole);
    setting.outlet = position_of(house, outlet);
    const house::RoomId room = house.outlets[static_cast<std::size_t>(setting.outlet)].room;
    setting.loss = loads::house_heat_loss(house);
    setting.outlets_in_room = std::max(1, supply_outlets_in(house, room));
    setting.asked =
        part_of(setting.loss.rooms[static_cast<std::size_t>(room.index)], setting.outlets_in_room);
    const ducts::Plenum plenum = ducts::plenum(house, setting.loss);
    setting.on_time = plenum.on_time;
    setting.blower = plenum.blower;
    setting.supply = plenum.supply;
    setting.supply_air = plenum.supply_air;
    setting.return_air = plenum.return_air;
    setting.moved = setting.blower.mass_flow;
    if (setting.whole) take_real_blower(setting);
    setting.flows = ducts::design_flows(house, setting.loss, setting.blower.mass_flow);
    setting.to_size = has_unsized_way(house, house.outlets[static_cast<std::size_t>(setting.outlet)]);
    setting.largest = largest_from(house, setting);
    // A new duct off the way, of another outlet, may be without a shape too: it takes part as the first try.
    setting.system = ducts::duct_system(house, setting.flows, house::Shape(first_try));
    setting.way = ducts::way_to(setting.system.supply, house, setting.outlet);
    return setting;
}

BranchTrial try_size(const house::House& house, const BranchSetting& setting,
                     const std::optional<house::Shape>& pipe) {
    return try_whole(house, setting, pipe).trial;
}

BranchTrial choose_pipe(const house::House& house, const BranchSetting& setting, BranchTrial tried) {
    const auto stock = ducts::stock_round_pipes(setting.stock);
    const std::size_t largest = place_in_stock(stock, setting.largest);
    if (!std::holds_alternative<house::Round>(tried.pipe))
        tried = try_size(house, setting, house::Shape(first_try));
    std::size_t i = place_in_stock(stock, std::get<house::Round>(tried.pipe));
    while (!tried.holds() && i < largest) tried = try_size(house, setting, house::Shape(stock[++i]));
    while (tried.holds() && i > 0) {
        const BranchTrial smaller = try_size(house, setting, house::Shape(stock[i - 1]));
        if (!smaller.holds()) break;
        tried = smaller;
        --i;
    }
    return tried;
}

BranchSizing size_branch(const house::House& house, house::OutletId outlet, ducts::Stock shelf,
                         std::shared_ptr<const HouseAtWork> whole) {
    BranchSizing sizing;
    sizing.setting = branch_setting(house, outlet, shelf, std::move(whole));
    const BranchSetting& setting = sizing.setting;
    sizing.to_size = setting.to_size;
    if (sizing.to_size) {
        const auto stock = ducts::stock_round_pipes(setting.stock);
        const BranchTrial guess = try_size(house, setting, house::Shape(first_try));
        const units::Airflow wanted = guess.needs ? guess.needs->airflow : guess.gives;
        const house::Round near =
            std::min(ducts::size_duct(wanted, {guess.rate, ducts::branch_velocity_limit}, setting.supply_air,
                                      setting.stock),
                     stock[place_in_stock(stock, setting.largest)]);
        const BranchTrial choice = choose_pipe(house, setting, try_size(house, setting, house::Shape(near)));
        const std::size_t at = place_in_stock(stock, std::get<house::Round>(choice.pipe));
        for (std::size_t i = at < 2 ? 0 : at - 2; i <= std::min(at + 1, stock.size() - 1); ++i)
            sizing.trials.push_back(try_size(house, setting, house::Shape(stock[i])));
        sizing.chosen = std::min<std::size_t>(at, 2);
        if (const auto stack = stack_beside(house, setting)) sizing.trials.push_back(*stack);
    } else {
        sizing.trials.push_back(try_size(house, setting, std::nullopt));
    }
    choose(house, sizing, sizing.chosen);
    return sizing;
}

void choose(const house::House& house, BranchSizing& sizing, std::size_t trial) {
    sizing.chosen = trial;
    const std::optional<house::Shape> pipe =
        sizing.to_size ? std::optional<house::Shape>(sizing.choice().pipe) : std::nullopt;
    Tried tried = try_whole(house, sizing.setting, pipe);
    sizing.budget = std::move(tried.budget);
    sizing.way = std::move(tried.way);
}

}  // namespace questions
