#include <fmt/format.h>

#include "report/branch_parts.hpp"
#include "report/closing_sum.hpp"
#include "report/counting_units.hpp"
#include "report/figures.hpp"
#include "report/room_words.hpp"

namespace report {
namespace {

std::string loss_sentence(const BranchView& view) {
    const questions::BranchSetting& setting = view.sizing().setting;
    const loads::RoomHeatLoss& room = setting.loss.rooms[static_cast<std::size_t>(setting.asked.room.index)];
    std::string parts;
    for (const LossPart& part : loss_parts(view.answer.house, room, view.system))
        parts +=
            fmt::format("{}{} {}", parts.empty() ? "" : ", ", part.words, number(part.loss, view.system));
    std::string sentence =
        fmt::format("at {} inside and {} outside the {} loses {}: {}", figure(room.inside, view.system),
                    figure(view.night(), view.system), view.room(), figure(room.total, view.system), parts);
    if (setting.outlets_in_room > 1)
        sentence += fmt::format(". Of its {} outlets each is asked for an equal part, {}",
                                setting.outlets_in_room, figure(setting.asked.total, view.system));
    return sentence;
}

// Of a room that its neighbours keep warm.
std::string gain_sentence(const BranchView& view) {
    const questions::BranchSetting& setting = view.sizing().setting;
    const loads::RoomHeatLoss& room = setting.loss.rooms[static_cast<std::size_t>(setting.asked.room.index)];
    std::string parts;
    for (const LossPart& part : loss_parts(view.answer.house, room, view.system))
        parts +=
            fmt::format("{}{} {}", parts.empty() ? "" : ", ", part.words, number(-part.loss, view.system));
    return fmt::format("at {} inside and {} outside the {} gains {}{}{}", figure(room.inside, view.system),
                       figure(view.night(), view.system), view.room(), figure(-room.total, view.system),
                       parts.empty() ? "" : ": ", parts);
}

// Heat carried by a unit of airflow, for each degree it is warmer than the room.
double heat_per_degree(const BranchView& view, units::Temperature arrival) {
    const ducts::Supply& supply = view.sizing().setting.supply;
    const units::Density density = loads::air_at(arrival, supply.pressure).density;
    return heat_per_airflow(view.system) * count(density, view.system) *
           count(supply.specific_heat, view.system);
}

Worked need_sum(const BranchView& view, int more) {
    const units::System system = view.system;
    const questions::BranchSetting& setting = view.sizing().setting;
    const units::Temperature arrival = view.choice().needs->arrival;
    const double loss = count(setting.asked.total, system);
    const Worked heat = more == 0 ? rounded(loss, number(setting.asked.total, system))
                                  : rounded(loss, with_commas(units::decimal(loss, more - 1)));
    const int degree_digits = (system == units::System::us ? 0 : 1) + more;
    const Worked warmer = printed(count(arrival, system), degree_digits) -
                          printed(count(setting.asked.inside, system), degree_digits);
    return heat / (printed(setting.supply.on_time, 2 + more) *
                   printed_to(heat_per_degree(view, arrival), 3 + more) * warmer);
}

std::string need_sentence(const BranchView& view) {
    const units::System system = view.system;
    const std::string_view unit = unit_of(units::Airflow(), system).name;
    const std::string sum = closing_sum(
        [&](int more) { return need_sum(view, more); },
        [&](double value) { return fmt::format("{} {}", with_commas(units::decimal(value, 0)), unit); });
    return fmt::format(
        "The heater is on {} of the time on that night: {} of supply air while it runs. The middle "
        "figure is the {} that 1 {} of it carries for each {} it is warmer than the room",
        percent(view.sizing().setting.supply.on_time), sum, unit_of(units::Power(), system).name, unit,
        unit_of(units::TemperatureDifference(), system).name);
}

}  // namespace

Note why_it_needs(const BranchView& view) {
    if (view.needs_none()) return {"why none", {gain_sentence(view)}};
    if (!view.choice().needs)
        return {"why none", {loss_sentence(view) + ". The air arrives too cold to bring that"}};
    Note note{"why " + figure(view.choice().needs->airflow, view.system), {loss_sentence(view)}};
    if (view.choice().needs->flow > units::MassFlow()) note.lines.push_back(need_sentence(view));
    return note;
}

}  // namespace report
