#include "questions/answer_trunk.hpp"

#include <algorithm>

#include "ducts/blower.hpp"
#include "house/cannot_answer.hpp"
#include "loads/heater.hpp"
#include "questions/asked_outlet.hpp"
#include "questions/size_branch.hpp"

namespace questions {
namespace {

constexpr units::TemperatureDifference hardly_felt{1.0};

units::Temperature reached(const AtWork& work, house::RoomId room) {
    return work.night.rooms[static_cast<std::size_t>(room.index)];
}

bool has_supply(const house::House& house, house::RoomId room) {
    return std::any_of(house.outlets.begin(), house.outlets.end(), [&](const house::Outlet& outlet) {
        return outlet.room == room && house.is_supply(outlet);
    });
}

// A room whose only outlet is removed pays too.
bool is_or_was_supplied(const BothHouses& both, house::RoomId room) {
    return has_supply(both.planned.house, room) || has_supply(both.found.house, room);
}

// What a room needs once every room is held, as `branch` and `loads` reckon it: by the plan's on-time and
// supply air, each of its outlets an equal part.
std::optional<units::Airflow> needed(const TrunkAnswer& answer, const house::Room& room) {
    const house::House& house = answer.house();
    const BranchSetting& plan = answer.plan;
    std::vector<int> outlets;
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].room == room.id && house.is_supply(house.outlets[i]))
            outlets.push_back(static_cast<int>(i));
    const loads::RoomHeatLoss part =
        part_of(plan.loss.rooms[static_cast<std::size_t>(room.id.index)], static_cast<int>(outlets.size()));
    units::Airflow sum;
    for (const int outlet : outlets) {
        const ducts::Side& supply = plan.system.supply;
        const auto needs = ducts::airflow_that_holds(
            ducts::heat_way(supply, ducts::way_to(supply, house, outlet)), plan.supply, part);
        if (!needs) return std::nullopt;
        sum += needs->airflow;
    }
    return sum;
}

RoomShare share_of(const TrunkAnswer& answer, const house::Room& room) {
    const HouseAtWork& planned = answer.both.planned;
    RoomShare share;
    share.room = room.id;
    if (answer.both.found_is_supplied) {
        share.before = supply_air(answer.both.found, answer.before, room.id);
        share.reached_before = reached(answer.before, room.id);
    }
    share.after = supply_air(planned, answer.after, room.id);
    share.wanted = room.winter_indoor;
    share.reached_after = reached(answer.after, room.id);
    share.needs = needed(answer, room);
    return share;
}

// As it leaves the registers, at the temperature at which it arrives there.
units::Airflow others_air(const HouseAtWork& at, const AtWork& work) {
    return work.point.other_rooms / loads::air_at(work.night.others_arrival, at.machine.pressure).density;
}

RoomShare share_of_the_others(const TrunkAnswer& answer) {
    const HouseAtWork& planned = answer.both.planned;
    RoomShare share;
    if (answer.both.found_is_supplied) {
        share.before = others_air(answer.both.found, answer.before);
        share.reached_before = answer.before.night.other_rooms;
    }
    share.after = others_air(planned, answer.after);
    share.wanted = planned.house.site.winter_indoor;
    share.reached_after = answer.after.night.other_rooms;
    const ducts::Supply& supply = answer.plan.supply;
    const units::Power loss = planned.loss.other_rooms * (1 + planned.house.heater.duct_loss);
    if (supply.temperature > share.wanted && supply.on_time > 0)
        share.needs = loads::airflow_for(loss, supply.on_time, supply.specific_heat,
                                         supply.temperature - share.wanted) /
                      loads::air_at(answer.after.night.others_arrival, planned.machine.pressure).density;
    return share;
}

std::vector<RoomShare> room_shares(const TrunkAnswer& answer) {
    const house::House& house = answer.house();
    const house::RoomId own = answer.new_outlet().room;
    std::vector<RoomShare> shares;
    for (const house::Room& room : house.rooms)
        if (room.id != own && is_or_was_supplied(answer.both, room.id))
            shares.push_back(share_of(answer, room));
    if (house.other_rooms) shares.push_back(share_of_the_others(answer));
    std::stable_sort(shares.begin(), shares.end(), [](const RoomShare& a, const RoomShare& b) {
        return a.reached_before - a.reached_after > b.reached_before - b.reached_after;
    });
    shares.push_back(share_of(answer, house.room(own)));
    return shares;
}

