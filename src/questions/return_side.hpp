// The way back of the air: past the room's closed door, and through the faces of return grilles and filter.
//
// A closed door may hold 3 Pa (ducts/return_path.hpp). A jump duct is taken as 8 ft of flexible duct pulled
// straight with two bends, C 0.6 each, between two stock grilles half as large again as a pair without a duct
// needs (estimate: a third of the pressure stays for the duct). Faces are sized by the recommended speed.
#pragma once

#include <optional>
#include <vector>

#include "ducts/return_path.hpp"
#include "ducts/stock_sizes.hpp"
#include "house/house.hpp"
#include "questions/size_branch.hpp"
#include "units/quantity.hpp"
#include "units/unit.hpp"

namespace questions {

struct JumpOver {
    house::Rectangular grille;  // each of the two
    house::Round duct;
};
inline constexpr units::Length jump_length{8 * units::unit::foot};

// What a closed door must let pass: the supply air the room needs, at the pressure that a closed door may
// hold.
struct WayBack {
    loads::Air air;  // as warm as the room
    units::Airflow flow;
    units::Area opening;
    units::Area grille;            // gross face of each of a pair of transfer grilles
    std::optional<JumpOver> jump;  // through the ceiling instead; empty: none from the shelf does it
};
// Empty where the room has a return of its own, needs no air, or no flow holds it.
std::optional<WayBack> way_back(const house::House& house, const BranchSizing& sizing);

// How fast the plan's return air comes to the face of a grille that the sheet describes.
struct ReturnFace {
    int outlet = 0;  // position in House::outlets
    units::Airflow flow;
    units::Velocity speed;
    bool too_fast() const { return speed > ducts::return_grille_face.most; }
};

struct ReturnFaces {
    units::Airflow flow;  // all return air, as the blower moves it
    units::Area grilles;  // gross, of all together
    units::Area filter;
    std::optional<ducts::StockFilter> stock_filter;  // one that does; empty: several are needed
    std::vector<ReturnFace> described;               // in the sheet's order
};
ReturnFaces return_faces(const house::House& house, const BranchSizing& sizing);

}  // namespace questions
