// The materials and glasses by their trade names, one row each: a new one is a row, never new code.
//
// Sources: "read" was seen in the Handbook, "memory" was not, "derived" follows from other rows. Where the
// Handbook gives a range, its middle. A name with several stock pieces has a row for each.
#include "loads/materials.hpp"
#include "units/unit.hpp"

namespace loads {
namespace {

constexpr double inch = units::unit::inch.si();
constexpr double r_us = units::unit::r_value_us.si();

constexpr std::string_view handbook = "ASHRAE Handbook-Fundamentals 2021 ch. 26, table 1 (read)";
constexpr std::string_view softwood =
    "softwood across the grain, k 0.115; ASHRAE Fundamentals 2021 ch. 26 (derived)";
constexpr std::string_view gypsum =
    "gypsum board 640 kg/m3; ASHRAE Handbook-Fundamentals 2021 ch. 26, table 1 (read)";
constexpr std::string_view label = "R-value of the label (common practice)";

constexpr bool bay = true;

// name, conductivity W/(m K), resistance m2 K/W, stock thickness m, between studs, source
constexpr Material material_rows[] = {
    // outside
    {"lap siding", 0, 0.14, 0.5 * inch, !bay, handbook},
    {"wide lap siding", 0, 0.18, 0.75 * inch, !bay, handbook},
    {"drop siding", 0, 0.14, 0.75 * inch, !bay, handbook},
    {"wood shingles", 0, 0.15, 0, !bay, handbook},
    {"double wood shingles", 0, 0.21, 0, !bay, handbook},
    {"vinyl siding", 0, 0.11, 0, !bay, handbook},
    {"backed vinyl siding", 0, 0.32, 0, !bay, handbook},
    {"aluminium siding", 0, 0.11, 0, !bay, handbook},
    {"backed aluminium siding", 0, 0.32, 0, !bay, handbook},
    {"asbestos-cement siding", 0, 0.037, 0, !bay, handbook},
    {"asphalt insulating siding", 0, 0.26, 0.5 * inch, !bay, handbook},
    {"asphalt roll siding", 0, 0.026, 0, !bay, handbook},
    {"hardboard siding", 0, 0.12, 7.0 / 16 * inch, !bay, handbook},
    {"stucco", 0.72, 0, 0, !bay, handbook},
    {"brick", 0.78, 0, 0, !bay, handbook},
    {"hard brick", 0.895, 0, 0, !bay, handbook},
    {"soft brick", 0.675, 0, 0, !bay, handbook},
    {"stone", 3.17, 0, 0, !bay, handbook},
    {"concrete", 1.95, 0, 0, !bay, handbook},
    {"concrete block", 0, 0.185, 8 * inch, !bay, handbook},
    {"hollow clay tile", 0, 0.20, 4 * inch, !bay, handbook},
    {"hollow clay tile", 0, 0.33, 8 * inch, !bay, handbook},
    {"asphalt shingles", 0, 0.078, 0, !bay, handbook},
    {"slate", 0, 0.009, 0.5 * inch, !bay, handbook},
    {"built-up roof", 0, 0.059, 3.0 / 8 * inch, !bay, handbook},
    // sheathing
    {"building paper", 0, 0.011, 0, !bay, handbook},
    {"board sheathing", 0.115, 0, 0, !bay, softwood},
    {"plywood", 0, 0.14, 0.5 * inch, !bay, handbook},
    {"plywood", 0, 0.15, 0.625 * inch, !bay, handbook},
    {"plywood", 0, 0.19, 0.75 * inch, !bay, handbook},
    {"OSB", 0, 0.12, 0.5 * inch, !bay, handbook},
    {"fibreboard sheathing", 0, 0.23, 0.5 * inch, !bay, handbook},
    {"dense fibreboard sheathing", 0, 0.19, 0.5 * inch, !bay, handbook},
    {"EPS board", 0.036, 0, 0, !bay, handbook},
    {"XPS board", 0.0275, 0, 0, !bay, handbook},
    {"polyiso board", 0.0225, 0, 0, !bay, handbook},
    {"furring air space", 0, 0.17, 0.75 * inch, !bay,
     "ASHRAE Handbook-Fundamentals 2021 ch. 26, table 3, vertical, 20 mm at 10 C (read)"},
    // between studs
    {"empty stud bay", 0, 0, 0, bay, "the house's figure for an empty bay"},
    {"open stud bay", 0, 0, 0, bay, "the default for a bay open to basement and attic"},
    {"dense cellulose", 0.0395, 0, 0, bay, handbook},
    {"glass batt", 0.047, 0, 0, bay, handbook},
    {"dense glass batt", 0.038, 0, 0, bay, handbook},
    {"rock wool batt", 0.035, 0, 0, bay, handbook},
    {"blown glass", 0.0355, 0, 0, bay, handbook},
    {"blown rock wool", 0.0405, 0, 0, bay, handbook},
    {"open-cell spray foam", 0.0395, 0, 0, bay, handbook},
    {"closed-cell spray foam", 0.0245, 0, 0, bay, handbook},
    {"R-11 batt", 0, 11 * r_us, 3.5 * inch, bay, label},
    {"R-13 batt", 0, 13 * r_us, 3.5 * inch, bay, label},
    {"R-15 batt", 0, 15 * r_us, 3.5 * inch, bay, label},
    {"R-19 batt", 0, 19 * r_us, 6.25 * inch, bay, label},
    {"R-21 batt", 0, 21 * r_us, 5.5 * inch, bay, label},
    {"R-30 batt", 0, 30 * r_us, 9.5 * inch, bay, label},
    // on an attic floor
    {"loose cellulose", 0.0395, 0, 0, !bay, handbook},
    {"loose glass", 0.052, 0, 0, !bay, handbook},
    {"loose rock wool", 0.0475, 0, 0, !bay, handbook},
    {"loose vermiculite", 0.0655, 0, 0, !bay, handbook},
    // inside
    {"plaster on wood lath", 0, 0.07, 0.75 * inch, !bay,
     "sand plaster, R-0.40; older ASHRAE Handbooks (memory)"},
    {"plaster on metal lath", 0, 0.023, 0.75 * inch, !bay, handbook},
    {"light plaster on metal lath", 0, 0.083, 0.75 * inch, !bay, handbook},
    {"plaster on gypsum lath", 0, 0.075, 0.875 * inch, !bay,
     "3/8 in gypsum board and 1/2 in sand plaster (derived)"},
    {"plaster", 0.81, 0, 0, !bay, handbook},
    {"lime plaster", 0.48, 0, 0, !bay, handbook},
    {"gypsum board", 0.16, 0, 0, !bay, gypsum},
    {"plaster board", 0.16, 0, 0, !bay, gypsum},
    {"drywall", 0.16, 0, 0, !bay, gypsum},
    {"beadboard", 0.115, 0, 0, !bay, softwood},
    // underfoot
    {"subfloor boards", 0.115, 0, 0, !bay, softwood},
    {"pine floor", 0.13, 0, 0, !bay, handbook},
    {"hardwood floor", 0, 0.11, 0.75 * inch, !bay, "oak, k 0.17; ASHRAE Fundamentals 2021 ch. 26 (derived)"},
    {"linoleum", 0, 0.09, 0.25 * inch, !bay, handbook},
    {"cork tile", 0, 0.09, 0.25 * inch, !bay, handbook},
    {"ceramic tile", 0, 0.009, 0, !bay, "R-0.05; older ASHRAE Handbooks (memory)"},
    {"carpet", 0, 0.28, 0, !bay, handbook},
    {"carpet on thick pad", 0, 0.42, 0.75 * inch, !bay, handbook},
};

constexpr std::string_view windows = "ASHRAE Handbook-Fundamentals 2021 ch. 17, table 2 (read)";

// A sash with a storm counts as the same sash with one more pane (ibid.); low-e is the low-solar coating.
constexpr Glass glass_rows[] = {
    {"single", 5.05, 0.64, windows}, {"single + storm", 2.87, 0.57, windows},
    {"double", 2.87, 0.57, windows}, {"double, low-e", 2.21, 0.31, windows},
    {"triple", 2.19, 0.51, windows}, {"triple, low-e", 1.71, 0.21, windows},
};

}  // namespace

std::span<const Material> materials() { return material_rows; }
std::span<const Glass> glasses() { return glass_rows; }

}  // namespace loads
