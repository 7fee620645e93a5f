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

// The mean arrival of a room's air.
units::Temperature arrival(const HouseAtWork& at, const AtWork& work, house::RoomId room) {
    double flow = 0, sum = 0;
    for (std::size_t i = 0; i < at.house.outlets.size(); ++i) {
        if (at.house.outlets[i].room != room || !at.house.is_supply(at.house.outlets[i])) continue;
        const double part = std::max(1e-12, work.point.outlets[i].si());
        flow += part, sum += part * work.night.arrivals[i].si();
    }
    return units::Temperature(flow > 0 ? sum / flow : work.night.supply.si());
}

struct Asking {
    units::Power loss;
    units::Temperature arrival, wanted;
};
std::optional<units::Airflow> needed(const HouseAtWork& at, const AtWork& work, const Asking& asking) {
    if (asking.arrival <= asking.wanted || work.night.on_time <= 0) return std::nullopt;
    const units::MassFlow flow = loads::airflow_for(
        asking.loss, work.night.on_time, work.point.return_air.specific_heat, asking.arrival - asking.wanted);
    return flow / loads::air_at(asking.arrival, at.machine.pressure).density;
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
    share.needs = needed(planned, answer.after,
                         {planned.loss.rooms[static_cast<std::size_t>(room.id.index)].total,
                          arrival(planned, answer.after, room.id), room.winter_indoor});
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
    share.needs = needed(planned, answer.after,
                         {planned.loss.other_rooms, answer.after.night.others_arrival, share.wanted});
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

// By how much the least well served room is better off than it has to be, with the new outlet's damper set.
units::TemperatureDifference spare(const BothHouses& both, const TrialSetting& setting, const AtWork* before,
                                   const OutletTrial& open) {
    const house::House& house = both.planned.house;
    const house::RoomId own = house.outlets[static_cast<std::size_t>(setting.outlet)].room;
    units::TemperatureDifference least = open.reaches - house.room(own).winter_indoor;
    if (!before) return least;
    const double damper = damper_that_holds(setting);
    const OutletTrial set =
        try_outlet(both.planned, setting.outlet,
                   {setting.size, {}, {{setting.outlet, damper}}, false, network::Fans::off});
    const auto count = [&](units::Temperature had, units::Temperature has, units::Temperature wanted) {
        least = std::min(least, has - std::min(had, wanted) + hardly_felt);
    };
    for (const house::Room& room : house.rooms)
        if (room.id != own && is_or_was_supplied(both, room.id))
            count(reached(*before, room.id), reached(set.work, room.id), room.winter_indoor);
    if (house.other_rooms)
        count(before->night.other_rooms, set.work.night.other_rooms, house.site.winter_indoor);
    return least;
}

Asked asked(const BothHouses& both, int outlet, const house::Shape& size) {
    const TrialSetting setting{both.planned, outlet, size};
    const OutletTrial open = try_outlet(both.planned, outlet, {size, {}, {}, false, network::Fans::off});
    std::optional<AtWork> before;
    if (both.found_is_supplied) before = at_work(both.found, std::nullopt);
    const units::TemperatureDifference least = spare(both, setting, before ? &*before : nullptr, open);
    const network::OperatingPoint& point = open.work.point;
    return {{open.airflow.si(), open.reaches.si(), least.si(), point.external_static.si(),
             (point.blower / point.return_air.density).si()},
            {}};
}

int position_of(const house::House& house, house::OutletId id) {
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].id == id) return static_cast<int>(i);
    return -1;
}

void add_trials(TrunkAnswer& answer, const house::Survey& survey) {
    const TrialSetting setting{answer.both.planned, answer.outlet, answer.size};
    answer.balanced = balance(setting);
    if (answer.both.found_is_supplied) {
        answer.taps = other_taps(setting, answer.before, answer.both.found);
        answer.readings = readings_beside(answer.both.found, answer.before);
    }
    answer.old_kept = old_kept(survey, {}, answer.new_outlet().name, answer.size);
    answer.door_shut = door_shut(setting);
}

}  // namespace

TrunkAnswer answer_trunk(const house::Survey& survey, const std::string& outlet_name) {
    TrunkAnswer answer;
    // Asked wrongly is said before anything is worked out.
    const house::House planned = house::build(survey, {}, house::Stage::planned).house;
    const house::OutletId outlet = asked_outlet(planned, outlet_name).id;
    const BranchSizing sizing = size_branch(planned, outlet);
    answer.sized_here = sizing.to_size;
    answer.size = sizing.choice().pipe;
    answer.both = both_houses(survey, {}, answer.size);
    answer.outlet = position_of(answer.house(), outlet);
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
    answer.weighed =
        weigh_assumptions(answer.both.assumptions, asked(answer.both, answer.outlet, answer.size),
                          [&](const house::Defaults& defaults) -> std::optional<Asked> {
                              const BothHouses both = both_houses(survey, defaults, answer.size);
                              return asked(both, position_of(both.planned.house, outlet), answer.size);
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
