// Reads one measure, a number with its unit, and says what is wrong with it: the steps the readers share.
#pragma once

#include <cstddef>
#include <string_view>

#include "units/number_reader.hpp"
#include "units/plain_text.hpp"
#include "units/read.hpp"
#include "units/unit_words.hpp"

namespace units {

// Nothing when the text is short enough to be read.
bool is_too_long(std::string_view text);
ReadProblem too_long(std::string_view text, const QuantityWords& quantity);

// The number a measure starts with, signed only when the quantity takes a sign.
Reading<Number> read_count(const Excerpt& measure, const QuantityWords& quantity);

// The unit that follows the number and ends the measure.
Reading<const UnitWord*> read_unit(const Excerpt& measure, const Number& count,
                                   const QuantityWords& quantity);

// The value, when it lies within what the quantity can be.
Reading<double> within_limits(const Excerpt& measure, double si, const QuantityWords& quantity);

// A whole measure in SI units. A number without unit is in unit_if_none, when there is one.
Reading<double> read_measure(const Excerpt& measure, const QuantityWords& quantity,
                             const UnitWord* unit_if_none = nullptr);
// The same where its number is read already.
Reading<double> measured(const Excerpt& measure, const Number& count, const QuantityWords& quantity,
                         const UnitWord* unit_if_none);

}  // namespace units
