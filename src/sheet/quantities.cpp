#include "sheet/quantities.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace sheet {
namespace {

std::optional<double> number_in(const Node& node) {
    if (const auto* whole = std::get_if<std::int64_t>(&node.value)) return static_cast<double>(*whole);
    if (const auto* number = std::get_if<double>(&node.value)) return *number;
    return std::nullopt;
}

// The number with the unit it may have been meant in; 0.2 of a share becomes 20 %.
std::string with_its_unit(double number, std::string_view with_unit) {
    const bool share = with_unit.ends_with('%') && number <= 1;
    return fmt::format(fmt::runtime(with_unit), fmt::format("{:.10g}", share ? 100 * number : number));
}

}  // namespace

units::Reading<double> read_stretch(std::string_view text) {
    units::Reading<double> reading = units::read_fraction(text);
    auto* problem = std::get_if<units::ReadProblem>(&reading);
    if (problem && problem->text.ends_with("is more than 1")) {
        problem->text = '"' + std::string(text) + "\" is longer than the duct is when pulled straight";
        problem->remedy = "write how much of its full length it takes up, 100 % at the most, as \"96 %\"";
    }
    return reading;
}

void blame_not_quoted(const Value& value, std::string_view with_unit, std::string_view sample) {
    const std::string in_quotes = '"' + std::string(sample) + '"';
    const std::optional<double> number = number_in(*value.node);
    if (!number) return value.blame_kind("text in quotes", in_quotes);
    if (!std::isfinite(*number)) return value.blame("is not a finite number", {"", value.write(in_quotes)});
    value.blame("has no unit", {"a number needs a unit and quotes",
                                value.write('"' + with_its_unit(*number, with_unit) + '"')});
}

bool sign_is_right(const Value& value, double number, Sign sign) {
    if (!std::isfinite(number)) {
        value.blame("is not a finite number", {"", ""});
        return false;
    }
    if (sign == Sign::positive && number <= 0) {
        value.blame("must be more than zero", {"", ""});
        return false;
    }
    if (sign == Sign::not_negative && number < 0) {
        value.blame("cannot be less than zero", {"", ""});
        return false;
    }
    return true;
}

house::Maybe<std::pair<units::Length, units::Length>> read_sides(const Value& value,
                                                                 std::string_view sample) {
    const std::string in_quotes = fmt::format("\"{}\"", sample);
    if (value.plain_text() == nullptr) {
        value.blame_kind("text in quotes", in_quotes);
        return std::nullopt;
    }
    const auto text = value.text(in_quotes);
    if (!text) return std::nullopt;
    const auto reading = units::read_two_lengths(*text);
    if (const auto* problem = std::get_if<units::ReadProblem>(&reading)) {
        value.blame(*problem);
        return std::nullopt;
    }
    const auto& sides = std::get<std::pair<units::Length, units::Length>>(reading);
    if (!sign_is_right(value, std::min(sides.first, sides.second).si(), Sign::positive)) return std::nullopt;
    return house::Given<std::pair<units::Length, units::Length>>{sides, value.node->place};
}

}  // namespace sheet
