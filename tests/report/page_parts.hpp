// What the tests look for on a page.
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include "report/expression.hpp"
#include "report/figures.hpp"
#include "report/page.hpp"

namespace report_test {

// The note of that label, or of one that begins so; nullptr where there is none.
inline const report::Note* note(const report::Page& page, std::string_view label) {
    for (const report::Note& n : page.notes)
        if (report::with_plain_spaces(n.label).find(label) == 0) return &n;
    return nullptr;
}

inline double printed_number(const std::string& cell) { return worked_out(cell).value_or(NAN); }

}  // namespace report_test
