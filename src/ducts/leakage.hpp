// Air that leaks from ducts, by how tightly they are made.
//
//     leak = c x area of the duct's walls x pressure^0.65
//
// European classes A to D by c, each three times as tight as the one before; North American leakage classes
// CL, the cfm that 100 ft2 leak at 1 in.wc. Any pressure, inside less outside: below zero air leaks in.
// Source: EN 1507 and EN 12237 (memory), duct-test equipment manuals and sealant makers' pages for CL (read).
// A class is what a test may find at most; a real duct of a class leaks to half or twice of it (estimate).
#pragma once

#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace ducts {

inline constexpr loads::Method leakage_method{"leakage of a duct", "c x area x pressure^0.65",
                                              "EN 1507, EN 12237; leakage classes of duct tests"};

inline constexpr double leakage_exponent = 0.65;

// A class by what one square metre leaks at one pascal, in m3/s.
struct LeakageClass {
    double at_one_pascal = 0;
};

enum class Airtightness { a, b, c, d };
LeakageClass leakage_class(Airtightness european);
LeakageClass leakage_class(double cl);     // North American, 0 and more
double north_american(LeakageClass made);  // its CL

units::Airflow leakage(LeakageClass made, units::Area area, units::Pressure inside);

}  // namespace ducts
