#include "units/read.hpp"

#include "units/measure_reader.hpp"
#include "units/unit.hpp"

namespace units {
namespace {

template <class Q>
Reading<Q> typed(const Reading<double>& reading) {
    if (const double* si = std::get_if<double>(&reading)) return Q{*si};
    return std::get<ReadProblem>(reading);
}

Reading<double> read_text(std::string_view text, const QuantityWords& quantity,
                          const UnitWord* unit_if_none = nullptr) {
    if (is_too_long(text)) return too_long(text, quantity);
    const PlainText plain(text);
    return read_measure(plain.all().trimmed(), quantity, unit_if_none);
}

// How much of the text is the R of an R-value: "R-", "R " or "R" before a number; 0 when it is not one.
std::size_t r_prefix_size(std::string_view text) {
    if (text.empty() || (text[0] != 'R' && text[0] != 'r')) return 0;
    return text.size() > 1 && (text[1] == '-' || text[1] == ' ') ? 2 : 1;
}

Reading<double> read_r_value(const Excerpt& text, std::size_t prefix) {
    const Reading<Number> count = read_count(text.from(prefix), words::resistance);
    const Number* number = std::get_if<Number>(&count);
    if (!number) return std::get<ReadProblem>(count);

    const Excerpt extra = text.from(prefix + number->size).trimmed();
    if (!extra.view().empty()) {
        return extra.problem(
            extra.quoted() + " is left over after " + text.first(prefix + number->size).quoted(),
            words::resistance.remedy);
    }
    return within_limits(text, number->value * unit::r_value_us.si(), words::resistance);
}

}  // namespace

Reading<Area> read_area(std::string_view text) { return typed<Area>(read_text(text, words::area)); }

Reading<Volume> read_volume(std::string_view text) { return typed<Volume>(read_text(text, words::volume)); }

Reading<Duration> read_duration(std::string_view text) {
    return typed<Duration>(read_text(text, words::duration));
}

Reading<Airflow> read_airflow(std::string_view text) {
    return typed<Airflow>(read_text(text, words::airflow));
}

Reading<Velocity> read_velocity(std::string_view text) {
    return typed<Velocity>(read_text(text, words::velocity));
}

Reading<Pressure> read_pressure(std::string_view text) {
    return typed<Pressure>(read_text(text, words::pressure));
}

Reading<FrictionRate> read_friction_rate(std::string_view text) {
    return typed<FrictionRate>(read_text(text, words::friction_rate));
}

Reading<Temperature> read_temperature(std::string_view text) {
    return typed<Temperature>(read_text(text, words::temperature));
}

Reading<TemperatureDifference> read_temperature_difference(std::string_view text) {
    return typed<TemperatureDifference>(read_text(text, words::temperature_difference));
}

Reading<Power> read_power(std::string_view text) { return typed<Power>(read_text(text, words::power)); }

Reading<Resistance> read_resistance(std::string_view text) {
    if (is_too_long(text)) return too_long(text, words::resistance);
    const PlainText plain(text);
    const Excerpt whole = plain.all().trimmed();
    const std::size_t prefix = r_prefix_size(whole.view());
    return typed<Resistance>(prefix == 0 ? read_measure(whole, words::resistance)
                                         : read_r_value(whole, prefix));
}

Reading<Transmittance> read_transmittance(std::string_view text) {
    return typed<Transmittance>(read_text(text, words::transmittance));
}

Reading<LeakageTest> read_leakage_test(std::string_view text) {
    const Reading<AirChange> reading = typed<AirChange>(read_text(text, words::leakage_test));
    if (const AirChange* found = std::get_if<AirChange>(&reading)) return LeakageTest{*found};
    return std::get<ReadProblem>(reading);
}

Reading<AirChange> read_air_change(std::string_view text) {
    return typed<AirChange>(read_text(text, words::air_change));
}

Reading<double> read_fraction(std::string_view text) {
    constexpr UnitWord plain_number{};
    return read_text(text, words::fraction, &plain_number);
}

Reading<Angle> read_angle(std::string_view text) { return typed<Angle>(read_text(text, words::angle)); }

}  // namespace units
