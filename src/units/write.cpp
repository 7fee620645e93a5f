#include "units/write.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "units/unit.hpp"

namespace units {
namespace {

// Halves away from zero. Changing units may leave a typed half a hair below the half; the nudge, far below
// anything that can be measured, makes it a half again.
double nearest_whole(double value) {
    constexpr double nudge = 1e-9;
    return std::copysign(std::round(std::abs(value) + nudge), value);
}

double nearest_multiple(double value, double step) { return nearest_whole(value / step) * step; }

std::string without_last_zero(std::string tenths) {
    if (tenths.ends_with(".0")) tenths.resize(tenths.size() - 2);
    return tenths;
}

std::string inches_text(int eighths) {
    constexpr std::array<std::string_view, 8> parts{"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
    const int whole = eighths / 8;
    const std::string_view part = parts.at(static_cast<std::size_t>(eighths % 8));
    if (part.empty()) return fmt::format("{} in", whole);
    return whole == 0 ? fmt::format("{} in", part) : fmt::format("{}-{} in", whole, part);
}

std::string feet_and_inches(Length value) {
    if (!is_finite(value)) return "?";
    constexpr double eighths_per_foot = 96;
    const double eighths = nearest_whole(abs(value) / unit::inch * 8);
    const double feet = std::floor(eighths / eighths_per_foot);
    const int rest = static_cast<int>(std::fmod(eighths, eighths_per_foot));
    const std::string sign = value < Length() && eighths > 0 ? "-" : "";
    if (feet == 0) return sign + inches_text(rest);
    return sign + decimal(feet, 0) + (rest == 0 ? " ft" : " ft " + inches_text(rest));
}

}  // namespace

std::string Written::text() const { return unit.empty() ? number : number + " " + unit; }

std::string decimal(double value, int digits) {
    if (!std::isfinite(value)) return "?";
    const double scale = std::pow(10.0, digits);
    const double rounded = nearest_whole(value * scale) / scale;
    if (rounded == 0) return fmt::format("{:.{}f}", 0.0, digits);
    return fmt::format("{:.{}f}", std::isfinite(rounded) ? rounded : value, digits);
}

Written write(Length value, System system) {
    if (system == System::us) return {feet_and_inches(value), ""};
    const double millimetres = nearest_multiple(value / unit::millimetre, 5);
    if (std::abs(millimetres) < 1000) return {decimal(millimetres, 0), "mm"};
    return {decimal(value / unit::metre, 2), "m"};
}

Written write(Area value, System system) {
    if (system == System::us) return {decimal(value / unit::square_foot, 1), "ft2"};
    return {decimal(value / unit::square_metre, 2), "m2"};
}

Written write(Airflow value, System system) {
    if (system == System::us) return {decimal(value / unit::cfm, 0), "cfm"};
    return {decimal(value / unit::litre_per_second, 0), "L/s"};
}

Written write(Velocity value, System system) {
    if (system == System::us)
        return {decimal(nearest_multiple(value / unit::foot_per_minute, 10), 0), "ft/min"};
    return {decimal(value / unit::metre_per_second, 1), "m/s"};
}

Written write(Pressure value, System system) {
    if (system == System::us) return {decimal(value / unit::inch_wc, 3), "in.wc"};
    const double pascals = value / unit::pascal;
    const bool in_tenths = std::abs(nearest_whole(pascals * 10)) < 100;
    return {decimal(pascals, in_tenths ? 1 : 0), "Pa"};
}

Written write(FrictionRate value, System system) {
    if (system == System::us) return {decimal(value / unit::inch_wc_per_100_ft, 3), "in.wc/100 ft"};
    return {decimal(value / unit::pascal_per_metre, 2), "Pa/m"};
}

// Rounding absolute zero to whole F would go below it, to a temperature that cannot be read.
Written write(Temperature value, System system) {
    constexpr double coldest_whole_fahrenheit = -459;
    if (system == System::us)
        return {decimal(std::max(unit::in_fahrenheit(value), coldest_whole_fahrenheit), 0), "F"};
    return {without_last_zero(decimal(nearest_multiple(unit::in_celsius(value), 0.5), 1)), "C"};
}

Written write(TemperatureDifference value, System system) {
    if (system == System::us) return {decimal(value / unit::fahrenheit_degree, 0), "F"};
    return {without_last_zero(decimal(nearest_multiple(value / unit::kelvin, 0.5), 1)), "K"};
}

Written write(Power value, System system) {
    if (system == System::us) return {decimal(nearest_multiple(value / unit::btu_per_hour, 10), 0), "Btu/h"};
    return {decimal(nearest_multiple(value / unit::watt, 5), 0), "W"};
}

Written write(HeatFlux value, System system) {
    if (system == System::us) return {decimal(value / unit::btu_per_hour_square_foot, 1), "Btu/h.ft2"};
    return {decimal(value / unit::watt_per_square_metre, 1), "W/m2"};
}

Written write(Resistance value, System system) {
    if (system == System::us) return {"R-" + without_last_zero(decimal(value / unit::r_value_us, 1)), ""};
    return {decimal(value / unit::square_metre_kelvin_per_watt, 2), "m2K/W"};
}

Written write(Transmittance value, System system) {
    if (system == System::us) {
        return {decimal(value / unit::btu_per_hour_square_foot_fahrenheit, 3), "Btu/h.ft2.F"};
    }
    return {decimal(value / unit::watt_per_square_metre_kelvin, 2), "W/m2K"};
}

Written write(Conductivity value, System system) {
    if (system == System::us) return {decimal(value / unit::btu_per_hour_foot_fahrenheit, 2), "Btu/h.ft.F"};
    return {decimal(value.si(), 2), "W/mK"};
}

Written write(LeakageTest value) {
    return {without_last_zero(decimal(value.at_50_pascal / unit::per_hour, 1)), "ACH50"};
}

}  // namespace units
