// Is the sheet right: every mistake in it, gathered before any answer, and what would be assumed.
//
// Looks at both the house as found and as planned, and asks the owners of materials, glasses and fittings for
// their names.
#pragma once

#include <vector>

#include "house/build.hpp"

namespace questions {

struct CheckAnswer {
    std::vector<house::Mistake> mistakes;        // in the sheet's order, each once
    std::vector<house::Assumption> assumptions;  // of the planned house
    house::House planned;                        // usable where there are no mistakes
    bool changes = false;                        // something is new, removed, or becomes something else
    int new_outlets = 0;                         // of the supply side
};

// `from_reading`: mistakes the reader found already; what may only follow from them is then left out.
CheckAnswer check_sheet(const house::Survey& survey, std::vector<house::Mistake> from_reading = {});

// Whether the sheet plans any change at all.
bool plans_a_change(const house::Survey& survey);

}  // namespace questions
