#include "units/unit_words.hpp"

#include "units/unit.hpp"

namespace units {
namespace {

constexpr std::array length_units{
    UnitWord{"ft", {"ft", "'", "foot", "feet"}, unit::foot.si()},
    UnitWord{"in", {"in", "\"", "''", "inch", "inches"}, unit::inch.si()},
    UnitWord{"m", {"m", "metre", "metres", "meter", "meters"}, unit::metre.si()},
    UnitWord{"cm", {"cm"}, unit::centimetre.si()},
    UnitWord{"mm", {"mm"}, unit::millimetre.si()},
};
constexpr std::array area_units{
    UnitWord{"ft2", {"ft2", "sqft", "squarefeet", "squarefoot"}, unit::square_foot.si()},
    UnitWord{"m2", {"m2", "sqm"}, unit::square_metre.si()},
    UnitWord{"in2", {"in2", "sqin"}, unit::square_inch.si()},
    UnitWord{"cm2", {"cm2", "sqcm"}, unit::square_centimetre.si()},
};
constexpr std::array volume_units{
    UnitWord{"gal", {"gal", "gallon", "gallons"}, unit::gallon.si()},
    UnitWord{"ft3", {"ft3", "cuft", "cubicfeet", "cubicfoot"}, unit::cubic_foot.si()},
    UnitWord{"L", {"l", "litre", "litres", "liter", "liters"}, unit::litre.si()},
    UnitWord{"m3", {"m3"}, unit::cubic_metre.si()},
};
constexpr std::array duration_units{
    UnitWord{"s", {"s", "sec", "secs", "second", "seconds"}, unit::second.si()},
    UnitWord{"min", {"min", "minute", "minutes"}, unit::minute.si()},
};
constexpr std::array airflow_units{
    UnitWord{"cfm", {"cfm", "ft3/min", "cuft/min"}, unit::cfm.si()},
    UnitWord{"L/s", {"l/s", "lps"}, unit::litre_per_second.si()},
    UnitWord{"m3/h", {"m3/h", "m3/hr", "cmh"}, unit::cubic_metre_per_hour.si()},
    UnitWord{"m3/s", {"m3/s"}, unit::cubic_metre_per_second.si()},
};
constexpr std::array velocity_units{
    UnitWord{"ft/min", {"ft/min", "fpm"}, unit::foot_per_minute.si()},
    UnitWord{"m/s", {"m/s", "m/sec"}, unit::metre_per_second.si()},
};
constexpr std::array pressure_units{
    UnitWord{
        "in.wc", {"inwc", "inwg", "inh2o", "iwc", "iwg", "\"wc", "\"wg", "''wc", "''wg"}, unit::inch_wc.si()},
    UnitWord{"Pa", {"pa"}, unit::pascal.si()},
    UnitWord{"kPa", {"kpa"}, 1000 * unit::pascal.si()},
};
constexpr std::array friction_rate_units{
    UnitWord{"in.wc/100 ft",
             {"inwc/100ft", "inwg/100ft", "inwcper 100ft", "inwgper 100ft", "iwc/100ft", "\"wc/100ft",
              "\"wg/100ft", "inwc/100'", "\"wc/100'"},
             unit::inch_wc_per_100_ft.si()},
    UnitWord{"Pa/m", {"pa/m"}, unit::pascal_per_metre.si()},
};
constexpr std::array temperature_units{
    UnitWord{"F", {"f", "fahrenheit", "degreesf"}, unit::fahrenheit_degree.si(), 459.67},
    UnitWord{"C", {"c", "celsius", "degreesc"}, unit::kelvin.si(), 273.15},
    UnitWord{"K", {"k", "kelvin"}, unit::kelvin.si()},
};
constexpr std::array temperature_difference_units{
    UnitWord{"F", {"f", "fahrenheit", "degreesf"}, unit::fahrenheit_degree.si()},
    UnitWord{"K", {"k", "kelvin"}, unit::kelvin.si()},
    UnitWord{"C", {"c", "celsius", "degreesc"}, unit::kelvin.si()},
};
constexpr std::array power_units{
    UnitWord{"Btu/h", {"btu/h", "btuh", "btu/hr"}, unit::btu_per_hour.si()},
    UnitWord{"kBtu/h", {"kbtu/h", "kbtuh", "kbtu/hr", "mbh"}, 1000 * unit::btu_per_hour.si()},
    UnitWord{"W", {"w", "watt", "watts"}, unit::watt.si()},
    UnitWord{"kW", {"kw"}, unit::kilowatt.si()},
};
constexpr std::array resistance_units{
    UnitWord{"h.ft2.F/Btu",
             {"hft2f/btu", "hrft2f/btu", "ft2hf/btu", "ft2hrf/btu", "ft2fh/btu", "hsqftf/btu", "sqfthf/btu"},
             unit::r_value_us.si()},
    UnitWord{"m2K/W", {"m2k/w", "m2c/w", "km2/w"}, unit::square_metre_kelvin_per_watt.si()},
};
constexpr std::array transmittance_units{
    UnitWord{"Btu/h.ft2.F",
             {"btu/hft2f", "btu/hrft2f", "btu/ft2hf", "btu/ft2hrf", "btu/hsqftf", "btuh/ft2f", "btu/h/ft2/f"},
             unit::btu_per_hour_square_foot_fahrenheit.si()},
    UnitWord{"W/m2K", {"w/m2k", "w/m2c", "w/m2/k"}, unit::watt_per_square_metre_kelvin.si()},
};
constexpr std::array leakage_test_units{
    UnitWord{"ACH50", {"ach50", "ach 50", "ach@50pa"}, unit::per_hour.si()}};
constexpr std::array air_change_units{UnitWord{"ACH", {"ach", "/h"}, unit::per_hour.si()}};
constexpr std::array fraction_units{UnitWord{"%", {"%", "percent"}, 0.01}};
constexpr std::array angle_units{UnitWord{"deg", {"deg", "degree", "degrees"}}};

}  // namespace

namespace words {

constexpr QuantityWords length{.name = "length",
                               .one = "a length",
                               .remedy = "write a length, as 12 ft 6-1/2 in, 3.8 m or 95 mm",
                               .units = length_units,
                               .lowest = {},
                               .highest = {1e4, "is more than 10 km"}};
constexpr QuantityWords two_lengths{.name = "length",
                                    .one = "a length",
                                    .remedy = "write two lengths, as 8 x 16 in, 3-1/4 x 10 in or 80 x 250 mm",
                                    .units = length_units,
                                    .lowest = {},
                                    .highest = {1e4, "is more than 10 km"}};
constexpr QuantityWords area{.name = "area",
                             .one = "an area",
                             .remedy = "write an area, as 1150 ft2 or 107 m2",
                             .units = area_units,
                             .lowest = {},
                             .highest = {1e6, "is more than 1 km2"}};
constexpr QuantityWords volume{.name = "volume",
                               .one = "a volume",
                               .remedy = "write a volume, as 30 gal, 4 ft3 or 110 L",
                               .units = volume_units,
                               .lowest = {},
                               .highest = {1e6, "is more than 1000000 m3"}};
constexpr QuantityWords duration{.name = "time",
                                 .one = "a time",
                                 .remedy = "write a time, as 3.1 s or 2 min",
                                 .units = duration_units,
                                 .lowest = {},
                                 .highest = {36000, "is more than 600 min"}};
constexpr QuantityWords airflow{.name = "airflow",
                                .one = "an airflow",
                                .remedy = "write an airflow, as 120 cfm, 57 L/s or 200 m3/h",
                                .units = airflow_units,
                                .lowest = {},
                                .highest = {1000, "is more than 1000 m3/s"}};
constexpr QuantityWords velocity{.name = "velocity",
                                 .one = "a velocity",
                                 .remedy = "write a velocity, as 600 ft/min or 3 m/s",
                                 .units = velocity_units,
                                 .lowest = {},
                                 .highest = {1000, "is more than 1000 m/s"}};
constexpr QuantityWords pressure{.name = "pressure",
                                 .one = "a pressure",
                                 .remedy = "write a pressure, as 0.08 in.wc or 20 Pa",
                                 .units = pressure_units,
                                 .lowest = {-1000000.4, "is less than -1000 kPa"},
                                 .highest = {1000000.4, "is more than 1000 kPa"},
                                 .takes_sign = true};
constexpr QuantityWords friction_rate{.name = "friction rate",
                                      .one = "a friction rate",
                                      .remedy = "write a friction rate, as 0.08 in.wc/100 ft or 0.65 Pa/m",
                                      .units = friction_rate_units,
                                      .lowest = {},
                                      .highest = {100000.004, "is more than 100000 Pa/m"}};
constexpr QuantityWords temperature{.name = "temperature",
                                    .one = "a temperature",
                                    .remedy = "write a temperature, as 70 F or 21 C",
                                    .units = temperature_units,
                                    .lowest = {0, "is below absolute zero"},
                                    .highest = {3033.2, "is more than 5000 F"},
                                    .takes_sign = true};
constexpr QuantityWords temperature_difference{.name = "temperature difference",
                                               .one = "a temperature difference",
                                               .remedy = "write a temperature difference, as 61 F or 34 K",
                                               .units = temperature_difference_units,
                                               .lowest = {-5000.1, "is less than -5000 K"},
                                               .highest = {5000.1, "is more than 5000 K"},
                                               .takes_sign = true};
constexpr QuantityWords power{.name = "power",
                              .one = "a power",
                              .remedy = "write a power, as 64000 Btu/h, 18.8 kW or 400 W",
                              .units = power_units,
                              .lowest = {},
                              .highest = {1e9, "is more than 1000000 kW"}};
constexpr QuantityWords resistance{
    .name = "thermal resistance",
    .one = "a thermal resistance",
    .remedy = "write a thermal resistance, as R-11, 11 h.ft2.F/Btu or 1.9 m2K/W",
    .units = resistance_units,
    .lowest = {},
    .highest = {500, "is more than 500 m2K/W"}};
constexpr QuantityWords transmittance{.name = "transmittance",
                                      .one = "a transmittance",
                                      .remedy = "write a transmittance, as 0.23 Btu/h.ft2.F or 1.3 W/m2K",
                                      .units = transmittance_units,
                                      .lowest = {},
                                      .highest = {1000, "is more than 1000 W/m2K"}};
constexpr QuantityWords leakage_test{.name = "leakage test",
                                     .one = "a leakage test",
                                     .remedy = "write a leakage test, as 14 ACH50",
                                     .units = leakage_test_units,
                                     .lowest = {},
                                     .highest = {1000 * unit::per_hour.si(), "is more than 1000 ACH50"}};
constexpr QuantityWords air_change{.name = "air change",
                                   .one = "an air change",
                                   .remedy = "write an air change, as 2 ACH",
                                   .units = air_change_units,
                                   .lowest = {},
                                   .highest = {100 * unit::per_hour.si(), "is more than 100 ACH"}};
constexpr QuantityWords fraction{.name = "fraction",
                                 .one = "a fraction",
                                 .remedy = "write a fraction from 0 to 1 or a percentage, as 0.8 or 80 %",
                                 .units = fraction_units,
                                 .lowest = {},
                                 .highest = {1, "is more than 1"}};
constexpr QuantityWords angle{.name = "angle",
                              .one = "an angle",
                              .remedy = "write an angle, as 90 deg or -12 deg",
                              .units = angle_units,
                              .lowest = {-360, "is less than -360 deg"},
                              .highest = {360, "is more than 360 deg"},
                              .takes_sign = true};

}  // namespace words

}  // namespace units
