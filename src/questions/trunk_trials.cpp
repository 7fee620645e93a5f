#include "questions/trunk_trials.hpp"

#include <algorithm>
#include <cmath>

#include "loads/air.hpp"
#include "units/unit.hpp"

namespace questions {
namespace {

// Degrees of a handle: none is set finer; what more rounds of setting would not change.
constexpr double finest = 0.25, hardly_moved = 1;
constexpr units::TemperatureDifference within{0.5};
// The room of the thermostat stands at its temperature whatever its damper does.
constexpr units::TemperatureDifference hardly_off{0.01};

units::TemperatureDifference over(const HouseAtWork& at, const AtWork& work, house::RoomId room) {
    const auto i = static_cast<std::size_t>(room.index);
    return work.night.rooms[i] - at.house.rooms[i].winter_indoor;
}

std::vector<int> supply_outlets(const house::House& house, house::RoomId room) {
    std::vector<int> all;
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].room == room && house.is_supply(house.outlets[i]))
            all.push_back(static_cast<int>(i));
    return all;
}

// Dampers of all rooms as they stand, by outlet.
class Dampers {
  public:
    explicit Dampers(const TrialSetting& setting) : setting_(setting) {
        for (const house::Outlet& outlet : setting.planned.house.outlets) degrees_.push_back(outlet.damper);
    }
    AtWork at_work() const {
        Proposal proposal{setting_.size, {}, {}, false, network::Fans::off};
        for (std::size_t i = 0; i < degrees_.size(); ++i)
            proposal.dampers.push_back({static_cast<int>(i), degrees_[i]});
        return try_outlet(setting_.planned, setting_.outlet, proposal).work;
    }
    // Closes or opens a room's dampers until it is just held; gives the degrees.
    double set(house::RoomId room) {
        const auto outlets = supply_outlets(setting_.planned.house, room);
        const auto too_warm = [&](double degrees) {
            for (const int outlet : outlets) degrees_[static_cast<std::size_t>(outlet)] = degrees;
            return over(setting_.planned, at_work(), room) > hardly_off;
        };
        if (!too_warm(0)) return 0;
        if (too_warm(most_set_damper)) return most_set_damper;
        double low = 0, high = most_set_damper;
        while (high - low > finest) {
            const double middle = 0.5 * (low + high);
            (too_warm(middle) ? low : high) = middle;
        }
        for (const int outlet : outlets) degrees_[static_cast<std::size_t>(outlet)] = low;
        return low;
    }

  private:
    const TrialSetting& setting_;
    std::vector<double> degrees_;
};

}  // namespace

double damper_that_holds(const TrialSetting& setting) {
    const auto outlet = static_cast<std::size_t>(setting.outlet);
    return Dampers(setting).set(setting.planned.house.outlets[outlet].room);
}

Balanced balance(const TrialSetting& setting) {
    const house::House& house = setting.planned.house;
    Dampers dampers(setting);
    Balanced balanced;
    for (const house::Room& room : house.rooms)
        if (!supply_outlets(house, room.id).empty()) balanced.dampers.push_back({room.id, 0, {}, {}});
    constexpr int most_rounds = 12;
    double moved = most_set_damper;
    for (int round = 0; round < most_rounds && moved > hardly_moved; ++round) {
        moved = 0;
        for (DamperSet& one : balanced.dampers) {
            const double degrees = dampers.set(one.room);
            moved = std::max(moved, std::abs(degrees - one.degrees));
            one.degrees = degrees;
        }
    }
    balanced.work = dampers.at_work();
    units::TemperatureDifference worst = -1.0 * within;
    for (DamperSet& one : balanced.dampers) {
        one.airflow = supply_air(setting.planned, balanced.work, one.room);
        one.reaches = balanced.work.night.rooms[static_cast<std::size_t>(one.room.index)];
        const units::TemperatureDifference above = over(setting.planned, balanced.work, one.room);
        if (above >= worst) continue;
        worst = above;
        balanced.falls_short = one.room;
        balanced.reaches = one.reaches;
    }
    return balanced;
}

