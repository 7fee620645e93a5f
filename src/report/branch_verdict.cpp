#include <fmt/format.h>

#include "ducts/stock_sizes.hpp"
#include "report/branch_parts.hpp"
#include "report/figures.hpp"

namespace report {
namespace {

using questions::BranchTrial;
using questions::Verdict;

std::string verdict_word(Verdict verdict) {
    switch (verdict) {
        case Verdict::yes:
            return "Yes";
        case Verdict::probably:
            return "Probably";
        case Verdict::probably_not:
            return "Probably not";
        case Verdict::no:
            break;
    }
    return "No";
}

std::string who_needs(const BranchView& view) {
    const int outlets = view.sizing().setting.outlets_in_room;
    if (outlets == 1) return fmt::format("the {} needs", view.room());
    return fmt::format("its part of the {}, one of {} outlets, needs", view.room(), outlets);
}

std::string on_the_night(const BranchView& view) {
    return fmt::format("on a {} night", figure(view.night(), view.system));
}

// Of a room that its neighbours keep warm.
std::string not_needed(const BranchView& view) {
    return fmt::format(
        "Not needed: with the damper open the {} would reach {} {}; leave the outlet out, or keep its "
        "damper shut.",
        view.room(), figure(view.choice().reaches, view.system), on_the_night(view));
}

// What the room gets with the damper open, and what then to do with the damper.
std::string reaches_sentence(const BranchView& view) {
    const std::string reached = figure(view.choice().reaches, view.system);
    const std::string wanted = figure(view.wanted(), view.system);
    if (reached == wanted)
        return fmt::format("the {} reaches {} {}", view.room(), reached, on_the_night(view));
    return fmt::format("the {} reaches {} {} with the damper open; set the damper to hold it at {}",
                       view.room(), reached, on_the_night(view), wanted);
}

std::string loudness(const BranchTrial& trial, units::System system) {
    return fmt::format("the air would run {} ({} is the usual limit) and be heard",
                       figure(trial.speed_needed, system), figure(ducts::branch_velocity_limit, system));
}

// "stops at 67 F", or that it just misses what is wanted where the two print alike.
std::string stops(units::Temperature reached, const BranchView& view) {
    const std::string at = figure(reached, view.system), wanted = figure(view.wanted(), view.system);
    return at == wanted ? "just misses " + wanted : "stops at " + at;
}

std::string falls_short(const BranchView& view) {
    const BranchTrial& choice = view.choice();
    if (view.no_air())
        return "where it begins, the pressure is too low to drive air through it; sillflow trunk tries other "
               "taps";
    const std::string night = on_the_night(view), wanted = figure(view.wanted(), view.system);
    if (const auto& on_time = view.sizing().setting.on_time; !on_time.holds())
        return fmt::format(
            "the heater cannot hold the house {}: it would have to be on {} of the time. Were the "
            "rest of the house held, this pipe would bring the {} to {}; {} is wanted",
            night, percent(on_time.wanted), view.room(), figure(choice.reaches, view.system), wanted);
    if (choice.reaches < view.wanted() || !choice.needs)
        return fmt::format("the {} {} {}; {} is wanted", view.room(), stops(choice.reaches, view), night,
                           wanted);
    return fmt::format("the {} would reach {} {}, but at the {} of supply air it needs {}", view.room(),
                       figure(choice.reaches, view.system), night, figure(choice.needs->airflow, view.system),
                       loudness(choice, view.system));
}

// The sizes below the chosen one, and why they will not do.
std::string smaller_pipes(const BranchView& view) {
    std::string sentences;
    bool limit_told = false;
    const questions::BranchSizing& sizing = view.sizing();
    for (std::size_t i = sizing.chosen; i-- > 0;) {
        const BranchTrial& trial = sizing.trials[i];
        const std::string pipe = with_article(shape_text(trial.pipe, view.system) + " pipe");
        if (trial.reaches < view.wanted()) {
            sentences += fmt::format(". {} {}", capitalised(pipe), stops(trial.reaches, view));
        } else if (!trial.quiet) {
            sentences += limit_told ? fmt::format(". {} would be louder", capitalised(pipe))
                                    : fmt::format(". In {} {}", pipe, loudness(trial, view.system));
            limit_told = true;
        }
    }
    return sentences;
}

std::string need_words(const BranchView& view, bool with_unit = false) {
    const BranchTrial& choice = view.choice();
    if (!choice.needs)
        return fmt::format("; no airflow through it holds the {} at {}", view.room(),
                           figure(view.wanted(), view.system));
    if (view.needs_none())
        return fmt::format("; the {} needs none {}: what surrounds it keeps it warm", view.room(),
                           on_the_night(view));
    return fmt::format(
        "; {} {} ({})", who_needs(view),
        with_unit ? figure(choice.needs->airflow, view.system) : number(choice.needs->airflow, view.system),
        span<units::Airflow>(view.answer.range(questions::BranchFigure::needs), view.system));
}

}  // namespace

std::string branch_headline(const BranchView& view) {
    const BranchTrial& choice = view.choice();
    const std::string duct = duct_words(choice.pipe, view.system);
    const std::string subject = !view.sizing().to_size ? "the " + duct
                                : view.largest_fails()
                                    ? "the largest branch pipe, " + with_article(duct) + ","
                                    : with_article(duct);
    if (view.no_air())
        return fmt::format("{}: no supply air comes out of {}{}", view.room(), where_it_ends(view),
                           need_words(view, true));
    return fmt::format("{}: {} from {} to {} gives {} of supply air", view.room(), subject,
                       where_it_begins(view), where_it_ends(view), figure(choice.gives, view.system)) +
           need_words(view);
}

std::string branch_verdict(const BranchView& view) {
    if (view.blocked()) return blocked_sentence(view);
    if (view.needs_none() && questions::holds(view.answer.verdict)) return not_needed(view);
    const std::string word = verdict_word(view.answer.verdict) + ": ";
    if (!questions::holds(view.answer.verdict)) return word + falls_short(view) + ".";
    return word + reaches_sentence(view) + smaller_pipes(view) + ".";
}

std::vector<std::string> what_would_help(const BranchView& view) {
    if (view.blocked())
        return {
            "another bay, a soffit below the joists, or a flat duct; choose while drains and sisters can "
            "still move"};
    if (questions::holds(view.answer.verdict)) return {};
    const questions::BranchSizing& sizing = view.sizing();
    const BranchTrial& choice = view.choice();
    std::vector<std::string> help;
    if (!sizing.setting.on_time.holds())
        help.emplace_back(
            "the heater is too small for this night whatever the pipe: less heat loss or more heat");
    if (!choice.needs)
        help.emplace_back(
            "the air cools too far on its way: wrap the run, shorten it, or warm what it runs in");
    if (sizing.budget.rate < ducts::least_sensible_rate)
        help.emplace_back("the friction rate is too low: see there for what to change");
    if (sizing.setting.on_time.holds() && choice.gives < choice.carries)
        help.emplace_back(
            "other runs take the air first: sillflow trunk says which, where their dampers would give it "
            "back, "
            "and what another tap brings");
    if (!sizing.to_size)
        help.emplace_back(new_ducts(view).empty()
                              ? "a larger duct; give it as a new one without a shape to have it sized"
                              : "leave the new duct's shape out of the sheet, and it is sized here");
    if (!choice.quiet)
        help.emplace_back("two runs with a register each: each carries half, and neither is heard");
    else if (view.largest_fails() && !view.no_air())
        help.emplace_back("a bigger branch is not to be had: two runs, or less heat loss in the room");
    return help;
}

}  // namespace report
