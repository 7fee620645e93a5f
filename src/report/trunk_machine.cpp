// Ducts, blower, heater: each with its own yes or no.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

std::string short_word(questions::Verdict verdict) {
    switch (verdict) {
        case questions::Verdict::yes:
            return "yes";
        case questions::Verdict::probably:
            return "just";
        case questions::Verdict::probably_not:
        case questions::Verdict::no:
            break;
    }
    return "no";
}

std::string speed_sentence(const questions::DuctSpeed& speed, const TrunkView& view) {
    const std::string name = "the " + view.house().ducts[static_cast<std::size_t>(speed.duct)].name;
    const units::System system = view.system;
    const std::string runs = speed.before.si() > 0 ? figure(speed.before, system) + " before, " +
                                                         number(speed.after, system) + " after"
                                                   : figure(speed.after, system);
    return fmt::format("{}: {}; {} is the usual limit{}", name, runs,
                       number(ducts::velocity_limit(speed.part).usual, system),
                       speed.too_fast() ? (speed.made_faster() ? ", and it will be heard"
                                                               : ", and it was heard before already")
                                        : "");
}

// Nearest to its limit, or farthest beyond.
const questions::DuctSpeed* fastest(const TrunkView& view) {
    const auto share = [](const questions::DuctSpeed& speed) {
        return speed.after / ducts::velocity_limit(speed.part).usual;
    };
    const auto& ducts = view.answer.ducts;
    const auto most = std::max_element(ducts.begin(), ducts.end(),
                                       [&](const auto& a, const auto& b) { return share(a) < share(b); });
    return most == ducts.end() ? nullptr : &*most;
}

// "0.36 in.wc before, 0.35 after"; without a before only what is.
template <class Q>
std::string before_and_after(Q before, Q after, const TrunkView& view) {
    if (!view.has_before()) return figure(after, view.system);
    return figure(before, view.system) + " before, " + number(after, view.system) + " after";
}

const char* known_by(network::AirflowKnown known) {
    switch (known) {
        case network::AirflowKnown::measured:
            return "The airflow before is the one measured";
        case network::AirflowKnown::by_static:
            return "The airflow before is that of the maker's table at the measured static pressure";
        case network::AirflowKnown::by_rise:
            return "The airflow before follows from the temperature rise measured";
        case network::AirflowKnown::by_table:
            return "The airflow is where the maker's table meets what the ducts ask for";
        case network::AirflowKnown::assumed_rise:
            break;
    }
    return "The airflow before follows from a temperature rise within the nameplate's, as nothing was "
           "measured";
}

}  // namespace

Note ducts_part(const TrunkView& view) {
    const auto& speeds = view.answer.ducts;
    const bool any_too_fast = std::any_of(speeds.begin(), speeds.end(),
                                          [](const questions::DuctSpeed& one) { return one.too_fast(); });
    const bool as_before = any_too_fast && view.answer.ducts_can == questions::Verdict::yes;
    Note note{"ducts: " + (as_before ? "no worse" : short_word(view.answer.ducts_can)), {}};
    const questions::DuctSpeed* most = fastest(view);
    if (!most) return {};
    note.lines.push_back(speed_sentence(*most, view));
    for (const questions::DuctSpeed& speed : view.answer.ducts)
        if (&speed != most && speed.too_fast()) note.lines.push_back(speed_sentence(speed, view));
    if (note.lines.size() == 1) note.lines[0] += ". No other described duct is nearer to its limit";
    return note;
}

Note blower_part(const TrunkView& view) {
    const questions::TrunkAnswer& answer = view.answer;
    const auto& [pressure, airflow, rise] = answer.blower_after;
    const auto& [pressure_before, airflow_before, rise_before] = answer.blower_before;
    const house::Heater& heater = view.house().heater;
    const std::string limit = heater.max_static.si() > 0
                                  ? "; nameplate " + number(heater.max_static, view.system)
                                  : "; the nameplate's limit is not in the sheet";
    return {"blower: " + short_word(answer.blower_can),
            {"external static pressure " + before_and_after(pressure_before, pressure, view) + limit,
             "return air " + before_and_after(airflow_before, airflow, view),
             "temperature rise " + before_and_after(rise_before, rise, view) + "; nameplate " +
                 number(heater.least_rise, view.system) + " to " + figure(heater.most_rise, view.system),
             known_by(answer.both.known_by)}};
}

Note heater_part(const TrunkView& view) {
    const questions::TrunkAnswer& answer = view.answer;
    const std::string night = figure(view.house().site.winter_outdoor, view.system);
    const std::string after = percent(answer.after.night.on_time_wanted);
    std::string who = "the thermostat's room";
    if (view.house().thermostat)
        who = "the thermostat in the " + view.house().room(*view.house().thermostat).name;
    else if (view.house().other_rooms)
        who = "the rooms not described";
    std::string text = fmt::format("on a {} night it is on {} of the time", night, after);
    if (view.has_before())
        text = fmt::format("on a {} night it is on {} of the time before, {} after", night,
                           percent(answer.before.night.on_time_wanted), after);
    text += ", to hold " + who;
    const double to_hold_all = answer.plan.on_time.wanted;
    if (to_hold_all > answer.after.night.on_time_wanted + 0.03)
        text += fmt::format(
            ". To hold every room it would be on {}: these get more than their share and end "
            "its runs early; dampers there keep it on longer",
            percent(to_hold_all));
    if (!answer.after.night.holds()) text += ". It cannot hold the house: every room falls behind";
    return {"heater: " + short_word(answer.heater_can), {text}};
}

Note how_it_was_solved(const TrunkView& view) {
    const network::OperatingPoint& point = view.answer.after.point;
    const int digits = static_cast<int>(std::floor(-std::log10(std::max(point.residual, 1e-15))));
    return {"solved",
            {fmt::format("{} pieces of duct at once, in {} of {}; mass and pressure close to 1 in 10^{}",
                         point.system.supply.size() + point.system.return_side.size(),
                         counted(static_cast<std::size_t>(point.loops), "round"),
                         counted(static_cast<std::size_t>(point.steps), "step"), digits)}};
}

}  // namespace report
