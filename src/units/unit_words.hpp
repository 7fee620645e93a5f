// The words people write for units, one table per quantity, with what the problems say about each quantity.
//
// Case, spaces, points, brackets, "^", "*" and the "deg" before F, C or K do not matter: "in. W.C." is "inwc"
// and "W/(m² K)" is "w/m2k". A space before a digit does, so that "1 ft 2" is not an area.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace units {

struct UnitWord {
    std::string_view shown;
    std::array<std::string_view, 10> spellings;  // folded; empty ones fill up
    double factor = 1;                           // si = (count + origin) * factor
    double origin = 0;
};

// What lies beyond si is refused, and the problem says so: "is more than 10 km". Where the limit would round
// up past itself when it is written, si lies a little beyond what the problem names.
struct Limit {
    double si = 0;
    std::string_view problem;
};

struct QuantityWords {
    std::string_view name;  // "airflow"
    std::string_view one;   // "an airflow"
    std::string_view remedy;
    std::span<const UnitWord> units;
    Limit lowest;
    Limit highest;
    bool takes_sign = false;
};

namespace words {
extern const QuantityWords length;
extern const QuantityWords two_lengths;  // the units of a length, with a remedy that shows two
extern const QuantityWords area;
extern const QuantityWords volume;
extern const QuantityWords duration;
extern const QuantityWords airflow;
extern const QuantityWords velocity;
extern const QuantityWords pressure;
extern const QuantityWords friction_rate;
extern const QuantityWords temperature;
extern const QuantityWords temperature_difference;
extern const QuantityWords power;
extern const QuantityWords resistance;
extern const QuantityWords transmittance;
extern const QuantityWords leakage_test;
extern const QuantityWords air_change;
extern const QuantityWords fraction;
extern const QuantityWords angle;
}  // namespace words

// Null when the quantity has no such unit.
const UnitWord* find_unit(const QuantityWords& quantity, std::string_view unit);

// The quantity that has such a unit; null when none has.
const QuantityWords* quantity_measured_in(std::string_view unit);

// The unit of the quantity that the word is likely a slip for; empty when none is near.
std::string nearest_unit(const QuantityWords& quantity, std::string_view unit);

}  // namespace units
