#include <algorithm>
#include <cmath>
#include <functional>

#include "report/branch_parts.hpp"
#include "report/figures.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::BranchTrial;
using Cell = std::function<units::Written(const BranchTrial&)>;

struct TrialColumn {
    Column column;
    Cell cell;
    bool always = false;     // also where it does not tell the rows apart
    bool gives_way = false;  // to the column of the bay, where there is one: paper is narrow
};

// Room to spare is told to the eighth of an inch, never more than there is.
std::string passes_words(units::Length spare, units::System system) {
    if (!routes::passes(spare)) return "does not pass";
    const units::Length step =
        system == units::System::us ? units::unit::inch / 8 : 5 * units::unit::millimetre;
    const units::Length whole = std::floor(spare / step + 1e-6) * step;
    return whole.si() <= 0 ? "just passes" : figure(whole, system);
}

std::vector<TrialColumn> trial_columns(const BranchView& view) {
    const units::System system = view.system;
    const auto needs = [system](const BranchTrial& trial) {
        return trial.needs ? units::write(trial.needs->airflow, system) : units::Written{"not possible", ""};
    };
    const auto speed = [system](const BranchTrial& trial) {
        return trial.needs ? units::write(trial.speed_needed, system) : units::Written{"..", ""};
    };
    return {
        {{"pipe", Align::left},
         [system](const BranchTrial& t) {
             return units::Written{shape_text(t.pipe, system), ""};
         },
         true},
        {{"supply it gives", Align::decimal},
         [system](const BranchTrial& t) { return units::write(t.gives, system); },
         true},
        {{"needs", Align::decimal}, needs, true},
        {{"arrives at", Align::decimal},
         [system](const BranchTrial& t) { return units::write(t.arrives, system); },
         false,
         true},
        {{view.room() + " reaches", Align::decimal},
         [system](const BranchTrial& t) { return units::write(t.reaches, system); },
         true},
        {{"speed at its need", Align::decimal}, speed},
        {{"sound", Align::left},
         [](const BranchTrial& t) {
             return units::Written{t.quiet ? "quiet" : "heard", ""};
         }},
    };
}

// A column's cells; the unit stands in the first row that has one, and not again.
std::vector<std::string> cells_of(const Cell& cell, const std::vector<BranchTrial>& trials) {
    std::vector<std::string> cells;
    bool said = false;
    for (const BranchTrial& trial : trials) {
        units::Written written = cell(trial);
        written.number = with_commas(written.number);
        cells.push_back(said ? written.number : written.text());
        said = said || !written.unit.empty();
    }
    return cells;
}

bool tells_apart(const Cell& cell, const std::vector<BranchTrial>& trials) {
    return trials.size() == 1 || std::any_of(trials.begin(), trials.end(), [&](const BranchTrial& trial) {
               return cell(trial).number != cell(trials.front()).number;
           });
}

}  // namespace

Table branch_table(const BranchView& view) {
    const std::vector<BranchTrial>& trials = view.sizing().trials;
    Table table;
    table.rows.resize(trials.size());
    for (const TrialColumn& column : trial_columns(view)) {
        if (column.gives_way && view.bay()) continue;
        if (!column.always && !tells_apart(column.cell, trials)) continue;
        table.columns.push_back(column.column);
        const std::vector<std::string> cells = cells_of(column.cell, trials);
        for (std::size_t i = 0; i < trials.size(); ++i) table.rows[i].cells.push_back(cells[i]);
    }
    if (const auto& passage = view.answer.passage) {
        table.columns.push_back({"room left in " + view.bay()->name, Align::left});
        for (std::size_t i = 0; i < trials.size(); ++i) {
            // A size that another bay stops has no room there, whatever this one leaves it.
            const bool stopped_elsewhere = !passage->passes(i) && routes::passes(passage->spares[i]);
            table.rows[i].cells.push_back(stopped_elsewhere ? "stopped in another bay"
                                                            : passes_words(passage->spares[i], view.system));
        }
    }
    const bool recommends = view.sizing().to_size && questions::holds(view.answer.verdict);
    if (recommends) table.rows[view.sizing().chosen].recommended = true;
    return table;
}

Note stack_note(const BranchView& view) {
    Note note{"stack", {}};
    for (const BranchTrial& trial : view.sizing().trials)
        if (!std::holds_alternative<house::Round>(trial.pipe) && view.sizing().to_size)
            note.lines.push_back(shape_text(trial.pipe, view.system) +
                                 " carries as much at the same friction as " +
                                 with_article(as_round_text(trial.pipe, view.system)) + " round pipe");
    return note;
}

}  // namespace report
