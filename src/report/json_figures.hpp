// Figures and words for programs: SI, nine significant digits. No reader has use for more, and the last bits
// of a sum may differ by machine. A figure that is not finite is written null.
#pragma once

#include "house/defaults.hpp"
#include "questions/verdict.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace report {

double figure_of(double value);
template <class Q>
double si(Q quantity) {
    return figure_of(quantity.si());
}
inline double celsius(units::Temperature temperature) {
    return figure_of(units::unit::in_celsius(temperature));
}

const char* unit_of(house::WrittenAs written);    // of a default in SI; "1" for a ratio
const char* word_of(questions::Verdict verdict);  // "probably not"

}  // namespace report
