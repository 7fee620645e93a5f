#include "routes/plain_way.hpp"

#include <cmath>

namespace routes {

PlainWay plain_way(const registers::Spot& from, const registers::Spot& to, units::Length rise) {
    constexpr double straight = 0.3;  // m: so little off the line takes no elbow
    const double east = std::abs((to.east - from.east).si()), north = std::abs((to.north - from.north).si());
    PlainWay way;
    way.length = units::Length(east + north + rise.si());
    way.turns = (east > straight && north > straight ? 1 : 0) + (rise.si() > straight ? 1 : 0);
    return way;
}

}  // namespace routes
