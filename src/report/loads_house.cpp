// The whole house: what of it the rooms are, how long the heater runs, what was assumed.
#include <fmt/format.h>

#include "report/closing_sum.hpp"
#include "report/counting_units.hpp"
#include "report/figures.hpp"
#include "report/loads_parts.hpp"
#include "report/room_words.hpp"

namespace report {
namespace {

std::string other_rooms_sentence(const LoadsView& view) {
    const house::House& house = view.planned().house;
    const std::string loss = figure(view.planned().loss.other_rooms, view.system);
    if (house.other_rooms->heat_loss) return "the rooms not described lose " + loss + ", as the sheet says";
    return "the rooms not described lose " + loss +
           ", judged by the outside surface of the described rooms that the work leaves alone; their air is "
           "not "
           "worked out here";
}

std::string house_sum(const LoadsView& view) {
    const loads::HouseHeatLoss& loss = view.planned().loss;
    std::string sum;
    const auto add = [&](const std::string& name, units::Power part) {
        sum += fmt::format("{}{} {}", sum.empty() ? "" : " + ", name, number(part, view.system));
    };
    for (const loads::RoomHeatLoss& room : loss.rooms)
        add(view.planned().house.room(room.room).name, out_of_the_house(room));
    if (view.planned().house.other_rooms) add("rooms not described", loss.other_rooms);
    return fmt::format(
        "{} = {}; heat that goes from one room to another stays in the house and is not in this sum", sum,
        figure(loss.total, view.system));
}

std::string on_time_sentence(const LoadsView& view) {
    const units::System system = view.system;
    const questions::HouseLoads& planned = view.planned();
    const auto sum = [&](int more) {
        const double loss = count(planned.loss.total, system), output = count(planned.on_time.output, system);
        const Worked lost = more == 0 ? rounded(loss, number(planned.loss.total, system))
                                      : rounded(loss, with_commas(units::decimal(loss, more - 1)));
        const Worked heat = more == 0 ? rounded(output, number(planned.on_time.output, system))
                                      : rounded(output, with_commas(units::decimal(output, more - 1)));
        return lost * printed(1 + planned.house.heater.duct_loss, 2 + more) / heat;
    };
    const auto result = [](double value) { return units::decimal(value, 2); };
    const bool assumed = std::holds_alternative<double>(planned.house.heater.capacity);
    const double share = loads::share_of_plate(planned.house.heater, planned.house.site);
    const std::string_view takes = planned.house.heater.output_lost_per_kelvin > 0 ? "cold" : "elevation";
    std::string sentence = fmt::format(
        "the house's loss with what the ducts lose outside the rooms, by the heater's output{}: {} of the "
        "time",
        assumed ? " (which here follows from an assumed on-time)" : "", closing_sum(sum, result));
    if (!assumed && share < 1)
        sentence += fmt::format("; the {} leaves {} of the output on its plate", takes, percent(share));
    if (!planned.on_time.holds()) sentence += ": the heater cannot hold the house on that night";
    return sentence;
}

std::string blower_sentence(const LoadsView& view) {
    const ducts::DesignBlower& blower = view.planned().blower;
    return fmt::format(
        "the blower moves {} of return air at {}; the heater warms it by {}, to {} of supply air",
        figure(blower.airflow, view.system), figure(view.planned().house.site.winter_indoor, view.system),
        figure(view.planned().supply - view.planned().house.site.winter_indoor, view.system),
        figure(view.planned().supply, view.system));
}

// "attic 12 F, worked out from its own heat balance".
Note spaces_note(const LoadsView& view) {
    Note note{"unheated", {}};
    for (const loads::SpaceBalance& balance : view.planned().loss.spaces.balances)
        note.lines.push_back(fmt::format("{} {}, worked out from its own heat balance",
                                         house::word(balance.space),
                                         figure(balance.temperature, view.system)));
    return note;
}

std::string sharing_sentence(const loads::LeakageShares& shares) {
    if (shares.by_volume)
        return "air leakage is shared by the rooms' volume, the same air changes everywhere";
    if (!shares.less_upstairs) return "air leakage is shared by outside surface, as in leaky houses";
    return "air leakage is shared by outside surface, less upstairs: warm air leaves there";
}

std::string ventilation_sentence(const LoadsView& view) {
    const house::Ventilation& runs = view.planned().house.ventilation;
    const loads::Infiltration& leaks = view.planned().loss.infiltration;
    std::string sentence = fmt::format(
        "with leaks of {}, supply of {} and exhaust of {} the house heats {} of outdoor air: the larger of "
        "unbalanced ventilation and leaks with half of it, and the balanced part",
        figure(leaks.airflow, view.system), figure(runs.supply, view.system),
        figure(runs.exhaust, view.system), figure(leaks.air.to_heat(), view.system));
    if (runs.recovery > 0) sentence += ", of which " + percent(runs.recovery) + " is recovered";
    return sentence;
}

Note outdoor_air_note(const LoadsView& view) {
    const house::Ventilation& ventilation = view.planned().house.ventilation;
    Note note{"outdoor air", {}};
    if (ventilation.runs()) note.lines.push_back(ventilation_sentence(view));
    note.lines.push_back(sharing_sentence(view.planned().loss.infiltration.shares));
    if (ventilation.fans_at_times > 0) note.lines.push_back("exhaust fans that run at times are in no load");
    return note;
}

}  // namespace

std::vector<Note> house_notes(const LoadsView& view) {
    std::vector<Note> notes;
    if (view.planned().house.other_rooms && !view.answer.only)
        notes.push_back({"other rooms", {other_rooms_sentence(view)}});
    const Note spaces = spaces_note(view);
    if (!spaces.lines.empty()) notes.push_back(spaces);
    notes.push_back(outdoor_air_note(view));
    notes.push_back({"whole house", {house_sum(view)}});
    if (view.planned().house.lacks_a_storey())
        notes.back().lines.push_back(rooms_forgotten(view.planned().house));
    notes.push_back({"on-time", {on_time_sentence(view)}});
    notes.push_back({"air", {blower_sentence(view)}});
    if (view.planned().gains) notes.push_back(summer_note(view));
    return notes;
}

}  // namespace report
