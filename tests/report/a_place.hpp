// An answer about places, filled in by hand: a bath with a tub and a window over a joist.
#pragma once

#include "questions/answer_place.hpp"

namespace report_test {

// Four places that can be built (under the window, toe kick, inside wall, ceiling) and five that cannot.
questions::PlaceAnswer bath_places();

}  // namespace report_test
