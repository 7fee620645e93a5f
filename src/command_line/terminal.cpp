#include "command_line/terminal.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>

namespace command_line {
namespace {

report::Paper paper_of(int descriptor) {
    constexpr int where_unknown = 100, least = 40, most = 100;
    report::Paper paper;
    winsize size{};
    const bool terminal = isatty(descriptor) != 0;
    const bool known = terminal && ioctl(descriptor, TIOCGWINSZ, &size) == 0 && size.ws_col > 0;
    paper.width = known ? std::clamp<int>(size.ws_col, least, most) : where_unknown;
    const char* no_colour = std::getenv("NO_COLOR");
    paper.colour = terminal && !(no_colour && *no_colour);
    return paper;
}

}  // namespace

report::Paper paper_of_output() { return paper_of(STDOUT_FILENO); }
report::Paper paper_of_errors() { return paper_of(STDERR_FILENO); }

}  // namespace command_line
