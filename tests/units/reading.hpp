// What the tests of the readers share: taking a reading apart.
#pragma once

#include <gtest/gtest.h>

#include <limits>
#include <string>

#include "units/read.hpp"

namespace units {

inline double number_of(double value) { return value; }
inline double number_of(Angle value) { return value.degrees; }
inline double number_of(LeakageTest value) { return value.at_50_pascal.si(); }
template <class Q>
double number_of(Q value) {
    return value.si();
}

// The value in SI units; not a number, and a failed test, when the text was refused.
template <class Q>
double si(const Reading<Q>& reading) {
    if (const Q* value = std::get_if<Q>(&reading)) return number_of(*value);
    ADD_FAILURE() << std::get<ReadProblem>(reading).text;
    return std::numeric_limits<double>::quiet_NaN();
}

// The problem on one line, as "text; remedy [offset+length]".
template <class Q>
std::string problem(const Reading<Q>& reading) {
    const ReadProblem* found = std::get_if<ReadProblem>(&reading);
    if (!found) return "no problem";
    return found->text + "; " + found->remedy + " [" + std::to_string(found->offset) + "+" +
           std::to_string(found->length) + "]";
}

}  // namespace units
