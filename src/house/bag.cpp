#include "house/bag.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "units/unit.hpp"

namespace house {

units::Volume filled_bag(const Two& flat) {
    const auto [w, h] = std::minmax(flat.first, flat.second);
    const double slender = h / w;
    return w * w * w * (slender / std::numbers::pi - 0.142 * (1 - std::pow(10, -slender)));
}

units::Airflow airflow_into_bag(units::Volume bag, units::Duration time) {
    const units::Volume of_the_points =
        filled_bag({66 * units::unit::centimetre, 91 * units::unit::centimetre});
    const double seconds = time / units::unit::second * (of_the_points / bag);
    return 128.5 * units::unit::cfm * std::pow(seconds, -0.82);
}

}  // namespace house
