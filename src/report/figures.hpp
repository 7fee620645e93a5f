// Figures inside sentences and table cells: units/write.hpp, with thousands set apart and trade shapes.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "house/shape.hpp"
#include "house/words.hpp"
#include "questions/verdict.hpp"
#include "units/write.hpp"

namespace report {

std::string with_commas(std::string number);  // "1570" -> "1,570"

// A figure does not part from its unit at the end of a line: its spaces are no-break spaces (U+00A0) until it
// is drawn.
std::string unbroken(std::string text);
std::string with_plain_spaces(std::string text);

template <class Q>
std::string number(Q quantity, units::System system) {
    return with_commas(units::write(quantity, system).number);
}
template <class Q>
std::string figure(Q quantity, units::System system) {
    units::Written written = units::write(quantity, system);
    written.number = with_commas(written.number);
    return unbroken(written.text());
}
// "41-67" of low and high; none of them is below zero in print.
template <class Q>
std::string span(questions::Range si, units::System system) {
    const auto text = [&](double value) { return number(Q(value > 0 ? value : 0), system); };
    return text(si.low) + "-" + text(si.high);
}
std::string percent(double share);  // "62 %"

std::string shape_text(const house::Shape& shape, units::System system);  // "6 in", "3-1/4 x 10 in"
// The equivalent round (ducts/section.hpp), to a tenth of an inch: "6.0 in".
std::string as_round_text(const house::Shape& shape, units::System system);
// The face of a grille or filter, as the trade counts it: "58 in2", "370 cm2".
std::string face_text(units::Area face, units::System system);
std::string duct_words(const house::Shape& shape, units::System system);  // "6 in round pipe"
std::string duct_words(const house::Shape& shape, house::DuctKind kind, units::System system);
std::string heater_size(units::Power power);                    // "250 W", of an electric heater
std::string with_article(const std::string& noun);              // "an 8 in round pipe"
std::string listed(const std::vector<std::string>& items);      // "a, b and c"
std::string counted(std::size_t count, std::string_view noun);  // "1 duct", "3 ducts"
std::string capitalised(std::string sentence);

}  // namespace report
