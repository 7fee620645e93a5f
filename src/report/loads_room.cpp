// One room: a sentence, and its surfaces with the largest loss first; where the work alters it, before and
// after.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/room_words.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

constexpr double hardly = 0.005;  // of a loss: not worth a word that it changes

// The same room as found, where its surfaces are the same by name, so that each can be set beside itself.
const loads::RoomHeatLoss* as_found(const LoadsView& view, std::size_t room) {
    if (!view.answer.found || room >= view.answer.found->loss.rooms.size()) return nullptr;
    if (!view.planned().house.rooms[room].altered) return nullptr;
    const loads::RoomHeatLoss& found = view.answer.found->loss.rooms[room];
    const auto& planned = view.planned().loss.rooms[room].surfaces;
    const bool same = std::equal(found.surfaces.begin(), found.surfaces.end(), planned.begin(), planned.end(),
                                 [](const auto& a, const auto& b) { return a.surface == b.surface; });
    return same ? &found : nullptr;
}

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

struct Line {
    units::Power before, loss;  // before: as the loss where there is none
    std::vector<std::string> cells;
};

// A slab loses by the length of its edge, not by its area.
std::vector<std::string> surface_cells(const loads::SurfaceLoss& s, units::System system) {
    const std::string towards = figure(s.beyond, system) + " " + s.beyond_name;
    if (!s.on_slab) return {s.surface, number(s.area, system), number(s.u, system), towards};
    return {fmt::format("{}: {} of slab edge, {}", s.surface, figure(s.edge, system),
                        figure(s.edge_loss, system)),
            "", "", towards};
}

std::vector<Line> lines_of(const LoadsView& view, const loads::RoomHeatLoss& room,
                           const loads::RoomHeatLoss& before) {
    const units::System system = view.system;
    std::vector<Line> lines;
    for (std::size_t i = 0; i < room.surfaces.size(); ++i) {
        const loads::SurfaceLoss& s = room.surfaces[i];
        lines.push_back({before.surfaces[i].loss, s.loss, surface_cells(s, system)});
    }
    lines.push_back({before.leakage_loss,
                     room.leakage_loss,
                     {outdoor_air_words(view.planned().house) + ", " + figure(room.leakage, system), "", "",
                      figure(view.night(), system) + " outdoors"}});
    std::erase_if(lines, [&](const Line& line) {
        return prints_as_nothing(line.loss, system) && prints_as_nothing(line.before, system);
    });
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.loss > b.loss; });
    lines.push_back({before.total, room.total, {"together", "", "", ""}});
    return lines;
}

}  // namespace

std::string loss_sentence(const LoadsView& view, std::size_t room, const std::string& when) {
    const loads::RoomHeatLoss& loss = view.planned().loss.rooms[room];
    if (prints_as_nothing(loss.total, view.system))
        return fmt::format("{} loses nothing to speak of at {}{}{}",
                           the_room(view.planned().house, loss.room), figure(loss.inside, view.system), when,
                           before_the_work(view, room));
    if (loss.total.si() < 0)
        return fmt::format(
            "{} loses nothing at {}{}: the warmer rooms around it bring it {} more than it gives "
            "away{}",
            the_room(view.planned().house, loss.room), figure(loss.inside, view.system), when,
            figure(-loss.total, view.system), before_the_work(view, room));
    return fmt::format("{} loses {} ({}) at {}{}{}", the_room(view.planned().house, loss.room),
                       figure(loss.total, view.system),
                       span<units::Power>(view.answer.weighed.ranges[room], view.system),
                       figure(loss.inside, view.system), when, before_the_work(view, room));
}

std::string below_the_loss(const LoadsView& view, std::size_t room) {
    const std::string coldest = coldest_sentence(view, room);
    return air_sentence(view, room) + "." + (coldest.empty() ? "" : " " + coldest + ".");
}

Table room_losses(const LoadsView& view, std::size_t room) {
    const loads::RoomHeatLoss& loss = view.planned().loss.rooms[room];
    const loads::RoomHeatLoss* before = as_found(view, room);
    const units::System system = view.system;
    const std::string power = units::write(units::Power(), system).unit;
    Table table;
    if (!view.answer.only)
        table.title = capitalised(loss_sentence(view, room, {})) + ". " + below_the_loss(view, room);
    table.columns = {{"surface", Align::left},
                     {"area, " + units::write(units::Area(), system).unit, Align::decimal},
                     {"U, " + units::write(units::Transmittance(), system).unit, Align::decimal},
                     {"towards", Align::left}};
    if (before) table.columns.push_back({"before, " + power, Align::right});
    table.columns.push_back({(before ? "after, " : "loses, ") + power, Align::right});
    for (Line& line : lines_of(view, loss, before ? *before : loss)) {
        if (before) line.cells.push_back(number(line.before, system));
        line.cells.push_back(number(line.loss, system));
        table.rows.push_back({false, std::move(line.cells)});
    }
    return table;
}

}  // namespace report
