// The places side by side: a column only where it tells rows apart by more than its accuracy; what it leaves
// out is said once, below.
#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "registers/outlet_pattern.hpp"
#include "report/figures.hpp"
#include "report/place_parts.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using questions::PlaceFigures;
using questions::WindowSide;

constexpr double airflow_accuracy = 0.1;  // of what an outlet gets, and of what a room needs
constexpr double arrival_accuracy = 0.1;  // of the arrival over the room
constexpr units::TemperatureDifference told_apart = 1.0 * units::unit::kelvin;  // of a room, over ten bands
constexpr const char* same_word = "same";
constexpr units::Length measured_run = 1 * units::unit::foot;

struct Rows {
    const PlaceView& view;
    std::vector<std::size_t> rows = view.rows();

    const PlaceFigures& at(std::size_t row) const { return *view.place(rows[row]).figures; }
    // The chosen place, or the first: what the others are held against.
    const PlaceFigures& against() const { return view.answer.chosen ? *view.answer.choice().figures : at(0); }
    questions::Range spread(const std::function<double(const PlaceFigures&)>& of) const {
        questions::Range range{of(at(0)), of(at(0)), of(at(0))};
        for (std::size_t row = 1; row < rows.size(); ++row) {
            range.low = std::min(range.low, of(at(row)));
            range.high = std::max(range.high, of(at(row)));
        }
        return range;
    }
    bool differ(const std::function<std::string(const PlaceFigures&)>& words) const {
        return std::any_of(rows.begin(), rows.end(), [&](std::size_t index) {
            return words(*view.place(index).figures) != words(at(0));
        });
    }
};

double needed(const PlaceFigures& f) { return f.trial.needs ? f.trial.needs->airflow.si() : 0; }
double supplied(const PlaceFigures& f) { return f.trial.gives.si(); }
double arrives(const PlaceFigures& f) { return f.trial.arrives.si(); }
double reaches(const PlaceFigures& f) { return f.trial.reaches.si(); }

bool beyond(questions::Range range, double accuracy) {
    return range.high - range.low > accuracy * range.high;
}

bool tells_airflow(const Rows& rows) {
    return beyond(rows.spread(supplied), airflow_accuracy) || beyond(rows.spread(needed), airflow_accuracy);
}
bool tells_arrival(const Rows& rows) {
    const questions::Range range = rows.spread(arrives);
    return range.high - range.low > arrival_accuracy * (range.high - rows.spread(reaches).low);
}
bool tells_reaches(const Rows& rows) {
    const questions::Range range = rows.spread(reaches);
    return range.high - range.low > told_apart.si();
}
bool tells_run(const Rows& rows) {
    const questions::Range length = rows.spread([](const PlaceFigures& f) { return f.run.si(); });
    return length.high - length.low > measured_run.si() ||
           rows.differ([](const PlaceFigures& f) { return std::to_string(f.turns); });
}

// "same" where a figure is not told apart from that of the row the others are held against.
template <class Q>
std::string unless_same(Q quantity, Q against, Q accuracy, units::System system) {
    return quantity != against && abs(quantity - against) <= accuracy ? same_word : number(quantity, system);
}

std::string supply_cell(const PlaceFigures& f, const Rows& rows) {
    const units::Airflow against = rows.against().trial.gives;
    return unless_same(f.trial.gives, against, airflow_accuracy * against, rows.view.system);
}

std::string need_cell(const PlaceFigures& f, const Rows& rows) {
    if (!f.trial.needs) return "none holds it";
    const auto& against = rows.against().trial.needs;
    if (!against) return number(f.trial.needs->airflow, rows.view.system);
    return unless_same(f.trial.needs->airflow, against->airflow, airflow_accuracy * against->airflow,
                       rows.view.system);
}

std::string arrives_cell(const PlaceFigures& f, const Rows& rows) {
    const questions::BranchTrial& against = rows.against().trial;
    const auto apart = arrival_accuracy * abs(against.arrives - against.reaches);
    if (f.trial.arrives != against.arrives && abs(f.trial.arrives - against.arrives) <= apart)
        return same_word;
    return number(f.trial.arrives, rows.view.system);
}

