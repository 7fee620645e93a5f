// The way back of a room's air when its door is closed, and the face of return grilles and filters.
//
//     opening        airflow = 0.607 x area x sqrt(2 x pressure / density)
//     grille pair    pressure = (2 C + 1) x velocity pressure over the whole face; C of a square-edged grid
//     by
//                    its free share (ducts/terminal.hpp); 1 for the air that comes to rest
//     jump duct      the grille pair over its faces + friction and bends of the duct between them
//
// Source: building-science research report on transfer grilles, its 1.07 cfm per in2 and root Pa (read);
// grids as in ducts/terminal.hpp (memory). A door closed by 3 Pa at the most, 5 Pa for 150 cfm and more:
// efficiency programme's guide (read). Good to +-20 %; air that leaks past the other edges of a door comes on
// top.
#pragma once

#include <optional>
#include <string_view>

#include "ducts/section.hpp"
#include "house/shape.hpp"
#include "loads/air.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace ducts {

inline constexpr units::Pressure closed_door_limit{3.0};
inline constexpr double discharge_coefficient = 0.60733;  // 1.07 cfm per in2 and root Pa at 1.2041 kg/m3

units::Airflow through_opening(units::Area area, units::Pressure pressure, const loads::Air& air);
units::Area opening_for(units::Airflow flow, units::Pressure pressure, const loads::Air& air);
// Through two grilles back to back in one wall, each of this gross face.
units::Airflow through_transfer_grille(units::Area face, double free_share, units::Pressure pressure,
                                       const loads::Air& air);
// Gross face of each of two grilles back to back in one wall.
units::Area transfer_grille_for(units::Airflow flow, double free_share, const loads::Air& air);

struct JumpDuct {
    units::Area face;  // of each grille
    double free_share = 0.75;
    units::Length length;
    double bends = 0;  // C of all of them together
};
// What such a jump duct of this section lets through at the limit of a closed door.
units::Airflow through_jump_duct(const JumpDuct& jump, const Section& duct, const loads::Air& air);
// The smallest flexible duct from the shelf, so far stretched, that lets the flow through; empty: none does.
std::optional<house::Round> jump_duct_for(units::Airflow flow, const JumpDuct& jump, double stretch,
                                          const loads::Air& air);

// How fast the air may come to a face: register maker's engineering pages and an association's advice (read).
struct FaceLimit {
    std::string_view what;
    units::Velocity recommended, most;
};
inline constexpr FaceLimit return_grille_face{"return grille", 400 * units::unit::foot_per_minute,
                                              500 * units::unit::foot_per_minute};
inline constexpr FaceLimit filter_face{"filter", 300 * units::unit::foot_per_minute,
                                       450 * units::unit::foot_per_minute};
// The gross face that keeps a flow at the recommended velocity.
units::Area face_for(units::Airflow flow, const FaceLimit& limit);

}  // namespace ducts
