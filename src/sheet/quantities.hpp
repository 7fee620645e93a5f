// Reads quantities: what each kind is called, a sample of it, and whether it can be zero or less.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <utility>

#include "house/place.hpp"
#include "house/shape.hpp"
#include "sheet/value.hpp"
#include "units/quantity.hpp"
#include "units/read.hpp"

namespace sheet {

enum class Sign { any, not_negative, positive };

template <class Q>
struct Kind {
    units::Reading<Q> (*read)(std::string_view);
    std::string_view several;    // "lengths"
    std::string_view with_unit;  // how a bare number becomes one: "{} ft"
    std::string_view sample;
    Sign sign = Sign::any;
};

inline constexpr Kind<units::Length> any_length{units::read_length, "lengths", "{} ft", "12 ft 6-1/2 in"};
inline constexpr Kind<units::Length> distance{units::read_length, "lengths", "{} ft", "12 ft 6-1/2 in",
                                              Sign::not_negative};
inline constexpr Kind<units::Length> extent{units::read_length, "lengths", "{} ft", "12 ft 6-1/2 in",
                                            Sign::positive};
inline constexpr Kind<units::Length> thickness{units::read_length, "lengths", "{} in", "6 in",
                                               Sign::positive};
inline constexpr Kind<units::Length> gap{units::read_length, "lengths", "{} in", "1/2 in",
                                         Sign::not_negative};
inline constexpr Kind<units::Area> area{units::read_area, "areas", "{} ft2", "1150 ft2", Sign::positive};
inline constexpr Kind<units::Airflow> airflow{units::read_airflow, "airflows", "{} cfm", "120 cfm",
                                              Sign::positive};
inline constexpr Kind<units::Pressure> pressure{units::read_pressure, "pressures", "{} in.wc", "0.5 in.wc",
                                                Sign::not_negative};
inline constexpr Kind<units::Pressure> pressure_above_zero{units::read_pressure, "pressures", "{} in.wc",
                                                           "0.5 in.wc", Sign::positive};
inline constexpr Kind<units::Pressure> pressure_or_suction{units::read_pressure, "pressures", "{} in.wc",
                                                           "0.2 in.wc"};
inline constexpr Kind<units::Volume> volume{units::read_volume, "volumes", "{} gal", "30 gal",
                                            Sign::positive};
inline constexpr Kind<units::Duration> duration{units::read_duration, "times", "{} s", "3.1 s",
                                                Sign::positive};
inline constexpr Kind<units::Temperature> temperature{units::read_temperature, "temperatures", "{} F",
                                                      "70 F"};
inline constexpr Kind<units::TemperatureDifference> temperature_rise{
    units::read_temperature_difference, "temperature rises", "{} F", "40 F", Sign::positive};
inline constexpr Kind<units::Power> power{units::read_power, "outputs", "{} Btu/h", "64000 Btu/h",
                                          Sign::positive};
inline constexpr Kind<units::Resistance> resistance{units::read_resistance, "R-values", "R-{}", "R-11",
                                                    Sign::positive};
inline constexpr Kind<units::Transmittance> transmittance{
    units::read_transmittance, "U-factors", "{} Btu/h.ft2.F", "0.23 Btu/h.ft2.F", Sign::positive};
inline constexpr Kind<units::AirChange> air_change{units::read_air_change, "air changes", "{} ACH", "2 ACH",
                                                   Sign::not_negative};
inline constexpr Kind<units::Airflow> flow_or_none{units::read_airflow, "airflows", "{} cfm", "1180 cfm",
                                                   Sign::not_negative};
inline constexpr Kind<units::Resistance> wrap_resistance{units::read_resistance, "R-values", "R-{}", "R-6",
                                                         Sign::not_negative};
inline constexpr Kind<double> efficiency{units::read_fraction, "shares", "{} %", "80 %", Sign::positive};
// Of a flexible duct's full length.
units::Reading<double> read_stretch(std::string_view text);
inline constexpr Kind<double> stretch{read_stretch, "shares", "{} %", "96 %", Sign::positive};
inline constexpr Kind<double> fraction{units::read_fraction, "shares", "{} %", "20 %"};

inline constexpr Kind<double> solar_share{units::read_fraction, "shares", "{} %", "57 %", Sign::positive};
inline constexpr Kind<units::Angle> angle{units::read_angle, "angles", "{} deg", "42.1 deg"};

// Blames a value that is not text: a bare number needs its unit and quotes.
void blame_not_quoted(const Value& value, std::string_view with_unit, std::string_view sample);
// Blames what is zero or less where it must not be; true where all is well.
bool sign_is_right(const Value& value, double number, Sign sign);

inline double plain(units::Angle turn) { return turn.degrees; }
inline double plain(const house::Shape& shape) { return house::narrowest_side(shape).si(); }
inline double plain(double number) { return number; }
template <class Q>
double plain(Q quantity) {
    return quantity.si();
}

template <class Q>
house::Maybe<Q> read_quantity(const Value& value, const Kind<Q>& kind) {
    if (value.plain_text() == nullptr) {
        blame_not_quoted(value, kind.with_unit, kind.sample);
        return std::nullopt;
    }
    const auto text = value.text('"' + std::string(kind.sample) + '"');
    if (!text) return std::nullopt;
    const units::Reading<Q> reading = kind.read(*text);
    if (const auto* problem = std::get_if<units::ReadProblem>(&reading)) {
        value.blame(*problem);
        return std::nullopt;
    }
    const Q quantity = std::get<Q>(reading);
    if (!sign_is_right(value, plain(quantity), kind.sign)) return std::nullopt;
    return house::Given<Q>{quantity, value.node->place};
}

// Two sides in one text, as the sample: "8 x 16 in".
house::Maybe<std::pair<units::Length, units::Length>> read_sides(const Value& value,
                                                                 std::string_view sample = "8 x 16 in");

// Two of a kind in a list: ["7 ft 6 in", "9 ft"].
template <class Q>
house::Maybe<std::pair<Q, Q>> read_two(const Value& value, const Kind<Q>& kind) {
    const std::string sample = "[\"" + std::string(kind.sample) + "\", \"" + std::string(kind.sample) + "\"]";
    const auto parts = value.list_of(2, "two " + std::string(kind.several), sample);
    if (!parts) return std::nullopt;
    const auto first = read_quantity((*parts)[0], kind);
    const auto second = read_quantity((*parts)[1], kind);
    if (!first || !second) return std::nullopt;
    return house::Given<std::pair<Q, Q>>{{first->value, second->value}, value.node->place};
}

// The same, the smaller first: a rise from least to most, a reach from shortest to longest.
template <class Q>
house::Maybe<std::pair<Q, Q>> read_range(const Value& value, const Kind<Q>& kind) {
    const auto two = read_two(value, kind);
    if (!two || two->value.first <= two->value.second) return two;
    value.blame("runs from more to less", {"", "write the smaller of the two first"});
    return std::nullopt;
}

}  // namespace sheet