std::string reaches_cell(const PlaceFigures& f, const Rows& rows) {
    const units::Temperature against = rows.against().trial.reaches;
    if (f.trial.reaches != against && abs(f.trial.reaches - against) <= told_apart) return same_word;
    return number(f.trial.reaches, rows.view.system);
}

std::string run_cell(const PlaceFigures& f, units::System system) {
    return fmt::format("{}, {}", to_the_foot(f.run, system),
                       unbroken(counted(static_cast<std::size_t>(f.turns), "turn")));
}

std::string cold_air_cell(const PlaceFigures& f, const PlaceView& view) {
    if (f.washes) return "lifted";
    return figure(view.felt_most()->speed, view.system);
}

bool tells_cold_air(const Rows& rows) {
    const questions::PlaceAnswer& answer = rows.view.answer;
    const bool felt =
        answer.window_side != WindowSide::indifferent || answer.window_side_before != WindowSide::indifferent;
    return rows.view.felt_most() && felt &&
           rows.differ([](const PlaceFigures& f) { return f.washes ? "lifted" : ""; });
}

const house::PlanWindow* window_over(const PlaceView& view, const registers::Location& location) {
    if (location.where != registers::Where::under_window || !view.room().plan) return nullptr;
    for (const house::PlanWindow& window : view.room().plan->windows)
        if (window.name == location.name) return &window;
    return nullptr;
}

std::string from_high_up_words(const registers::FromHighUp& from_high_up) {
    switch (from_high_up.warm_air) {
        case registers::WarmAir::mixes:
            return "mixes";
        case registers::WarmAir::comes_down:
            return "comes down";
        case registers::WarmAir::stays_up:
            break;
    }
    return "stays up";
}

std::string blown_up_words(const questions::Place& place, const PlaceView& view) {
    const units::Length reach = place.figures->warm.throw_length;
    const house::PlanWindow* window = window_over(view, place.location);
    if (window && window->sill && reach < *window->sill) return "short of the sill";
    if (reach >= view.room().ceiling) return "to the ceiling";
    return "up " + to_the_foot(reach, view.system);
}

std::string warm_air_cell(const questions::Place& place, const PlaceView& view) {
    const questions::WarmAirThere& warm = place.figures->warm;
    if (warm.from_high_up) return from_high_up_words(*warm.from_high_up);
    if (registers::usual_pattern(place.location.mount).blows == registers::Blows::up)
        return blown_up_words(place, view);
    return to_the_foot(warm.throw_length, view.system) + " over the floor";
}

bool tells_warm_air(const Rows& rows) {
    const std::string first = warm_air_cell(rows.view.place(rows.rows[0]), rows.view);
    return std::any_of(rows.rows.begin(), rows.rows.end(), [&](std::size_t index) {
        return warm_air_cell(rows.view.place(index), rows.view) != first;
    });
}

std::string sound_cell(const PlaceFigures& f) { return std::string(registers::in_words(f.sound)); }

bool tells_sound(const Rows& rows) {
    return rows.differ(sound_cell) &&
           beyond(rows.spread([](const PlaceFigures& f) { return f.face_speed.si(); }),
                  registers::sound_accuracy);
}

using Cell = std::function<std::string(const questions::Place&)>;

// What stands in the table, and what is the same for every row.
struct Shown {
    Column column;
    Cell cell;
    bool tells = true;
};

std::string unit_of_airflow(units::System system) { return units::write(units::Airflow(), system).unit; }

std::vector<Shown> air_columns(const Rows& rows) {
    const units::System system = rows.view.system;
    const bool airflow = tells_airflow(rows);
    const std::string degrees = units::write(units::Temperature(), system).unit;
    return {{{"supply air, " + unit_of_airflow(system), Align::decimal},
             [&rows](const questions::Place& p) { return supply_cell(*p.figures, rows); },
             airflow},
            {{"needs, " + unit_of_airflow(system), Align::decimal},
             [&rows](const questions::Place& p) { return need_cell(*p.figures, rows); },
             airflow},
            {{"arrives at, " + degrees, Align::decimal},
             [&rows](const questions::Place& p) { return arrives_cell(*p.figures, rows); },
             tells_arrival(rows)},
            {{"room reaches, " + degrees, Align::decimal},
             [&rows](const questions::Place& p) { return reaches_cell(*p.figures, rows); },
             tells_reaches(rows)},
            {{"run", Align::left},
             [=](const questions::Place& p) { return run_cell(*p.figures, system); },
             tells_run(rows)}};
}

