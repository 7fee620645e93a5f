// What holds for every quantity: writing and reading undo each other, to the step that is printed.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>

#include "reading.hpp"
#include "units/unit.hpp"
#include "units/write.hpp"

namespace units {
namespace {

// Evenly spread over the range, and as often near nothing as near the ends.
double any_from(double lowest, double highest) {
    const double share = *rc::gen::inRange(0, 1000001) / 1e6;
    const double power = *rc::gen::inRange(1, 9);
    return lowest + (highest - lowest) * std::pow(share, power);
}

void expect_same_text(const std::string& once, const std::string& twice) { RC_ASSERT(once == twice); }

// Half a step, and what the arithmetic of doubles adds.
void expect_within_half(double difference, double step, double size) {
    RC_ASSERT(std::abs(difference) <= step / 2 + 1e-8 * step + 1e-14 * std::abs(size));
}

template <class Q>
void keeps_to_laws(Q value, Reading<Q> (*read)(std::string_view), System system, double step) {
    const std::string text = write(value, system).text();
    const Reading<Q> reading = read(text);
    RC_ASSERT(std::holds_alternative<Q>(reading));
    const Q found = std::get<Q>(reading);
    expect_same_text(write(found, system).text(), text);
    expect_within_half(found.si() - value.si(), step, value.si());
}

RC_GTEST_PROP(Laws, Length, ()) {
    const Length value(any_from(0, 1e4));
    keeps_to_laws(value, read_length, System::us, unit::inch.si() / 8);
    keeps_to_laws(value, read_length, System::si, value.si() < 0.9975 ? 0.005 : 0.01);
}

RC_GTEST_PROP(Laws, Area, ()) {
    const Area value(any_from(0, 1e6));
    keeps_to_laws(value, read_area, System::us, 0.1 * unit::square_foot.si());
    keeps_to_laws(value, read_area, System::si, 0.01);
}

RC_GTEST_PROP(Laws, Airflow, ()) {
    const Airflow value(any_from(0, 1000));
    keeps_to_laws(value, read_airflow, System::us, unit::cfm.si());
    keeps_to_laws(value, read_airflow, System::si, 0.001);
}

RC_GTEST_PROP(Laws, Velocity, ()) {
    const Velocity value(any_from(0, 1000));
    keeps_to_laws(value, read_velocity, System::us, 10 * unit::foot_per_minute.si());
    keeps_to_laws(value, read_velocity, System::si, 0.1);
}

RC_GTEST_PROP(Laws, Pressure, ()) {
    const double sign = *rc::gen::element(-1.0, 1.0);
    const Pressure value(sign * any_from(0, 1e6));
    keeps_to_laws(value, read_pressure, System::us, 0.001 * unit::inch_wc.si());
    keeps_to_laws(value, read_pressure, System::si, abs(value).si() < 9.95 ? 0.1 : 1.0);
}

RC_GTEST_PROP(Laws, FrictionRate, ()) {
    const FrictionRate value(any_from(0, 1e5));
    keeps_to_laws(value, read_friction_rate, System::us, 0.001 * unit::inch_wc_per_100_ft.si());
    keeps_to_laws(value, read_friction_rate, System::si, 0.01);
}

// From the coldest that rounds to a readable whole F.
RC_GTEST_PROP(Laws, Temperature, ()) {
    const Temperature value(any_from(0.2, 3033.2));
    keeps_to_laws(value, read_temperature, System::us, unit::fahrenheit_degree.si());
    keeps_to_laws(value, read_temperature, System::si, 0.5);
}

RC_GTEST_PROP(Laws, TemperatureDifference, ()) {
    const double sign = *rc::gen::element(-1.0, 1.0);
    const TemperatureDifference value(sign * any_from(0, 5000));
    keeps_to_laws(value, read_temperature_difference, System::us, unit::fahrenheit_degree.si());
    keeps_to_laws(value, read_temperature_difference, System::si, 0.5);
}

RC_GTEST_PROP(Laws, Power, ()) {
    const Power value(any_from(0, 1e9));
    keeps_to_laws(value, read_power, System::us, 10 * unit::btu_per_hour.si());
    keeps_to_laws(value, read_power, System::si, 5);
}

RC_GTEST_PROP(Laws, Resistance, ()) {
    const Resistance value(any_from(0, 500));
    keeps_to_laws(value, read_resistance, System::us, 0.1 * unit::r_value_us.si());
    keeps_to_laws(value, read_resistance, System::si, 0.01);
}

RC_GTEST_PROP(Laws, Transmittance, ()) {
    const Transmittance value(any_from(0, 1000));
    keeps_to_laws(value, read_transmittance, System::us,
                  0.001 * unit::btu_per_hour_square_foot_fahrenheit.si());
    keeps_to_laws(value, read_transmittance, System::si, 0.01);
}

RC_GTEST_PROP(Laws, LeakageTest, ()) {
    const LeakageTest value{any_from(0, 1000) * unit::per_hour};
    const std::string text = write(value).text();
    const Reading<LeakageTest> reading = read_leakage_test(text);
    RC_ASSERT(std::holds_alternative<LeakageTest>(reading));
    const LeakageTest found = std::get<LeakageTest>(reading);
    expect_same_text(write(found).text(), text);
    expect_within_half((found.at_50_pascal - value.at_50_pascal).si(), 0.1 * unit::per_hour.si(),
                       value.at_50_pascal.si());
}

// A tape measure has 64 marks to the inch: every mark reads as exactly so many inches.
RC_GTEST_PROP(Laws, TapeMeasureReadsExactly, ()) {
    const int feet = *rc::gen::inRange(0, 300);
    const int inches = *rc::gen::inRange(0, 12);
    const int marks = *rc::gen::inRange(0, 64);
    const std::string text =
        std::to_string(feet) + " ft " + std::to_string(inches) + "-" + std::to_string(marks) + "/64 in";
    RC_ASSERT(si(read_length(text)) == ((12 * feet + inches + marks / 64.0) * unit::inch).si());
}

RC_GTEST_PROP(Laws, AnyTextReadsOrHasAProblemInsideIt, (const std::string& text)) {
    const Reading<Length> reading = read_length(text);
    if (const ReadProblem* found = std::get_if<ReadProblem>(&reading)) {
        RC_ASSERT(!found->text.empty() && !found->remedy.empty());
        RC_ASSERT(found->offset >= 0 && found->length >= 0);
        RC_ASSERT(static_cast<std::size_t>(found->offset + found->length) <= text.size());
    } else {
        RC_ASSERT(std::get<Length>(reading) >= Length());
    }
}

// The ends of what can be read are written as something that can be read.
template <class Q>
void reads_back(Q limit, Reading<Q> (*read)(std::string_view)) {
    for (const System system : {System::us, System::si}) {
        const std::string text = write(limit, system).text();
        EXPECT_EQ(problem(read(text)), "no problem") << text;
    }
}

TEST(Laws, LimitsReadBack) {
    reads_back(Length(1e4), read_length);
    reads_back(Area(1e6), read_area);
    reads_back(Airflow(1000), read_airflow);
    reads_back(Velocity(1000), read_velocity);
    reads_back(Pressure(1000000.4), read_pressure);
    reads_back(Pressure(-1000000.4), read_pressure);
    reads_back(FrictionRate(100000.004), read_friction_rate);
    reads_back(Temperature(0), read_temperature);
    reads_back(Temperature(3033.2), read_temperature);
    reads_back(TemperatureDifference(5000.1), read_temperature_difference);
    reads_back(TemperatureDifference(-5000.1), read_temperature_difference);
    reads_back(Power(1e9), read_power);
    reads_back(Resistance(500), read_resistance);
    reads_back(Transmittance(1000), read_transmittance);
    EXPECT_EQ(problem(read_leakage_test(write(LeakageTest{1000 * unit::per_hour}).text())), "no problem");
}

}  // namespace
}  // namespace units
