#include <fmt/format.h>

#include <array>

#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

// Ducts, blower and heater can, and no other room pays: only the new outlet itself gets too little.
bool only_too_little(const TrunkView& view) {
    const questions::TrunkAnswer& answer = view.answer;
    const questions::RoomShare& own = answer.rooms.back();
    for (const questions::Verdict part : {answer.ducts_can, answer.blower_can, answer.heater_can})
        if (part == questions::Verdict::no) return false;
    return own.needs && own.after < *own.needs && !questions::holds(answer.verdict);
}

std::string can(const TrunkView& view) {
    if (only_too_little(view)) return "the system can take it, but it brings too little";
    switch (view.answer.verdict) {
        case questions::Verdict::yes:
            return "the system can take it";
        case questions::Verdict::probably:
            return "the system can probably take it";
        case questions::Verdict::probably_not:
            return "the system can probably not take it";
        case questions::Verdict::no:
            break;
    }
    return "the system cannot take it";
}

// The room that gives up most, the new outlet's own apart.
const questions::RoomShare* loser(const TrunkView& view) {
    const auto& rooms = view.answer.rooms;
    return rooms.size() > 1 && view.has_before() ? &rooms.front() : nullptr;
}

}  // namespace

std::string TrunkView::name_of(const std::optional<house::RoomId>& room) const {
    if (room) return house().room(*room).name;
    constexpr std::array words{"no",  "one",   "two",   "three", "four", "five",
                               "six", "seven", "eight", "nine",  "ten"};
    const auto count = static_cast<std::size_t>(house().other_rooms->outlets);
    return (count < words.size() ? std::string(words[count]) : std::to_string(count)) +
           (count == 1 ? " other outlet" : " other outlets");
}

std::string trunk_headline(const TrunkView& view) {
    const questions::RoomShare& own = view.answer.rooms.back();
    std::string text = fmt::format("{}: {}. It gets {} of supply air", view.outlet(), can(view),
                                   figure(own.after, view.system));
    if (own.needs && *own.needs <= view.answer.blower_after.airflow)
        text += fmt::format("; the {} needs {}", view.room(), number(*own.needs, view.system));
    return text;
}

std::string trunk_verdict(const TrunkView& view) {
    const questions::RoomShare& own = view.answer.rooms.back();
    const units::System system = view.system;
    const std::string night = figure(view.house().site.winter_outdoor, system);
    std::string text = fmt::format("With it open the {} reaches {} on a {} night; {} is wanted.", view.room(),
                                   figure(own.reached_after, system), night, figure(own.wanted, system));
    const questions::RoomShare* most = loser(view);
    constexpr units::TemperatureDifference colder{0.3};
    if (most && most->reached_before - most->reached_after < colder) {
        text += fmt::format(" No other room gets colder: the heater is on {} of the time instead of {}.",
                            percent(view.answer.after.night.on_time_wanted),
                            percent(view.answer.before.night.on_time_wanted));
    } else if (most) {
        const std::string air = figure(most->before, system) == figure(most->after, system)
                                    ? "its " + figure(most->before, system) + " of supply air stay the same"
                                    : fmt::format("{} of supply air become {}", figure(most->before, system),
                                                  number(most->after, system));
        const std::string before = figure(most->reached_before, system);
        const std::string after = figure(most->reached_after, system);
        text += fmt::format(
            " {} give{} up most: {}, {}.",
            capitalised(most->room ? "the " + view.name_of(most->room) : view.name_of(most->room)),
            most->room ? "s" : "", air, before == after ? "still " + after : before + " becomes " + after);
    }
    return text;
}

}  // namespace report
