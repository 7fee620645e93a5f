#include "loads/peak_irradiance.hpp"

#include <algorithm>
#include <cmath>

#include "house/cannot_answer.hpp"

namespace loads {
namespace {

constexpr double least_latitude = 20, most_latitude = 60;

double in_range(double latitude) {
    const double from_equator = std::abs(latitude);
    if (from_equator < least_latitude || from_equator > most_latitude)
        throw house::CannotAnswer({}, "the sun's heat is known from 20 to 60 degrees of latitude only");
    return from_equator;
}

}  // namespace

double northern_azimuth(double azimuth, double latitude) {
    const double north = latitude < 0 ? 180 - azimuth : azimuth;
    const double turned = std::fmod(north, 360);
    return turned < 0 ? turned + 360 : turned;
}

double turned_from_pole(double azimuth, double latitude) {
    const double clockwise = northern_azimuth(azimuth, latitude);
    return std::min(clockwise, 360 - clockwise) / 180;
}

Irradiance peak_irradiance(double azimuth, double latitude) {
    const double l = in_range(latitude), f = turned_from_pole(azimuth, latitude);
    const double total = 423.5 + 1240 * f - 5143 * f * f * f + 3191 * f * f * f * f + 35.25 * f * l +
                         0.1427 * f * l * l - 12.89 * l - 0.6172 * l * l + 0.7802 * l * l / (f + 1);
    const double diffuse = 356.3 - 37.73 * f * f + 0.3022 * f * l - 115.9 * std::sqrt(std::sqrt(l)) / (f + 1);
    return {units::HeatFlux(total), units::HeatFlux(std::min(total, diffuse))};
}

Irradiance peak_irradiance_on_the_flat(double latitude) {
    const double l = in_range(latitude);
    const double total = 816.2 + 10.20 * l - 0.1806 * l * l;
    constexpr double diffuse = 170;
    return {units::HeatFlux(total), units::HeatFlux(std::min(total, diffuse))};
}

}  // namespace loads
