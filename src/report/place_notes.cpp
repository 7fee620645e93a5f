// What stands below the table of places: those that cannot be, what is there now, wet feet, summer, trust.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/place_parts.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::PlaceFigures;

constexpr units::Length splashed = registers::splash, bare_feet = 24 * units::unit::inch;

bool is_low(const questions::Place& place) {
    return place.location.mount != house::Mount::ceiling && place.location.mount != house::Mount::high_wall;
}

bool may_be_built(const questions::Place& place) {
    return place.figures && place.ruled_out == questions::RuledOut::no;
}

std::string wet_words(const PlaceView& view, std::size_t index) {
    const PlaceFigures& figures = *view.place(index).figures;
    const bool splash = *figures.from_water < splashed;
    const bool touches = *figures.from_water < 1 * units::unit::inch;
    return fmt::format("{} is {} the {}: {}", view.number_of(index),
                       touches ? "right beside" : to_the_inch(*figures.from_water, view.system) + " from",
                       figures.water, splash ? "splash, mop and bare feet reach it" : "wet feet step on it");
}

}  // namespace

Note not_possible_note(const PlaceView& view) {
    Note note{"not possible", {}};
    for (const questions::Place& place : view.answer.places) {
        if (place.figures) continue;
        const std::string reason = stopped_words(place.location);
        std::string line = where_words(view, place.location) + ": " +
                           (reason.empty() ? "no run could be led there" : reason);
        if (std::find(note.lines.begin(), note.lines.end(), line) == note.lines.end())
            note.lines.push_back(std::move(line));
    }
    return note;
}

Note ruled_out_note(const PlaceView& view) {
    Note note{"ruled out", {}};
    for (const std::size_t index : view.rows())
        if (const questions::Place& place = view.place(index); place.ruled_out != questions::RuledOut::no)
            note.lines.push_back(fmt::format("{}, {}: {}", view.number_of(index),
                                             where_words(view, place.location),
                                             ruled_out_words(place.ruled_out)));
    return note;
}

Note now_note(const PlaceView& view) {
    Note note{"now", {}};
    for (const questions::OutletNow& now : view.answer.now)
        note.lines.push_back(fmt::format(
            "the {}{} gives {} at {}; the room reaches {}", now.name,
            now.outlet.mount ? " (" + std::string(house::word(*now.outlet.mount)) + ")" : std::string(),
            figure(now.airflow, view.system), figure(now.arrives, view.system),
            figure(now.reaches, view.system)));
    return note;
}

Note wet_feet_note(const PlaceView& view) {
    std::string line;
    bool any_dry = false;
    for (const std::size_t index : view.rows()) {
        const questions::Place& place = view.place(index);
        if (!may_be_built(place) || !is_low(place) || !place.figures->from_water) continue;
        if (*place.figures->from_water >= bare_feet)
            any_dry = true;
        else
            line += (line.empty() ? "" : "; ") + wet_words(view, index);
    }
    if (line.empty()) return {};
    return {"wet feet", {line + (any_dry ? "; the others are dry" : "")}};
}

Note cooled_air_note(const PlaceView& view) {
    std::vector<std::string> reached, dropped;
    for (const std::size_t index : view.rows()) {
        const questions::WarmAirThere& air = view.place(index).figures->warm;
        const auto told = [&](units::Length length) {
            return fmt::format("{} from {}", to_the_foot(length, view.system), view.number_of(index));
        };
        if (air.cooled_reaches) reached.push_back(told(*air.cooled_reaches));
        if (air.cooled_drops) dropped.push_back(told(*air.cooled_drops));
    }
    Note note{"in summer", {}};
    if (!reached.empty())
        note.lines.push_back("cooled air blown up comes this high before it falls back: " + listed(reached));
    if (!dropped.empty())
        note.lines.push_back("cooled air blown across drops so far over its throw: " + listed(dropped));
    return note.lines.empty() ? Note{} : note;
}

Note trust_note(const PlaceView& view) {
    Note note{"how sure", {}};
    if (!view.answer.falling.empty())
        note.lines = {
            "the figures of falling air are for wide glass down to the floor: at most so much; read them as "
            "a "
            "ranking",
            "the share of people was tested on clothed, dry people who sit; bare and wet skin feels far more",
            "a deep sill, a curtain or furniture over the register stops the warm air; leaks of the sash "
            "come "
            "on top of the cold air"};
    for (const house::PlanWindow& window : view.room().plan->windows)
        if (!window.sill)
            note.lines.push_back("the sheet gives the " + window.name + " no sill: a usual height is taken");
    note.lines.emplace_back(
        "each run is the sheet's, longer or shorter by the shortest right-angled way from the room's inner "
        "corner: an estimate; what stands in its way was not looked at");
    return note;
}

}  // namespace report