units::Velocity fastest(const ducts::Side& supply, int duct, const loads::Air& air) {
    units::Velocity most;
    for (const ducts::SystemSection& section : supply)
        if (section.duct == duct) most = std::max(most, ducts::velocity(section, air));
    return most;
}

// Of what the new outlet gets with its damper open, the part its room needs: the damper holds back the rest.
double part_needed(const TrunkAnswer& answer) {
    const RoomShare& own = answer.rooms.back();
    return own.needs && *own.needs < own.after ? *own.needs / own.after : 1;
}

std::vector<DuctSpeed> duct_speeds(const TrunkAnswer& answer) {
    std::vector<DuctSpeed> speeds;
    const house::House& house = answer.house();
    const house::House& found = answer.both.found.house;
    for (std::size_t i = 0; i < house.ducts.size(); ++i) {
        if (house.ducts[i].side != house::DuctSide::supply) continue;
        DuctSpeed speed;
        speed.duct = static_cast<int>(i);
        speed.part = ducts::part_of(house, house.ducts[i]);
        speed.after = fastest(answer.after.point.system.supply, speed.duct, answer.after.point.supply_air);
        for (std::size_t j = 0; j < found.ducts.size(); ++j)
            if (found.ducts[j].id == house.ducts[i].id)
                speed.before = fastest(answer.before.point.system.supply, static_cast<int>(j),
                                       answer.before.point.supply_air);
        if (house.ducts[i].state == house::State::added) speed.after = part_needed(answer) * speed.after;
        speeds.push_back(speed);
    }
    return speeds;
}

BlowerSide blower_side(const HouseAtWork& at, const AtWork& work) {
    return {work.point.external_static, work.point.blower / work.point.return_air.density,
            at.machine.output / (work.point.blower * work.point.return_air.specific_heat)};
}

Verdict ducts_verdict(const TrunkAnswer& answer) {
    Verdict worst = Verdict::yes;
    for (const DuctSpeed& speed : answer.ducts) {
        if (!speed.made_faster()) continue;
        if (speed.too_fast()) return Verdict::no;
        if (speed.after > ducts::velocity_limit(speed.part).usual) worst = Verdict::probably;
    }
    return worst;
}

Verdict blower_verdict(const TrunkAnswer& answer) {
    const house::Heater& heater = answer.house().heater;
    const BlowerSide& after = answer.blower_after;
    const bool rise_within = after.rise >= heater.least_rise && after.rise <= heater.most_rise;
    if (!rise_within) return Verdict::no;
    if (heater.max_static.si() <= 0 || after.external_static <= heater.max_static) return Verdict::yes;
    // Beyond the plate already, and the outlet makes it no worse.
    const bool no_worse =
        answer.both.found_is_supplied && after.external_static <= answer.blower_before.external_static;
    return no_worse ? Verdict::probably : Verdict::no;
}

// By how much the other rooms are better off than they have to be, with the new outlet's damper set.
units::TemperatureDifference spare_of_others(const BothHouses& both, const TrialSetting& setting,
                                             const AtWork& before) {
    const house::House& house = both.planned.house;
    const house::RoomId own = house.outlets[static_cast<std::size_t>(setting.outlet)].room;
    const double damper = damper_that_holds(setting);
    const AtWork set =
        try_outlet(both.planned, setting.outlet,
                   {setting.size, {}, {{setting.outlet, damper}}, false, network::Fans::off, {}})
            .work;
    units::TemperatureDifference least{1e3};
    const auto count = [&](units::Temperature had, units::Temperature has, units::Temperature wanted) {
        least = std::min(least, has - std::min(had, wanted) + hardly_felt);
    };
    for (const house::Room& room : house.rooms)
        if (room.id != own && is_or_was_supplied(both, room.id))
            count(reached(before, room.id), reached(set, room.id), room.winter_indoor);
    if (house.other_rooms) count(before.night.other_rooms, set.night.other_rooms, house.site.winter_indoor);
    return least;
}

