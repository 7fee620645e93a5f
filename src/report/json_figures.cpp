#include "report/json_figures.hpp"

#include <fmt/format.h>

#include <cstdlib>

namespace report {

double figure_of(double value) {
    if (value == 0) return 0;
    // By way of text: the double nearest to nine decimal digits is written back as just these digits.
    return std::strtod(fmt::format("{:.9g}", value).c_str(), nullptr);
}

const char* unit_of(house::WrittenAs written) {
    using enum house::WrittenAs;
    switch (written) {
        case temperature:
        case temperature_difference:
            return "K";
        case degrees:
            return "deg";
        case moisture:
            return "kg/kg";
        case length:
            return "m";
        case pressure:
            return "Pa";
        case u_factor:
            return "W/m2.K";
        case r_value:
            return "m2.K/W";
        case conductivity:
            return "W/m.K";
        case percent_per_degree:
            return "1/K";
        case percent_per_1000_ft:
            return "1/m";
        case percent_per_tenth_inch:
            return "1/Pa";
        case leakage:
            return "cm2/m2";
        case air_changes:
            return "1/s";
        case percent:
        case times:
        case whole_number:
            break;
    }
    return "1";
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
