// Breaks text into lines of so many columns; a column is a code point.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace report {

std::size_t columns(std::string_view text);
std::string_view first_columns(std::string_view text, std::size_t count);
std::string spaces(std::size_t count);
std::string filled_to(std::string text, std::size_t width);  // with spaces behind

// Breaks at spaces; a word longer than a line is cut. What fits comes back as it is, also its double spaces.
std::vector<std::string> wrap(std::string_view text, std::size_t width);
std::vector<std::string> wrap(std::string_view text, std::size_t first_width, std::size_t width);

// A paragraph under itself: its first line begins with `first`, the following ones `indent` columns in.
struct Paragraph {
    std::string first;       // what the first line begins with
    std::size_t indent = 0;  // where the following lines begin
};
std::string wrapped(const Paragraph& paragraph, std::string_view text, int width);

}  // namespace report
