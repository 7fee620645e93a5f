#include <fmt/format.h>

#include "ducts/crowded_fittings.hpp"
#include "ducts/section.hpp"
#include "report/branch_parts.hpp"
#include "report/closing_sum.hpp"
#include "report/counting_units.hpp"
#include "report/figures.hpp"

namespace report {
namespace {

std::string_view known_by(ducts::AirflowBasis basis) {
    switch (basis) {
        case ducts::AirflowBasis::measured:
            return "as measured";
        case ducts::AirflowBasis::makers_table:
            return "by the maker's table";
        case ducts::AirflowBasis::temperature_rise:
            break;
    }
    return "by the temperature rise";
}

std::string_view static_known_by(const BranchView& view) {
    const house::Blower& blower = view.answer.house.blower;
    if (!blower.points.empty() && !blower.static_measured) return {};
    return blower.static_measured ? " (as measured)" : " (nameplate, or as usual)";
}

// Effective lengths are sums of guesses: whole feet, tenths of a metre.
std::string effective(units::Length length, units::System system) {
    return with_commas(units::decimal(count(length, system), system == units::System::us ? 0 : 1));
}

std::string available_sentence(const BranchView& view) {
    const units::System system = view.system;
    const ducts::FrictionRateBudget& budget = view.sizing().budget;
    const ducts::DesignBlower& blower = view.sizing().setting.blower;
    std::vector<std::string> takers;
    for (const ducts::PressureLoss& part : budget.taken) takers.push_back(part.name);
    const auto sum = [&](int more) {
        const int digits = (system == units::System::us ? 3 : 0) + more;
        Worked left = printed(count(budget.external_static, system), digits);
        for (const ducts::PressureLoss& part : budget.taken)
            left = left - printed(count(part.loss, system), digits);
        return left;
    };
    const auto result = [&](double value) {
        return figure(units::Pressure(value / unit_of(units::Pressure(), system).per_si), system);
    };
    return fmt::format("available static pressure: the blower's {}{}, at {} of return air ({}), less {}: {}",
                       figure(budget.external_static, system), static_known_by(view),
                       figure(blower.airflow, system), known_by(blower.basis), listed(takers),
                       closing_sum(sum, result));
}

std::string rate_sentence(const BranchView& view) {
    const units::System system = view.system;
    const ducts::FrictionRateBudget& budget = view.sizing().budget;
    const std::string lengths =
        fmt::format("total effective length, fittings counted as pipe: {} {} (longest supply {}, return {})",
                    effective(budget.total_effective_length, system), unit_of(units::Length(), system).name,
                    effective(budget.supply.total(), system), effective(budget.return_side.total(), system));
    if (budget.rate.si() <= 0) return lengths;
    const auto sum = [&](int more) {
        const bool us = system == units::System::us;
        const Worked available = printed(count(budget.available, system), (us ? 3 : 0) + more);
        const Worked length = printed(count(budget.total_effective_length, system), (us ? 0 : 1) + more);
        return us ? available / length * given(100, "100") : available / length;
    };
    const auto result = [&](double value) {
        return figure(units::FrictionRate(value / unit_of(units::FrictionRate(), system).per_si), system);
    };
    return lengths + "; " + closing_sum(sum, result);
}

std::string advice(const BranchView& view) {
    const units::FrictionRate rate = view.sizing().budget.rate;
    const std::string sensible = fmt::format("{} to {}", number(ducts::least_sensible_rate, view.system),
                                             figure(ducts::most_sensible_rate, view.system));
    if (rate.si() <= 0)
        return "the blower has nothing left for the ducts: a filter that loses less, a larger return, or a "
               "higher "
               "blower speed come before any branch";
    if (rate < ducts::least_sensible_rate)
        return fmt::format(
            "lower than is sensible ({}): shorten or straighten the longest way, lose less in filter, "
            "coil and return, or raise the blower's speed",
            sensible);
    if (rate > ducts::most_sensible_rate)
        return fmt::format(
            "higher than is sensible ({}): measure the static pressure; with that much, slow the "
            "blower or let dampers take the rest",
            sensible);
    return {};
}

// Air too hot or too cool for the heat exchanger: the nameplate's limits are the maker's.
std::string beyond_the_rise(const BranchView& view) {
    const house::Heater& heater = view.answer.house.heater;
    const units::TemperatureDifference rise = view.sizing().setting.blower.rise;
    constexpr double rounding = 1.02;
    const bool beyond = rise > rounding * heater.most_rise || rounding * rise < heater.least_rise;
    if (!beyond || !std::holds_alternative<units::Power>(heater.capacity)) return {};
    return fmt::format(
        "the heater's temperature rise comes to {}; the nameplate's, or the usual one, is {} to {}: "
        "check airflow and output, and have it put right before anything is added",
        figure(rise, view.system), number(heater.least_rise, view.system),
        figure(heater.most_rise, view.system));
}

}  // namespace

Note friction_rate_note(const BranchView& view) {
    Note note{"friction rate", {available_sentence(view), rate_sentence(view)}};
    for (const std::string& more : {advice(view), beyond_the_rise(view)})
        if (!more.empty()) note.lines.push_back(more);
    return note;
}

Note close_fittings_note(const BranchView& view) {
    std::vector<std::string> crowded;
    for (const house::Duct* duct : new_ducts(view)) {
        const ducts::Section section = ducts::section_of(duct->shape ? *duct->shape : view.choice().pipe);
        if (ducts::stand_close(section, duct->length, static_cast<int>(duct->fittings.size())))
            crowded.push_back("the " + duct->name);
    }
    if (crowded.empty()) return {};
    return {
        "fittings",
        {fmt::format("those of {} stand less than {:.0f} pipe widths apart on the mean; they are counted in "
                     "full, and may lose more or less than that: keep a straight piece between them",
                     listed(crowded), ducts::far_apart_diameters)}};
}

}  // namespace report
