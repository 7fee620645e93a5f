#include "loads/slab_edges.hpp"

#include <gtest/gtest.h>

#include "loads/a_house.hpp"
#include "loads/room_heat_loss.hpp"
#include "loads/transmittance.hpp"

namespace loads {
namespace {

house::Surface slab(double edge_m, double area_m2) {
    house::Surface floor =
        a_house::surface(area_m2, a_house::u(1), house::Space::outdoors, house::SurfaceKind::floor);
    floor.slab = house::Slab{units::Length(edge_m), units::Conductivity(1.2), units::Resistance(0.21)};
    return floor;
}

TEST(SlabEdges, a_slab_loses_by_its_edge_whatever_its_area) {
    for (const double area : {5.0, 50.0}) {
        house::House house = a_house::bare(20, -10);
        a_house::add_room(house, "den").surfaces = {slab(7, area)};
        const RoomHeatLoss loss = house_heat_loss(house).rooms[0];
        EXPECT_NEAR(loss.total.si(), 7 * 1.2 * 30, 1e-9);
        EXPECT_TRUE(loss.surfaces[0].on_slab);
        EXPECT_EQ(loss.surfaces[0].edge, units::Length(7));
        EXPECT_DOUBLE_EQ(loss.surfaces[0].edge_loss.si(), 1.2);
    }
}

TEST(SlabEdges, no_air_leaks_through_a_slab) {
    house::House house = a_house::bare();
    a_house::add_room(house, "den").surfaces = {slab(7, 12)};
    EXPECT_EQ(exposed_surface(house.rooms[0]), units::Area());
}

TEST(SlabEdges, an_edge_by_name) {
    house::Slab named{units::Length(1), house::CatalogueName{"R-10, 4 ft down", {}}};
    EXPECT_DOUBLE_EQ(edge_loss(named).si(), 0.831);
    named.covering = house::CatalogueName{"carpet", {}};
    EXPECT_DOUBLE_EQ(covering(named).si(), 0.28);
}

TEST(SlabEdges, a_name_that_is_none) {
    const auto looked_up = look_up_slab_edge({"R-10, 2 ft dwn", {}});
    ASSERT_TRUE(std::holds_alternative<house::Mistake>(looked_up));
    EXPECT_EQ(std::get<house::Mistake>(looked_up).under, "did you mean 'R-10, 2 ft down'?");
}

}  // namespace
}  // namespace loads
