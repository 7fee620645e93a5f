#include "ducts/duct_sweat.hpp"

#include <algorithm>

namespace ducts {
namespace {

constexpr units::Resistance outer_film{1 / 6.8}, inner_film{0.06};

}  // namespace

units::Temperature outside_of_duct(units::Temperature inside, units::Temperature around,
                                   units::Resistance insulation) {
    return around - (outer_film / (outer_film + insulation + inner_film)) * (around - inside);
}

std::optional<units::Resistance> insulation_that_keeps_dry(units::Temperature inside,
                                                           units::Temperature around,
                                                           units::Temperature dew_point) {
    if (inside >= dew_point) return units::Resistance();
    if (around <= dew_point) return std::nullopt;
    return std::max(units::Resistance(),
                    ((around - inside) / (around - dew_point) - 1) * outer_film - inner_film);
}

}  // namespace ducts
