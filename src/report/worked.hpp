// Sums as they are printed, so that whoever redoes them by hand gets the printed result.
//
//     const Worked loss = printed(area, 1) * printed(u, 3) * printed(warmer, 1);   "73.5 x 0.240 x 71.0"
//
// Beside the text each keeps its value three times: exact, as the printed digits give it, and the bounds
// between which it lies when every printed figure may be off by half its last digit (interval arithmetic).
#pragma once

#include <string>

namespace report {

struct Worked {
    std::string text;
    double exact = 0, by_hand = 0;
    double low = 0, high = 0;
    int binds = 0;  // 1 sums, 2 products, 3 powers, 4 single figures

    double within() const;  // how far by_hand may lie from exact
};

Worked printed(double value, int digits);          // so many digits after the point
Worked printed_to(double value, int figures);      // so many figures in all
Worked rounded(double value, std::string number);  // as written already: "1,570"
Worked given(double value, std::string text);      // a constant that is exact as written

Worked operator+(const Worked& a, const Worked& b);
Worked operator-(const Worked& a, const Worked& b);
Worked operator-(const Worked& a);  // at the beginning of a sum or a bracket
Worked operator*(const Worked& a, const Worked& b);
Worked operator/(const Worked& a, const Worked& b);
Worked squared(const Worked& a);
Worked exp(const Worked& a);
Worked ln(const Worked& a);     // a above zero
Worked log10(const Worked& a);  // a above zero
Worked sqrt(const Worked& a);   // a not below zero

}  // namespace report
