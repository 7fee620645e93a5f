// The plain way of a duct: right-angled, along and across the joists, the shortest such.
//
//     length = distance along the joists + distance across + height
//     turns  = one where it goes both along and across, one more where it rises
//
// An estimate: what stands in the way is not looked at, nor which bay it takes. Source: plane geometry.
#pragma once

#include "registers/locations.hpp"
#include "units/quantity.hpp"

namespace routes {

struct PlainWay {
    units::Length length;
    int turns = 0;
};
PlainWay plain_way(const registers::Spot& from, const registers::Spot& to, units::Length rise);

}  // namespace routes