std::vector<Shown> room_columns(const Rows& rows) {
    const PlaceView& view = rows.view;
    const std::string stands = view.felt_most() ? stands_at(*view.felt_most(), view.system) : std::string();
    return {{{"cold air " + stands, Align::left},
             [&view](const questions::Place& p) { return cold_air_cell(*p.figures, view); },
             tells_cold_air(rows)},
            {{"warm air", Align::left},
             [&view](const questions::Place& p) { return warm_air_cell(p, view); },
             tells_warm_air(rows)},
            {{"sound", Align::left},
             [](const questions::Place& p) { return sound_cell(*p.figures); },
             tells_sound(rows)}};
}

}  // namespace

Table place_table(const PlaceView& view) {
    const Rows rows{view};
    Table table;
    if (rows.rows.empty()) return table;
    std::vector<Shown> shown = air_columns(rows);
    for (Shown& column : room_columns(rows)) shown.push_back(std::move(column));
    std::erase_if(shown, [](const Shown& column) { return !column.tells; });
    table.columns = {{"", Align::right}, {"where", Align::left}};
    for (const Shown& column : shown) table.columns.push_back(column.column);
    for (const std::size_t index : rows.rows) {
        const questions::Place& place = view.place(index);
        Row row{view.is_chosen(index),
                {fmt::format("{}", view.number_of(index)), where_words(view, place.location)}};
        for (const Shown& column : shown) row.cells.push_back(column.cell(place));
        table.rows.push_back(std::move(row));
    }
    return table;
}

Note told_apart_note(const PlaceView& view, const Table& table) {
    const auto is_same = [](const std::string& cell) { return cell == same_word; };
    const bool any = std::any_of(table.rows.begin(), table.rows.end(), [&](const Row& row) {
        return std::any_of(row.cells.begin(), row.cells.end(), is_same);
    });
    if (!any) return {};
    return {"same",
            {fmt::format("as {}, as far as these figures are good: within {} of its air and of what the "
                         "air is warmer than the room, {} of the room",
                         view.answer.chosen ? "at the place chosen" : "in the first row",
                         percent(airflow_accuracy), figure(told_apart, view.system))}};
}

Note same_everywhere_note(const PlaceView& view) {
    const Rows rows{view};
    if (rows.rows.empty()) return {};
    const units::System system = view.system;
    const std::string first_arrives = figure(rows.at(0).trial.arrives, system);
    std::vector<std::string> same;
    if (!tells_airflow(rows)) {
        const auto range = [&](const auto& of) {
            const questions::Range spread = rows.spread(of);
            const std::string low = number(units::Airflow(spread.low), system),
                              high = number(units::Airflow(spread.high), system);
            return low == high ? low : low + " to " + high;
        };
        const std::string need = rows.spread(needed).low > 0
                                     ? ", " + range(needed) + " needed"
                                     : std::string(", which holds the room at no airflow");
        same.push_back(range(supplied) + " " + unit_of_airflow(system) + " of supply air" + need);
    }
    if (!tells_arrival(rows)) same.push_back("it arrives at " + first_arrives);
    if (!tells_reaches(rows)) same.push_back("the room reaches " + figure(rows.at(0).trial.reaches, system));
    if (!tells_run(rows)) same.push_back("the run is " + run_cell(rows.at(0), system));
    if (!tells_warm_air(rows)) same.push_back("warm air: " + warm_air_cell(view.place(rows.rows[0]), view));
    if (!tells_sound(rows)) same.push_back("sound of the register: " + sound_cell(rows.at(0)));
    if (same.empty()) return {};
    std::string line;
    for (const std::string& part : same) line += (line.empty() ? "" : "; ") + part;
    return {rows.rows.size() == 1 ? "there" : "at every place", {line}};
}

}  // namespace report
