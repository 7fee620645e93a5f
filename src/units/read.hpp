// Reads quantities as people write them: "12 ft 6-1/2 in", "0.08 in.wc", "R-11", "14 ACH50".
//
// Each reader takes the whole text and gives the quantity or a ReadProblem that points at the offending part
// and names the units that fit. Numbers: decimals ("3.8", "1e3"), fractions ("1/2", "½"), mixed numbers
// ("6-1/2", "6 1/2"), signs only where a sign makes sense; thousands commas ("64,000"). Feet before inches
// are whole, inches after feet less than 12. Values beyond all measure are refused, as a length beyond 10 km
// or a temperature below absolute zero (units/unit_words.cpp). Never locale dependent, never NaN or infinity,
// never throws. Texts longer than 200 bytes are refused.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <variant>

#include "units/quantity.hpp"

namespace units {

// What is wrong with a text, and where: offset and length count code points from the start of the text.
struct ReadProblem {
    std::string text;    // "\"cfms\" is not a unit of airflow"
    std::string remedy;  // "did you mean \"cfm\"?" or "write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm"
    int offset = 0;
    int length = 0;
};

template <class Q>
using Reading = std::variant<Q, ReadProblem>;

// A count of air changes per hour at 50 Pa, as a blower-door test gives it.
struct LeakageTest {
    AirChange at_50_pascal;
};

// An angle in degrees.
struct Angle {
    double degrees = 0;
};

Reading<Length> read_length(std::string_view text);  // 12 ft 6-1/2 in | 12' 6" | 3.8 m | 95 mm | 38 cm
// 8 x 16 in | 3-1/4 x 10 in | 80 x 250 mm
Reading<std::pair<Length, Length>> read_two_lengths(std::string_view text);
Reading<Area> read_area(std::string_view text);                   // 1150 ft2 | 107 m2
Reading<Volume> read_volume(std::string_view text);               // 30 gal | 4 ft3 | 110 L
Reading<Duration> read_duration(std::string_view text);           // 3.1 s | 2 min
Reading<Airflow> read_airflow(std::string_view text);             // 120 cfm | 57 L/s | 200 m3/h
Reading<Velocity> read_velocity(std::string_view text);           // 600 ft/min | 600 fpm | 3 m/s
Reading<Pressure> read_pressure(std::string_view text);           // 0.08 in.wc | 0.08 in.wg | 20 Pa
Reading<FrictionRate> read_friction_rate(std::string_view text);  // 0.08 in.wc/100 ft | 0.65 Pa/m
Reading<Temperature> read_temperature(std::string_view text);     // 70 F | 21 C | -3.5 °C
Reading<TemperatureDifference> read_temperature_difference(std::string_view text);  // 61 F | 34 K | 34 C
Reading<Power> read_power(std::string_view text);                  // 64000 Btu/h | 18.8 kW | 400 W
Reading<Resistance> read_resistance(std::string_view text);        // R-11 | 11 h.ft2.F/Btu | 1.9 m2K/W
Reading<Transmittance> read_transmittance(std::string_view text);  // 0.23 Btu/h.ft2.F | 1.3 W/m2K
Reading<LeakageTest> read_leakage_test(std::string_view text);     // 14 ACH50
Reading<AirChange> read_air_change(std::string_view text);         // 2 ACH
Reading<double> read_fraction(std::string_view text);              // 80 % | 0.8 -> 0.8, from 0 to 1 inclusive
Reading<Angle> read_angle(std::string_view text);                  // 90 deg | -12 deg

}  // namespace units
