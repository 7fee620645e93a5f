// How warm a room is: its coldest inside surface, and what it costs to have it warmer than the house.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/room_words.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

constexpr units::Temperature freezing = units::unit::celsius(0);

std::string needs(const questions::RoomAir& air, units::System system, std::string_view of_what) {
    if (!air.enough) return "no amount of supply air does it";
    if (air.airflow.si() <= 0) return "needs no supply air";
    return fmt::format("needs at least {}{}", figure(air.airflow, system), of_what);
}

std::string warmer_sentence(const LoadsView& view, std::size_t room) {
    const units::System system = view.system;
    const questions::HouseLoads& planned = view.planned();
    const questions::RoomAsTheHouse& there = *planned.as_the_house[room];
    const loads::RoomHeatLoss& wanted = planned.loss.rooms[room];
    std::string sentence = fmt::format(
        "{} loses {} and {}; at {}, as wanted, it loses {} and {}", the_room(planned.house, wanted.room),
        figure(there.loss, system), needs(there.air, system, " of supply air"), figure(wanted.inside, system),
        figure(wanted.total, system), needs(planned.air[room], system, ""));
    if (there.electric.si() > 0)
        sentence +=
            fmt::format(". With the air for {}, {} electric heater makes up the rest",
                        figure(there.inside, system), with_article(unbroken(heater_size(there.electric))));
    return sentence;
}

// Where the work makes the coldest surface warmer or colder.
std::string coldest_before(const LoadsView& view, std::size_t room) {
    if (!view.answer.found || room >= view.answer.found->coldest.size()) return {};
    const auto& before = view.answer.found->coldest[room];
    if (!before) return {};
    const std::string then = figure(before->temperature, view.system);
    if (then == figure(view.planned().coldest[room]->temperature, view.system)) return {};
    const bool same = before->surface.surface == view.planned().coldest[room]->surface.surface;
    return fmt::format("; before the work {} was at {} and {} above {}",
                       same ? "it" : "the " + before->surface.surface, then,
                       before->temperature < freezing ? "frosted" : "sweated", percent(before->sweats_above));
}

}  // namespace

std::string coldest_sentence(const LoadsView& view, std::size_t room) {
    const auto& coldest = view.planned().coldest[room];
    if (!coldest) return {};
    return fmt::format(
        "Its coldest inside surface is the {}, about {} on that night: it {} once the air is above {} "
        "humidity{}",
        coldest->surface.surface, figure(coldest->temperature, view.system),
        coldest->temperature < freezing ? "frosts" : "sweats", percent(coldest->sweats_above),
        coldest_before(view, room));
}

std::vector<Note> warmth_notes(const LoadsView& view) {
    const questions::HouseLoads& planned = view.planned();
    Note warmer{"at " + figure(planned.house.site.winter_indoor, view.system), {}};
    bool any_coldest = false;
    for (std::size_t i = 0; i < planned.coldest.size(); ++i) {
        if (!view.tells(i)) continue;
        any_coldest = any_coldest || planned.coldest[i];
        if (planned.as_the_house[i]) warmer.lines.push_back(warmer_sentence(view, i));
    }
    std::vector<Note> notes;
    if (!warmer.lines.empty()) notes.push_back(std::move(warmer));
    if (any_coldest)
        notes.push_back({"surfaces",
                         {"the temperature of a surface is its mean: the edge of a pane, a stud, a corner or "
                          "a wall behind furniture is colder and sweats sooner"}});
    return notes;
}

}  // namespace report
