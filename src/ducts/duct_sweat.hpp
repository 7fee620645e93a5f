// Does a cold duct sweat: how cold its outside is while cool air runs in it, and how much insulation keeps it
// above the dew point of the air around.
//
//     outside = around - (around - inside) x Ro / (Ro + R + Ri)
//     least R = Ro x (around - inside) / (around - dew point) - Ro - Ri, no less than 0
//
// Ro 1/6.8 m2 K/W, outer film (read: ASHRAE Handbook-Fundamentals ch. 23); Ri 0.06, inner film (memory:
// general heat transfer). R: of the insulation, flat. Steady; metal takes no part. A duct is coldest at the
// coil: what the air warms on its way is left out. Accuracy: films +-20 %, so the outside of a bare duct +-1
// K.
#pragma once

#include <optional>

#include "units/quantity.hpp"

namespace ducts {

units::Temperature outside_of_duct(units::Temperature inside, units::Temperature around,
                                   units::Resistance insulation);
// Empty where no insulation does: the air around is saturated.
std::optional<units::Resistance> insulation_that_keeps_dry(units::Temperature inside,
                                                           units::Temperature around,
                                                           units::Temperature dew_point);

}  // namespace ducts
