// The bays the branch is led through: what passes them, and what would have to move for what does not.
#include <fmt/format.h>

#include <cmath>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::BranchTrial;

const house::Bay& bay_of(const BranchView& view, const questions::BayPassage& passage) {
    return view.answer.house.bays[static_cast<std::size_t>(passage.bay)];
}

std::string towards(const house::Bay& bay, routes::Way way) {
    switch (way) {
        case routes::Way::to_first_side:
            return bay.from_west ? "to the west" : "to the south";
        case routes::Way::to_second_side:
            return bay.from_west ? "to the east" : "to the north";
        case routes::Way::up:
            return "up";
        case routes::Way::down:
            break;
    }
    return "down";
}

// Names without a number of their own are told by their size: "2 in pipe".
std::string pipe_words(const house::BayPipe& pipe, units::System system) {
    return pipe.name == "pipe" ? figure(pipe.outside, system) + " pipe" : pipe.name;
}

// A move is told as no less than it is.
units::Length rounded_up(units::Length by, units::System system) {
    if (system == units::System::us) return by;  // whole eighths of an inch already
    constexpr units::Length step = 5 * units::unit::millimetre;
    return std::ceil(by / step - 1e-6) * step;
}

std::string mending(const BranchView& view) {
    const questions::BayPassage& passage = view.answer.passage->narrowest();
    const house::Bay& bay = *view.bay();
    if (!routes::passes(passage.empty_bay))
        return fmt::format("even empty {} is {} too small for it", bay.name,
                           figure(-passage.empty_bay, view.system));
    if (!passage.move) return "no move of one pipe within the bay lets it pass";
    return fmt::format("with the {} moved {} {} it passes",
                       pipe_words(bay.pipes[static_cast<std::size_t>(passage.move->pipe)], view.system),
                       figure(rounded_up(passage.move->by, view.system), view.system),
                       towards(bay, passage.move->way));
}

// The other bays that stop it too.
std::string stopped_too(const BranchView& view) {
    const questions::BranchPassage& passage = *view.answer.passage;
    std::vector<std::string> others;
    for (std::size_t i = 0; i < passage.bays.size(); ++i)
        if (i != passage.tightest && !passage.bays[i].passes(view.sizing().chosen))
            others.push_back(bay_of(view, passage.bays[i]).name);
    if (others.empty()) return {};
    return fmt::format(". {} stop{} it too", capitalised(listed(others)), others.size() == 1 ? "s" : "");
}

// The largest size tried that passes, and what it does for the room.
std::string what_passes(const BranchView& view) {
    const std::vector<BranchTrial>& trials = view.sizing().trials;
    for (std::size_t i = trials.size(); i-- > 0;) {
        if (!view.answer.passage->passes(i) || !std::holds_alternative<house::Round>(trials[i].pipe))
            continue;
        return fmt::format(". {} passes and brings the {} to {}",
                           capitalised(with_article(shape_text(trials[i].pipe, view.system) + " pipe")),
                           view.room(), figure(trials[i].reaches, view.system));
    }
    return {};
}

std::string bay_words(const BranchView& view, const questions::BayPassage& passage) {
    const house::Bay& bay = bay_of(view, passage);
    std::string words = fmt::format("{} is {} wide and {} deep", bay.name, figure(bay.width, view.system),
                                    figure(bay.depth, view.system));
    if (bay.pipes.empty()) return words + ", nothing in it";
    std::vector<std::string> names;
    for (const house::BayPipe& pipe : bay.pipes) names.push_back(pipe_words(pipe, view.system));
    return fmt::format("{}; {} in it, {} kept between duct and pipe", words, listed(names),
                       figure(bay.clearance, view.system));
}

std::string largest_words(const BranchView& view, const questions::BayPassage& passage) {
    std::vector<std::string> largest;
    if (passage.largest_pipe)
        largest.push_back(
            with_article(shape_text(house::Shape(*passage.largest_pipe), view.system) + " round pipe"));
    if (passage.largest_oval)
        largest.push_back(with_article(duct_words(house::Shape(*passage.largest_oval), view.system)));
    if (passage.largest_stack)
        largest.push_back(
            with_article(shape_text(house::Shape(*passage.largest_stack), view.system) + " stack"));
    if (largest.empty()) return "no stock duct passes it lengthwise";
    return (largest.size() == 1 ? "the largest stock size that passes it lengthwise is "
                                : "the largest stock sizes that pass it lengthwise are ") +
           listed(largest);
}

// What would be chosen were as little, or as much, to be kept between duct and pipe as it may be.
std::string chosen_with(const BranchView& view, const questions::Asked& end, double clearance) {
    const std::string kept = figure(units::Length(clearance), view.system);
    if (!end.passing) return fmt::format("with {} none that holds the {} passes", kept, view.room());
    return fmt::format("with {} {} passes and would be chosen", kept,
                       with_article(duct_words(*end.passing, view.system)));
}

// Where the guess of the clearance decides what is chosen.
std::string clearance_words(const BranchView& view) {
    std::optional<house::Shape> now;
    if (!view.blocked()) now = view.choice().pipe;
    const house::DefaultRow& row = house::default_row(house::DefaultId::pipe_clearance);
    std::vector<std::string> ends;
    for (const questions::Weight& weight : view.answer.weighed.weights) {
        if (weight.assumption.id != house::DefaultId::pipe_clearance) continue;
        if (weight.at_low && weight.at_low->passing != now)
            ends.push_back(chosen_with(view, *weight.at_low, row.low));
        if (weight.at_high && weight.at_high->passing != now)
            ends.push_back(chosen_with(view, *weight.at_high, row.high));
    }
    if (ends.empty()) return {};
    return fmt::format("the {} kept between duct and pipe is a guess, and the choice hangs on it: {}",
                       figure(units::Length(row.value), view.system), listed(ends));
}

// "a 6 in round pipe", or the duct there whose shape the sheet gives.
std::string what_is_led_through(const BranchView& view) {
    const house::Duct& duct =
        view.answer.house.ducts[static_cast<std::size_t>(view.answer.passage->narrowest().duct)];
    if (!duct.shape || !view.sizing().to_size)
        return with_article(duct_words(view.choice().pipe, view.system));
    return fmt::format("the {}, {},", duct.name, with_article(duct_words(*duct.shape, view.system)));
}

}  // namespace

std::string blocked_sentence(const BranchView& view) {
    return fmt::format("No, not as {} is: {} does not pass; {}{}{}.", view.bay()->name,
                       what_is_led_through(view), mending(view), stopped_too(view), what_passes(view));
}

Note bay_note(const BranchView& view) {
    if (!view.answer.passage) return {};
    Note note{"through", {}};
    for (const questions::BayPassage& bay : view.answer.passage->bays) {
        note.lines.push_back(bay_words(view, bay));
        note.lines.push_back(largest_words(view, bay));
    }
    note.lines.back() += "; a metal duct is taken 1/4 in wider than its name, for seams and screws";
    if (std::string guess = clearance_words(view); !guess.empty()) note.lines.push_back(std::move(guess));
    return note;
}

}  // namespace report
