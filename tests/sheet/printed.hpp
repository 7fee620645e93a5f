// Mistakes as one line each, for comparing whole: line:column-end | text | under | remedy | second
// line:column-end.
#pragma once

#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

#include "house/place.hpp"
#include "sheet/read.hpp"

std::string printed(const house::Place& place);
std::string printed(const house::Mistake& mistake);
// All mistakes of a sheet.
std::vector<std::string> mistakes_in(std::string_view text);
// The same for the lines after "sheet = 1", which stands on line 1.
std::vector<std::string> mistakes_after_first_line(std::string_view rest);
// Where a piece of text stands that stands only once; line 0 if it does not.
house::Place place_of(std::string_view text, std::string_view piece);

namespace house {
void PrintTo(const Place& place, std::ostream* out);
}