Asked asked(const BothHouses& both, house::OutletId outlet, const house::Shape& size) {
    const auto whole = std::make_shared<const HouseAtWork>(both.planned);
    const BranchSetting plan = branch_setting(both.planned.house, outlet, ducts::Stock::us, whole);
    const BranchTrial own = try_size(both.planned.house, plan, size);
    const TrialSetting setting{both.planned, plan.outlet, size};
    const OutletTrial open =
        try_outlet(both.planned, plan.outlet, {size, {}, {}, false, network::Fans::off, {}});
    units::TemperatureDifference least = own.reaches - plan.asked.inside;
    if (both.found_is_supplied)
        least = std::min(least, spare_of_others(both, setting, at_work(both.found, std::nullopt)));
    const network::OperatingPoint& point = open.work.point;
    return {{open.airflow.si(), open.reaches.si(), least.si(), point.external_static.si(),
             (point.blower / point.return_air.density).si()},
            {},
            {}};
}

int position_of(const house::House& house, house::OutletId id) {
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].id == id) return static_cast<int>(i);
    return -1;
}

// The new outlet's register is chosen for what its room needs.
void make_register(HouseAtWork& planned, int outlet, units::MassFlow made_for) {
    if (made_for.si() > 0) planned.machine.design.outlets[static_cast<std::size_t>(outlet)] = made_for;
}

void add_trials(TrunkAnswer& answer, const house::Survey& survey) {
    const TrialSetting setting{answer.both.planned, answer.outlet, answer.size};
    answer.balanced = balance(setting);
    if (answer.both.found_is_supplied) {
        answer.taps = other_taps(setting, answer.before, answer.both.found);
        answer.readings = readings_beside(answer.both.found, answer.before);
    }
    answer.old_kept = old_kept(survey, setting);
    answer.door_shut = door_shut(setting);
    answer.in_summer = trunk_in_summer(answer.both, answer.size);
}

}  // namespace

TrunkAnswer answer_trunk(const house::Survey& survey, const std::string& outlet_name) {
    TrunkAnswer answer;
    // Asked wrongly is said before anything is worked out.
    const house::Outlet outlet =
        asked_outlet(house::build(survey, {}, house::Stage::planned).house, outlet_name);
    answer.both = both_houses(survey, {}, first_try);
    answer.outlet = position_of(answer.house(), outlet.id);
    const BranchSizing sizing = size_branch(answer.house(), outlet.id, ducts::Stock::us,
                                            std::make_shared<const HouseAtWork>(answer.both.planned));
    answer.sized_here = sizing.to_size;
    answer.plan = sizing.setting;
    ducts::give_shape(answer.plan.system, sizing.choice().pipe);
    answer.size = sizing.choice().pipe;
    const units::MassFlow made_for = sizing.choice().needs ? sizing.choice().needs->flow : units::MassFlow();
    make_register(answer.both.planned, answer.outlet, made_for);
    answer.after = at_work(answer.both.planned, answer.size);
    answer.blower_after = blower_side(answer.both.planned, answer.after);
    if (answer.both.found_is_supplied) {
        answer.before = at_work(answer.both.found, std::nullopt);
        answer.blower_before = blower_side(answer.both.found, answer.before);
    }
    answer.rooms = room_shares(answer);
    answer.ducts = duct_speeds(answer);
    answer.ducts_can = ducts_verdict(answer);
    answer.blower_can = blower_verdict(answer);
    answer.heater_can = answer.after.night.holds() ? Verdict::yes : Verdict::no;
    answer.weighed = weigh_assumptions(answer.both.assumptions, asked(answer.both, outlet.id, answer.size),
                                       [&](const house::Defaults& defaults) -> std::optional<Asked> {
                                           BothHouses both = both_houses(survey, defaults, first_try);
                                           const int position = position_of(both.planned.house, outlet.id);
                                           make_register(both.planned, position, made_for);
                                           return asked(both, outlet.id, answer.size);
                                       });
    Range least = answer.range(TrunkFigure::spare);
    if (!answer.weighed.always_answered) least.low = std::min(least.low, 0.0);
    answer.verdict = verdict(least);
    for (const Verdict part : {answer.ducts_can, answer.blower_can, answer.heater_can})
        if (part == Verdict::no) answer.verdict = Verdict::no;
    add_trials(answer, survey);
    return answer;
}

}  // namespace questions