namespace {

std::optional<house::RoomId> biggest_loser(const TrialSetting& setting, const AtWork& work,
                                           const HouseAtWork& found, const AtWork& before) {
    const house::House& house = setting.planned.house;
    const house::RoomId own = house.outlets[static_cast<std::size_t>(setting.outlet)].room;
    std::optional<house::RoomId> loser;
    units::Airflow most;
    for (const house::Room& room : house.rooms) {
        if (room.id == own || supply_outlets(house, room.id).empty()) continue;
        const units::Airflow lost =
            supply_air(found, before, room.id) - supply_air(setting.planned, work, room.id);
        if (loser && lost <= most) continue;
        loser = room.id;
        most = lost;
    }
    return loser;
}

bool hangs_below(const house::House& house, const house::Duct& duct, house::DuctId above) {
    for (const house::Duct* at = &duct; at; at = at->from ? house.duct(*at->from) : nullptr)
        if (at->id == above) return true;
    return false;
}

// Nobody taps to the inch.
units::Length to_the_foot(units::Length at, units::Length along) {
    return std::min(along, std::round(at / units::unit::foot) * units::unit::foot);
}

std::vector<Tap> taps_to_try(const TrialSetting& setting) {
    const house::House& house = setting.planned.house;
    const int first = first_new_duct(house, setting.outlet);
    if (first < 0) return {};
    const house::Duct& run = house.ducts[static_cast<std::size_t>(first)];
    std::vector<Tap> taps;
    const house::Duct* trunk = run.from ? house.duct(*run.from) : nullptr;
    if (trunk)
        for (const double share : {0.1, 0.5, 0.9}) {
            const units::Length at = to_the_foot(share * trunk->length, trunk->length);
            const bool tried = !taps.empty() && taps.back().at >= at;
            if (!tried && abs(at - run.at) > 0.1 * trunk->length) taps.push_back({trunk->id, at});
        }
    for (const house::Duct& other : house.ducts) {
        // A run that leaves a trunk; what hangs on it is no place to tap.
        const house::Duct* from = other.from ? house.duct(*other.from) : nullptr;
        const bool is_a_run = other.side == house::DuctSide::supply && from && !from->from && other.shape;
        if (is_a_run && other.state == house::State::found && !hangs_below(house, other, run.id) &&
            run.from != other.id)
            taps.push_back({other.id, to_the_foot(0.5 * other.length, other.length)});
    }
    if (run.from) taps.push_back({std::nullopt, {}});
    return taps;
}

}  // namespace

std::vector<TapTrial> other_taps(const TrialSetting& setting, const AtWork& before,
                                 const HouseAtWork& found) {
    std::vector<TapTrial> trials;
    for (const Tap& tap : taps_to_try(setting)) {
        const OutletTrial there =
            try_outlet(setting.planned, setting.outlet, {setting.size, tap, {}, false, network::Fans::off});
        TapTrial trial{tap, there.airflow, there.reaches, {}, {}, false};
        if (const auto loser = biggest_loser(setting, there.work, found, before)) {
            trial.loser = *loser;
            trial.loser_airflow = supply_air(setting.planned, there.work, *loser);
            trial.has_loser = true;
        }
        trials.push_back(trial);
    }
    return trials;
}

std::optional<OldKept> old_kept(const house::Survey& survey, const TrialSetting& setting) {
    house::Survey both = survey;
    OldKept kept;
    for (house::SurveyOutlet& old : both.outlets)
        if (old.state && old.state->value == house::State::removed && old.name)
            kept.outlets.push_back(old.name->value);
    if (kept.outlets.empty()) return std::nullopt;
    const auto keep = [](auto& things) {
        for (auto& thing : things)
            if (thing.state && thing.state->value == house::State::removed)
                thing.state->value = house::State::found;
    };
    keep(both.ducts);
    keep(both.outlets);
    BothHouses houses = both_houses(both, {}, setting.size);
    const house::House& house = houses.planned.house;
    const auto position = static_cast<std::size_t>(setting.outlet);
    const house::OutletId outlet = setting.planned.house.outlets[position].id;
    const units::MassFlow made_for = setting.planned.machine.design.outlets[position];
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].id == outlet) houses.planned.machine.design.outlets[i] = made_for;
    const AtWork work = at_work(houses.planned, setting.size);
    for (std::size_t i = 0; i < house.outlets.size(); ++i) {
        const house::Outlet& one = house.outlets[i];
        const units::Airflow airflow = airflow_of(houses.planned, work, static_cast<int>(i));
        const bool old = std::find(kept.outlets.begin(), kept.outlets.end(), one.name) != kept.outlets.end();
        if (old && house.is_supply(one)) kept.old_airflow += airflow;
        if (one.id != outlet) continue;
        kept.airflow = airflow;
        kept.reaches = work.night.rooms[static_cast<std::size_t>(one.room.index)];
    }
    return kept;
}

