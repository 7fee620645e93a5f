// The sheet as written, continued from house/survey.hpp: heater, blower, devices, and how the ducts leak.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "house/place.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

struct SurveyHeater {
    Place place;
    Maybe<HeaterKind> kind;
    Maybe<units::Power> input, output, cold_output;  // cold_output: on the design night
    Maybe<double> efficiency, duct_loss;
    Maybe<std::pair<units::TemperatureDifference, units::TemperatureDifference>> rise;
    Maybe<units::Pressure> max_static;
    Maybe<bool> adjusted_for_elevation;
    Maybe<std::string> shares_space_with;
};

struct BlowerPoint {
    units::Pressure external_static;
    units::Airflow airflow;
};

struct SurveyBlower {
    Place place;
    std::vector<Given<BlowerPoint>> points;
    Maybe<units::Airflow> measured;
    Maybe<units::Pressure> external_static;  // as measured, while the heater runs
    Maybe<BlowerKind> kind;
    Maybe<units::Pressure> up_to;  // the pressure up to which a motor holds its airflow
    std::vector<Given<DeviceKind>> includes;
};

struct SurveyDevice {
    Place place;
    Maybe<std::string> name;
    Maybe<DeviceKind> kind;
    Maybe<units::Pressure> drop;
    Maybe<units::Airflow> at;
};

// [duct_leakage]: a word, or shares of the airflow, or a test of both sides together.
struct SurveyDuctLeakage {
    Place place;
    Maybe<DuctSealing> sealing;
    Maybe<double> supply, return_side;
    Maybe<units::Airflow> measured;
    Maybe<units::Pressure> at;
};

}  // namespace house
