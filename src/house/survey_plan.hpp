// The sheet as written, continued from house/survey.hpp: what the plan of a room shows beside its walls.
#pragma once

#include <optional>
#include <string>

#include "house/place.hpp"
#include "house/shape.hpp"
#include "house/words.hpp"

namespace house {

struct SurveyFixture {  // [[room.fixture]]
    Place place;
    Maybe<std::string> name;
    Maybe<FixtureKind> kind;
    Maybe<Two> corner, size;  // its south-west corner, from that of the room; west-east, south-north
};

// "in, hinged west", "slides".
struct SurveySwing {
    DoorHanging hanging = DoorHanging::none;
    std::optional<WallSide> hinged;  // at which end of the door; empty where it slides or has no leaf
};

}  // namespace house
