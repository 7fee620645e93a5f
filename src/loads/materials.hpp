// What walls, ceilings and floors are made of: resistance of a layer by its plain name; U-factor and solar
// heat gain coefficient of a window by its glass.
//
// A layer is written as "name" or "name, thickness": "lap siding", "board sheathing, 3/4 in", "dense
// cellulose, 3-5/8 in", or "R-11".
//
// Source: ASHRAE Handbook-Fundamentals 2021 ch. 26 and 17, each row with its own; the middle where a range
// is given. A material given by conductivity needs a thickness; one given by the resistance of a stock piece
// takes that piece's, and a thickness written must be within 15 % of it. A window with a storm counts as
// one with one more pane (ch. 17). Accuracy: +-15 % for a material whose make is known, +-20 % for an old
// window (common practice).
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "house/place.hpp"
#include "units/quantity.hpp"

namespace loads {

struct Layer {
    units::Resistance resistance;
    units::Length thickness;  // of a layer between studs: how long the heat's way through the wood is
    bool between_studs = false;
    bool empty_bay = false;  // its resistance is the house's (a balloon frame's bay is open at both ends)
};

// Conductivity and resistance both 0: a stud bay with nothing in it.
struct Material {
    std::string_view name;
    double conductivity;  // W/(m K); 0 where the piece has a resistance instead
    double resistance;    // m2 K/W of the stock piece; 0 where a thickness is needed
    double thickness;     // m, of the stock piece; 0 where it has none to speak of
    bool between_studs;   // fills the bays of a framed wall; a loose fill lies on the attic's floor instead
    std::string_view source;
};
struct Glass {
    std::string_view name;
    double u;     // W/(m2 K), whole window, operable wood or vinyl sash
    double shgc;  // solar heat gain coefficient of the same
    std::string_view source;
};

std::span<const Material> materials();  // several stock pieces may share a name
std::span<const Glass> glasses();

// The layer or the glass of that name, or the mistake with the nearest name.
std::variant<Layer, house::Mistake> look_up_layer(const house::CatalogueName& name);
std::variant<Glass, house::Mistake> look_up_glass(const house::CatalogueName& name);

}  // namespace loads
