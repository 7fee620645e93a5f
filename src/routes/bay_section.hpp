// Does a duct pass through a bay, lengthwise, beside and below its pipes; and what would have to move if not.
//
//     spare of an empty bay = the lesser of bay width - duct width and bay depth - duct height
//     spare beside pipes    = the largest distance from the nearest pipe that any place in the bay gives,
//                             less the clearance to be kept
//     spare                 = the lesser of both, of a bay too small even when empty the first alone; the
//     duct passes where it is not below zero
//
// Source: plane geometry; a rectangle may lie either way. For one pipe in a corner it is the published corner
// packing (the duct in the opposite corner). A pipe that slopes blocks all it sweeps between its two ends, a
// pipe across the bay the whole width at its height, aslant where its two ends differ. Found by branch and
// bound over the duct's place: distances change no faster than the duct moves, so what a part of the bay can
// give is known from its middle. Accuracy 0.01 mm. A metal duct is 1/4 in wider outside than its name (seam,
// screws, sealant: common practice); wrap adds 2 in a side for R-6 and in proportion (makers' sheets,
// memory). Hangers, and the bend into and out of the bay, are not looked at.
#pragma once

#include <optional>
#include <span>

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace routes {

inline constexpr loads::Method passage_method{
    "spare beside a duct in a bay", "largest distance from the nearest pipe in the bay - clearance",
    "plane geometry; outside of a metal duct = its size + 1/4 in, common practice"};

inline constexpr units::Length seam{0.25 * units::unit::inch};

// What a duct of that size takes up, with its seams and any wrap of so much R.
house::Shape outside(const house::Shape& shape, units::Resistance wrap = {});

// How much more room there is than the duct needs; below zero it does not pass. `taken_up`: outside sizes.
units::Length spare(const house::Bay& bay, const house::Shape& taken_up);
bool passes(units::Length spare);
// The same, sooner known.
bool passes(const house::Bay& bay, const house::Shape& taken_up);

// One pipe moved by so much would let the duct pass.
enum class Way { to_first_side, to_second_side, up, down };
const char* word_of(Way way);  // "to the first side"
struct Move {
    int pipe = 0;  // position in Bay::pipes
    Way way = Way::up;
    units::Length by;  // in whole eighths of an inch, as a tape reads
};
// The least such move within the bay and clear of the other pipes; empty where no move of one pipe does it. A
// pipe across the bay moves up or down only.
std::optional<Move> least_move(const house::Bay& bay, const house::Shape& taken_up);

// The last of these sizes, rising, that passes; nothing where none does.
template <class S>
std::optional<S> largest_that_passes(const house::Bay& bay, std::span<const S> rising,
                                     units::Resistance wrap = {}) {
    for (std::size_t i = rising.size(); i-- > 0;)
        if (passes(bay, outside(house::Shape(rising[i]), wrap))) return rising[i];
    return std::nullopt;
}

}  // namespace routes
