// Ducts, blower, heater: each with its own yes or no.
#include <fmt/format.h>

#include <algorithm>

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
    const std::string before =
        speed.before.si() > 0 ? number(speed.before, system) + " before, " : std::string();
    return fmt::format("{}: {}{}; {} is the usual limit{}", name, before, figure(speed.after, system),
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

std::string before_and_after(const std::string& before, const std::string& after, bool has_before) {
    return has_before ? before + " before, " + after + " after" : after;
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
    Note note{"ducts: " + short_word(view.answer.ducts_can), {}};
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
    const house::Heater& heater = view.house().heater;
    const units::System system = view.system;
    const bool has_before = view.has_before();
    std::string pressure = "external static pressure " +
                           before_and_after(number(answer.blower_before.external_static, system),
                                            figure(answer.blower_after.external_static, system), has_before);
    pressure += heater.max_static.si() > 0 ? "; nameplate " + number(heater.max_static, system)
                                           : "; the nameplate's limit is not in the sheet";
    const std::string air =
        "Air " + before_and_after(number(answer.blower_before.airflow, system),
                                  figure(answer.blower_after.airflow, system), has_before);
    const std::string rise =
        fmt::format("temperature rise {}, nameplate {} to {}",
                    before_and_after(number(answer.blower_before.rise, system),
                                     figure(answer.blower_after.rise, system), has_before),
                    number(heater.least_rise, system), figure(heater.most_rise, system));
    return {"blower: " + short_word(answer.blower_can),
            {fmt::format("{}. {}; {}", pressure, air, rise), known_by(answer.both.known_by)}};
}

Note heater_part(const TrunkView& view) {
    const questions::TrunkAnswer& answer = view.answer;
    const std::string night = figure(view.house().site.winter_outdoor, view.system);
    const auto share = [](const network::DesignNight& work) { return percent(work.on_time_wanted); };
    const std::string on = before_and_after(view.has_before() ? share(answer.before.night) : "",
                                            share(answer.after.night), view.has_before());
    std::string who = "the thermostat's room";
    if (view.house().thermostat)
        who = "the thermostat in the " + view.house().room(*view.house().thermostat).name;
    else if (view.house().other_rooms)
        who = "the rooms not described";
    std::string text = fmt::format("on {} of the time on a {} night, to hold {}", on, night, who);
    if (!answer.after.night.holds()) text += ". It cannot hold the house: every room falls behind";
    return {"heater: " + short_word(answer.heater_can), {text}};
}

Note how_it_was_solved(const TrunkView& view) {
    const network::OperatingPoint& point = view.answer.after.point;
    return {
        "solved",
        {fmt::format("{} ducts and openings at once, in {} and {}; what flows in and out of each meets to "
                     "one part in {}",
                     point.system.supply.size() + point.system.return_side.size() + point.outlets.size(),
                     counted(static_cast<std::size_t>(point.loops), "outer loop"),
                     counted(static_cast<std::size_t>(point.steps), "step"),
                     point.residual < 1e-9 ? "a thousand million" : "a million")}};
}

}  // namespace report
