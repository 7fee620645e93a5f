// One room: a sentence, and its surfaces with the largest loss first.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/room_words.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

constexpr double hardly = 0.005;  // of a loss: not worth a word that it changes

std::string before_the_work(const LoadsView& view, std::size_t room) {
    if (!view.answer.found || room >= view.answer.found->loss.rooms.size()) return {};
    const units::Power before = view.answer.found->loss.rooms[room].total;
    const units::Power now = view.planned().loss.rooms[room].total;
    if (abs(before - now) <= hardly * abs(now)) return {};
    return "; before the work " + number(before, view.system);
}

std::string air_sentence(const LoadsView& view, std::size_t room) {
    const units::Airflow airflow = view.planned().air[room].airflow;
    const loads::RoomHeatLoss& loss = view.planned().loss.rooms[room];
    if (loss.total.si() <= 0) return "It needs no supply air";
    if (!view.planned().air[room].enough)
        return "The supply air is no warmer than that, so no amount of it heats the room";
    return fmt::format("It needs at least {} of supply air at the plenum's {}, more by what the way loses",
                       figure(airflow, view.system), figure(view.planned().supply, view.system));
}

std::string sentence(const LoadsView& view, std::size_t room) {
    const loads::RoomHeatLoss& loss = view.planned().loss.rooms[room];
    return fmt::format(
        "{} loses {} ({}) at {}{}. {}.", capitalised(the_room(view.planned().house, loss.room)),
        figure(loss.total, view.system), span<units::Power>(view.answer.weighed.ranges[room], view.system),
        figure(loss.inside, view.system), before_the_work(view, room), air_sentence(view, room));
}

struct Line {
    units::Power loss;
    Row row;
};

std::vector<Line> lines_of(const LoadsView& view, const loads::RoomHeatLoss& room) {
    const units::System system = view.system;
    std::vector<Line> lines;
    for (const loads::SurfaceLoss& s : room.surfaces)
        lines.push_back({s.loss,
                         {false,
                          {s.surface, number(s.area, system), number(s.u, system),
                           figure(s.beyond, system) + " " + s.beyond_name, number(s.loss, system)}}});
    lines.push_back({room.leakage_loss,
                     {false,
                      {"air leakage, " + figure(room.leakage, system), "", "",
                       figure(view.night(), system) + " outdoors", number(room.leakage_loss, system)}}});
    std::erase_if(lines, [&](const Line& line) { return prints_as_nothing(line.loss, system); });
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.loss > b.loss; });
    return lines;
}

}  // namespace

Table room_losses(const LoadsView& view, std::size_t room) {
    const loads::RoomHeatLoss& loss = view.planned().loss.rooms[room];
    const units::System system = view.system;
    const units::Written u = units::write(units::Transmittance(), system);
    Table table;
    table.title = sentence(view, room);
    table.columns = {{"surface", Align::left},
                     {"area, " + units::write(units::Area(), system).unit, Align::decimal},
                     {"U, " + u.unit, Align::decimal},
                     {"towards", Align::left},
                     {"loses, " + units::write(units::Power(), system).unit, Align::right}};
    for (Line& line : lines_of(view, loss)) table.rows.push_back(std::move(line.row));
    table.rows.push_back({false, {"together", "", "", "", number(loss.total, system)}});
    return table;
}

}  // namespace report
