#include <fmt/format.h>

#include <algorithm>

#include "report/assumed.hpp"
#include "report/cautions.hpp"
#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/pages.hpp"
#include "report/room_words.hpp"

namespace report {
namespace {

std::string headline(const LoadsView& view) {
    const questions::HouseLoads& planned = view.planned();
    if (view.answer.only)
        return loss_sentence(view, view.only(), " on a " + figure(view.night(), view.system) + " night");
    return fmt::format("{} loses {} on a {} night ({}); the heater is on {} of the time", planned.house.name,
                       figure(planned.loss.total, view.system), figure(view.night(), view.system),
                       span<units::Power>(view.house_range(), view.system), percent(planned.on_time.share));
}

// What the work changes, and whether the heater can follow.
std::string second_line(const LoadsView& view) {
    const questions::HouseLoads& planned = view.planned();
    const bool described = std::holds_alternative<units::Power>(planned.house.heater.capacity);
    std::string line = !described                ? "No heater is described, so its on-time is a guess"
                       : planned.on_time.holds() ? "The heater can hold the house"
                                                 : "The heater cannot hold the house on that night";
    if (!view.answer.found) return line + ".";
    const std::string before = figure(view.answer.found->loss.total, view.system);
    if (before == figure(planned.loss.total, view.system))
        return line + "; the work does not change what it loses.";
    return line + "; before the work it lost " + before + ".";
}

// On the loss of the house, or of the only room asked for.
Effect effect_of(const LoadsView& view, const questions::Weight& weight) {
    Effect effect;
    const auto add = [&](const std::string& what, std::size_t figure) {
        const auto range = moved(weight, figure, view.answer.weighed.ranges[figure].value);
        if (!range) return;
        effect.words.push_back(fmt::format("{} {} {}", what, span<units::Power>(*range, view.system),
                                           units::write(units::Power(), view.system).unit));
        effect.size = std::max(effect.size, range->high - range->low);
    };
    const std::string who =
        view.answer.only ? the_room(view.planned().house, *view.answer.only) : "the house";
    add(who + " loses", view.answer.only ? view.only() : view.answer.house_loss_figure());
    if (!view.planned().gains) return effect;
    add(who + " gains",
        view.answer.only ? view.answer.gain_figure(view.only()) : view.answer.house_gain_figure());
    if (!view.answer.only) add("its moisture is", view.answer.moisture_figure());
    return effect;
}

}  // namespace

Page loads_page(const questions::LoadsAnswer& answer, PageOptions options) {
    const LoadsView view{answer, options.system};
    Page page;
    page.headline = headline(view);
    page.verdict = answer.only ? below_the_loss(view, view.only()) : second_line(view);
    for (std::size_t i = 0; i < answer.planned.loss.rooms.size(); ++i)
        if (view.tells(i)) page.tables.push_back(room_losses(view, i));
    if (view.planned().gains) {
        if (!answer.only) page.verdict += " " + summer_sentence(view);
        for (std::size_t i = 0; i < answer.planned.loss.rooms.size(); ++i)
            if (view.tells(i)) page.tables.push_back(room_gains(view, i));
    }
    for (const auto& part : {warmth_notes(view), house_notes(view), limits_notes(view)})
        page.notes.insert(page.notes.end(), part.begin(), part.end());
    page.notes.push_back(assumed_note(
        answer.weighed, [&](const questions::Weight& weight) { return effect_of(view, weight); },
        options.system, options.all_assumptions));
    page.cautions = cautions(answer.planned.house);
    return page;
}

}  // namespace report
