// See friction_rate.hpp for the procedure and its source.
#include "ducts/friction_rate.hpp"

#include <algorithm>

#include "ducts/friction.hpp"
#include "ducts/terminal.hpp"
#include "house/cannot_answer.hpp"

namespace ducts {
namespace {

// Fittings as length of pipe that loses as much at the duct's own friction.
PathPiece piece(const Side& side, const SystemSection& section, const loads::Air& air) {
    PathPiece piece;
    piece.duct = section.duct;
    piece.length = section.loss_factor * section.length;
    piece.fittings = section.loss_factor * fittings_loss(side, section, air);
    piece.counted_at = counting_rate(friction(section.section, section.flow / air.density, air));
    piece.equivalent = piece.fittings / piece.counted_at;
    return piece;
}

// Effective length from the root to each section, and the way back from the longest.
Path longest_path(const Side& side, const loads::Air& air) {
    std::vector<PathPiece> pieces;
    pieces.reserve(side.size());
    for (const SystemSection& section : side) pieces.push_back(piece(side, section, air));
    std::vector<double> to_root(side.size());
    std::size_t farthest = 0;
    for (std::size_t i = side.size(); i-- > 0;) {  // parents come after their children in the list
        const double above = side[i].parent < 0 ? 0 : to_root[static_cast<std::size_t>(side[i].parent)];
        to_root[i] = above + (pieces[i].length + pieces[i].equivalent).si();
        if (to_root[i] > to_root[farthest]) farthest = i;
    }
    Path path;
    if (side.empty()) return path;
    for (int at = static_cast<int>(farthest); at >= 0; at = side[static_cast<std::size_t>(at)].parent)
        path.pieces.push_back(pieces[static_cast<std::size_t>(at)]);
    std::reverse(path.pieces.begin(), path.pieces.end());
    return path;
}

// A device's loss scales with the square of the flow from where it was stated.
units::Pressure device_loss(const house::Device& device, units::Airflow airflow) {
    if (device.at.si() <= 0) return device.drop;
    const double ratio = airflow / device.at;
    return device.drop * (ratio * ratio);
}

}  // namespace

// A duct with little air loses next to nothing per length, and the takeoff it owes to a fast trunk would
// count for miles: no less than the least sensible rate is taken.
units::FrictionRate counting_rate(units::FrictionRate of_the_duct) {
    return std::max(least_sensible_rate, of_the_duct);
}

units::Length Path::total() const {
    units::Length sum;
    for (const PathPiece& p : pieces) sum += p.length + p.equivalent;
    return sum;
}

FrictionRateBudget friction_rate(const house::House& house, const DuctSystem& system,
                                 const DesignBlower& blower, const loads::Air& supply_air,
                                 const loads::Air& return_air) {
    FrictionRateBudget budget;
    budget.external_static = blower.external_static;
    for (const house::Device& device : house.devices)
        budget.taken.push_back({device.name, device_loss(device, blower.airflow)});
    budget.taken.push_back({"supply register", house.register_drop});
    budget.taken.push_back({"return grille", grille_loss(house, system.return_side, return_air)});
    budget.available = budget.external_static;
    for (const PressureLoss& part : budget.taken) budget.available -= part.loss;
    budget.supply = longest_path(system.supply, supply_air);
    budget.return_side = longest_path(system.return_side, return_air);
    if (system.return_side.empty())
        budget.return_side.pieces.push_back({-1, house.return_length, {}, {}, {}});
    budget.total_effective_length = budget.supply.total() + budget.return_side.total();
    if (budget.total_effective_length.si() <= 0) throw house::CannotAnswer({}, "the ducts have no length");
    budget.rate = std::max(units::FrictionRate(), budget.available / budget.total_effective_length);
    return budget;
}

}  // namespace ducts
