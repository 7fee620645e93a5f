// Feeds any text to every reader: a reading is finite and survives being written and read again; a problem
// says something and points inside the text.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <utility>

#include "units/read.hpp"
#include "units/write.hpp"

namespace {

using namespace units;

void require(bool holds) {
    if (!holds) std::abort();
}

bool is_finite_value(double value) { return std::isfinite(value); }
bool is_finite_value(Angle value) { return std::isfinite(value.degrees); }
bool is_finite_value(LeakageTest value) { return is_finite(value.at_50_pascal); }
bool is_finite_value(const std::pair<Length, Length>& value) {
    return is_finite(value.first) && is_finite(value.second);
}
template <class Q>
bool is_finite_value(Q value) {
    return is_finite(value);
}

// A text has at most as many code points as bytes.
template <class Q>
const Q* checked(const Reading<Q>& reading, std::string_view text) {
    if (const ReadProblem* problem = std::get_if<ReadProblem>(&reading)) {
        require(!problem->text.empty() && !problem->remedy.empty());
        require(problem->offset >= 0 && problem->length >= 0);
        require(static_cast<std::size_t>(problem->offset) + static_cast<std::size_t>(problem->length) <=
                text.size());
        return nullptr;
    }
    const Q* value = std::get_if<Q>(&reading);
    require(is_finite_value(*value));
    return value;
}

template <class Q>
void survives(Q value, Reading<Q> (*read)(std::string_view), System system) {
    const std::string text = write(value, system).text();
    const Reading<Q> again = read(text);
    const Q* found = checked(again, text);
    require(found && write(*found, system).text() == text);
}

template <class Q>
void feed(std::string_view text, Reading<Q> (*read)(std::string_view)) {
    const Reading<Q> reading = read(text);
    const Q* value = checked(reading, text);
    if (!value) return;
    survives(*value, read, System::us);
    survives(*value, read, System::si);
}

void feed_leakage_test(std::string_view text) {
    const Reading<LeakageTest> reading = read_leakage_test(text);
    const LeakageTest* value = checked(reading, text);
    if (!value) return;
    const std::string written = write(*value).text();
    const Reading<LeakageTest> again = read_leakage_test(written);
    const LeakageTest* found = checked(again, written);
    require(found && write(*found).text() == written);
}

void feed_two_lengths(std::string_view text) {
    const Reading<std::pair<Length, Length>> reading = read_two_lengths(text);
    const std::pair<Length, Length>* both = checked(reading, text);
    if (!both) return;
    survives(both->first, read_length, System::us);
    survives(both->second, read_length, System::si);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string bytes(data, data + size);
    const std::string_view text(bytes);
    feed(text, read_length);
    feed(text, read_area);
    feed(text, read_airflow);
    feed(text, read_velocity);
    feed(text, read_pressure);
    feed(text, read_friction_rate);
    feed(text, read_temperature);
    feed(text, read_temperature_difference);
    feed(text, read_power);
    feed(text, read_resistance);
    feed(text, read_transmittance);
    feed_leakage_test(text);
    feed_two_lengths(text);
    checked(read_fraction(text), text);
    checked(read_angle(text), text);
    return 0;
}
