#include <fmt/format.h>

#include "report/assumed.hpp"
#include "report/cautions.hpp"
#include "report/figures.hpp"
#include "report/pages.hpp"
#include "report/place_parts.hpp"

namespace report {
namespace {

constexpr std::size_t supply_air = 0, need = 1;  // of the figures that are weighed

// What a default does to the air and the need of the chosen place, and whether another would be chosen.
Effect effect_of(const questions::Weight& weight, const PlaceView& view) {
    Effect effect;
    const auto figure_moves = [&](std::size_t which, const char* words) {
        if (which >= view.answer.weighed.ranges.size()) return;
        const double value = view.answer.weighed.ranges[which].value;
        const auto range = moved(weight, which, value);
        if (!range) return;
        effect.words.push_back(fmt::format("{} {} {}", words, span<units::Airflow>(*range, view.system),
                                           units::write(units::Airflow(), view.system).unit));
        if (value > 0) effect.size += (range->high - range->low) / value;
    };
    figure_moves(supply_air, "the place chosen gets");
    figure_moves(need, "it needs");
    if (weight.at_low && weight.at_high && weight.at_low->choice != weight.at_high->choice) {
        effect.words.emplace_back("the place itself may be another");
        effect.size += 1;
    }
    if (!weight.at_low) effect.words.emplace_back("no answer at its low end");
    if (!weight.at_high) effect.words.emplace_back("no answer at its high end");
    return effect;
}

}  // namespace

Page place_page(const questions::PlaceAnswer& answer, PageOptions options) {
    const PlaceView view{answer, options.system};
    Page page;
    page.headline = place_headline(view);
    page.verdict = place_verdict(view);
    const Table table = place_table(view);
    if (!view.rows().empty()) page.tables.push_back(table);
    Note assumed;
    if (answer.chosen)
        assumed = assumed_note(
            answer.weighed, [&](const questions::Weight& weight) { return effect_of(weight, view); },
            options.system, options.all_assumptions);
    for (Note& note :
         std::vector<Note>{told_apart_note(view, table), same_everywhere_note(view), ruled_out_note(view),
                           not_possible_note(view), now_note(view), on_the_way_note(view), framing_note(view),
                           outside_wall_note(view), wet_feet_note(view), glass_note(view), summer_note(view),
                           carry_over_note(view), trust_note(view), assumed})
        if (!note.lines.empty()) page.notes.push_back(std::move(note));
    page.cautions = cautions(answer.house);
    return page;
}

}  // namespace report
