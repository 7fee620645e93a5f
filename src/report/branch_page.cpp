#include <fmt/format.h>

#include <charconv>

#include "report/assumed.hpp"
#include "report/branch_parts.hpp"
#include "report/cautions.hpp"
#include "report/figures.hpp"
#include "report/pages.hpp"
#include "report/room_words.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::BranchFigure;

constexpr std::size_t at(BranchFigure figure) { return static_cast<std::size_t>(figure); }

Note heater_note(const BranchView& view) {
    const loads::OnTime& on_time = view.sizing().setting.on_time;
    if (on_time.holds()) return {};
    return {"on-time",
            {fmt::format(
                "the heater would have to be on {} of the time on a {} night: it cannot hold the house at "
                "{}. Here it counts as always on, and every room falls behind",
                percent(on_time.wanted), figure(view.night(), view.system),
                figure(view.answer.house.site.winter_indoor, view.system))}};
}

Note cooler_note(const BranchView& view) {
    if (!view.answer.cooler) return {};
    const questions::AtHouseTemperature& cooler = *view.answer.cooler;
    const std::string pipe = shape_text(cooler.choice.pipe, view.system) + " pipe";
    const std::string needs = cooler.choice.needs
                                  ? fmt::format("the {} needs {} of supply air", view.room(),
                                                figure(cooler.choice.needs->airflow, view.system))
                                  : fmt::format("no airflow holds the {} either", view.room());
    std::string does = cooler.choice.holds() ? fmt::format("; {} does it", with_article(pipe))
                                             : fmt::format("; {} does not do it either", with_article(pipe));
    if (cooler.electric.si() > 0)
        does += fmt::format(". With {} electric heater beside it the room reaches {} too",
                            with_article(heater_size(cooler.electric)), figure(view.wanted(), view.system));
    return {"at " + figure(cooler.temperature, view.system), {needs + does}};
}

Note before_note(const BranchView& view) {
    if (!view.answer.loss_before) return {};
    const questions::BranchSetting& setting = view.sizing().setting;
    const auto now = setting.loss.rooms[static_cast<std::size_t>(setting.asked.room.index)].total;
    return {"before work",
            {fmt::format("the {} lost {}; after it {}", view.room(),
                         figure(*view.answer.loss_before, view.system), figure(now, view.system))}};
}

std::string chosen_at(const questions::Asked& end, const BranchView& view, std::string_view which) {
    if (!view.sizing().to_size || end.choice.empty()) return {};
    if (end.choice == questions::no_pipe_holds)
        return view.choice().holds() ? fmt::format("no stock pipe does it at the {} end", which) : "";
    double metres = 0;
    std::from_chars(end.choice.data(), end.choice.data() + end.choice.size(), metres);
    const std::string there = shape_text(house::Round{units::Length(metres)}, view.system);
    if (view.choice().holds() && there == shape_text(view.choice().pipe, view.system)) return {};
    return fmt::format("{} pipe would be chosen at the {} end", with_article(there), which);
}

// What a default does to the need, to what the pipe gives, and to the choice.
Effect effect_of(const questions::Weight& weight, const BranchView& view) {
    Effect effect;
    const auto say = [&](std::string text) {
        if (!text.empty()) effect.words.push_back(std::move(text));
    };
    const auto figure_moves = [&](BranchFigure which, std::string_view verb) {
        const double value = view.answer.range(which).value;
        const auto range = moved(weight, at(which), value);
        if (!range) return;
        say(fmt::format("{} {} {}", verb, span<units::Airflow>(*range, view.system),
                        units::write(units::Airflow(), view.system).unit));
        if (value > 0) effect.size += (range->high - range->low) / value;
    };
    if (view.choice().needs) figure_moves(BranchFigure::needs, "needs");
    figure_moves(BranchFigure::gives, "gives");
    if (weight.at_low) say(chosen_at(*weight.at_low, view, "low"));
    if (weight.at_high) say(chosen_at(*weight.at_high, view, "high"));
    if (!weight.at_low) say("no airflow holds the room at its low end");
    if (!weight.at_high) say("no airflow holds the room at its high end");
    return effect;
}

Note partial_note(const BranchView& view) {
    if (!view.answer.house.lacks_a_storey()) return {};
    return {"whole house", {rooms_forgotten(view.answer.house)}};
}

Note which_air(const BranchView& view) {
    return {"which air",
            {fmt::format("every {} here is supply air as it leaves the register, unless return air is "
                         "said; exhaust air plays no part. What the room reaches is with every other room "
                         "held; sillflow trunk tells all rooms at once",
                         units::write(units::Airflow(), view.system).unit)}};
}

// A duct sized for winter may be too small for summer: the reader must not take the one for the other.
Note summer_note(const BranchView& view) {
    if (!view.answer.house.summer) return {};
    Note note{"in summer",
              {"this pipe is sized for heating; sillflow loads says how much air cooling asks for, and where "
               "summer sizes the duct"}};
    if (view.answer.in_summer) note.lines.push_back(sweat_sentence(view));
    return note;
}

}  // namespace

Page branch_page(const questions::BranchAnswer& answer, PageOptions options) {
    const BranchView view{answer, options.system};
    Page page;
    page.headline = branch_headline(view);
    page.verdict = branch_verdict(view);
    page.tables.push_back(branch_table(view));
    const Note assumed = assumed_note(
        answer.weighed, [&](const questions::Weight& weight) { return effect_of(weight, view); },
        options.system, options.all_assumptions);
    for (Note& note : std::vector<Note>{{"would help", what_would_help(view)},
                                        why_it_needs(view),
                                        heater_note(view),
                                        partial_note(view),
                                        cooler_note(view),
                                        before_note(view),
                                        friction_rate_note(view),
                                        ducts_note(view),
                                        stack_note(view),
                                        bay_note(view),
                                        wrap_note(view),
                                        way_back_note(view),
                                        return_note(view),
                                        close_fittings_note(view),
                                        summer_note(view),
                                        which_air(view),
                                        assumed,
                                        questions::holds(answer.verdict) ? parts_to_buy(view) : Note{}})
        if (!note.lines.empty()) page.notes.push_back(std::move(note));
    page.cautions = cautions(answer.house);
    return page;
}

}  // namespace report
