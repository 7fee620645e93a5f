#include "registers/stays_up.hpp"

#include <algorithm>

namespace registers {
namespace {

constexpr units::Length people{1.4};
constexpr units::Velocity still_mixing{0.75};
constexpr units::TemperatureDifference mixes_by_itself{8.0};

}  // namespace

FromHighUp from_high_up(const HighOutlet& outlet) {
    const bool down = outlet.direction == Blows::down;
    FromHighUp result;
    if (outlet.height > people)
        result.needed = outlet.height - people + (down ? units::Length() : outlet.run);
    result.carries = distance_to(outlet.jet.jet, still_mixing);
    // What nothing stops has come down.
    if (down) result.carries = stops_at(outlet.jet, Blows::down).value_or(result.needed);
    if (outlet.jet.warmer < mixes_by_itself)
        result.warm_air = WarmAir::mixes;
    else
        result.warm_air = result.carries >= result.needed ? WarmAir::comes_down : WarmAir::stays_up;
    return result;
}

}  // namespace registers
