// The command line: words in, exit status out.
#pragma once

namespace command_line {

int run(int argc, const char* const* argv);

}  // namespace command_line
