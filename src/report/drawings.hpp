// Answers as drawings: SVG of 900 pixels across, to scale, readable in black and white. The same answer gives
// the same bytes.
#pragma once

#include <string>

#include "questions/answer_place.hpp"
#include "units/write.hpp"

namespace report {

// The plan of the room with every place, numbered as in the table of place_page. Empty of a room without a
// plan.
std::string place_svg(const questions::PlaceAnswer& answer, units::System system);

}  // namespace report
