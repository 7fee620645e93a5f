// Plain houses for the tests of heat loss: a bare one, to which a test adds the rooms and surfaces it is
// about.
#pragma once

#include <string>
#include <variant>

#include "house/house.hpp"
#include "units/unit.hpp"

namespace a_house {

using Beyond = std::variant<house::Space, house::RoomId>;

inline constexpr units::Transmittance u(double w_per_m2_k) { return units::Transmittance(w_per_m2_k); }

// All unheated spaces as cold as outdoors, no leakage, a heater of 10 kW.
inline house::House bare(double indoor_c = 20, double outdoor_c = -10) {
    house::House bare;
    bare.storeys = 1;
    bare.site.winter_indoor = units::unit::celsius(indoor_c);
    bare.site.winter_outdoor = units::unit::celsius(outdoor_c);
    bare.space_winter.fill(bare.site.winter_outdoor);
    bare.space_winter[static_cast<std::size_t>(house::Space::heated_rooms)] = bare.site.winter_indoor;
    bare.air_leakage = 0.0;
    bare.empty_bay = units::Resistance(0.16);
    bare.heater.capacity = units::Power(10'000);
    return bare;
}

// A room 4 x 3 x 2.5 m at the house's temperature, with no surface yet.
inline house::Room& add_room(house::House& in, const std::string& name) {
    house::Room room;
    room.id.index = static_cast<int>(in.rooms.size());
    room.name = name;
    room.width = units::Length(4);
    room.depth = units::Length(3);
    room.ceiling = units::Length(2.5);
    room.winter_indoor = in.site.winter_indoor;
    in.rooms.push_back(room);
    return in.rooms.back();
}

inline house::Surface surface(double area_m2, const house::Assembly& made,
                              const Beyond& beyond = house::Space::outdoors,
                              house::SurfaceKind kind = house::SurfaceKind::wall) {
    return {kind, "a surface", units::Area(area_m2), beyond, made};
}

inline void add_partition(house::House& in, std::size_t a, std::size_t b, const house::Surface& between) {
    house::Surface seen_from_a = between, seen_from_b = between;
    seen_from_a.beyond = in.rooms[b].id;
    seen_from_b.beyond = in.rooms[a].id;
    in.rooms[a].surfaces.push_back(seen_from_a);
    in.rooms[b].surfaces.push_back(seen_from_b);
}

inline house::Layers layers(const std::vector<std::string>& names, double framing) {
    house::Layers made;
    for (const std::string& name : names) made.names.push_back({name, {}});
    made.framing = framing;
    return made;
}

// A leaky two-storey house at 3 F: rooms in a row, each with a bare wall, a window with storm and an attic
// above, a partition to the next; the first a bath at 74 F.
inline house::House old_house(int rooms) {
    house::House old = bare(units::unit::in_celsius(units::unit::fahrenheit(70)),
                            units::unit::in_celsius(units::unit::fahrenheit(3)));
    old.storeys = 2;
    old.air_leakage = 5.6;
    const house::Layers wall = layers(
        {"lap siding", "board sheathing, 3/4 in", "empty stud bay, 3-5/8 in", "plaster on wood lath"}, 0.25);
    const house::Layers ceiling = layers({"plaster on wood lath", "loose cellulose, 8 in"}, 0);
    for (int i = 0; i < rooms; ++i) {
        house::Room& room = add_room(old, "room " + std::to_string(i + 1));
        room.storey = 2;
        room.surfaces = {surface(9, wall),
                         surface(1, house::CatalogueName{"single + storm", {}}, house::Space::outdoors,
                                 house::SurfaceKind::window),
                         surface(12, ceiling, house::Space::attic, house::SurfaceKind::ceiling)};
    }
    for (std::size_t i = 1; i < old.rooms.size(); ++i) add_partition(old, i - 1, i, surface(7.5, u(1.85)));
    old.rooms.front().winter_indoor = units::unit::fahrenheit(74);
    return old;
}

}  // namespace a_house