std::optional<DoorShut> door_shut(const TrialSetting& setting) {
    const house::House& house = setting.planned.house;
    const house::RoomId room = house.outlets[static_cast<std::size_t>(setting.outlet)].room;
    const auto i = static_cast<std::size_t>(room.index);
    const auto& way = house.whole_system->ways_out[i];
    if (!way || way->shut) return std::nullopt;
    Proposal shut{setting.size, {}, {}, true, network::Fans::off};
    const OutletTrial quiet = try_outlet(setting.planned, setting.outlet, shut);
    DoorShut door;
    door.pressure = quiet.work.point.rooms[i];
    door.supply = supply_air(setting.planned, quiet.work, room);
    for (const house::ExhaustFan& fan : house.exhaust_fans)
        if (fan.room == room) door.fan += fan.flow;
    door.has_fan = door.fan.si() > 0;
    if (!door.has_fan) return door;
    shut.fans = network::Fans::on;
    const OutletTrial drawn = try_outlet(setting.planned, setting.outlet, shut);
    door.pressure_with_fan = drawn.work.point.rooms[i];
    door.inflow = -1.0 * (drawn.work.point.door_flows[i] / drawn.work.point.return_air.density);
    return door;
}

namespace {

int position_of(const house::House& house, house::OutletId id) {
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        if (house.outlets[i].id == id) return static_cast<int>(i);
    return -1;
}

using Predicted = decltype(ReadingBeside::predicted);

std::optional<Predicted> predicted(const house::Reading& reading, const HouseAtWork& found,
                                   const AtWork& before) {
    const auto* plenum = std::get_if<house::Plenum>(&reading.at);
    const auto* outlet = std::get_if<house::OutletId>(&reading.at);
    const auto* room = std::get_if<house::RoomId>(&reading.at);
    const int at = outlet ? position_of(found.house, *outlet) : -1;
    switch (reading.what) {
        case house::ReadingKind::bag:
        case house::ReadingKind::airflow:
            if (at >= 0) return abs(airflow_of(found, before, at));
            return before.point.blower / before.point.return_air.density;
        case house::ReadingKind::static_pressure:
            if (!plenum) return std::nullopt;
            return plenum->side == house::DuctSide::supply ? before.point.supply_plenum
                                                           : before.point.return_plenum;
        case house::ReadingKind::temperature_rise:
            return found.machine.output / (before.point.blower * before.point.return_air.specific_heat);
        case house::ReadingKind::temperature:
            break;
    }
    if (room) return before.night.rooms[static_cast<std::size_t>(room->index)];
    if (at >= 0) return before.night.arrivals[static_cast<std::size_t>(at)];
    if (plenum && plenum->side == house::DuctSide::supply) return before.night.supply;
    return std::nullopt;
}

std::string place_name(const house::Reading& reading, const house::House& house) {
    if (const auto* plenum = std::get_if<house::Plenum>(&reading.at))
        return plenum->side == house::DuctSide::supply ? "supply plenum" : "return plenum";
    if (const auto* room = std::get_if<house::RoomId>(&reading.at)) return house.room(*room).name;
    if (const auto* outlet = std::get_if<house::OutletId>(&reading.at))
        if (const int at = position_of(house, *outlet); at >= 0)
            return house.outlets[static_cast<std::size_t>(at)].name;
    return {};
}

}  // namespace

std::vector<ReadingBeside> readings_beside(const HouseAtWork& found, const AtWork& before) {
    std::vector<ReadingBeside> all;
    for (const house::Reading& reading : found.house.readings)
        if (const auto value = predicted(reading, found, before))
            all.push_back({reading, *value, place_name(reading, found.house)});
    return all;
}

}  // namespace questions
