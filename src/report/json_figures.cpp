#include "report/json_figures.hpp"

#include <fmt/format.h>

#include <cstdlib>

namespace report {

double figure_of(double value) {
    if (value == 0) return 0;
    // By way of text: the double nearest to nine decimal digits is written back as just these digits.
    return std::strtod(fmt::format("{:.9g}", value).c_str(), nullptr);
}

const char* word_of(questions::Verdict verdict) {
    switch (verdict) {
        case questions::Verdict::yes:
            return "yes";
        case questions::Verdict::probably:
            return "probably";
        case questions::Verdict::probably_not:
            return "probably not";
        case questions::Verdict::no:
            break;
    }
    return "no";
}

}  // namespace report
