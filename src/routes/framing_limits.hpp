// How much of a joist or stud codes let be cut away.
//
// Joist (sawn lumber): hole at most a third of the depth and 2 in from top, bottom, any other hole or notch;
// notch in the outer thirds of the span at most a sixth of the depth deep and a third long; notch at the end
// at most a quarter deep. Stud: notch and hole as shares of its width, with 5/8 in of wood left at each face
// beside a hole; bearing studs less. Source: International Residential Code R502.8.1 and R602.6 (2018, read).
// Local codes decide; trusses and engineered wood are only cut as their maker or an engineer allows. Exact.
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace routes {

inline constexpr loads::Method joist_limits_method{"hole and notch in a joist",
                                                   "depth / 3, and 2 in from each edge; depth / 6",
                                                   "International Residential Code R502.8.1"};

struct JoistLimits {
    units::Length hole, notch_depth, notch_length, end_notch;
};
JoistLimits joist_limits(units::Length depth);

struct StudLimits {
    units::Length notch, hole;
    units::Length hole_if_doubled;  // no more than two doubled studs in a row
};
StudLimits stud_limits(units::Length width, bool bearing);

}  // namespace routes
