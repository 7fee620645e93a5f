// Where the house or a room lies outside what the heat-loss method was made for, so that its figures are less
// sure than usual.
//
// Source: limits of the residential load method, ASHRAE Handbook-Fundamentals 2021 ch. 17, table 1: glass up
// to 15 % of the floor area on one side of the house and 30 % in all (here of a room's own floor, as each
// room is answered for), below 2,000 m, light frame (a masonry veneer is within it); air leakage up to three
// storeys (ibid. table 5). A room without outside surface is within it, but loses only what its neighbours'
// assumed temperatures make of it.
#pragma once

#include <string_view>
#include <vector>

#include "house/house.hpp"
#include "house/survey.hpp"

namespace questions {

enum class Limit { glass_on_a_side, glass_in_all, masonry, no_outside_surface, elevation, storeys };

inline constexpr double most_glass_on_a_side = 0.15, most_glass_in_all = 0.30;  // of the floor area
inline constexpr units::Length highest_site{2000};
inline constexpr int most_storeys = 3;

struct BeyondLimit {
    Limit limit = Limit::elevation;
    house::RoomId room;                             // of the limits of rooms
    house::WallSide side = house::WallSide::north;  // of glass_on_a_side
    double glass = 0;                               // of the floor area
};

// Rooms in the sheet's order, then what holds for the whole house.
std::vector<BeyondLimit> beyond_limits(const house::Survey& survey, const house::House& house);
bool is_of_a_room(Limit limit);
std::string_view word_of(Limit limit);  // "glass on a side"

}  // namespace questions
