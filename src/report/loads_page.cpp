#include <fmt/format.h>

#include <algorithm>

#include "report/assumed.hpp"
#include "report/cautions.hpp"
#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/pages.hpp"

namespace report {
namespace {

std::string headline(const LoadsView& view) {
    const questions::HouseLoads& planned = view.planned();
    return fmt::format("{} loses {} on a {} night ({}); the heater is on {} of the time", planned.house.name,
                       figure(planned.loss.total, view.system), figure(view.night(), view.system),
                       span<units::Power>(view.house_range(), view.system), percent(planned.on_time.share));
}

// What the work changes, and whether the heater can follow.
std::string second_line(const LoadsView& view) {
    const questions::HouseLoads& planned = view.planned();
    std::string line = planned.on_time.holds() ? "The heater can hold the house"
                                               : "The heater cannot hold the house on that night";
    if (!view.answer.found) return line + ".";
    const std::string before = figure(view.answer.found->loss.total, view.system);
    if (before == figure(planned.loss.total, view.system))
        return line + "; the work does not change what it loses.";
    return line + "; before the work it lost " + before + ".";
}

Effect effect_of(const LoadsView& view, const questions::Weight& weight) {
    Effect effect;
    const auto add = [&](const char* what, std::size_t figure) {
        const auto range = moved(weight, figure, view.answer.weighed.ranges[figure].value);
        if (!range) return;
        effect.words.push_back(fmt::format("{} {} {}", what, span<units::Power>(*range, view.system),
                                           units::write(units::Power(), view.system).unit));
        effect.size = std::max(effect.size, range->high - range->low);
    };
    add("the house loses", view.answer.house_loss_figure());
    if (!view.planned().gains) return effect;
    add("the house gains", view.answer.house_gain_figure());
    add("its moisture is", view.answer.moisture_figure());
    return effect;
}

}  // namespace

Page loads_page(const questions::LoadsAnswer& answer, PageOptions options) {
    const LoadsView view{answer, options.system};
    Page page;
    page.headline = headline(view);
    page.verdict = second_line(view);
    for (std::size_t i = 0; i < answer.planned.loss.rooms.size(); ++i)
        page.tables.push_back(room_losses(view, i));
    if (view.planned().gains) {
        page.verdict += " " + summer_sentence(view);
        for (std::size_t i = 0; i < answer.planned.loss.rooms.size(); ++i)
            page.tables.push_back(room_gains(view, i));
    }
    page.notes = house_notes(view);
    page.notes.push_back(assumed_note(
        answer.weighed, [&](const questions::Weight& weight) { return effect_of(view, weight); },
        options.system, options.all_assumptions));
    page.cautions = cautions(answer.planned.house);
    return page;
}

}  // namespace report
