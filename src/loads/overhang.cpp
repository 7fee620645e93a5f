#include "loads/overhang.hpp"

#include <algorithm>
#include <cmath>

#include "loads/peak_irradiance.hpp"

namespace loads {
namespace {

constexpr int latitudes = 9, azimuths = 5;
constexpr double first_latitude = 20, latitude_step = 5;
// From the pole's side to the equator's, in eighths of a turn; from 20 to 60 degrees of latitude.
constexpr double factors[azimuths][latitudes] = {
    {2.8, 2.1, 1.4, 1.5, 1.7, 1.0, 0.8, 0.9, 0.8},  // north
    {1.4, 1.5, 1.6, 1.2, 1.3, 1.3, 0.9, 0.9, 0.8},
    {1.2, 1.2, 1.1, 1.1, 1.1, 1.0, 1.0, 0.9, 0.8},  // east and west
    {2.1, 1.8, 2.0, 1.7, 1.5, 1.6, 1.4, 1.2, 1.1},
    {20.0, 14.0, 6.9, 4.7, 3.3, 2.7, 2.1, 1.7, 1.4},  // south
};

struct Between {
    int first;
    double way;  // to the one after it
};
Between place(double position, int count) {
    const double inside = std::clamp(position, 0.0, count - 1.0);
    const int first = std::min(static_cast<int>(inside), count - 2);
    return {first, inside - first};
}

double along(const double (&row)[latitudes], Between at) {
    return (1 - at.way) * row[at.first] + at.way * row[at.first + 1];
}

}  // namespace

double shade_line_factor(double azimuth, double latitude) {
    const Between column = place((std::abs(latitude) - first_latitude) / latitude_step, latitudes);
    const Between row = place(turned_from_pole(azimuth, latitude) * (azimuths - 1), azimuths);
    return (1 - row.way) * along(factors[row.first], column) +
           row.way * along(factors[row.first + 1], column);
}

double shaded_share(const Overhang& overhang, double azimuth, double latitude) {
    if (overhang.depth <= units::Length() || overhang.window_height <= units::Length()) return 0;
    const units::Length shadow = shade_line_factor(azimuth, latitude) * overhang.depth - overhang.above;
    return std::clamp(shadow / overhang.window_height, 0.0, 1.0);
}

}  // namespace loads
