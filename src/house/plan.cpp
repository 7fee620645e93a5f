#include "house/plan.hpp"

#include <algorithm>
#include <cmath>

namespace house {
namespace {

struct Reach {  // of a box from a hinge, along one axis, in the direction the leaf opens
    double near, far;
};

Reach reach(units::Length hinge, units::Length low, units::Length high, bool forwards) {
    return forwards ? Reach{(low - hinge).si(), (high - hinge).si()}
                    : Reach{(hinge - high).si(), (hinge - low).si()};
}

}  // namespace

bool overlap(const Box& a, const Box& b) {
    constexpr units::Length tape{0.01};
    return a.west + tape < b.east && b.west + tape < a.east && a.south + tape < b.north &&
           b.south + tape < a.north;
}

bool sweeps(const DoorSwing& swing, const Box& box) {
    const Reach east = reach(swing.hinge_east, box.west, box.east, swing.towards_east),
                north = reach(swing.hinge_north, box.south, box.north, swing.towards_north);
    if (east.far <= 0 || north.far <= 0) return false;
    return std::hypot(std::max(east.near, 0.0), std::max(north.near, 0.0)) < swing.leaf.si();
}

}  // namespace house
