#include <fmt/format.h>

#include <array>

#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

std::string can(questions::Verdict verdict) {
    switch (verdict) {
        case questions::Verdict::yes:
            return "can take";
        case questions::Verdict::probably:
            return "can probably take";
        case questions::Verdict::probably_not:
            return "can probably not take";
        case questions::Verdict::no:
            break;
    }
    return "cannot take";
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
    std::string text = fmt::format("{}: the system {} it. It gets {} of supply air", view.outlet(),
                                   can(view.answer.verdict), figure(own.after, view.system));
    if (own.needs) text += fmt::format("; the {} needs {}", view.room(), number(*own.needs, view.system));
    return text;
}

std::string trunk_verdict(const TrunkView& view) {
    const questions::RoomShare& own = view.answer.rooms.back();
    const units::System system = view.system;
    const std::string night = figure(view.house().site.winter_outdoor, system);
    std::string text = fmt::format("With it open the {} reaches {} on a {} night; {} is wanted.", view.room(),
                                   figure(own.reached_after, system), night, figure(own.wanted, system));
    if (const questions::RoomShare* most = loser(view)) {
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
