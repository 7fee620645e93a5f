// What else could be done, side by side; and what was measured.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/figures.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

// Handles are set by eye, to the eighth of a quarter turn.
std::string handle(double degrees) {
    constexpr double open = 7, about_shut = 57;
    if (degrees < open) return "open";
    if (degrees > about_shut) return "nearly shut";
    if (std::abs(degrees - 45) < 4) return "half shut";
    return fmt::format("turned {:.0f} degrees", std::round(degrees / 5) * 5);
}

std::string room_with_air(const questions::DamperSet& set, const TrunkView& view) {
    return fmt::format("{} {} ({}, {})", view.house().room(set.room).name, handle(set.degrees),
                       figure(set.airflow, view.system), figure(set.reaches, view.system));
}

std::string tap_name(const questions::Tap& tap, const TrunkView& view) {
    if (!tap.duct) return "at the plenum";
    const house::Duct& duct = *view.house().duct(*tap.duct);
    return fmt::format("from the {} at {}", duct.name, figure(tap.at, view.system));
}

struct PredictedText {
    units::System system;
    template <class Q>
    std::string operator()(Q quantity) const {
        return figure(quantity, system);
    }
};
struct MeasuredText {
    units::System system;
    template <class Q>
    std::string operator()(Q quantity) const {
        return figure(quantity, system);
    }
    std::string operator()(const house::BagFilled& bag) const {
        return figure(bag.airflow, system) + " by the bag";
    }
};

const char* what_is_read(house::ReadingKind kind) {
    switch (kind) {
        case house::ReadingKind::bag:
        case house::ReadingKind::airflow:
            return "airflow";
        case house::ReadingKind::static_pressure:
            return "static pressure";
        case house::ReadingKind::temperature_rise:
            return "temperature rise";
        case house::ReadingKind::temperature:
            break;
    }
    return "temperature";
}

}  // namespace

Note held_by_dampers(const TrunkView& view) {
    const questions::Balanced& balanced = view.answer.balanced;
    std::vector<std::string> turned;
    for (const questions::DamperSet& set : balanced.dampers)
        if (handle(set.degrees) != "open") turned.push_back(room_with_air(set, view));
    const std::string all_open = "every damper open";
    const std::string set = turned.empty() ? all_open : "damper " + listed(turned) + ", all others open";
    if (!balanced.falls_short) return {"to hold every room", {set}};
    const std::string room = view.house().room(*balanced.falls_short).name;
    return {"to hold every room",
            {fmt::format("no set of dampers does: with {} the {} still reaches {}. Its run would have to be "
                         "enlarged, or its loss made smaller",
                         set, room, figure(balanced.reaches, view.system))}};
}

Note taps_note(const TrunkView& view) {
    Note note{"other taps", {}};
    for (const questions::TapTrial& trial : view.answer.taps) {
        std::string line =
            fmt::format("{}: {} {}, reaches {}", tap_name(trial.tap, view), view.room(),
                        figure(trial.airflow, view.system), figure(trial.reaches, view.system));
        if (trial.has_loser)
            line += fmt::format("; {} {}", view.house().room(trial.loser).name,
                                figure(trial.loser_airflow, view.system));
        note.lines.push_back(line);
    }
    if (!note.lines.empty())
        note.lines.emplace_back("each with the same run of pipe: a longer one carries less");
    return note;
}

Note old_outlet_note(const TrunkView& view) {
    if (!view.answer.old_kept) return {};
    const questions::OldKept& kept = *view.answer.old_kept;
    return {"old outlet kept",
            {fmt::format("with the {} left open too, it takes {} and the {} gets {} by the new one; it "
                         "reaches {}. Capped, the new one gets {}",
                         listed(kept.outlets), figure(kept.old_airflow, view.system), view.room(),
                         figure(kept.airflow, view.system), figure(kept.reaches, view.system),
                         figure(view.answer.rooms.back().after, view.system))}};
}

Note door_note(const TrunkView& view) {
    if (!view.answer.door_shut) return {};
    const questions::DoorShut& door = *view.answer.door_shut;
    const units::System system = view.system;
    constexpr units::Pressure limit{3};
    std::string text =
        fmt::format("the {} stands {} above the rest of the house and its supply air becomes {}", view.room(),
                    figure(door.pressure, system), figure(door.supply, system));
    if (door.pressure > limit)
        text += fmt::format(
            ". That is more than the {} a shut door should hold: cut the door or give it a "
            "transfer grille",
            figure(limit, system));
    Note note{view.room() + " door shut", {text}};
    if (door.has_fan)
        note.lines.push_back(door.inflow.si() > 0
                                 ? fmt::format("with its {} exhaust fan on, {} comes in under the door",
                                               figure(door.fan, system), figure(door.inflow, system))
                                 : fmt::format("with its {} exhaust fan on, {} still goes out under the door",
                                               figure(door.fan, system), figure(-1.0 * door.inflow, system)));
    return note;
}

Note readings_note(const TrunkView& view) {
    Note note{"measured", {}};
    for (const questions::ReadingBeside& beside : view.answer.readings)
        note.lines.push_back(fmt::format("{}{}: {}, predicted {}", beside.at.empty() ? "" : beside.at + ", ",
                                         what_is_read(beside.reading.what),
                                         std::visit(MeasuredText{view.system}, beside.reading.value),
                                         std::visit(PredictedText{view.system}, beside.predicted)));
    return note;
}

}  // namespace report
