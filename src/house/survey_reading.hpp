// The sheet as written, continued from house/survey.hpp: what was measured.
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "house/place.hpp"
#include "house/shape.hpp"
#include "house/words.hpp"
#include "units/quantity.hpp"

namespace house {

struct SurveyReading {  // [[reading]]
    Place place;
    Maybe<ReadingKind> what;
    Maybe<std::string> at;
    // Of the kind that `what` asks for; a bag takes a time.
    std::optional<Given<std::variant<units::Duration, units::Airflow, units::Pressure,
                                     units::TemperatureDifference, units::Temperature>>>
        value;
    Maybe<Two> bag;               // its size, laid flat
    Maybe<units::Volume> volume;  // instead of that
};

}  // namespace house
