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

// What the question is about: one run, or all ducts of the house at once, with their leaks, the blower's
// curve and the air's way out of every room. Only the latter asks for these, and assumes them: else
// House::whole_system is empty. A mistake in what the sheet says of them counts always.
enum class Extent { branch, whole_system };

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
    Extent extent = Extent::branch;
};

Built build(const Survey& survey, const Defaults& defaults, Stage stage, Extent extent = Extent::branch);

}  // namespace house
