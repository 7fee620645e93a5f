#include "units/measure_reader.hpp"

#include <string>

namespace units {
namespace {

std::string phrase(std::string_view one, std::string_view rest) {
    return std::string(one) + std::string(rest);
}

// Where the text after a whole unit starts, as the space before "extra" in "cfm extra"; npos when there is no
// such.
std::size_t end_of_unit(std::string_view text, const QuantityWords& quantity) {
    std::size_t space = text.rfind(' ');
    while (space != std::string_view::npos && space > 0 && !find_unit(quantity, text.substr(0, space))) {
        space = text.rfind(' ', space - 1);
    }
    return space == 0 ? std::string_view::npos : space;
}

ReadProblem unknown_unit(const Excerpt& measure, const Excerpt& unit, const QuantityWords& quantity) {
    if (const QuantityWords* other = quantity_measured_in(unit.view())) {
        return measure.problem(measure.quoted() + phrase(" is ", other->one) + phrase(", not ", quantity.one),
                               quantity.remedy);
    }
    const std::size_t end = end_of_unit(unit.view(), quantity);
    if (end != std::string_view::npos) {
        const Excerpt extra = unit.from(end).trimmed();
        const Excerpt read = measure.first(measure.view().size() - unit.view().size() + end).trimmed();
        return extra.problem(extra.quoted() + " is left over after " + read.quoted(), quantity.remedy);
    }
    const std::string meant = nearest_unit(quantity, unit.view());
    return unit.problem(unit.quoted() + phrase(" is not a unit of ", quantity.name),
                        meant.empty() ? std::string(quantity.remedy) : "did you mean \"" + meant + "\"?");
}

}  // namespace

bool is_too_long(std::string_view text) { return text.size() > 200; }

ReadProblem too_long(std::string_view text, const QuantityWords& quantity) {
    return PlainText(text).all().problem(phrase("this is too long for ", quantity.one), quantity.remedy);
}

Reading<Number> read_count(const Excerpt& measure, const QuantityWords& quantity) {
    if (measure.view().empty()) return measure.problem(phrase(quantity.one, " is missing"), quantity.remedy);
    Reading<Number> reading = read_number(measure, quantity.remedy);
    const Number* count = std::get_if<Number>(&reading);
    if (count && count->has_sign && !quantity.takes_sign) {
        return measure.first(count->size).problem(phrase(quantity.one, " takes no sign"), quantity.remedy);
    }
    return reading;
}

Reading<const UnitWord*> read_unit(const Excerpt& measure, const Number& count,
                                   const QuantityWords& quantity) {
    const Excerpt unit = measure.from(count.size).trimmed();
    if (unit.view().empty()) return measure.problem(phrase(quantity.one, " needs a unit"), quantity.remedy);
    if (const UnitWord* found = find_unit(quantity, unit.view())) return found;
    return unknown_unit(measure, unit, quantity);
}

Reading<double> within_limits(const Excerpt& measure, double si, const QuantityWords& quantity) {
    if (si >= quantity.lowest.si && si <= quantity.highest.si) return si;
    const Limit& limit = si < quantity.lowest.si ? quantity.lowest : quantity.highest;
    return measure.problem(measure.quoted() + phrase(" ", limit.problem), quantity.remedy);
}

Reading<double> read_measure(const Excerpt& measure, const QuantityWords& quantity,
                             const UnitWord* unit_if_none) {
    const Reading<Number> count = read_count(measure, quantity);
    const Number* number = std::get_if<Number>(&count);
    return number ? measured(measure, *number, quantity, unit_if_none) : std::get<ReadProblem>(count);
}

Reading<double> measured(const Excerpt& measure, const Number& count, const QuantityWords& quantity,
                         const UnitWord* unit_if_none) {
    const bool has_unit = count.size < measure.view().size();
    const Reading<const UnitWord*> reading =
        unit_if_none && !has_unit ? unit_if_none : read_unit(measure, count, quantity);
    const UnitWord* const* unit = std::get_if<const UnitWord*>(&reading);
    if (!unit) return std::get<ReadProblem>(reading);
    return within_limits(measure, (count.value + (*unit)->origin) * (*unit)->factor, quantity);
}

}  // namespace units
