// What the terminal can show.
#pragma once

#include "report/text.hpp"

namespace command_line {

// Width and colour of standard output (or standard error): 100 columns and no colour where it is not a
// terminal; never above 100; NO_COLOR obeyed.
report::Paper paper_of_output();
report::Paper paper_of_errors();

}  // namespace command_line
