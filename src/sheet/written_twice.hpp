// A word or a heading written twice: the TOML parser marks the second, and the first is found here.
#pragma once

#include "house/place.hpp"
#include "sheet/sheet_line.hpp"
#include "sheet/why_not_toml.hpp"

namespace sheet {

house::Mistake written_twice(const ParserStop& stop, const SheetLine& line);

}  // namespace sheet
