// Does a printed sum by hand: + - x / ^ ( ) sqrt exp ln log10 and plain decimals.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace report_test {

// Empty where the text is no sum. Thousands commas between digits are read over.
std::optional<double> worked_out(const std::string& text);

// Every "sum = result" in a text: what the sum gives, and the result as printed.
struct PrintedSum {
    std::string text;
    double by_hand = 0;
    double result = 0;
    double half_a_digit = 0;  // of the printed result
};
std::vector<PrintedSum> printed_sums(const std::string& text);

}  // namespace report_test
