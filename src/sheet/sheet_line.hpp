// One line of the sheet, taken apart roughly: enough to explain why it is not TOML, when it is not.
#pragma once

#include <string>
#include <string_view>

#include "house/place.hpp"
#include "sheet/source_lines.hpp"

namespace sheet {

struct SheetLine {
    int number = 0;
    std::string_view whole;
    std::string_view word;     // "length" in: length = 12 ft
    char mark = 0;             // '=' or ':' after the word; 0 for neither
    std::string_view value;    // what follows the mark, without a comment
    std::string_view heading;  // "[[room]]" where the line is one
};

SheetLine sheet_line(const SourceLines& lines, int number);
house::Place place_in(const SheetLine& line, std::string_view part);

// Where a quote opens that this line does not close; empty where there is none.
std::string_view unclosed_quote(const SheetLine& line);

bool is_curly_quote(char32_t c);
bool is_odd_space(char32_t c);  // looks like a space and is none

// The value in quotes, part by part for a list: [2 ft, 3 ft] becomes ["2 ft", "3 ft"]. Empty where it is not
// that simple.
std::string with_quotes(std::string_view value);

}  // namespace sheet
