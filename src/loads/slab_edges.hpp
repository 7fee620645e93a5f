// Heat a floor on the ground loses by way of its edge, and what it takes from a room in summer.
//
//     winter: loss = edge loss x exposed edge x (inside - outdoors)
//     summer: gain of each m2 = 1.9 - 1.4 h, h = 1 / (R of the covering + 0.12): below zero, it cools
//
// Source: edge losses ASHRAE Handbook-Fundamentals 2021 ch. 18 table 24 and an energy code of a state (WAC
// 51-11C, table A106.1), each row its own; summer ibid. ch. 17, eq. 23. Unchanged. W/(m K); W/m2, m2 K/W.
// Range: slabs without heating pipes in them. Accuracy: two published sources differ by nearly half for a
// bare edge; the soil decides.
#pragma once

#include <span>
#include <string_view>
#include <variant>

#include "house/house.hpp"
#include "loads/method.hpp"
#include "units/quantity.hpp"

namespace loads {

inline constexpr Method slab_edge_method{"heat loss of a slab's edge", "length x edge loss x difference",
                                         "ASHRAE Handbook-Fundamentals 2021 ch. 18, eq. 42, table 24"};
inline constexpr Method slab_gain_method{"heat gain of a square foot or metre of slab",
                                         "1.9 - 1.4 / (R of the covering + 0.12), in W/m2 and m2K/W",
                                         "ASHRAE Handbook-Fundamentals 2021 ch. 17, eq. 23"};

struct SlabEdge {
    std::string_view name;
    double loss;  // W/(m K)
    std::string_view source;
};
std::span<const SlabEdge> slab_edges();
std::variant<SlabEdge, house::Mistake> look_up_slab_edge(const house::CatalogueName& name);

// Both throw house::CannotAnswer for a name no table holds (questions/check_sheet finds those first).
units::Conductivity edge_loss(const house::Slab& slab);
units::Resistance covering(const house::Slab& slab);

units::HeatFlux slab_gain(units::Resistance covering);

}  // namespace loads
