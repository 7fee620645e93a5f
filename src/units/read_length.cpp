#include "units/measure_reader.hpp"
#include "units/read.hpp"
#include "units/unit.hpp"

namespace units {
namespace {

bool is_unit(const UnitWord* unit, Length size) { return unit && unit->factor == size.si(); }

// Where the inches start in what follows the feet: "ft 6-1/2 in" or "'-6\"". 0 when no feet and inches are
// meant. A point right before the digit could be the end of "ft." or the start of ".6", so it is not taken
// for either.
std::size_t start_of_inches(const Excerpt& after_feet) {
    const std::string_view text = after_feet.view();
    const std::size_t digit = text.find_first_of("0123456789");
    if (digit == std::string_view::npos || digit == 0 || text[digit - 1] == '.') return 0;
    std::string_view foot = text.substr(0, digit);
    foot = foot.substr(0, foot.find_last_not_of(' ') + 1);
    if (!foot.empty() && foot.back() == '-') foot.remove_suffix(1);
    if (!is_unit(find_unit(words::length, foot), unit::foot)) return 0;
    return quantity_measured_in(text) ? 0 : digit;
}

// Inches are counted before the one multiplication, so that a length on the grid of a tape measure is exact.
Reading<double> read_feet_and_inches(const Excerpt& text, const Number& feet, const Excerpt& inches,
                                     const QuantityWords& quantity) {
    constexpr std::string_view remedy = "write feet and inches, as 12 ft 6-1/2 in";
    const Reading<Number> count = read_count(inches, quantity);
    const Number* number = std::get_if<Number>(&count);
    if (!number) return std::get<ReadProblem>(count);
    const Reading<const UnitWord*> reading = read_unit(inches, *number, quantity);
    const UnitWord* const* found = std::get_if<const UnitWord*>(&reading);
    if (!found) return std::get<ReadProblem>(reading);

    if (!is_unit(*found, unit::inch)) return inches.problem(inches.quoted() + " cannot follow feet", remedy);
    if (!feet.is_whole) return text.first(feet.size).problem("feet before inches are a whole number", remedy);
    if (number->value >= 12) return inches.problem("inches after feet are less than 12", remedy);
    return within_limits(text, (12 * feet.value + number->value) * unit::inch.si(), quantity);
}

Reading<double> read_one(const Excerpt& text, const QuantityWords& quantity, const UnitWord* unit_if_none) {
    const Reading<Number> count = read_count(text, quantity);
    const Number* number = std::get_if<Number>(&count);
    if (!number) return std::get<ReadProblem>(count);
    const Excerpt rest = text.from(number->size).trimmed();
    const std::size_t inches = start_of_inches(rest);
    if (inches > 0) return read_feet_and_inches(text, *number, rest.from(inches), quantity);
    return measured(text, *number, quantity, unit_if_none);
}

// The unit at the end of "16 in", which "8 x 16 in" means for both; null when it is not a number and one
// unit.
const UnitWord* shared_unit(const Excerpt& text) {
    const Reading<Number> count = read_count(text, words::two_lengths);
    const Number* number = std::get_if<Number>(&count);
    return number ? find_unit(words::two_lengths, text.from(number->size).trimmed().view()) : nullptr;
}

Reading<std::pair<Length, Length>> read_both(const Excerpt& first, const Excerpt& second) {
    const Reading<double> one = read_one(first, words::two_lengths, shared_unit(second));
    if (const ReadProblem* problem = std::get_if<ReadProblem>(&one)) return *problem;
    const Reading<double> other = read_one(second, words::two_lengths, nullptr);
    if (const ReadProblem* problem = std::get_if<ReadProblem>(&other)) return *problem;
    return std::pair(Length(std::get<double>(one)), Length(std::get<double>(other)));
}

}  // namespace

Reading<Length> read_length(std::string_view text) {
    if (is_too_long(text)) return too_long(text, words::length);
    const PlainText plain(text);
    const Reading<double> reading = read_one(plain.all().trimmed(), words::length, nullptr);
    if (const double* metres = std::get_if<double>(&reading)) return Length(*metres);
    return std::get<ReadProblem>(reading);
}

Reading<std::pair<Length, Length>> read_two_lengths(std::string_view text) {
    if (is_too_long(text)) return too_long(text, words::two_lengths);
    const PlainText plain(text);
    const Excerpt whole = plain.all().trimmed();
    const std::size_t times = whole.view().find_first_of("xX");
    if (times == std::string_view::npos ||
        whole.view().find_first_of("xX", times + 1) != std::string_view::npos) {
        return whole.problem("a size is two lengths with an x between them", words::two_lengths.remedy);
    }
    return read_both(whole.first(times).trimmed(), whole.from(times + 1).trimmed());
}

}  // namespace units
