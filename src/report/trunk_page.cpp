#include <fmt/format.h>

#include "report/assumed.hpp"
#include "report/figures.hpp"
#include "report/pages.hpp"
#include "report/trunk_parts.hpp"

namespace report {
namespace {

using questions::TrunkFigure;

constexpr std::size_t at(TrunkFigure figure) { return static_cast<std::size_t>(figure); }

// What a default does to the new outlet's air and to the blower's.
Effect effect_of(const questions::Weight& weight, const TrunkView& view) {
    Effect effect;
    const auto figure_moves = [&](TrunkFigure which, const char* words) {
        const double value = view.answer.range(which).value;
        const auto range = moved(weight, at(which), value);
        if (!range) return;
        effect.words.push_back(fmt::format("{} {} {}", words, span<units::Airflow>(*range, view.system),
                                           units::write(units::Airflow(), view.system).unit));
        if (value > 0) effect.size += (range->high - range->low) / value;
    };
    figure_moves(TrunkFigure::airflow, "the new outlet gets");
    figure_moves(TrunkFigure::blower, "the blower moves");
    const double reaches = view.answer.range(TrunkFigure::reaches).value;
    const auto degrees = [&](const std::optional<questions::Asked>& end) {
        return end ? end->figures[at(TrunkFigure::reaches)] - reaches : 0.0;
    };
    const double low = std::min({0.0, degrees(weight.at_low), degrees(weight.at_high)});
    const double high = std::max({0.0, degrees(weight.at_low), degrees(weight.at_high)});
    if (high - low > 0.6) {
        effect.words.push_back(fmt::format("the {} reaches {} to {}", view.room(),
                                           number(units::Temperature(reaches + low), view.system),
                                           figure(units::Temperature(reaches + high), view.system)));
        effect.size += (high - low) / 20;
    }
    if (!weight.at_low) effect.words.emplace_back("no answer at its low end");
    if (!weight.at_high) effect.words.emplace_back("no answer at its high end");
    return effect;
}

Note range_note(const TrunkView& view) {
    const questions::Range air = view.answer.range(TrunkFigure::airflow);
    const questions::Range reaches = view.answer.range(TrunkFigure::reaches);
    return {
        "how sure",
        {fmt::format("with all guesses together the new outlet gets {} {} and the {} reaches {} to {}",
                     span<units::Airflow>(air, view.system), units::write(units::Airflow(), view.system).unit,
                     view.room(), number(units::Temperature(reaches.low), view.system),
                     figure(units::Temperature(reaches.high), view.system))}};
}

Note size_note(const TrunkView& view) {
    if (!view.answer.sized_here) return {};
    return {"pipe",
            {fmt::format("the new run is taken as {}, which sillflow branch sizes; another size: write shape "
                         "under its [[duct]]",
                         with_article(shape_text(view.answer.size, view.system)))}};
}

Note which_air(const TrunkView& view) {
    return {"which air",
            {fmt::format("every {} here is supply air as it leaves the registers; the blower's is return air",
                         units::write(units::Airflow(), view.system).unit)}};
}

}  // namespace

Page trunk_page(const questions::TrunkAnswer& answer, PageOptions options) {
    const TrunkView view{answer, options.system};
    Page page;
    page.headline = trunk_headline(view);
    page.verdict = trunk_verdict(view);
    page.tables.push_back(rooms_table(view));
    const Note assumed = assumed_note(
        answer.weighed, [&](const questions::Weight& weight) { return effect_of(weight, view); },
        options.system, options.all_assumptions);
    for (Note& note : std::vector<Note>{
             ducts_part(view), blower_part(view), heater_part(view), held_by_dampers(view), taps_note(view),
             old_outlet_note(view), door_note(view), in_summer_note(view), readings_note(view),
             size_note(view), range_note(view), how_it_was_solved(view), which_air(view), assumed})
        if (!note.lines.empty()) page.notes.push_back(std::move(note));
    page.cautions = cautions(answer.house(), flowing_air(view));
    return page;
}

}  // namespace report
