#include "network/damper.hpp"

#include <algorithm>
#include <cmath>

#include "ducts/loss_laws.hpp"

namespace network {

double handle_coefficient(double degrees) {
    constexpr double shut_coefficient = 1500;
    if (degrees <= 0) return 0;
    if (degrees <= ducts::most_damper_angle) return ducts::damper_coefficient(degrees);
    const double last = std::log(ducts::damper_coefficient(ducts::most_damper_angle));
    const double share =
        std::min(1.0, (degrees - ducts::most_damper_angle) / (shut_damper - ducts::most_damper_angle));
    return std::exp(last + share * (std::log(shut_coefficient) - last));
}

}  // namespace network
