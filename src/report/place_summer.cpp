// The places while the coil is on, apart from winter: their air, what becomes of it, and which cools best.
#include <fmt/format.h>

#include <algorithm>

#include "report/figures.hpp"
#include "report/place_parts.hpp"

namespace report {
namespace {

using questions::CooledPlace;
using registers::CooledAir;

const char* words_of(CooledAir becomes) {
    switch (becomes) {
        case CooledAir::over_the_floor:
            return "lies cold on the floor";
        case CooledAir::falls_back:
            return "falls back before it reaches the ceiling";
        case CooledAir::to_the_ceiling:
            return "reaches the ceiling";
        case CooledAir::spreads_above:
            break;
    }
    return "spreads under the ceiling and sinks: best";
}

std::string numbers_with(const PlaceView& view, CooledAir becomes) {
    std::vector<std::string> numbers;
    for (const std::size_t index : view.rows())
        if (const auto& cooled = view.place(index).figures->cooled; cooled && cooled->air.becomes == becomes)
            numbers.push_back(fmt::format("{}", view.number_of(index)));
    return listed(numbers);
}

// How high it comes, from the lowest to the highest.
std::string reached(const PlaceView& view) {
    std::optional<units::Length> low, high;
    for (const std::size_t index : view.rows()) {
        const auto& cooled = view.place(index).figures->cooled;
        if (!cooled || cooled->air.becomes != CooledAir::falls_back) continue;
        const units::Length reaches = *cooled->air.reaches;
        low = low ? std::min(*low, reaches) : reaches;
        high = high ? std::max(*high, reaches) : reaches;
    }
    const std::string from = to_the_foot(*low, view.system), to = to_the_foot(*high, view.system);
    return from == to ? from : from + " to " + to;
}

std::string becomes_line(const PlaceView& view, CooledAir becomes) {
    const std::string numbers = numbers_with(view, becomes);
    if (numbers.empty()) return {};
    const std::string height = becomes == CooledAir::falls_back ? ", " + reached(view) + " up" : "";
    return fmt::format("the cooled air of {} {}{}", numbers, words_of(becomes), height);
}

std::string air_line(const PlaceView& view) {
    std::vector<units::Airflow> all;
    for (const std::size_t index : view.rows())
        if (const auto& cooled = view.place(index).figures->cooled) all.push_back(cooled->gives);
    if (all.empty()) return {};
    const auto [low, high] = std::minmax_element(all.begin(), all.end());
    const std::string least = number(*low, view.system), most = figure(*high, view.system);
    return fmt::format(
        "while the coil is on, the places bring {} of cooled air as it leaves the coil; this "
        "outlet needs {} on the design day",
        number(*low, view.system) == number(*high, view.system) ? most : least + " to " + most,
        figure(view.answer.summer->needs, view.system));
}

std::string choice_line(const PlaceView& view) {
    const auto& chosen = view.answer.summer->chosen;
    if (!chosen) return "no place brings enough cooled air";
    if (chosen == view.answer.chosen) return "for cooling alone the same place is the best";
    return fmt::format("for cooling alone {} would be the best, {}; the choice above is winter's",
                       view.number_of(*chosen), where_words(view, view.place(*chosen).location));
}

}  // namespace

Note summer_note(const PlaceView& view) {
    if (!view.answer.summer || view.rows().empty()) return {};
    Note note{"in summer", {air_line(view)}};
    for (const CooledAir becomes : {CooledAir::spreads_above, CooledAir::to_the_ceiling,
                                    CooledAir::falls_back, CooledAir::over_the_floor})
        if (std::string line = becomes_line(view, becomes); !line.empty())
            note.lines.push_back(std::move(line));
    note.lines.push_back(choice_line(view));
    return note;
}

}  // namespace report
