#include "units/number_reader.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string>
#include <system_error>

namespace units {
namespace {

bool is_one_of(std::string_view text, std::size_t at, std::string_view wanted) {
    return at < text.size() && wanted.find(text[at]) != std::string_view::npos;
}

std::size_t digits_at(std::string_view text, std::size_t begin) {
    std::size_t end = begin;
    while (end < text.size() && is_digit(text[end])) ++end;
    return end - begin;
}

// The only place where digits become a double. Nothing when the value is beyond what a double holds.
std::optional<double> to_double(std::string_view digits) {
    double value = 0;
    const std::from_chars_result result =
        std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (result.ec != std::errc()) return std::nullopt;
    return value;
}

std::size_t exponent_size(std::string_view text) {
    if (!is_one_of(text, 0, "eE")) return 0;
    const std::size_t before_digits = is_one_of(text, 1, "+-") ? 2 : 1;
    const std::size_t digits = digits_at(text, before_digits);
    return digits == 0 ? 0 : before_digits + digits;
}

std::size_t decimal_size(std::string_view text) {
    std::size_t size = digits_at(text, 0);
    while (is_one_of(text, size, ",") && digits_at(text, size + 1) > 0) size += 1 + digits_at(text, size + 1);
    if (is_one_of(text, size, ".")) size += 1 + digits_at(text, size + 1);
    return size + exponent_size(text.substr(size));
}

std::size_t fraction_size(std::string_view text) {
    const std::size_t top = digits_at(text, 0);
    if (top == 0 || !is_one_of(text, top, "/")) return 0;
    const std::size_t bottom = digits_at(text, top + 1);
    return bottom == 0 ? 0 : top + 1 + bottom;
}

// What joins a whole number to its fraction: one dash or some spaces.
std::size_t joint_size(std::string_view text) {
    if (is_one_of(text, 0, "-")) return 1;
    return std::min(text.find_first_not_of(' '), text.size());
}

bool commas_part_thousands(std::string_view decimal) {
    const std::string_view whole = decimal.substr(0, decimal.find_first_of(".eE"));
    const std::size_t first = whole.find(',');
    if (first != std::string_view::npos && first > 3) return false;
    for (std::size_t at = first; at < whole.size(); at += 4) {
        if (whole[at] != ',' || digits_at(whole, at + 1) != 3) return false;
    }
    return true;
}

Reading<Number> read_quotient(const Excerpt& text, std::string_view remedy) {
    const std::string_view view = text.view();
    const std::size_t line = view.find('/');
    const std::optional<double> top = to_double(view.substr(0, line));
    const std::optional<double> bottom = to_double(view.substr(line + 1));
    if (!top || !bottom) return text.problem(text.quoted() + " is too large or too small a number", remedy);
    if (*bottom == 0) return text.problem(text.quoted() + " divides by zero", remedy);
    return Number{*top / *bottom, view.size(), false, false};
}

Reading<Number> read_decimal(const Excerpt& text, std::string_view remedy) {
    std::string digits(text.view());
    if (!commas_part_thousands(digits)) {
        return text.problem(text.quoted() + " is not a number",
                            "write decimals with a point and thousands in groups of three, as 3.8 or 64,000");
    }
    digits.erase(std::remove(digits.begin(), digits.end(), ','), digits.end());
    const std::optional<double> value = to_double(digits);
    if (!value) return text.problem(text.quoted() + " is too large or too small a number", remedy);
    return Number{*value, text.view().size(), false, digits.find_first_of(".eE") == std::string::npos};
}

Reading<Number> read_magnitude(const Excerpt& text, std::string_view remedy) {
    const std::size_t quotient = fraction_size(text.view());
    if (quotient > 0) return read_quotient(text.first(quotient), remedy);

    Reading<Number> decimal = read_decimal(text.first(decimal_size(text.view())), remedy);
    const Number* whole = std::get_if<Number>(&decimal);
    if (!whole || !whole->is_whole) return decimal;

    const Excerpt rest = text.from(whole->size);
    const std::size_t joint = joint_size(rest.view());
    const std::size_t fraction = fraction_size(rest.view().substr(joint));
    if (joint == 0 || fraction == 0) return decimal;

    Reading<Number> added = read_quotient(rest.from(joint).first(fraction), remedy);
    const Number* part = std::get_if<Number>(&added);
    if (!part) return added;
    return Number{whole->value + part->value, whole->size + joint + part->size, false, false};
}

bool starts_with_digit(std::string_view text) {
    return digits_at(text, 0) > 0 || (is_one_of(text, 0, ".") && digits_at(text, 1) > 0);
}

}  // namespace

Reading<Number> read_number(const Excerpt& text, std::string_view remedy) {
    const std::size_t signs = std::min(text.view().find_first_not_of("+-"), text.view().size());
    if (signs > 1) return text.first(signs).problem("a number takes one sign", remedy);
    if (!starts_with_digit(text.view().substr(signs))) {
        return text.problem(text.quoted() + " does not start with a number", remedy);
    }
    Reading<Number> reading = read_magnitude(text.from(signs), remedy);
    if (Number* number = std::get_if<Number>(&reading)) {
        number->size += signs;
        number->has_sign = signs == 1;
        if (is_one_of(text.view(), 0, "-")) number->value = -number->value;
    }
    return reading;
}

}  // namespace units
