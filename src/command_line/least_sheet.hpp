// The sheet that `sillflow start` writes: the least case, embedded at build.
#pragma once

#include <string_view>

namespace command_line {

std::string_view least_sheet();

}  // namespace command_line
