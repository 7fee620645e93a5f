// How much of a window the shadow of an overhang covers in the hours that matter.
//
//     shaded share = (shade line factor x depth - height above the window) / height of the window, 0 to 1
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29 and table 12 (21 July). Changed: between the
// table's latitudes and azimuths in straight lines. The row of the north falls unevenly with latitude and is
// as read. Range: latitude 20 to 60, the nearest column beyond; an overhang much wider than its window.
// Accuracy: +-0.1 of the share (estimate).
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method overhang_method{"share of the window in shadow",
                                        "(shade line factor x depth - height above the window) / height",
                                        "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 24-29, table 12"};

struct Overhang {
    units::Length depth, above, window_height;
};

// Drop of the shadow per depth of the overhang.
double shade_line_factor(double azimuth, double latitude);
double shaded_share(const Overhang& overhang, double azimuth, double latitude);

}  // namespace loads
