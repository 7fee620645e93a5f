#include "report/worked.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "units/write.hpp"

namespace report {
namespace {

enum Binds { sum = 1, product, power, single };

std::string bracketed(const Worked& a, bool needed) { return needed ? "(" + a.text + ")" : a.text; }

// A product or quotient is largest and smallest at corners of its two intervals.
struct Bounds {
    double low, high;
};
template <class Operation>
Bounds over_corners(const Worked& a, const Worked& b, Operation operation) {
    const double c[] = {operation(a.low, b.low), operation(a.low, b.high), operation(a.high, b.low),
                        operation(a.high, b.high)};
    return {*std::min_element(c, c + 4), *std::max_element(c, c + 4)};
}

double read_back(const std::string& text) {
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

template <class Function>
Worked rising(const char* name, const Worked& a, Function function) {
    return {name + ("(" + a.text + ")"),
            function(a.exact),
            function(a.by_hand),
            function(a.low),
            function(a.high),
            single};
}

}  // namespace

double Worked::within() const { return std::max(high - exact, exact - low); }

Worked printed(double value, int digits) {
    const std::string text = units::decimal(value, digits);
    const double half = 0.5 * std::pow(10.0, -digits) * (1 + 1e-6);
    // A figure below zero is put in brackets, so that no two signs meet.
    return {text.starts_with('-') ? "(" + text + ")" : text,
            value,
            read_back(text),
            value - half,
            value + half,
            single};
}

Worked printed_to(double value, int figures) {
    const double magnitude = value == 0 ? 0 : std::floor(std::log10(std::abs(value)));
    return printed(value, std::clamp(figures - 1 - static_cast<int>(magnitude), 0, 12));
}

Worked given(double value, std::string text) { return {std::move(text), value, value, value, value, single}; }

Worked rounded(double value, std::string number) {
    std::string plain = number;
    std::erase(plain, ',');
    const double by_hand = read_back(plain), off = std::abs(by_hand - value);
    return {std::move(number), value, by_hand, value - off, value + off, single};
}

Worked operator+(const Worked& a, const Worked& b) {
    return {a.text + " + " + b.text, a.exact + b.exact, a.by_hand + b.by_hand,
            a.low + b.low,           a.high + b.high,   sum};
}

Worked operator-(const Worked& a, const Worked& b) {
    return {a.text + " - " + bracketed(b, b.binds == sum),
            a.exact - b.exact,
            a.by_hand - b.by_hand,
            a.low - b.high,
            a.high - b.low,
            sum};
}

Worked operator-(const Worked& a) {
    return {"-" + bracketed(a, a.binds == sum), -a.exact, -a.by_hand, -a.high, -a.low, product};
}

Worked operator*(const Worked& a, const Worked& b) {
    const Bounds bounds = over_corners(a, b, [](double x, double y) { return x * y; });
    return {bracketed(a, a.binds < product) + " x " + bracketed(b, b.binds < product),
            a.exact * b.exact,
            a.by_hand * b.by_hand,
            bounds.low,
            bounds.high,
            product};
}

Worked operator/(const Worked& a, const Worked& b) {
    const Bounds bounds = over_corners(a, b, [](double x, double y) { return x / y; });
    return {bracketed(a, a.binds < product) + " / " + bracketed(b, b.binds <= product),
            a.exact / b.exact,
            a.by_hand / b.by_hand,
            bounds.low,
            bounds.high,
            product};
}

Worked squared(const Worked& a) {
    const double x = std::max(std::abs(a.low), std::abs(a.high));
    const double least = a.low <= 0 && a.high >= 0 ? 0 : std::min(std::abs(a.low), std::abs(a.high));
    return {bracketed(a, a.binds <= power) + "^2",
            a.exact * a.exact,
            a.by_hand * a.by_hand,
            least * least,
            x * x,
            power};
}

Worked exp(const Worked& a) {
    return rising("exp", a, [](double x) { return std::exp(x); });
}
Worked ln(const Worked& a) {
    return rising("ln", a, [](double x) { return std::log(x); });
}
Worked log10(const Worked& a) {
    return rising("log10", a, [](double x) { return std::log10(x); });
}
Worked sqrt(const Worked& a) {
    return rising("sqrt", a, [](double x) { return std::sqrt(std::max(0.0, x)); });
}

}  // namespace report
