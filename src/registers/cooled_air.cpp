#include "registers/cooled_air.hpp"

#include <algorithm>

namespace registers {
namespace {

bool is_high(house::Mount mount) {
    return mount == house::Mount::ceiling || mount == house::Mount::high_wall;
}

CooledAirThere blown_up(const WarmJet& jet, units::Length ceiling) {
    const std::optional<units::Length> stops = stops_at(jet, Blows::up);
    const units::Length reaches = std::min({ceiling, stops.value_or(ceiling), throw_of(jet.jet)});
    return {reaches < ceiling ? CooledAir::falls_back : CooledAir::to_the_ceiling, reaches, {}};
}

}  // namespace

CooledAirThere cooled_air(const WarmJet& jet, const OutletPattern& pattern, units::Length ceiling) {
    if (pattern.blows == Blows::up) return blown_up(jet, ceiling);
    CooledAirThere there;
    if (pattern.blows == Blows::across) there.drops = std::min(ceiling, -rise(jet, throw_of(jet.jet)));
    if (is_high(pattern.mount)) there.becomes = CooledAir::spreads_above;
    return there;
}

}  // namespace registers
