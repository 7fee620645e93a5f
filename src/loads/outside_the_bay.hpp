// What of a framed wall lies between its stud bay and outdoors: all that keeps a duct in that bay warm.
//
// Source: the layers as loads/transmittance.hpp counts them, from outside to the first that stands between
// studs. Layers nobody knows are left out, since it is not known on which side of the bay they lie. Accuracy:
// that of the layers, +-15 % of known ones (loads/materials.hpp).
// Throws house::CannotAnswer for a name no table holds (questions/check_sheet finds those first).
#pragma once

#include <optional>

#include "house/house.hpp"
#include "units/quantity.hpp"

namespace loads {

struct OutsideTheBay {
    units::Resistance layers;  // without the air's film
    units::Length bay;         // how deep; 0: the wall has none
    bool assumed = false;      // taken as usual, for want of layers
};

// Empty of a wall whose layers are not known, or of which nobody knows whether it has a bay.
std::optional<OutsideTheBay> outside_the_bay(const house::Surface& wall);
// Lap siding on boards, and a bay of 3-1/2 in: what old wood-framed walls have (common practice).
OutsideTheBay usual_outside_the_bay();

}  // namespace loads
