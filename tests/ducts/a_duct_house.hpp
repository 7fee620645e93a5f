// Houses of ducts and nothing else, for the tests of the duct tree: a test adds the ducts and outlets it is
// about.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "ducts/duct_system.hpp"
#include "ducts/reference_air.hpp"
#include "house/house.hpp"
#include "units/unit.hpp"

namespace a_duct_house {

using Names = std::vector<std::string>;

inline const house::Shape six_inch = house::Round{6 * units::unit::inch};
inline const house::Shape trunk_shape = house::Rectangular{16 * units::unit::inch, 8 * units::unit::inch};

// Ids are not positions: a sheet may hold ducts that this stage of the house lacks.
inline house::DuctId id_of(int position) { return {position + 7}; }

// All of these give the position of what they add.
inline int add_root(house::House& in, const std::optional<house::Shape>& shape, double feet,
                    const Names& fittings = {}) {
    const int position = static_cast<int>(in.ducts.size());
    house::Duct duct;
    duct.id = id_of(position);
    duct.name = "duct " + std::to_string(position);
    duct.place = {100 + position, 1, 9};
    duct.shape = shape;
    duct.length = feet * units::unit::foot;
    for (const std::string& name : fittings) duct.fittings.push_back({name, {200 + position, 3, 12}});
    duct.surroundings = units::unit::celsius(10);
    duct.resistance = units::Resistance(0.15);
    in.ducts.push_back(duct);
    return position;
}

inline int add_branch(house::House& in, int from, double at_feet, const std::optional<house::Shape>& shape,
                      double feet, const Names& fittings = {}) {
    const int position = add_root(in, shape, feet, fittings);
    house::Duct& branch = in.ducts.back();
    branch.from = id_of(from);
    branch.at = at_feet * units::unit::foot;
    branch.side = in.ducts[static_cast<std::size_t>(from)].side;
    return position;
}

inline int add_return(house::House& in, const house::Shape& shape, double feet, const Names& fittings = {}) {
    const int position = add_root(in, shape, feet, fittings);
    in.ducts.back().side = house::DuctSide::return_side;
    return position;
}

inline int add_outlet(house::House& in, int duct, int room = 0) {
    const int position = static_cast<int>(in.outlets.size());
    house::Outlet outlet;
    outlet.id = {position + 3};
    outlet.name = "outlet " + std::to_string(position);
    outlet.place = {300 + position, 1, 9};
    outlet.duct = id_of(duct);
    outlet.room = {room};
    in.outlets.push_back(outlet);
    return position;
}

inline void add_other_rooms(house::House& in, int outlets, double shortest_feet, double longest_feet) {
    house::OtherRooms others;
    others.outlets = outlets;
    others.pipe = 5 * units::unit::inch;
    others.shortest_reach = shortest_feet * units::unit::foot;
    others.longest_reach = longest_feet * units::unit::foot;
    others.turns = {3, true};
    in.other_rooms = others;
}

// A trunk of 20 ft with branches at 5 ft (8 ft long) and at 12 ft (10 ft long), an outlet on each.
inline house::House two_branches() {
    house::House house;
    const int trunk = add_root(house, trunk_shape, 20, {"trunk start, square"});
    add_outlet(house, add_branch(house, trunk, 5, six_inch, 8, {"side takeoff, straight", "stackhead"}));
    add_outlet(house, add_branch(house, trunk, 12, six_inch, 10, {"side takeoff, 45 degree entry"}));
    return house;
}

// 0.05 kg/s (about 88 cfm) to the first outlet, 0.01 more to every next; 0.02 to each not described.
inline ducts::DesignFlows some_flows(const house::House& house) {
    ducts::DesignFlows flows;
    for (std::size_t i = 0; i < house.outlets.size(); ++i)
        flows.outlets.emplace_back(0.05 + 0.01 * static_cast<double>(i));
    flows.each_other_outlet = units::MassFlow(0.02);
    return flows;
}

inline ducts::DuctSystem system_of(const house::House& house) {
    return ducts::duct_system(house, some_flows(house), std::nullopt);
}

inline const ducts::SystemSection& at(const ducts::Side& side, int position) {
    return side.at(static_cast<std::size_t>(position));
}

inline double in_feet(units::Length length) { return length / units::unit::foot; }

// The way to an outlet as (duct, feet) pairs flattened to text: "0:5 0:7 2:10".
inline std::string way_text(const ducts::Side& side, const house::House& house, int outlet) {
    std::string text;
    for (int position : ducts::way_to(side, house, outlet)) {
        const ducts::SystemSection& section = at(side, position);
        const double feet = in_feet(section.length);
        text += (text.empty() ? "" : " ") + std::to_string(section.duct) + ":" +
                std::to_string(static_cast<int>(feet + 0.5));
    }
    return text;
}

}  // namespace a_duct_house
