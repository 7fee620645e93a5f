// Bold and dim text where the paper takes colour; plain text elsewhere, so that nothing hangs on them.
#pragma once

#include <algorithm>
#include <string>

#include "report/text.hpp"

namespace report {

enum class Ink { plain, bold, dim };

// Each line of a text by itself, its end left out.
inline std::string inked(Ink ink, const std::string& text, Paper paper) {
    if (!paper.colour || ink == Ink::plain) return text;
    std::string drawn;
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        drawn += ink == Ink::bold ? "\x1b[1m" : "\x1b[2m";
        drawn += text.substr(start, end - start) + "\x1b[0m" + (end < text.size() ? "\n" : "");
        start = end + 1;
    }
    return drawn;
}
inline std::string bold(const std::string& text, Paper paper) { return inked(Ink::bold, text, paper); }

// The width lines are drawn to.
inline int width_of(Paper paper) { return paper.width > 100 ? 100 : paper.width; }

}  // namespace report
