// The shape of a duct as it is written: "6 in", "8 x 16 in", "8 x 16 in oval". A width may be zero
// or less: its reader blames that.
#pragma once

#include <string_view>

#include "house/shape.hpp"
#include "units/read.hpp"

namespace sheet {

units::Reading<house::Shape> read_shape_text(std::string_view text);

}  // namespace sheet
