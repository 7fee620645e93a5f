// What stands below the table of places: those that cannot be, what is there now, heat lost on the
// way and in an outside wall, wet feet, trust.
#include <fmt/format.h>

#include <algorithm>

#include "registers/framing_beside.hpp"
#include "report/figures.hpp"
#include "report/place_parts.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::PlaceFigures;

constexpr units::Length splashed = registers::splash, bare_feet = 24 * units::unit::inch,
                        hardly_any = 0.25 * units::unit::inch;

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

std::string stack_words(const registers::StackInWall& stack, units::System system) {
    return fmt::format(
        "{} is left behind the stack for rigid board, {} in all between it and outdoors ({} at least is "
        "asked for); while the blower rests its metal falls to {} and sweats when the room's air is above {} "
        "of relative humidity; while it runs {} go out through the wall there{}",
        stack.left < hardly_any ? "nothing" : to_the_inch(stack.left, system), figure(stack.behind, system),
        figure(registers::enough_behind_a_stack, system), figure(stack.at_rest, system),
        percent(stack.sweats_above), figure(stack.loses, system),
        stack.wall_assumed ? ". What the wall is made of is not known: lap siding on boards is taken, and a "
                             "bay of 3-1/2 in where no studs are given; board outside of it would help"
                           : "");
}

// "between joists 2 and 3", "beyond stud 5".
std::string framing_words(const registers::FramingBeside& framing) {
    const char* member = framing.studs ? "stud" : "joist";
    if (framing.before && framing.after)
        return fmt::format("between {}s {} and {}", member, framing.before, framing.after);
    return fmt::format("{} {} {}", framing.before ? "beyond" : "before", member,
                       framing.before ? framing.before : framing.after);
}

std::string sill_line(const PlaceView& view, const questions::SillTaken& sill) {
    std::vector<std::string> moves;
    for (const units::Length height : sill.moves_the_choice) moves.push_back(figure(height, view.system));
    return fmt::format(
        "the sheet gives the {} no sill: {} over the floor is taken; {}", sill.window,
        figure(sill.sill, view.system),
        moves.empty()
            ? fmt::format("from {} to {} the choice stays", figure(questions::lowest_usual_sill, view.system),
                          figure(questions::highest_usual_sill, view.system))
            : fmt::format("at {} another place is chosen: measure it", listed(moves)));
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

Note framing_note(const PlaceView& view) {
    std::string line;
    for (const std::size_t index : view.rows()) {
        const auto framing = registers::framing_beside(*view.room().plan, view.place(index).location);
        if (framing)
            line += fmt::format("{}{} {}", line.empty() ? "" : "; ", view.number_of(index),
                                framing_words(*framing));
    }
    if (line.empty()) return {};
    return {"framing", {line + "; their boots cut no joist and no stud"}};
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

Note on_the_way_note(const PlaceView& view) {
    const std::vector<std::size_t> rows = view.rows();
    if (rows.empty()) return {};
    const auto lost = [&](std::size_t index) { return view.place(index).figures->lost_on_the_way; };
    const auto by_loss = [&](std::size_t a, std::size_t b) { return lost(a) < lost(b); };
    const auto told = [&](std::size_t index, const char* which) {
        return fmt::format("{} to {}{}", figure(lost(index), view.system), view.number_of(index), which);
    };
    const std::size_t least = *std::min_element(rows.begin(), rows.end(), by_loss),
                      most = *std::max_element(rows.begin(), rows.end(), by_loss);
    std::vector<std::string> parts;
    if (view.answer.chosen && least != *view.answer.chosen && most != *view.answer.chosen)
        parts.push_back(told(*view.answer.chosen, ""));
    parts.push_back(told(least, rows.size() > 1 ? ", the least" : ""));
    if (most != least) parts.push_back(told(most, ", the most"));
    std::string line = "the air loses, from plenum to register, while the heater is on: ";
    for (const std::string& part : parts) line += (&part == &parts.front() ? "" : "; ") + part;
    return {"on the way", {line}};
}

Note outside_wall_note(const PlaceView& view) {
    std::vector<std::pair<std::string, std::vector<std::string>>>
        told;  // words, and the places they hold for
    for (const std::size_t index : view.rows()) {
        const auto& stack = view.place(index).figures->in_cold_wall;
        if (!stack) continue;
        const std::string words = stack_words(*stack, view.system);
        const auto alike =
            std::find_if(told.begin(), told.end(), [&](const auto& one) { return one.first == words; });
        auto& numbers =
            alike == told.end() ? told.emplace_back(words, std::vector<std::string>()).second : alike->second;
        numbers.push_back(fmt::format("{}", view.number_of(index)));
    }
    Note note{"outside wall", {}};
    for (const auto& [words, numbers] : told) note.lines.push_back(listed(numbers) + ": " + words);
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
    for (const std::string& window : view.answer.centred)
        note.lines.push_back("the sheet does not say where along its wall the " + window +
                             " is: it is taken in the middle");
    if (const auto& sill = view.answer.sill_taken) note.lines.push_back(sill_line(view, *sill));
    note.lines.emplace_back(
        "each run is the sheet's, longer or shorter by the shortest right-angled way from the room's inner "
        "corner: an estimate; what stands in its way was not looked at");
    return note;
}

}  // namespace report
