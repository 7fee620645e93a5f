#include "report/assumed.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/figures.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

using house::WrittenAs;
using units::System;
namespace unit = units::unit;

// One value of a row: number and unit, to be joined or told apart.
units::Written leakage_text(double cm2_per_m2, System system) {
    if (system == System::si) return {units::decimal(cm2_per_m2, 1), "cm2 of leak per m2 of outside surface"};
    const double in2_per_100_ft2 = cm2_per_m2 * (unit::square_centimetre / unit::square_inch) *
                                   (100 * unit::square_foot / unit::square_metre);
    return {units::decimal(in2_per_100_ft2, 1), "in2 of leak per 100 ft2 of outside surface"};
}

units::Written loss_with_elevation(double per_metre, System system) {
    if (system == System::us) return {units::decimal(100 * per_metre * 304.8, 0), "% per 1,000 ft"};
    return {units::decimal(100 * per_metre * 1000, 0), "% per 1,000 m"};
}

units::Written moisture_text(double kg_per_kg, System system) {
    constexpr double grains_per_pound = 7000;
    if (system == System::us)
        return {units::decimal(grains_per_pound * kg_per_kg, 0), "grains per lb of air"};
    return {units::decimal(1000 * kg_per_kg, 1), "g per kg of air"};
}

// A guessed length is not known to the inch.
units::Written guessed_length(units::Length length, System system) {
    const units::Length one = system == System::us ? unit::foot : unit::metre;
    if (length.si() != 0 && length < 10 * one) return units::write(length, system);
    return {units::decimal(length / one, 0), system == System::us ? "ft" : "m"};
}

units::Written written(WrittenAs as, double value, System system) {
    switch (as) {
        case WrittenAs::temperature:
            return units::write(units::Temperature(value), system);
        case WrittenAs::temperature_difference:
            return units::write(units::TemperatureDifference(value), system);
        case WrittenAs::degrees:
            return {units::decimal(value, 0), "deg"};
        case WrittenAs::moisture:
            return moisture_text(value, system);
        case WrittenAs::length:
            return guessed_length(units::Length(value), system);
        case WrittenAs::pressure:
            return units::write(units::Pressure(value), system);
        case WrittenAs::u_factor:
            return units::write(units::Transmittance(value), system);
        case WrittenAs::r_value:
            return units::write(units::Resistance(value), system);
        case WrittenAs::conductivity:
            return units::write(units::Conductivity(value), system);
        case WrittenAs::percent:
            return {units::decimal(100 * value, 0), "%"};
        case WrittenAs::percent_per_1000_ft:
            return loss_with_elevation(value, system);
        case WrittenAs::percent_per_degree:
            if (system == System::us) return {units::decimal(100 * value / 1.8, 1), "% per F"};
            return {units::decimal(100 * value, 1), "% per K"};
        case WrittenAs::percent_per_tenth_inch: {
            constexpr units::Pressure us = 0.1 * unit::inch_wc, si = 25 * unit::pascal;
            if (system == System::us) return {units::decimal(100 * value * us.si(), 1), "% per 0.1 in.wc"};
            return {units::decimal(100 * value * si.si(), 1), "% per 25 Pa"};
        }
        case WrittenAs::times:
            return {units::decimal(value, 2), "times"};
        case WrittenAs::whole_number:
            return {units::decimal(value, 0), ""};
        case WrittenAs::leakage:
            return leakage_text(value, system);
        case WrittenAs::air_changes:
            return {units::decimal(value / unit::per_hour.si(), 1), "air changes an hour"};
    }
    return {};
}

// A length changes its unit at a metre: then each end says its own.
std::string range_of(const house::DefaultRow& row, System system) {
    units::Written middle = written(row.written, row.value, system);
    const units::Written low = written(row.written, row.low, system),
                         high = written(row.written, row.high, system);
    if (low.unit == middle.unit && high.unit == middle.unit)
        return fmt::format("({} to {})", with_commas(low.number), with_commas(high.number));
    return fmt::format("({} to {})", low.text(), high.text());
}

std::string assumed_line(const questions::Weight& weight, const std::string& effect, System system) {
    const house::DefaultRow& row = house::default_row(weight.assumption.id);
    return fmt::format("{}, {}: {}", row.what, default_text(row, system), effect);
}

}  // namespace

std::string default_text(const house::DefaultRow& row, System system) {
    units::Written middle = written(row.written, row.value, system);
    middle.number = with_commas(middle.number);
    return unbroken(middle.text()) + " " + range_of(row, system);
}

std::optional<questions::Range> moved(const questions::Weight& weight, std::size_t figure, double value) {
    questions::Range range{value, value, value};
    for (const auto& end : {weight.at_low, weight.at_high}) {
        if (!end || figure >= end->figures.size()) continue;
        range.low = std::min(range.low, end->figures[figure]);
        range.high = std::max(range.high, end->figures[figure]);
    }
    constexpr double noticeable = 0.02;
    if (range.high - range.value <= noticeable * std::abs(value) &&
        range.value - range.low <= noticeable * std::abs(value))
        return std::nullopt;
    return range;
}

Note assumed_note(const questions::Weighed& weighed, const EffectOf& effect_of, System system, bool all) {
    struct Line {
        const questions::Weight* weight;
        Effect effect;
    };
    std::vector<Line> lines;
    std::size_t smaller = 0;
    for (const questions::Weight& weight : weighed.weights) {
        Effect effect = effect_of(weight);
        const bool matters = !effect.words.empty();
        if (!matters && !all) ++smaller;
        if (!matters && all) effect.words.emplace_back("hardly matters");
        if (matters || all) lines.push_back({&weight, std::move(effect)});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.effect.size > b.effect.size; });
    constexpr std::size_t most = 5;  // an answer fits a screen: those that move it most
    if (!all && lines.size() > most) {
        smaller += lines.size() - most;
        lines.resize(most);
    }
    Note note{"assumed", {}};
    for (const Line& line : lines)
        note.lines.push_back(assumed_line(*line.weight, listed(line.effect.words), system));
    if (smaller > 0)
        note.lines.push_back(
            fmt::format("{} smaller guess{}: --all-assumptions", smaller, smaller == 1 ? "" : "es"));
    note.lines.emplace_back("the method itself is good to about 10 %");
    return note;
}

}  // namespace report
