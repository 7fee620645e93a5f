#include "report/figures.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

#include "ducts/section.hpp"
#include "units/unit.hpp"

namespace report {
namespace {

// Ducts are sold by the inch: 14 in, not 1 ft 2 in; a half inch more or less is another size.
std::string inches(units::Length length) {
    constexpr std::array<std::string_view, 8> parts{"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
    const long eighths = std::lround(length / units::unit::inch * 8);
    const std::string_view part = parts.at(static_cast<std::size_t>(eighths % 8));
    if (part.empty()) return fmt::format("{}", eighths / 8);
    return eighths < 8 ? std::string(part) : fmt::format("{}-{}", eighths / 8, part);
}

constexpr std::string_view no_break_space = "\xc2\xa0";

std::string replaced(std::string text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

std::string side(units::Length length, units::System system) {
    if (system == units::System::us) return inches(length);
    return units::decimal(length / units::unit::millimetre, 0);  // a size, so to the millimetre
}

}  // namespace

std::string with_commas(std::string number) {
    const std::size_t start = number.starts_with('-') ? 1 : 0;
    const std::size_t end = number.find_first_not_of("0123456789", start);
    for (std::size_t at = end == std::string::npos ? number.size() : end; at > start + 3; at -= 3)
        number.insert(at - 3, ",");
    return number;
}

std::string unbroken(std::string text) { return replaced(std::move(text), " ", no_break_space); }

std::string with_plain_spaces(std::string text) { return replaced(std::move(text), no_break_space, " "); }

std::string percent(double share) { return unbroken(units::decimal(100 * share, 0) + " %"); }

std::string shape_text(const house::Shape& shape, units::System system) {
    const std::string unit = system == units::System::us ? " in" : " mm";
    if (const auto* round = std::get_if<house::Round>(&shape))
        return unbroken(side(round->diameter, system) + unit);
    if (const auto* oval = std::get_if<house::FlatOval>(&shape))
        return unbroken(side(oval->minor, system) + " x " + side(oval->major, system) + unit + " oval");
    const auto& flat = std::get<house::Rectangular>(shape);
    return unbroken(side(flat.width, system) + " x " + side(flat.height, system) + unit);
}

std::string as_round_text(const house::Shape& shape, units::System system) {
    const units::Length round = ducts::equivalent_round(shape);
    return unbroken(system == units::System::us ? units::decimal(round / units::unit::inch, 1) + " in"
                                                : units::decimal(round / units::unit::millimetre, 0) + " mm");
}

std::string face_text(units::Area face, units::System system) {
    const bool us = system == units::System::us;
    const double square_inches = face / units::unit::square_inch, square_cm = face.si() * 1e4;
    return unbroken(with_commas(units::decimal(us ? square_inches : std::round(square_cm / 10) * 10, 0)) +
                    (us ? " in2" : " cm2"));
}

std::string duct_words(const house::Shape& shape, units::System system) {
    const bool round = std::holds_alternative<house::Round>(shape);
    const bool flat = std::holds_alternative<house::Rectangular>(shape);
    return shape_text(shape, system) + (round ? " round pipe" : flat ? " stack" : " pipe");
}

std::string duct_words(const house::Shape& shape, house::DuctKind kind, units::System system) {
    const bool plain = kind == house::DuctKind::metal ||
                       (kind == house::DuctKind::flex && !std::holds_alternative<house::Round>(shape));
    if (plain) return duct_words(shape, system);
    if (kind == house::DuctKind::flex) return shape_text(shape, system) + " flexible duct";
    return shape_text(shape, system) + " " + std::string(house::word(kind)) + " duct";
}

// Heaters come in steps; 50 W is as fine as anyone buys.
std::string heater_size(units::Power power) {
    return units::decimal(std::ceil(power / units::unit::watt / 50 - 1e-9) * 50, 0) + " W";
}

std::string with_article(const std::string& noun) {
    const bool vowel = noun.starts_with('8') || noun.starts_with(unbroken("11 ")) ||
                       noun.starts_with(unbroken("18 ")) || noun.find_first_of("aeiou") == 0;
    return (vowel ? "an " : "a ") + noun;
}

std::string listed(const std::vector<std::string>& items) {
    std::string text;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0) text += i + 1 == items.size() ? " and " : ", ";
        text += items[i];
    }
    return text;
}

std::string counted(std::size_t count, std::string_view noun) {
    return fmt::format("{} {}{}", count, noun, count == 1 ? "" : "s");
}

std::string capitalised(std::string sentence) {
    if (!sentence.empty() && sentence[0] >= 'a' && sentence[0] <= 'z')
        sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
    return sentence;
}

}  // namespace report
