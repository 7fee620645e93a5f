// From a Survey to a plain House, as found or as planned: looks up references, works out areas, fills what
// was not measured from the defaults and lists each default it took, and finds what cannot be (overlaps,
// loops, misfits).
//
// found: without what is new, walls before the work. planned: without what is removed, walls as they become.
// The house is usable only where mistakes is empty.
#pragma once

#include <string>
#include <vector>

#include "house/defaults.hpp"
#include "house/house.hpp"
#include "house/place.hpp"
#include "house/survey.hpp"

namespace house {

enum class Stage { found, planned };

// A default that was taken, once per row, with all that it was taken for.
struct Assumption {
    DefaultId id;
    std::vector<std::string> used_for;  // "west wall of the bath"
    bool operator==(const Assumption&) const = default;
};

struct Built {
    House house;
    std::vector<Assumption> assumptions;  // in the table's order
    std::vector<Mistake> mistakes;        // in the sheet's order
};

Built build(const Survey& survey, const Defaults& defaults, Stage stage);

}  // namespace house
