// Turns the place where the TOML parser gave up into a mistake in the sheet's own words, with what to write
// instead.
//
// The usual slips are recognised from the sheet's line, not from the parser's message, which seldom names the
// cause: a value without quotes, curly quotes, "name: bath", a missing closing quote, an inline table over
// several lines, a word or a heading written twice, a character outside quotes that a sheet cannot hold
// there.
#pragma once

#include <string_view>

#include "house/place.hpp"
#include "sheet/source_lines.hpp"

namespace sheet {

struct ParserStop {
    const SourceLines& lines;      // the whole sheet
    house::Place place;            // where the parser stopped
    std::string_view description;  // what it said; used to tell cases apart, never printed
};

house::Mistake why_not_toml(const ParserStop& stop);
house::Mistake nested_too_deeply(house::Place place);

}  // namespace sheet
