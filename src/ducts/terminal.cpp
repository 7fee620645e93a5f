// See terminal.hpp for formula and source.
#include "ducts/terminal.hpp"

#include <algorithm>
#include <cmath>

namespace ducts {

double grid_coefficient(double free_share) {
    const double solid = 1 - free_share;
    const double root = 0.707 * std::sqrt(solid) + solid;
    return root * root / (free_share * free_share);
}

units::Pressure grille_loss(const house::House& house, const Side& return_side,
                            const loads::Air& return_air) {
    units::Pressure worst;
    bool described = false;
    for (const SystemSection& section : return_side) {
        if (section.outlet < 0) continue;
        const house::Outlet& grille = house.outlets[static_cast<std::size_t>(section.outlet)];
        if (!grille.face) continue;
        described = true;
        const units::Area face = grille.face->width * grille.face->height;
        const double free_share = grille.free_area ? *grille.free_area / face : usual_free_share;
        const units::Velocity speed = section.flow / return_air.density / face;
        worst = std::max(worst, grid_coefficient(free_share) * velocity_pressure(speed, return_air));
    }
    return described ? worst : house.grille_drop;
}

}  // namespace ducts
