// How much of the sun's heat a roof takes up, by its plain name: "asphalt, medium".
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, table 8; white and light asphalt alike, as read.
// Accuracy: +-0.05 (estimate); a roof darkens with age.
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "house/house.hpp"
#include "house/place.hpp"

namespace loads {

struct Roof {
    std::string_view name;
    double absorptance;
};

std::span<const Roof> roofs();
std::variant<Roof, house::Mistake> look_up_roof(const house::CatalogueName& name);
// Throws house::CannotAnswer for a roof no table holds (questions/check_sheet finds those first).
double roof_absorptance(const house::Summer& summer);

}  // namespace loads
