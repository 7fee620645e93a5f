// What bends, boots and takeoffs cost: one table of plainly described fittings, each with one of ten loss
// laws.
//
//     fixed, elbow, mitre, damper   C x velocity pressure in the duct that holds the fitting; the last three
//                                   may be written with another angle than the table's
//     takeoff, joining              by flow share, area ratio and angle at the trunk it leaves (supply) or
//                                   joins (return); its C where it leaves the plenum or ends at the blower
//     split                         C x velocity pressure in the trunk that ends there
//     reducer                       by the ratio of areas of duct and trunk, on the smaller's velocity
//     pressure widening                      C x (velocity pressure in the smaller - in the larger duct)
//     length                        friction of so much of the duct that holds it
//
// "40 ft" and "C 0.35" are fittings too: an equivalent length and a coefficient of the sheet's own.
//
// Source: general duct tables for C, each row its own; ducts/loss_laws.hpp for what varies. A joining flow
// that is drawn along counts as no loss, not as a gain. C is good to +-30 % at best; low and high give the
// honest range. Reynolds number is left out. Equivalent length and C are two spellings of one loss:
// equivalent length = loss / friction per length at the real flow and size.
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "ducts/section.hpp"
#include "house/place.hpp"
#include "loads/air.hpp"
#include "units/quantity.hpp"

namespace ducts {

enum class LossLaw { fixed, takeoff, joining, split, reducer, widening, elbow, mitre, damper, length };

struct Fitting {
    std::string_view name;
    LossLaw law = LossLaw::fixed;
    double coefficient = 0, low = 0, high = 0;  // takeoff, joining, reducer: where there is no trunk
    double angle = 0;         // degrees: branch to trunk; turned by an elbow; a damper's from open
    std::string_view source;  // empty: of the sheet's own
    std::string_view mark;    // read, memory, derived, estimate
    units::Length length = {};
    double factor = 1;  // on its loss, where the table is doubted
    bool of_the_sheet() const { return source.empty(); }
};

std::span<const Fitting> fittings();
// A fitting by its name, an elbow or damper at its angle, an equivalent length or a coefficient.
std::variant<Fitting, house::Mistake> look_up_fitting(const house::CatalogueName& name);
// What a turn counted but not named is taken for: "square" or "rounded".
Fitting counted_turn(bool square);

// Where a fitting sits: the duct that holds it, and the one it leaves or joins with the flow of both there;
// a trunk without flow is a plenum.
struct FittingPlace {
    Section duct;
    units::Airflow flow;
    Section trunk;
    units::Airflow trunk_flow;
};
units::Pressure fitting_loss(const Fitting& fitting, const FittingPlace& place, const loads::Air& air);
// What it may lose: by the fitting's low and high; where a formula gives the loss, 30 % either way.
struct LossRange {
    units::Pressure low, high;
};
LossRange fitting_loss_range(const Fitting& fitting, const FittingPlace& place, const loads::Air& air);
units::Pressure velocity_pressure(units::Velocity velocity, const loads::Air& air);

}  // namespace ducts
