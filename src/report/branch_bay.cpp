// The bay the branch is led through: what passes it, and what would have to move for what does not.
#include <fmt/format.h>

#include <cmath>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::BranchTrial;

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
    const questions::BranchPassage& passage = *view.answer.passage;
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

std::string bay_words(const BranchView& view) {
    const house::Bay& bay = *view.bay();
    std::string words = fmt::format("{} is {} wide and {} deep", bay.name, figure(bay.width, view.system),
                                    figure(bay.depth, view.system));
    if (bay.pipes.empty()) return words + ", nothing in it";
    std::vector<std::string> names;
    for (const house::BayPipe& pipe : bay.pipes) names.push_back(pipe_words(pipe, view.system));
    return fmt::format("{}; {} in it, {} kept between duct and pipe", words, listed(names),
                       figure(bay.clearance, view.system));
}

std::string largest_words(const BranchView& view) {
    const questions::BranchPassage& passage = *view.answer.passage;
    std::vector<std::string> largest;
    if (passage.largest_pipe)
        largest.push_back(
            with_article(shape_text(house::Shape(*passage.largest_pipe), view.system) + " round pipe"));
    if (passage.largest_stack)
        largest.push_back(
            with_article(shape_text(house::Shape(*passage.largest_stack), view.system) + " stack"));
    if (largest.empty()) return "no stock duct passes it lengthwise";
    return (largest.size() == 1 ? "the largest stock size that passes it lengthwise is "
                                : "the largest stock sizes that pass it lengthwise are ") +
           listed(largest) + "; a metal duct is taken 1/4 in wider than its name, for seams and screws";
}

}  // namespace

std::string blocked_sentence(const BranchView& view) {
    const std::string pipe = with_article(duct_words(view.choice().pipe, view.system));
    return fmt::format("No, not as {} is: {} does not pass; {}{}.", view.bay()->name, pipe, mending(view),
                       what_passes(view));
}

Note bay_note(const BranchView& view) {
    if (!view.answer.passage) return {};
    return {"through", {bay_words(view), largest_words(view)}};
}

}  // namespace report
