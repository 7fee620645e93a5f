#include "loads/window_gain.hpp"

#include "loads/inside_shades.hpp"
#include "loads/materials.hpp"
#include "loads/named_rows.hpp"
#include "loads/overhang.hpp"

namespace loads {
namespace {

constexpr double behind_a_screen = 0.64;
// From north by way of east, an eighth of a turn each; detached houses.
constexpr double load_factors[] = {0.44, 0.21, 0.31, 0.37, 0.47, 0.58, 0.56, 0.46};
constexpr double flat_load_factor = 0.58;
constexpr int eighths = 8;

double solar_gain(const house::Sunlit& sun) {
    if (sun.shgc > 0 || !sun.glass) return sun.shgc;
    return found_or_throw(look_up_glass(*sun.glass)).shgc;
}

double when_closed(const house::Sunlit& sun) {
    if (!sun.shade) return 1;
    return left_when_closed(found_or_throw(look_up_shade(*sun.shade)),
                            sun.glass ? std::string_view(sun.glass->text) : std::string_view());
}

}  // namespace

double solar_load_factor(double azimuth, double latitude) {
    const double position = northern_azimuth(azimuth, latitude) / 360 * eighths;
    const int first = static_cast<int>(position) % eighths;
    const double way = position - static_cast<int>(position);
    return (1 - way) * load_factors[first] + way * load_factors[(first + 1) % eighths];
}

WindowGain window_gain(const house::Surface& window, double latitude) {
    WindowGain gain;
    if (!window.sun) return gain;
    const house::Sunlit& sun = *window.sun;
    gain.azimuth = sun.azimuth;
    gain.turned = turned_from_pole(sun.azimuth, latitude);
    gain.flat = sun.flat;
    gain.sun = sun.flat ? peak_irradiance_on_the_flat(latitude) : peak_irradiance(sun.azimuth, latitude);
    if (!sun.flat)
        gain.shaded = shaded_share({sun.overhang, sun.overhang_above, sun.height}, sun.azimuth, latitude);
    if (sun.screen) gain.screen = behind_a_screen;
    gain.shgc = solar_gain(sun);
    gain.when_closed = when_closed(sun);
    gain.shade = left_by_shade(gain.when_closed, sun.shade_closed);
    gain.load_factor = sun.flat ? flat_load_factor : solar_load_factor(sun.azimuth, latitude);
    return gain;
}

}  // namespace loads
