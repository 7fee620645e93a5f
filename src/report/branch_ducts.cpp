// The ducts that are there, as the plan with the new branch uses them.
#include <fmt/format.h>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

std::string too_small(const ducts::JudgedDuct& duct, const BranchView& view) {
    const std::string loses = figure(duct.friction, view.system);
    const std::string allowed = number(view.sizing().budget.rate, view.system);
    const std::string too_much = fmt::format("it loses {}, the plan allows {}", loses, allowed);
    if (!duct.too_fast) return "is too small: " + too_much;
    const std::string fast =
        fmt::format("{} in it, {} is the usual limit", figure(duct.velocity, view.system),
                    number(ducts::velocity_limit(duct.part).usual, view.system));
    const bool told_apart = loses != figure(view.sizing().budget.rate, view.system);
    return "is too small: " + fast + (duct.loses_too_much && told_apart ? "; " + too_much : "");
}

std::string name_of(int duct, const BranchView& view) {
    return "the " + view.answer.house.ducts[static_cast<std::size_t>(duct)].name;
}

std::string judged_sentence(const ducts::JudgedDuct& duct, const BranchView& view) {
    const std::string name = name_of(duct.duct, view);
    if (duct.size() == ducts::Size::too_small) return name + " " + too_small(duct, view);
    return name + " is larger than needed" +
           (duct.would_do ? ": " + with_article(shape_text(*duct.would_do, view.system)) + " would do" : "");
}

const questions::LeftoverDuct* leftover(int duct, const BranchView& view) {
    for (const questions::LeftoverDuct& one : view.answer.leftovers)
        if (one.duct == duct) return &one;
    return nullptr;
}

// Keep, sleeve or blank.
std::string leftover_sentence(const questions::LeftoverDuct& old, const BranchView& view) {
    const std::string name = name_of(old.duct, view);
    if (old.advice == questions::Advice::blank)
        return name + " leads nowhere: blank it off where it starts, with a sealed metal cap";
    const units::System system = view.system;
    const house::Shape& shape = *view.answer.house.ducts[static_cast<std::size_t>(old.duct)].shape;
    const std::string sleeve = shape_text(old.sleeve, system);
    const std::string now = fmt::format(
        "{}, {}, is much larger than needed ({} would do): its air crawls at {}, "
        "loses {} on the way while the heater is on and comes out at {}",
        name, shape_text(shape, system), with_article(sleeve), figure(old.speed, system),
        figure(old.as_it_is.lost, system), figure(old.as_it_is.arrives, system));
    if (old.advice == questions::Advice::keep)
        return now + ". Keep it: a smaller pipe inside it would bring the air hardly warmer";
    return fmt::format(
        "{}. Sleeve it, if you can get at it: {} pipe run through it loses {} and its air comes out at {}",
        now, with_article(sleeve), figure(old.sleeved.lost, system), figure(old.sleeved.arrives, system));
}

}  // namespace

Note ducts_note(const BranchView& view) {
    const bool plan = view.sizing().budget.rate.si() > 0;  // else every duct is too small for it
    if (!plan || view.answer.judged.empty()) return {};
    Note note{"ducts there", {}};
    for (const ducts::JudgedDuct& duct : view.answer.judged)
        if (duct.size() != ducts::Size::fair && !leftover(duct.duct, view))
            note.lines.push_back(judged_sentence(duct, view));
    for (const questions::LeftoverDuct& old : view.answer.leftovers)
        note.lines.push_back(leftover_sentence(old, view));
    if (note.lines.size() < view.answer.judged.size())
        note.lines.emplace_back(note.lines.empty()
                                    ? "all that the sheet describes are of fair size for this plan"
                                    : "the others are of fair size for this plan");
    return note;
}

}  // namespace report
