// The system at the blower's cooling speed.
#include <fmt/format.h>

#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

std::string cooled_sentence(const questions::CooledRoom& room, const TrunkView& view) {
    const units::System system = view.system;
    std::string words = view.house().room(room.room).name + ": ";
    if (room.before.si() > 0) words += figure(room.before, system) + " of cooled air before, ";
    words += room.before.si() > 0 ? number(room.after, system) + " after"
                                  : figure(room.after, system) + " of cooled air";
    words += "; needs " + number(room.needs, system);
    return words + (room.falls_short() ? ", so it falls short" : "");
}

}  // namespace

Note in_summer_note(const TrunkView& view) {
    if (!view.answer.in_summer) return {};
    const questions::TrunkInSummer& summer = *view.answer.in_summer;
    std::string machine =
        fmt::format("{}, {} of return air, external static pressure {}",
                    summer.own_speed ? "at the blower's cooling speed"
                                     : "at the heating speed, as the sheet gives no other",
                    figure(summer.blower, view.system), figure(summer.external_static, view.system));
    if (view.has_before())
        machine += fmt::format(" ({} before)", number(summer.external_static_before, view.system));
    Note note{"in summer", {machine}};
    for (const questions::CooledRoom& room : summer.rooms) note.lines.push_back(cooled_sentence(room, view));
    return note;
}

}  // namespace report
