// What is refused before the sheet is parsed: what the TOML parser does not survive, or would misread.
//
// Over 1 MiB; a line with more than 64 dots (a dotted key of many parts overflows the parser's stack); bytes
// that are not UTF-8; characters above U+FFFFF (lifted code points need their room).
#pragma once

#include <optional>
#include <string_view>

#include "house/place.hpp"

namespace sheet {

std::optional<house::Mistake> refuse(std::string_view text);

}  // namespace sheet
