// What is said above the table: where the register goes, and why.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/figures.hpp"
#include "report/place_parts.hpp"

namespace report {
namespace {

using questions::RuledOut;
using questions::WindowSide;
using registers::Location;

// What a register in the very middle of its window would stand on; 0: no joist.
int joist_at_the_centre(const PlaceView& view, const Location& location) {
    const std::optional<house::Plan>& plan = view.room().plan;
    if (!plan || !plan->floor || !location.wall || location.mount != house::Mount::floor) return 0;
    const bool along_east =
        *location.wall == house::WallSide::north || *location.wall == house::WallSide::south;
    const bool crossed = (plan->floor->run == house::JoistsRun::north_south) == along_east;
    if (!crossed) return 0;
    const units::Length from = (along_east ? location.face.west : location.face.south) - location.off_centre;
    const units::Length to = (along_east ? location.face.east : location.face.north) - location.off_centre;
    for (const house::Joist& joist : plan->floor->joists)
        if (joist.from < to && from < joist.to) return joist.number;
    return 0;
}

std::string moved_for(const PlaceView& view, const Location& location) {
    const std::string off = off_centre_words(view, location);
    if (off.empty()) return {};
    const int joist = joist_at_the_centre(view, location);
    if (joist == 0) return ", " + off;
    return fmt::format(", {} (joist {} is in the way of the centre)", off, joist);
}

std::string as_good_words(const PlaceView& view) {
    std::vector<std::string> others;
    for (const std::size_t index : view.answer.as_good)
        others.push_back(
            fmt::format("{} ({})", view.number_of(index), where_words(view, view.place(index).location)));
    if (others.empty()) return {};
    return fmt::format("; by these figures {} {} as good", listed(others), others.size() == 1 ? "is" : "are");
}

// "1 and 2: it brings too little air; 3: it would be loud"
std::string why_none(const PlaceView& view) {
    std::vector<std::string> reasons;
    for (const RuledOut ruled_out :
         {RuledOut::too_little_air, RuledOut::stays_up, RuledOut::cold_wall, RuledOut::loud}) {
        std::vector<std::string> numbers;
        for (const std::size_t index : view.rows())
            if (view.place(index).ruled_out == ruled_out)
                numbers.push_back(fmt::format("{}", view.number_of(index)));
        if (!numbers.empty()) reasons.push_back(listed(numbers) + ": " + ruled_out_words(ruled_out));
    }
    std::string all;
    for (const std::string& reason : reasons) all += (all.empty() ? "" : "; ") + reason;
    return all;
}

std::string where_one_stands(const PlaceView& view, const questions::FallingAir& falling) {
    return fmt::format("Cold air off the {} moves at {} over the floor {}; {} of people would feel it",
                       falling.window, figure(falling.speed, view.system), stands_at(falling, view.system),
                       percent(falling.dissatisfied));
}

std::string window_side_sentence(const PlaceView& view) {
    const questions::FallingAir* falling = view.felt_most();
    if (!falling) return "No glass here sends cold air down: choose by splash, furniture and the run.";
    const std::string stands = where_one_stands(view, *falling);
    switch (view.answer.window_side) {
        case WindowSide::needed:
            return stands + ": a register at the glass is needed.";
        case WindowSide::useful:
            return stands + ": a register at the glass is useful.";
        case WindowSide::indifferent:
            break;
    }
    return stands + ": the window side is no matter; choose by splash, furniture and the run.";
}

bool choice_washes(const PlaceView& view) {
    return view.answer.chosen && view.answer.choice().figures->washes;
}

std::string washing_sentence(const PlaceView& view) {
    if (view.answer.window_side == WindowSide::indifferent || !view.answer.chosen || !view.felt_most())
        return {};
    if (!choice_washes(view))
        return " No place that is left lifts that air: a storm sash or better glass is the other way.";
    return fmt::format(
        " Place {} lifts that air while the heater is on, {} of the time on the design night; while it rests "
        "the air falls as if there were no register.",
        view.number_of(*view.answer.chosen), percent(std::min(view.answer.on_time, 1.0)));
}

// What a place by another wall would bring instead: the one with the shortest run.
std::string instead_sentence(const PlaceView& view) {
    if (!choice_washes(view) || view.answer.window_side == WindowSide::indifferent) return {};
    const questions::PlaceFigures& chosen = *view.answer.choice().figures;
    std::optional<std::size_t> shortest;
    const auto run_of = [&](std::size_t index) { return view.place(index).figures->run; };
    for (const std::size_t index : view.rows()) {
        const questions::Place& place = view.place(index);
        if (place.ruled_out != RuledOut::no || place.figures->washes) continue;
        if (!shortest || run_of(index) < run_of(*shortest)) shortest = index;
    }
    if (!shortest || run_of(*shortest) >= chosen.run) return {};
    const questions::Place& instead = view.place(*shortest);
    const units::Airflow more = instead.figures->trial.gives - chosen.trial.gives;
    const bool printed_more = more > units::Airflow() && number(more, view.system) != "0";
    return fmt::format(" Place {}, {}, has a run {} shorter{} and leaves that air alone.",
                       view.number_of(*shortest), where_words(view, instead.location),
                       to_the_foot(chosen.run - instead.figures->run, view.system),
                       printed_more ? ", gives " + figure(more, view.system) + " more" : "");
}

const char* side_words(WindowSide side) {
    switch (side) {
        case WindowSide::needed:
            return "needed";
        case WindowSide::useful:
            return "useful";
        case WindowSide::indifferent:
            break;
    }
    return "no matter";
}

std::string before_sentence(const PlaceView& view) {
    const questions::PlaceAnswer& answer = view.answer;
    const bool other_side = answer.window_side_before != answer.window_side;
    const bool other_choice = answer.chosen_before != answer.chosen;
    if (!other_side && !other_choice) return {};
    std::string sentence = " With walls and windows as they are now ";
    if (other_side)
        sentence += fmt::format("a register at the glass is {}", side_words(answer.window_side_before));
    if (other_choice)
        sentence += (other_side ? " and " : "") +
                    (answer.chosen_before ? "the answer is another: " +
                                                where_words(view, view.place(*answer.chosen_before).location)
                                          : std::string("no place would do"));
    return sentence + ".";
}

}  // namespace

std::string place_headline(const PlaceView& view) {
    const std::string& room = view.room().name;
    if (view.answer.chosen) {
        const Location& location = view.answer.choice().location;
        return fmt::format("{}: put the register {}{}{}.", room, where_sentence(view, location),
                           moved_for(view, location), as_good_words(view));
    }
    if (view.rows().empty()) return room + ": no place for a register can be built.";
    return fmt::format("{}: no place for a register will do. {}.", room, why_none(view));
}

std::string place_verdict(const PlaceView& view) {
    return window_side_sentence(view) + washing_sentence(view) + instead_sentence(view) +
           before_sentence(view);
}

}  // namespace report
