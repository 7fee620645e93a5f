#include "registers/against_the_sheet.hpp"

#include <algorithm>

namespace registers {
namespace {

// The share of the window that lies within half the jet's width of the outlet's centre.
double share_covered(const WindowAbove& window, units::Length jet_width) {
    if (window.width.si() <= 0) return 0;
    const units::Length half = 0.5 * window.width;
    const units::Length from = std::max(-half, window.off_centre - 0.5 * jet_width);
    const units::Length to = std::min(half, window.off_centre + 0.5 * jet_width);
    return std::max(0.0, (to - from) / window.width);
}

}  // namespace

AgainstTheSheet against_the_sheet(const WashingJet& jet, const WindowAbove& window,
                                  const FallingSheet& sheet) {
    const units::Length middle = std::max(units::Length(), window.sill + 0.5 * window.height);
    AgainstTheSheet result;
    result.jet = speed_at(jet.jet, Blows::up, middle);
    result.sheet = sheet.speed;
    result.jet_momentum = momentum_of(jet.jet.jet);
    result.sheet_momentum = sheet.momentum * window.width;
    if (result.jet > units::Velocity())
        result.covered = share_covered(window, width_at(middle, jet.outlet_width, jet.spread));
    result.washes = result.jet >= result.sheet && result.covered >= half_covered;
    return result;
}

}  // namespace registers
