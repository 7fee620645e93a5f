// Reads a house sheet (TOML) into a house::Survey, and finds every mistake of words and units in one pass.
//
// Every value keeps its line and column. A sheet over 1 MiB, a line with more than 64 dots, or nesting over
// 32 levels is refused before it is parsed. Never throws on any input; a sheet that is not TOML gives one
// mistake where parsing stopped. What only makes sense against other parts of the house (a room name that no
// room has, a window wider than its wall) is not looked at here: house/build.hpp does that.
#pragma once

#include <string_view>
#include <vector>

#include "house/place.hpp"
#include "house/survey.hpp"

namespace sheet {

struct Read {
    house::Survey survey;
    std::vector<house::Mistake> mistakes;  // in the sheet's order; empty: the survey is usable
};

Read read(std::string_view text);

}  // namespace sheet
