// What the rooms gain on the design day of summer: a sentence each, and their surfaces with the largest gain
// first.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/room_words.hpp"

namespace report {
namespace {

const house::Summer& summer(const LoadsView& view) { return *view.planned().house.summer; }
const loads::HouseHeatGain& gain_of(const LoadsView& view) { return view.planned().gains->gain; }
questions::Range range(const LoadsView& view, std::size_t figure) {
    return view.answer.weighed.ranges[figure];
}

// "more than the 90 of heating" says which of the two sizes the room's duct.
std::string governing(const LoadsView& view, std::size_t room) {
    const std::string heating = number(view.planned().air[room].airflow, view.system);
    return view.planned().cooling_governs(room)
               ? "more than the " + heating + " of heating: summer sizes its duct"
               : "heating needs " + heating + " and sizes its duct";
}

std::string air_sentence(const LoadsView& view, std::size_t room) {
    const units::Airflow airflow = view.planned().gains->air[room].airflow;
    if (airflow.si() <= 0) return "It needs no cool air";
    return fmt::format("Cooling needs at least {} of supply air at the coil's {}; {}",
                       figure(airflow, view.system), figure(summer(view).supply, view.system),
                       governing(view, room));
}

std::string sentence(const LoadsView& view, std::size_t room) {
    const loads::RoomHeatGain& gain = gain_of(view).rooms[room];
    if (prints_as_nothing(gain.total, view.system))
        return fmt::format("{} gains nothing to speak of at {} on a {} day.",
                           capitalised(the_room(view.planned().house, gain.room)),
                           figure(summer(view).indoor, view.system),
                           figure(summer(view).outdoor, view.system));
    return fmt::format("{} gains {} ({}) at {} on a {} day. {}.",
                       capitalised(the_room(view.planned().house, gain.room)),
                       figure(gain.total, view.system),
                       span<units::Power>(range(view, view.answer.gain_figure(room)), view.system),
                       figure(summer(view).indoor, view.system), figure(summer(view).outdoor, view.system),
                       air_sentence(view, room));
}

struct Line {
    units::Power gain;
    Row row;
};

std::vector<Line> lines_of(const LoadsView& view, const loads::RoomHeatGain& room) {
    const units::System system = view.system;
    std::vector<Line> lines;
    const auto add = [&](units::Power gain, std::vector<std::string> cells) {
        cells.push_back(number(gain, system));
        if (!prints_as_nothing(gain, system)) lines.push_back({gain, {false, std::move(cells)}});
    };
    for (const loads::SurfaceGain& s : room.surfaces)
        add(s.gain, {s.surface, s.beyond_name, number(s.area, system), number(s.factor, system)});
    add(room.leakage_gain,
        {outdoor_air_words(view.planned().house) + ", " + figure(room.leakage, system), "outdoors", "", ""});
    add(room.internal, {"people, lights and kitchen", "", "", ""});
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.gain > b.gain; });
    return lines;
}

}  // namespace

std::string summer_sentence(const LoadsView& view) {
    const loads::HouseHeatGain& gain = gain_of(view);
    return fmt::format("On a {} day it gains {} ({}), and {} ({}) more as moisture.",
                       figure(summer(view).outdoor, view.system), figure(gain.sensible, view.system),
                       span<units::Power>(range(view, view.answer.house_gain_figure()), view.system),
                       number(gain.latent, view.system),
                       span<units::Power>(range(view, view.answer.moisture_figure()), view.system));
}

Table room_gains(const LoadsView& view, std::size_t room) {
    const loads::RoomHeatGain& gain = gain_of(view).rooms[room];
    const units::System system = view.system;
    Table table;
    table.title = sentence(view, room);
    table.columns = {{"surface", Align::left},
                     {"from", Align::left},
                     {"area, " + units::write(units::Area(), system).unit, Align::decimal},
                     {"gains, " + units::write(units::HeatFlux(), system).unit, Align::decimal},
                     {"gains, " + units::write(units::Power(), system).unit, Align::right}};
    for (Line& line : lines_of(view, gain)) table.rows.push_back(std::move(line.row));
    table.rows.push_back({false, {"together", "", "", "", number(gain.total, system)}});
    return table;
}

// What the blower moves at its cooling speed beside what the whole house asks for.
std::string cooling_air(const LoadsView& view) {
    const units::Airflow needs = view.planned().gains->of_house.airflow, moves = summer(view).airflow;
    const std::string asks =
        fmt::format("all rooms together ask for {} of supply air at the coil's {}",
                    figure(needs, view.system), figure(summer(view).supply, view.system));
    if (moves.si() <= 0)
        return asks +
               "; the sheet does not say what the blower moves at its cooling speed (airflow under "
               "[cooling])";
    return fmt::format("{}; at its cooling speed the blower moves {}, {}", asks, figure(moves, view.system),
                       moves >= needs ? "which is enough" : "which is too little on such a day");
}

Note summer_note(const LoadsView& view) {
    const loads::HouseHeatGain& gain = gain_of(view);
    std::string sum;
    const auto add = [&](const std::string& name, units::Power part) {
        sum += fmt::format("{}{} {}", sum.empty() ? "" : " + ", name, number(part, view.system));
    };
    for (const loads::RoomHeatGain& room : gain.rooms)
        add(view.planned().house.room(room.room).name, room.total);
    if (view.planned().house.other_rooms) add("rooms not described", gain.other_rooms);
    const std::string moisture = fmt::format(
        "moisture: leaking air {} + people and kitchen {} = {}; it loads the coil and asks for no "
        "more air",
        number(gain.leakage.latent, view.system), number(gain.internal.latent, view.system),
        figure(gain.latent, view.system));
    return {"in summer",
            {fmt::format("{} = {}, with sun, at the hour the whole house gains most; a room with much glass "
                         "on one side gains more at an hour of its own",
                         sum, figure(gain.sensible, view.system)),
             moisture, cooling_air(view)}};
}

}  // namespace report
