// A page, mistakes or steps as plain text for a terminal.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "house/place.hpp"
#include "report/page.hpp"

namespace report {

struct Paper {
    int width = 80;       // columns; never above 100
    bool colour = false;  // never the only carrier of meaning
};

std::string text(const Page& page, Paper paper);

// Each mistake over the sheet's own line, a mark under the offending words, its remedy; then how many there
// are.
std::string mistakes_text(std::string_view file, std::string_view sheet,
                          const std::vector<house::Mistake>& mistakes, Paper paper);

}  // namespace report
