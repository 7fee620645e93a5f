// See return_path.hpp. The flow of a jump duct is found by bisection: its loss rises strictly with the flow.
#include "ducts/return_path.hpp"

#include <cmath>

#include "ducts/fittings.hpp"
#include "ducts/friction.hpp"
#include "ducts/stock_sizes.hpp"
#include "ducts/terminal.hpp"

namespace ducts {
namespace {

constexpr double at_rest = 1;  // velocity pressures lost as the air comes to rest

// Of an opening without loss.
units::Velocity velocity_at(units::Pressure pressure, const loads::Air& air) {
    return units::Velocity(std::sqrt(2 * pressure.si() / air.density.si()));
}

double grille_pair(double free_share) { return 2 * grid_coefficient(free_share) + at_rest; }

units::Pressure jump_loss(const JumpDuct& jump, const Section& duct, units::Airflow flow,
                          const loads::Air& air) {
    const units::Pressure faces = grille_pair(jump.free_share) * velocity_pressure(flow / jump.face, air);
    const units::Pressure bends = jump.bends * velocity_pressure(flow / duct.area, air);
    return faces + bends + friction(duct, flow, air) * jump.length;
}

}  // namespace

units::Airflow through_opening(units::Area area, units::Pressure pressure, const loads::Air& air) {
    return discharge_coefficient * (velocity_at(pressure, air) * area);
}

units::Area opening_for(units::Airflow flow, units::Pressure pressure, const loads::Air& air) {
    return flow / velocity_at(pressure, air) / discharge_coefficient;
}

units::Airflow through_transfer_grille(units::Area face, double free_share, units::Pressure pressure,
                                       const loads::Air& air) {
    return (1 / std::sqrt(grille_pair(free_share))) * (velocity_at(pressure, air) * face);
}

units::Area transfer_grille_for(units::Airflow flow, double free_share, const loads::Air& air) {
    return std::sqrt(grille_pair(free_share)) * (flow / velocity_at(closed_door_limit, air));
}

units::Airflow through_jump_duct(const JumpDuct& jump, const Section& duct, const loads::Air& air) {
    units::Airflow low, high = velocity_at(closed_door_limit, air) * jump.face;  // as if nothing but the face
    for (int i = 0; i < 60; ++i) {
        const units::Airflow middle = 0.5 * (low + high);
        (jump_loss(jump, duct, middle, air) < closed_door_limit ? low : high) = middle;
    }
    return low;
}

std::optional<house::Round> jump_duct_for(units::Airflow flow, const JumpDuct& jump, double stretch,
                                          const loads::Air& air) {
    for (const house::Round& duct : stock_flexible_ducts())
        if (through_jump_duct(jump, section_of(duct, house::DuctKind::flex, stretch), air) >= flow)
            return duct;
    return std::nullopt;
}

units::Area face_for(units::Airflow flow, const FaceLimit& limit) { return flow / limit.recommended; }

}  // namespace ducts
